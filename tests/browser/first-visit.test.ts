import { gzipSync } from "node:zlib";
import type { Page, Response } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, derivedFor, ready } from "./lesson-page.ts";

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
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  return page.evaluate("shifted");
}

describe("a first visit", () => {
  siteTest("without a script holds the whole derivation", async ({ open }) => {
    const page = await open(LESSON, { javaScriptEnabled: false });
    const wanted = derivedFor("");
    const ids = wanted.paragraphs.flatMap((p) => p.lines.map((l) => l.id));
    const lines = page.locator(".paragraph > .lines > .line");
    expect(await lines.evaluateAll((all) => all.map((e) => e.id))).toEqual(ids);
    expect(await page.locator(".paragraph h3").allTextContents()).toEqual(wanted.paragraphs.map((p) => p.heading));
    for (const id of ["vertical.law", "answer.T1", "letters.T2.cancel"])
      expect(await page.locator(`[id="${id}"]`).isVisible()).toBe(true);
    expect(await page.locator(".caution").textContent()).toMatch(/local codes/);
  });

  siteTest("moves nothing at the default address, at any width", async ({ open }) => {
    for (const width of [360, 768, 1440]) {
      const page = await open("/", { viewport: { width, height: 900 } });
      expect(await shiftAt(page, ""), `at ${width} px`).toBe(0);
    }
  });

  siteTest("moves next to nothing with numbers in the address", async ({ open }) => {
    for (const width of [360, 768, 1440]) {
      for (const query of ["?T1=130&T2=25&mass=7", "?ax=12", "?T1=135&T2=45"]) {
        const page = await open("/", { viewport: { width, height: 900 } });
        expect(await shiftAt(page, query), `${query} at ${width} px`).toBeLessThanOrEqual(0.05);
      }
    }
  });

  siteTest(
    "is light: at most 200 kB, scripts at most 60 kB, and neither solver nor maths printer",
    async ({ open, site }) => {
      const page = await open("/", { viewport: { width: 1440, height: 900 } });
      const responses: Response[] = [];
      page.on("response", (r) => responses.push(r));
      await page.goto(site.origin + LESSON, { waitUntil: "networkidle" });
      const all = await Promise.all(responses.map(async (r) => [new URL(r.url()).pathname, await r.body()] as const));
      const size = ([path, body]: readonly [string, Buffer]): number =>
        path.endsWith("woff2") ? body.length : gzipSync(body, { level: 9 }).length;
      const scripts = all.filter(([path]) => path.endsWith(".js"));
      expect(all.reduce((sum, one) => sum + size(one), 0)).toBeLessThanOrEqual(200_000);
      expect(scripts.reduce((sum, one) => sum + size(one), 0)).toBeLessThanOrEqual(60_000);
      expect(scripts.filter(([path]) => /\/katex\.|\/awake\./.test(path))).toEqual([]);
      await page.focus("#field-T1");
      await expect
        .poll(() =>
          page.evaluate(
            () =>
              performance
                .getEntriesByType("resource")
                .map((e) => e.name)
                .filter((n) => /\/katex\.[^/]*js|\/awake\./.test(n)).length,
          ),
        )
        .toBe(2);
    },
  );
});

describe("the page's room", () => {
  siteTest("never scrolls sideways, down to 320 px and at 200 % zoom", async ({ open }) => {
    for (const width of [320, 360, 384, 720, 768, 960, 1440, 1920]) {
      const page = await open(LESSON, { viewport: { width, height: 800 } });
      await ready(page);
      await page.click("[data-open-all]");
      const { scroll, client } = await page.evaluate(() => ({
        scroll: document.documentElement.scrollWidth,
        client: document.documentElement.clientWidth,
      }));
      expect(scroll, `at ${width} px`).toBeLessThanOrEqual(client);
    }
  });

  siteTest("keeps the picture in view on wide screens while the paragraphs scroll", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1440, height: 900 } });
    await ready(page);
    await page.click("[data-open-all]");
    await page.evaluate(() => document.getElementById("eliminate.divide")?.scrollIntoView());
    const box = await page.locator(".stage svg").first().boundingBox();
    expect(box?.y ?? -1).toBeGreaterThanOrEqual(0);
    expect((box?.y ?? 0) + (box?.height ?? 9999)).toBeLessThanOrEqual(900);
  });

  siteTest("prints with every part open", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.length).toBeGreaterThan(20_000);
    const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(5);
  });
});
