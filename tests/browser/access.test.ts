import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, expectSolversPage, layOutAll, openAll, ready, unfold } from "./lesson-page.ts";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const SETTINGS = [
  ["", "light"],
  ["", "dark"],
  ["?ax=12", "light"],
  ["?ay=-12", "dark"],
  ["?T1=135&T2=45&upto=isolate.divide&g=x", "light"],
] as const;

async function violations(page: Page): Promise<string[]> {
  // In its placeholder's box, content that the browser skips seems to lie over its neighbours.
  await layOutAll(page);
  const found = await new AxeBuilder({ page }).withTags(RULES).analyze();
  return found.violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 160)).join(" | ")}`);
}

describe("axe at WCAG 2.2 AA", () => {
  siteTest.for(SETTINGS)("finds nothing at the address “%s”, %s", async ([query, colorScheme], { open }) => {
    const page = await open(LESSON + query, { colorScheme, viewport: { width: 1280, height: 900 } });
    await ready(page);
    await expectSolversPage(page);
    // The start is looked at closed too; what is closed elsewhere is closed there as well.
    if (query === "") expect(await violations(page)).toEqual([]);
    await openAll(page);
    await unfold(page);
    expect(await violations(page)).toEqual([]);
  });

  siteTest("finds nothing on the front page", async ({ open }) => {
    expect(await violations(await open("/"))).toEqual([]);
  });
});

describe("targets", () => {
  siteTest.for([360, 1280])("are at least 24 px in both directions, at %d px", async (width, { open }) => {
    const page = await open(`${LESSON}?upto=isolate.divide`, { viewport: { width, height: 800 } });
    await ready(page);
    await unfold(page);
    const sizes = await page.locator("button, summary, select, input, [data-handle]").evaluateAll((all) =>
      all.flatMap((e) => {
        const { width, height } = e.getBoundingClientRect();
        return width > 0 ? [{ what: e.outerHTML.slice(0, 80), width, height }] : [];
      }),
    );
    expect(sizes.length).toBeGreaterThan(30);
    expect(sizes.filter((size) => size.width < 24 || size.height < 24)).toEqual([]);
  });
});

describe("forced colours", () => {
  siteTest("leave every letter and every part of a picture to be seen", async ({ open }) => {
    const page = await open(LESSON, { forcedColors: "active", viewport: { width: 1280, height: 900 } });
    await ready(page);
    await openAll(page);
    const unseen = await page.evaluate(() => {
      const ground = getComputedStyle(document.body).backgroundColor;
      const clear = ["none", "rgba(0, 0, 0, 0)", "transparent", ground];
      const drawn = [...document.querySelectorAll("svg.picture :is(path, circle, text)")].filter(
        (e) => e.checkVisibility() && e.closest(".handles") === null,
      );
      const painted = (e: Element): boolean => {
        const { fill, stroke } = getComputedStyle(e);
        return !clear.includes(fill) || !clear.includes(stroke);
      };
      const letters = [...document.querySelectorAll("p, h1, h2, h3, label, button, .katex-html .mord")];
      const readable = (e: Element): boolean => !clear.includes(getComputedStyle(e).color);
      return {
        count: drawn.length + letters.length,
        all: [...drawn.filter((e) => !painted(e)), ...letters.filter((e) => !readable(e))].map((e) =>
          e.outerHTML.slice(0, 120),
        ),
      };
    });
    expect(unseen.count).toBeGreaterThan(500);
    expect(unseen.all).toEqual([]);
  });

  siteTest("mark what is pointed at by an outline", async ({ open }) => {
    const page = await open(`${LESSON}#vertical.law`, { forcedColors: "active" });
    await ready(page);
    const line = page.locator('[id="vertical.law"]');
    await expect.poll(() => line.evaluate((e) => getComputedStyle(e).outlineStyle)).toBe("solid");
  });
});

describe("reduced motion", () => {
  siteTest("is kept: nothing moves by itself, and the page jumps rather than glides", async ({ open }) => {
    const page = await open(LESSON, { reducedMotion: "reduce" });
    await ready(page);
    await openAll(page);
    await page.hover('[id="vertical.law"] > .shown');
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).scrollBehavior)).toBe("auto");
  });
});

describe("what a change came to", () => {
  siteTest("is said once, politely, when the hand rests", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    const said = page.locator('.outcome[aria-live="polite"][aria-atomic="true"]');
    expect(await said.textContent()).toBe("");
    await page.evaluate(() => {
      Object.assign(globalThis, { sayings: [] });
      const line = document.querySelector(".outcome");
      if (line === null) throw new Error("nothing says the outcome");
      new MutationObserver(() => {
        (globalThis as unknown as { sayings: string[] }).sayings.push(line.textContent);
      }).observe(line, { childList: true, characterData: true, subtree: true });
    });
    await page.focus("#field-T1");
    for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowUp");
    await expect.poll(() => said.textContent()).toMatch(/Rope 1 pulls with/);
    expect(await page.evaluate("sayings.length")).toBe(1);
  });
});
