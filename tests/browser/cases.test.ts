import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, derivedFor, expectAddress, expectSolversLines, openAll, ready, type } from "./lesson-page.ts";

const CASES = [
  ["slack in a cart", "?ax=12"],
  ["both ropes on one side", "?T1=160&T2=140"],
  ["free fall", "?ay=-9.8"],
  ["a support that outruns free fall", "?ay=-12"],
  ["both ropes straight up", "?T1=90&T2=90"],
  ["both ropes level", "?T1=180&T2=0"],
  ["equal angles", "?T1=135&T2=45"],
  ["one rope vertical", "?T1=90"],
  ["one rope level", "?T1=180"],
  ["one rope falling", "?T2=-20"],
  ["nearly flat", "?T1=179.5&T2=0.5"],
  ["a spider's mass", "?mass=0.00002"],
  ["a ship's mass", "?mass=350000"],
  ["no gravity", "?g=0"],
] as const;

describe("every case on the page", () => {
  siteTest.for(CASES)("%s shows the solver's lines and words", async ([, query], { open }) => {
    const page = await open(LESSON + query, { viewport: { width: 1280, height: 800 } });
    await ready(page);
    await openAll(page);
    await expectSolversLines(page);
    const headings = await page.locator(".paragraph h3").allTextContents();
    expect(headings).toEqual(derivedFor(query).paragraphs.map((p) => p.heading));
    const text = await page.evaluate(() => document.body.innerText);
    expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });

  siteTest("can be reached by typing alone, there and back", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1280, height: 800 } });
    await ready(page);
    await page.click("text=The support accelerates");
    await type(page, "field-ax", "12");
    await expectAddress(page, "ax=12");
    await expectSolversLines(page);
    await expect.poll(() => page.locator("#part-case").isVisible()).toBe(true);
    await expect.poll(() => page.textContent(".outcome")).toMatch(/Rope 1 is slack; rope 2 pulls with 65\.1/);
    await type(page, "field-ax", "0");
    await expectSolversLines(page);
    await expect.poll(() => page.locator("#part-case").isVisible()).toBe(false);
  });
});
