import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { environmentFor, isModern, modernNode } from "../../src/tools/modern-node.mjs";

describe("the Node that builds the site", () => {
  it("is one that runs TypeScript: 22.18 or newer", () => {
    expect(["v22.18.0", "v22.19.0", "v24.0.0", "v100.0.0"].filter(isModern)).toHaveLength(4);
    expect(["v20.20.2", "v22.17.9", "v8.0.0"].filter(isModern)).toHaveLength(0);
  });

  it("is found on this machine, and is given to whatever it starts", () => {
    const environment = environmentFor(modernNode());
    const started = spawnSync("node", ["--version"], { env: environment, encoding: "utf8" });
    expect(isModern(started.stdout.trim())).toBe(true);
    expect(environment.ASTRO_TELEMETRY_DISABLED).toBe("1");
  });
});
