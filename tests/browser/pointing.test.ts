import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, openAll, ready } from "./lesson-page.ts";

const WIDE = { viewport: { width: 1440, height: 900 } };

/** A line, and a term in it: a component, the weight, a tension, an angle. */
const TERMS = [
  ["component.T1y", "T1y"],
  ["vertical.law", "weight"],
  ["vertical.substituted", "T2"],
  ["vertical.substituted", "alpha"],
] as const;

/** The refs of all that is lit in the pictures, or in the formulas. */
const lit = (page: Page, where: "svg" | ".katex-html"): Promise<string[]> =>
  page
    .locator(`${where} [data-ref].lit`)
    .evaluateAll((all) => [...new Set(all.flatMap((e) => (e.getAttribute("data-ref") ?? "").split(" ")))].sort());

describe("pointing", () => {
  siteTest("at a term lights its force, component or angle in the pictures, and nothing else", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await openAll(page);
    for (const [line, ref] of TERMS) {
      await page.locator(`[id="${line}"] .katex-html [data-ref~="${ref}"]`).first().hover();
      await expect.poll(() => lit(page, "svg"), { message: ref }).toContain(ref);
      expect(await lit(page, ".katex-html")).toContain(ref);
    }
    await page.locator("h1").hover();
    await expect.poll(() => lit(page, "svg")).toEqual([]);
  });

  siteTest("at a part of a picture lights its terms in the lines", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await openAll(page);
    await page.locator('#part-components svg g.label[data-ref~="T2x"]').first().hover();
    await expect.poll(() => lit(page, ".katex-html")).toContain("T2x");
    expect(await lit(page, ".katex-html")).not.toContain("T1y");
  });

  siteTest("at a field lights what it sets", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await page.locator("label[for=field-T1]").hover();
    await expect.poll(() => lit(page, "svg")).toContain("T1");
  });

  siteTest("at a line marks the lines it came from, by pointer and by keyboard", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await openAll(page);
    const sources = (): Promise<string[]> =>
      page.locator(".is-source").evaluateAll((all) => all.map((e) => e.id).sort());
    await page.locator('[id="eliminate.substitute"] > .shown').hover();
    await expect.poll(sources).toEqual(["isolate.divide", "vertical.substituted"]);
    await page.locator("h1").hover();
    await expect.poll(sources).toEqual([]);
    await page.focus('[id="eliminate.substitute"] > .number');
    await expect.poll(sources).toEqual(["isolate.divide", "vertical.substituted"]);
  });
});
