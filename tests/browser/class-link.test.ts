import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, expectAddress, expectSolversPage, openAll, ready } from "./lesson-page.ts";
import { derivedFor } from "./written.ts";

/** The ids of the numbered lines that can be seen. */
const seenLines = (page: Page): Promise<string[]> =>
  page
    .locator(".paragraph > .lines > .line")
    .evaluateAll((all) => all.filter((e) => e.getClientRects().length > 0).map((e) => e.id));

const linesFor = (query: string): string[] =>
  derivedFor(query).paragraphs.flatMap((p) => p.lines.map((line) => line.id));

describe("a link that stops at a line", () => {
  siteTest("hides what comes after, and one key shows the next line", async ({ open }) => {
    const page = await open(`${LESSON}?upto=vertical.given`);
    await ready(page);
    const all = linesFor("");
    await expect.poll(() => seenLines(page)).toEqual(all.slice(0, 2));
    expect(await page.locator("#part-answer").isVisible()).toBe(false);
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Next line");
    for (let shown = 3; shown <= 6; shown++) {
      await page.keyboard.press("Enter");
      await expect.poll(() => seenLines(page)).toEqual(all.slice(0, shown));
    }
    await expectAddress(page, `upto=${all[5] ?? ""}`);
    await page.click("text=Show all");
    await expect.poll(() => seenLines(page)).toEqual(all);
    await expectAddress(page, /^$/);
  });

  siteTest("keeps its stop while the numbers change", async ({ open }) => {
    const page = await open(`${LESSON}?upto=isolate.divide`);
    await ready(page);
    await page.fill("#field-T2", "50");
    await page.press("#field-T2", "Tab");
    await expectAddress(page, "?T2=50&upto=isolate.divide");
    await expectSolversPage(page);
    const all = linesFor("?T2=50");
    await expect.poll(() => seenLines(page)).toEqual(all.slice(0, all.indexOf("isolate.divide") + 1));
  });

  siteTest("stops at the last earlier line where its own is absent, and says so", async ({ open }) => {
    const page = await open(`${LESSON}?T1=90&upto=eliminate.divide`);
    await ready(page);
    await expect.poll(() => page.textContent(".stop-bar")).toContain("not there at these values");
    const usual = linesFor("");
    const here = linesFor("?T1=90");
    const stop = usual.slice(0, usual.indexOf("eliminate.divide")).findLast((id) => here.includes(id)) ?? "";
    await expect.poll(() => seenLines(page)).toEqual(here.slice(0, here.indexOf(stop) + 1));
    expect(await page.locator("#part-answer").isVisible()).toBe(false);
  });

  siteTest("says so where the lesson has no such line", async ({ open }) => {
    const page = await open(`${LESSON}?upto=no.such.line`);
    await ready(page);
    await expect.poll(() => page.textContent(".stop-bar")).toContain("which this lesson does not have");
    await expect.poll(() => seenLines(page)).toEqual([]);
  });
});

describe("a link to a line", () => {
  siteTest("opens the part that holds it and marks it", async ({ open }) => {
    const page = await open(`${LESSON}#eliminate.divide`);
    const line = page.locator('[id="eliminate.divide"]');
    await expect.poll(() => line.isVisible()).toBe(true);
    expect(await line.getAttribute("class")).toContain("is-target");
    expect(await page.locator('[id="vertical.law"]').isVisible()).toBe(false);
  });

  siteTest("finds a line that only the address's own numbers bring", async ({ open }) => {
    const page = await open(`${LESSON}?ax=12#alone.free.theta`);
    await ready(page);
    const line = page.locator('[id="alone.free.theta"]');
    await expect.poll(() => line.isVisible()).toBe(true);
    await expect.poll(() => line.getAttribute("class")).toContain("is-target");
    await expect.poll(() => line.evaluate((e) => Math.round(e.getBoundingClientRect().y))).toBeGreaterThan(0);
  });

  siteTest("is what each line's number is", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    await openAll(page);
    await page.click('[id="isolate.divide"] > .number');
    await expect.poll(() => new URL(page.url()).hash).toBe("#isolate.divide");
    await expect.poll(() => page.locator('[id="isolate.divide"]').getAttribute("class")).toContain("is-target");
  });
});
