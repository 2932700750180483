import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, expectSolversPage, openAll, ready, type } from "./lesson-page.ts";

/** Adds up layout shifts that no hand caused, from the first paint on. */
const watchShifts = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    Object.assign(globalThis, { shifted: 0 });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        const { value, hadRecentInput } = entry as PerformanceEntry & { value: number; hadRecentInput: boolean };
        if (!hadRecentInput) (globalThis as unknown as { shifted: number }).shifted += value;
      }
    }).observe({ type: "layout-shift", buffered: true });
  });

async function shiftAt(page: Page, query: string): Promise<number> {
  await watchShifts(page);
  await page.goto(new URL(LESSON + query, page.url()).href, { waitUntil: "networkidle" });
  await ready(page);
  await expectSolversPage(page);
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  return page.evaluate("shifted");
}

describe("the page while it wakes", () => {
  siteTest.for([360, 768, 1440])("moves nothing at the default address, at %d px", async (width, { open }) => {
    const page = await open("/", { viewport: { width, height: 900 } });
    expect(await shiftAt(page, "")).toBe(0);
  });

  siteTest.for([360, 768, 1440])(
    "moves next to nothing with numbers in the address, at %d px",
    async (width, { open }) => {
      for (const query of ["?T1=130&T2=25&mass=7", "?ax=12"]) {
        const page = await open("/", { viewport: { width, height: 900 } });
        expect(await shiftAt(page, query), query).toBeLessThanOrEqual(0.05);
      }
    },
  );
});

describe("a reader's place", () => {
  siteTest("stays while the case changes above it and back", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1440, height: 900 } });
    await ready(page);
    await openAll(page);
    const line = page.locator('[id="component.T1x"]');
    await line.evaluate((e) => e.scrollIntoView({ block: "start", behavior: "instant" }));
    await expect.poll(() => line.evaluate((e) => e.getBoundingClientRect().y < 200)).toBe(true);
    const place = (): Promise<number> => line.evaluate((e) => Math.round(e.getBoundingClientRect().y));
    const before = await place();
    for (const value of ["120", "65"]) {
      await page.locator("#field-T1").evaluate((e: HTMLInputElement, text) => {
        e.value = text;
        e.dispatchEvent(new Event("input", { bubbles: true }));
      }, value);
      await expect.poll(() => new URL(page.url()).search).toBe(value === "65" ? "" : "?T1=60");
      await expectSolversPage(page);
      expect(Math.abs((await place()) - before), `at ${value}°`).toBeLessThanOrEqual(2);
    }
  });

  siteTest("stays where one types", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1440, height: 900 } });
    await ready(page);
    await type(page, "T1", "120");
    await expectSolversPage(page);
    expect(await page.evaluate(() => scrollY)).toBe(0);
  });
});
