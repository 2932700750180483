import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveFolder, type Served } from "../../src/tools/serve-folder.mjs";

describe("serving the built site", () => {
  let folder: string;
  let site: Served;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "tautline-site-"));
    mkdirSync(join(folder, "lessons"));
    writeFileSync(join(folder, "lessons", "index.html"), "<h1>A lesson</h1>");
    site = await serveFolder(folder, 0);
  });

  afterAll(async () => {
    await site.close();
    rmSync(folder, { recursive: true });
  });

  it("gives a folder's page with or without the closing slash of its address", async () => {
    for (const path of ["/lessons/", "/lessons", "/lessons/?m=5"]) {
      const answer = await fetch(site.origin + path);
      expect(await answer.text(), path).toBe("<h1>A lesson</h1>");
    }
  });

  it("says so when there is no such page, and gives nothing outside the folder", async () => {
    expect((await fetch(`${site.origin}/nothing/`)).status).toBe(404);
    expect((await fetch(`${site.origin}/%2e%2e/%2e%2e/etc/passwd`)).status).toBe(404);
  });

  it("takes the next port when one is taken", async () => {
    const second = await serveFolder(folder, site.port);
    expect(second.port).toBeGreaterThan(site.port);
    await second.close();
  });
});
