import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, drag, expectAddress, expectSolversLines, openAll, ready } from "./lesson-page.ts";

const wordsOf = (page: Page): Promise<string[]> =>
  page.locator(".paragraph").evaluateAll((all) => all.map((e) => e.textContent));

describe("the address", () => {
  siteTest("opens the same page elsewhere, word for word", async ({ open }) => {
    const here = await open(LESSON);
    await ready(here);
    await drag(here, "T2", -60, 0);
    await expectAddress(here, /T2=\d+/);
    await expectSolversLines(here);
    const there = await open(LESSON + new URL(here.url()).search);
    await ready(there);
    await expectSolversLines(there);
    expect(await wordsOf(there)).toEqual(await wordsOf(here));
  });

  siteTest("with other numbers shows them in every line, for the eye and for reading aloud", async ({ open }) => {
    const page = await open(`${LESSON}?mass=7.3&g=9.81&T1=128&T2=33&ax=1.5&ay=-2&figures=4&first=horizontal`);
    await ready(page);
    await expectSolversLines(page);
    expect(await page.inputValue("#field-load")).toBe("7.3");
  });

  siteTest("that is malformed is named parameter by parameter, and the rest is shown", async ({ open }) => {
    const page = await open(`${LESSON}?mass=abc&g=-3&T2=50&colour=red&figures=9`);
    await ready(page);
    const box = page.locator(".faults");
    await expect.poll(() => box.locator("li").count()).toBe(4);
    const text = (await box.textContent()) ?? "";
    for (const name of ["mass", "g", "colour", "figures"]) expect(text).toContain(name);
    expect(text).toContain("accepted");
    await expectSolversLines(page);
    expect(await page.inputValue("#field-T2")).toBe("50");
    expect(await page.inputValue("#field-load")).toBe("4.2");
  });

  siteTest("wins over the stored state, which one quiet button offers", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    await drag(page, "T2", -60, 0);
    await expectAddress(page, /T2=\d+/);
    const stored = new URL(page.url()).search;
    await page.goto(new URL(LESSON, page.url()).href);
    await ready(page);
    expect(await page.inputValue("#field-T2")).toBe("40");
    await page.click("text=Go on where you stopped");
    await expectAddress(page, stored.slice(1));
    await expectSolversLines(page);
  });

  siteTest("works where the browser stores nothing", async ({ open }) => {
    const page = await open(LESSON);
    await page.addInitScript(() => {
      Object.defineProperty(window, "localStorage", {
        get() {
          throw new DOMException("no", "SecurityError");
        },
      });
    });
    await page.reload();
    await ready(page);
    await drag(page, "T2", -60, 0);
    await expectAddress(page, /T2=\d+/);
    await expectSolversLines(page);
  });
});

describe("a link that stops at a line", () => {
  siteTest("hides what comes after, and one key shows the next line", async ({ open }) => {
    const page = await open(`${LESSON}?upto=vertical.given`);
    await ready(page);
    const visible = (id: string): Promise<boolean> => page.locator(`[id="${id}"]`).isVisible();
    await expect.poll(() => visible("horizontal.law")).toBe(false);
    expect(await visible("vertical.given")).toBe(true);
    expect(await page.locator("#part-answer").isVisible()).toBe(false);
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Next line");
    await page.keyboard.press("Enter");
    await expect.poll(() => visible("horizontal.law")).toBe(true);
    expect(await visible("horizontal.given")).toBe(false);
    await expectAddress(page, "upto=horizontal.law");
    await page.click("text=Show all");
    await expect.poll(() => page.locator("#part-answer").isVisible()).toBe(true);
  });

  siteTest("stops at the last earlier line where its own is absent, and says so", async ({ open }) => {
    const page = await open(`${LESSON}?T1=90&upto=eliminate.divide`);
    await ready(page);
    await expect.poll(() => page.textContent(".stop-bar")).toContain("not there at these values");
    expect(await page.locator('[id="vertical.substituted"]').isVisible()).toBe(true);
    expect(await page.locator("#part-answer").isVisible()).toBe(false);
  });
});

describe("a link to a line", () => {
  siteTest("opens the part that holds it and marks it", async ({ open }) => {
    const page = await open(`${LESSON}#eliminate.divide`);
    await expect.poll(() => page.locator('[id="eliminate.divide"]').isVisible()).toBe(true);
    expect(await page.locator('[id="eliminate.divide"]').getAttribute("class")).toContain("is-target");
  });
});

describe("pointing", () => {
  siteTest("at a term lights its arrows, and at an arrow its terms", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1440, height: 900 } });
    await ready(page);
    await openAll(page);
    await page.locator('[id="component.T1y"] .katex-html [data-ref="T1y"]').first().hover();
    await expect.poll(() => page.locator('svg [data-ref~="T1y"].lit').count()).toBeGreaterThan(0);
    await page
      .locator('#part-components svg text[data-ref~="T2x"], #part-components svg [data-ref~="T2x"] text')
      .first()
      .hover();
    await expect.poll(() => page.locator('.katex-html [data-ref="T2x"].lit').count()).toBeGreaterThan(0);
    expect(await page.locator('svg [data-ref~="T1y"].lit').count()).toBe(0);
  });

  siteTest("at a line marks the lines it came from", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1440, height: 900 } });
    await ready(page);
    await openAll(page);
    await page.locator('[id="eliminate.substitute"] > .shown').hover();
    await expect
      .poll(() => page.locator(".is-source").evaluateAll((all) => all.map((e) => e.id)))
      .toEqual(["vertical.substituted", "isolate.divide"]);
  });
});
