import { gzipSync } from "node:zlib";
import type { Page, Response } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, expectField, expectSolversPage, ready, type } from "./lesson-page.ts";
import { derivedFor } from "./written.ts";

describe("without a script", () => {
  siteTest("the page holds the whole derivation, every line and word of it to be seen", async ({ open }) => {
    const page = await open(LESSON, { javaScriptEnabled: false });
    await expectSolversPage(page);
    const wanted = derivedFor("");
    const lines = page.locator(".paragraph > .lines > .line");
    expect(await lines.count()).toBe(wanted.paragraphs.flatMap((p) => p.lines).length);
    expect(await lines.count()).toBeGreaterThan(25);
    // A paragraph that is alone in its part has the part's own heading.
    const unseen = await page
      .locator(
        ".line:not(.smaller .line), .paragraph:not(:only-child) > h3, .part:not([hidden]) > summary h2, .before > p, .after > p",
      )
      .evaluateAll((all) => all.filter((e) => e.getClientRects().length === 0).map((e) => e.outerHTML.slice(0, 100)));
    expect(unseen).toEqual([]);
    expect(await page.locator("svg.picture").count()).toBeGreaterThan(6);
    expect(await page.locator(".caution").textContent()).toMatch(/local codes/);
  });
});

const NOT_YET = /\/(?:katex|awake)\.[^/]*js$/;

/** Which of the scripts that are fetched late have been asked for. */
const lateScripts = (page: Page): Promise<string[]> =>
  page.evaluate(
    (pattern) =>
      performance
        .getEntriesByType("resource")
        .map((e) => new URL(e.name).pathname)
        .filter((path) => new RegExp(pattern).test(path)),
    NOT_YET.source,
  );

describe("a first visit", () => {
  siteTest("is light: at most 200 kB, of which scripts at most 60 kB", async ({ open }) => {
    const page = await open("/", { viewport: { width: 1440, height: 900 } });
    // What still comes for the front page is not the lesson's, and its body is gone once the page has moved on.
    await page.waitForLoadState("networkidle");
    const responses: Response[] = [];
    page.on("response", (response) => responses.push(response));
    await page.goto(new URL(LESSON, page.url()).href, { waitUntil: "networkidle" });
    const all = await Promise.all(responses.map(async (r) => [new URL(r.url()).pathname, await r.body()] as const));
    const bytes = (pattern: RegExp): number =>
      all
        .filter(([path]) => pattern.test(path))
        .map(([path, body]) => (path.endsWith("woff2") ? body : gzipSync(body, { level: 9 })).length)
        .reduce((sum, one) => sum + one, 0);
    expect(bytes(/./)).toBeLessThanOrEqual(200_000);
    expect(bytes(/\.js$/)).toBeLessThanOrEqual(60_000);
    expect(bytes(/\.js$/)).toBeGreaterThan(10_000);
  });

  siteTest("fetches neither the solver nor the printer of maths, and a touch fetches both", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    await page.waitForLoadState("networkidle");
    expect(await lateScripts(page)).toEqual([]);
    await page.focus("#field-T1");
    await expect.poll(async () => (await lateScripts(page)).length).toBe(2);
  });

  siteTest("loses nothing that is typed or dragged while the solver is still on its way", async ({ open }) => {
    const page = await open("/");
    let release: () => void = () => undefined;
    const held = new Promise<void>((done) => (release = done));
    await page.route(NOT_YET, async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(new URL(LESSON, page.url()).href);
    await ready(page);
    await type(page, "T2", "52");
    await type(page, "load", "7");
    await expectField(page, "load", "7");
    release();
    await expect.poll(() => new URL(page.url()).search).toBe("?mass=7&T2=52");
    await expectSolversPage(page);
  });
});
