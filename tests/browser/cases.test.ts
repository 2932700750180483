import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, expectSolversPage, openAll, ready } from "./lesson-page.ts";

const CASES = [
  ["slack in a cart", "?ax=12"],
  ["both ropes on one side", "?T1=160&T2=140"],
  ["free fall", "?ay=-9.8"],
  ["free fall in a cart", "?ay=-9.8&ax=3"],
  ["a support that outruns free fall", "?ay=-12"],
  ["both ropes straight up", "?T1=90&T2=90"],
  ["both ropes level", "?T1=180&T2=0"],
  ["equal angles", "?T1=135&T2=45"],
  ["one rope vertical", "?T1=90"],
  ["one rope falling", "?T2=-20"],
  ["nearly flat", "?T1=179.5&T2=0.5"],
  ["a spider's mass", "?mass=0.00002"],
  ["a ship's mass", "?mass=350000&figures=6"],
  ["no gravity", "?g=0"],
] as const;

describe("an address with its own numbers", () => {
  siteTest.for(CASES)("shows what the solver writes: %s", async ([, query], { open }) => {
    const page = await open(LESSON + query, { viewport: { width: 1280, height: 800 } });
    await ready(page);
    await openAll(page);
    await expectSolversPage(page);
    const text = await page.evaluate(() => document.body.innerText);
    expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
    const drawn = await page.locator("svg.picture").evaluateAll((all) => all.map((e) => e.outerHTML).join(""));
    expect(drawn).not.toMatch(/NaN|undefined|Infinity/);
    expect(await page.locator(".part:not([hidden]) .paragraph:visible").count()).toBeGreaterThan(3);
  });
});
