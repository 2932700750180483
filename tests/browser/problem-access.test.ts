import { gzipSync } from "node:zlib";
import { AxeBuilder } from "@axe-core/playwright";
import type { Page, Response } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { layOutAll, openAll, ready, unfold } from "./lesson-page.ts";
import { documentOn, enter, expectDerivationOf, expectSaid, openProblem, press, PROBLEM } from "./problem-page.ts";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

async function violations(page: Page): Promise<string[]> {
  await layOutAll(page);
  const found = await new AxeBuilder({ page }).withTags(RULES).analyze();
  return found.violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 160)).join(" | ")}`);
}

/** One of everything that the form can show. */
async function fillUp(page: Page): Promise<void> {
  for (const name of ["Add a knot", "Add a movable pulley", "Add a rope", "Add a surface", "Add a push or pull"])
    await press(page, name);
  await page.getByLabel("Rope T3, how it is tied").selectOption("movable-pulley");
  await page.getByLabel("Surface N1, how it lies").selectOption("rises-right");
  await page.getByLabel("Surface N1, friction").selectOption("rough");
  await page.getByLabel("Supports", { exact: true }).selectOption("speed up");
  await enter(page, "Push P1, size, N", "-1");
}

describe("axe at WCAG 2.2 AA", () => {
  siteTest.for(["light", "dark"] as const)(
    "finds nothing as opened, and all unfolded, %s",
    async (colorScheme, { open }) => {
      const page = await openProblem(open, "", { colorScheme, viewport: { width: 1280, height: 900 } });
      expect(await violations(page)).toEqual([]);
      await openAll(page);
      await unfold(page);
      expect(await violations(page)).toEqual([]);
    },
  );

  siteTest("finds nothing with rows of every kind, and faults", async ({ open }) => {
    const page = await openProblem(open, "?nonsense=1", { viewport: { width: 1280, height: 900 } });
    await fillUp(page);
    await unfold(page);
    await expect.poll(() => page.locator(".row-fault").count()).toBeGreaterThan(0);
    expect(await violations(page)).toEqual([]);
  });
});

describe("room", () => {
  siteTest("never scrolls sideways, and targets are at least 24 px, from 320 px", async ({ open }) => {
    const page = await openProblem(open, "", { viewport: { width: 1440, height: 800 } });
    await fillUp(page);
    await openAll(page);
    await unfold(page);
    for (const width of [1440, 768, 360, 320]) {
      await page.setViewportSize({ width, height: 800 });
      const excess = () =>
        page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      await expect.poll(excess, { message: `at ${width} px` }).toBeLessThanOrEqual(0);
    }
    const small = await page.locator("button, summary, select, input, textarea").evaluateAll((all) =>
      all.flatMap((e) => {
        const { width, height } = e.getBoundingClientRect();
        return width > 0 && (width < 24 || height < 24) ? [e.outerHTML.slice(0, 120)] : [];
      }),
    );
    expect(small).toEqual([]);
  });

  siteTest("keeps the picture in view on wide screens", async ({ open }) => {
    const page = await openProblem(open, "", { viewport: { width: 1440, height: 900 } });
    await openAll(page);
    await page.evaluate(() => document.getElementById("part-recap")?.scrollIntoView());
    const box = await page.locator(".stage svg").first().boundingBox();
    expect(box?.y ?? -1).toBeGreaterThanOrEqual(0);
    expect((box?.y ?? 0) + (box?.height ?? 9999)).toBeLessThanOrEqual(900);
  });
});

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const e = document.activeElement;
    return e === null || e === document.body ? "" : (e.getAttribute("aria-label") ?? e.textContent.trim());
  });

async function tabTo(page: Page, wanted: string, key = "Tab", most = 80): Promise<void> {
  const passed: string[] = [];
  for (let i = 0; i < most; i++) {
    await page.keyboard.press(key);
    const now = await focused(page);
    if (now === wanted) return;
    passed.push(now);
  }
  throw new Error(`${key} does not come to ${wanted}; it came to ${passed.join(", ")}`);
}

describe("the keyboard alone", () => {
  siteTest("sets up a lantern on one rope, and takes the last step back", async ({ open }) => {
    const page = await openProblem(open);
    await tabTo(page, "Start empty");
    await page.keyboard.press("Enter");
    await tabTo(page, "Add a load");
    await page.keyboard.press("Enter");
    // The focus is on the new body's name.
    await expect.poll(() => focused(page)).toBe("Name of body 1");
    await page.keyboard.press("ControlOrMeta+A");
    await page.keyboard.type("lantern");
    await tabTo(page, "lantern, mass, kg");
    await page.keyboard.press("ControlOrMeta+A");
    await page.keyboard.type("4,2");
    await tabTo(page, "Add a rope");
    await page.keyboard.press("Enter");
    await expect.poll(() => focused(page)).toBe("Rope T1, how it is tied");
    const lantern = {
      format: 1,
      gravity: 9.8,
      bodies: [{ id: "lantern", name: "lantern", mass: 4.2 }],
      ropes: [{ id: "T1", on: "lantern", direction: { angle: 90 } }],
    };
    expect(await documentOn(page)).toEqual(lantern);
    await expectDerivationOf(page, lantern);
    await expectSaid(page, /41\.2/);
    await tabTo(page, "Remove rope T1");
    await page.keyboard.press("Enter");
    await expect.poll(() => focused(page)).toBe("Add a rope");
    await tabTo(page, "Undo");
    await page.keyboard.press("Enter");
    expect(await documentOn(page)).toEqual(lantern);
  });
});

describe("without a script", () => {
  siteTest("the page holds the derivation of its example, and says that entering needs a script", async ({ open }) => {
    const page = await open(PROBLEM, { javaScriptEnabled: false });
    const unseen = await page
      .locator(
        ".line:not(.smaller .line), .paragraph:not(:only-child) > h3, .part:not([hidden]) > summary h2, .before > p",
      )
      .evaluateAll((all) => all.filter((e) => e.getClientRects().length === 0).map((e) => e.outerHTML.slice(0, 100)));
    expect(unseen).toEqual([]);
    expect(await page.locator(".line").count()).toBeGreaterThan(15);
    expect(await page.locator(".no-script").isVisible()).toBe(true);
    expect(await page.locator("button:visible, input:visible, select:visible, textarea:visible").count()).toBe(0);
    expect(await page.locator("svg.picture:visible").count()).toBeGreaterThan(4);
    expect(await page.locator(".caution").textContent()).toMatch(/local codes/);
  });
});

describe("on paper", () => {
  siteTest("there are the problem, its derivation and its pictures, and no form", async ({ open }) => {
    const page = await openProblem(open);
    await page.emulateMedia({ media: "print" });
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    expect(await page.locator(".problem-form:visible, textarea:visible, button:visible").count()).toBe(0);
    expect(await page.locator(".line:visible").count()).toBeGreaterThan(15);
    expect(await page.locator("svg.picture:visible").count()).toBeGreaterThan(4);
  });
});

/** A sledge on a slipway and a bucket over a pulley, as a class would be sent it. */
const LINK =
  "?doc=(format:1,gravity:9.8,bodies:!((id:sledge,mass:10),(id:bucket,mass:8,motion:(along:(angle:-90)))),ropes:!((id:T," +
  "pulls:!((on:sledge,direction:(angle:30)),(on:bucket,direction:(angle:90))))),surfaces:!((id:N,on:sledge,slope:(angle:30)," +
  "friction:(static:0.2,kinetic:0.15))))";

describe("a first visit", () => {
  // A link to another problem needs the solver and the printer of maths at once: 84 and 77 kB.
  siteTest.for([
    ["to the page itself", "", 250_000],
    ["by a link to a problem", LINK, 400_000],
  ] as const)("%s is light", async ([, query, most], { open }) => {
    const page = await open("/");
    await page.waitForLoadState("networkidle");
    const responses: Response[] = [];
    page.on("response", (response) => responses.push(response));
    await page.goto(new URL(PROBLEM + query, page.url()).href, { waitUntil: "networkidle" });
    await ready(page);
    const all = await Promise.all(responses.map(async (r) => [new URL(r.url()).pathname, await r.body()] as const));
    const bytes = all
      .map(([path, body]) => (path.endsWith("woff2") ? body : gzipSync(body, { level: 9 })).length)
      .reduce((sum, one) => sum + one, 0);
    expect(bytes).toBeLessThanOrEqual(most);
    expect(bytes).toBeGreaterThan(100_000);
  });
});
