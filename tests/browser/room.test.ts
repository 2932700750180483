import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, expectSolversPage, openAll, ready, type, unfold } from "./lesson-page.ts";

/** How far the page reaches beyond its width. */
const excess = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

describe("the page's room", () => {
  // 720 and 960 px are 1440 and 1920 px at 200 % zoom.
  siteTest.for(["", "?ax=12&figures=6", "?mass=0.0000234567&T1=135.7&T2=44.3&figures=6&ax=1.234&ay=-2.345"])(
    "never scrolls sideways, from 320 to 1920 px, at “%s”",
    async (query, { open }) => {
      const page = await open(LESSON + query, { viewport: { width: 1920, height: 800 } });
      await ready(page);
      await openAll(page);
      await unfold(page);
      await expectSolversPage(page);
      for (const width of [1920, 1440, 960, 768, 720, 384, 360, 320]) {
        await page.setViewportSize({ width, height: 800 });
        await expect.poll(() => excess(page), { message: `at ${width} px` }).toBeLessThanOrEqual(0);
      }
    },
  );

  siteTest("at 200 % has every line in reach: a long one scrolls in its own box", async ({ open }) => {
    const page = await open(`${LESSON}?figures=6&ax=1.234`, { viewport: { width: 320, height: 400 } });
    await ready(page);
    await openAll(page);
    await expectSolversPage(page);
    const lost = await page.locator(".line > .shown").evaluateAll((all) =>
      all
        .filter((e) => {
          (e as HTMLElement).style.contentVisibility = "visible";
          const isWide = e.scrollWidth > e.clientWidth + 1;
          return e.getClientRects().length > 0 && isWide && !/auto|scroll/.test(getComputedStyle(e).overflowX);
        })
        .map((e) => e.parentElement?.id),
    );
    expect(lost).toEqual([]);
  });

  siteTest("keeps the picture in view on wide screens while the paragraphs scroll", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1440, height: 900 } });
    await ready(page);
    await openAll(page);
    await page.evaluate(() => document.getElementById("eliminate.divide")?.scrollIntoView());
    const box = await page.locator(".stage svg").first().boundingBox();
    expect(box?.y ?? -1).toBeGreaterThanOrEqual(0);
    expect((box?.y ?? 0) + (box?.height ?? 9999)).toBeLessThanOrEqual(900);
  });
});

const pagesOf = (pdf: Buffer): number => pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;

describe("on paper", () => {
  siteTest("every part is open, and afterwards as it was", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    const closed = pagesOf(await page.pdf({ format: "A4" }));
    expect(await page.locator("details.part[open]").count()).toBe(0);
    await openAll(page);
    expect(closed).toBe(pagesOf(await page.pdf({ format: "A4" })));
    expect(closed).toBeGreaterThan(5);
  });

  siteTest("there are lines, words and pictures, and no controls", async ({ open }) => {
    const page = await open(LESSON, { javaScriptEnabled: false });
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    for (const gone of [".controls", ".outline-tools", ".skip", ".handles"])
      expect(await page.locator(`${gone}:visible`).count(), gone).toBe(0);
    const hidden = await page
      .locator(".paragraph, .line:not(.smaller .line), svg.picture")
      .evaluateAll((all) => all.filter((e) => e.getClientRects().length === 0).map((e) => e.outerHTML.slice(0, 80)));
    expect(hidden).toEqual([]);
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(
      "rgb(255, 255, 255)",
    );
  });

  siteTest("pictures far from view show the present numbers too", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1280, height: 600 } });
    await ready(page);
    await openAll(page);
    await page.evaluate(() => scrollTo(0, 0));
    await type(page, "T1", "33");
    await expectSolversPage(page);
    const labels = await page.evaluate(() => {
      window.dispatchEvent(new Event("beforeprint"));
      return [...document.querySelectorAll("#part-components svg .label")].map((e) => e.textContent);
    });
    expect(labels.join(" ")).toContain("33");
    expect(labels.join(" ")).not.toContain("65");
  });
});
