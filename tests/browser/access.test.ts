import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, expectSolversLines, openAll, ready } from "./lesson-page.ts";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const SETTINGS = [
  ["", "light"],
  ["", "dark"],
  ["?ax=12", "light"],
  ["?ay=-12", "dark"],
  ["?T1=135&T2=45&upto=isolate.divide&g=x", "light"],
] as const;

/** Lays out what the browser skips while it is out of view: in its placeholder's box, skipped content seems to lie over its neighbours. */
const layOutAll = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const e of document.querySelectorAll<HTMLElement>(".paragraph, .drawn, .shown"))
      e.style.contentVisibility = "visible";
  });

describe("axe at WCAG 2.2 AA", () => {
  siteTest.for(SETTINGS)("finds nothing at the address “%s”, %s", async ([query, colorScheme], { open }) => {
    const page = await open(LESSON + query, { colorScheme, viewport: { width: 1280, height: 900 } });
    await ready(page);
    await layOutAll(page);
    const closed = await new AxeBuilder({ page }).withTags(RULES).analyze();
    expect(closed.violations.map((v) => `${v.id}: ${v.nodes[0]?.html ?? ""}`)).toEqual([]);
    await openAll(page);
    await expectSolversLines(page);
    await layOutAll(page);
    const opened = await new AxeBuilder({ page }).withTags(RULES).analyze();
    expect(opened.violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 160)).join(" | ")}`)).toEqual(
      [],
    );
  });
});

describe("targets", () => {
  siteTest("are at least 24 px in both directions", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 360, height: 800 } });
    await ready(page);
    const small = await page.locator("button, summary, select, input, [data-handle]").evaluateAll((all) =>
      all.flatMap((e) => {
        const box = e.getBoundingClientRect();
        return box.width > 0 && (box.width < 24 || box.height < 24)
          ? [`${e.outerHTML.slice(0, 80)} ${Math.round(box.width)}×${Math.round(box.height)}`]
          : [];
      }),
    );
    expect(small).toEqual([]);
  });
});

describe("forced colours and reduced motion", () => {
  siteTest("leave every line and control to be seen", async ({ open }) => {
    const page = await open(LESSON, {
      forcedColors: "active",
      reducedMotion: "reduce",
      viewport: { width: 1280, height: 900 },
    });
    await ready(page);
    await openAll(page);
    expect(await page.locator('[id="answer.T1"] .katex-html').isVisible()).toBe(true);
    const strokes = await page
      .locator(".stage svg path")
      .evaluateAll((all) => new Set(all.map((e) => getComputedStyle(e).stroke)).size);
    expect(strokes).toBeGreaterThan(0);
  });
});
