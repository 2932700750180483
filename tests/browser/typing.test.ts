import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, expectAddress, expectField, expectSolversPage, openAll, ready, type, unfold } from "./lesson-page.ts";
import { derivedFor } from "./written.ts";

describe("typing", () => {
  siteTest("takes a decimal comma", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    await type(page, "T1", "27,5");
    await expectAddress(page, /^\?T1=152\.5$/);
    await expectSolversPage(page);
  });

  siteTest("says what is wrong and what is accepted, and loses nothing", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    const note = () => page.textContent("#field-load-note");
    await type(page, "T2", "50");
    await type(page, "load", "-3");
    await expect.poll(note).toMatch(/accepted: a number from/);
    await type(page, "T2", "51");
    await expectAddress(page, /^\?T2=51$/);
    expect(await note()).toMatch(/accepted: a number from/);
    await expectField(page, "load", "-3");
    expect(await page.getAttribute("#field-load", "aria-invalid")).toBe("true");
    await expectAddress(page, /^\?T2=51$/);
    await expectSolversPage(page);
    await type(page, "load", "heavy");
    await expect.poll(note).toMatch(/“heavy” is not a number/);
    await type(page, "load", "");
    await expect.poll(note).toMatch(/type a number/);
    await type(page, "load", "5");
    await expect.poll(() => page.getAttribute("#field-load", "aria-invalid")).toBe("false");
    await expectAddress(page, /^\?mass=5&T2=51$/);
    await expectSolversPage(page);
  });

  siteTest("that was refused gives way when the value is set by another hand", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    await type(page, "T1", "steep");
    await expect.poll(() => page.textContent("#field-T1-note")).toMatch(/not a number/);
    await page.focus('[aria-label^="Rope 1"][type="range"]');
    await page.keyboard.press("ArrowRight");
    await expectField(page, "T1", "66");
    await type(page, "T1", "steeper");
    await expect.poll(() => page.textContent("#field-T1-note")).toMatch(/not a number/);
    await page.click("text=Reset");
    await expectField(page, "T1", "65");
    expect(await page.getAttribute("#field-T1", "aria-invalid")).toBe("false");
  });

  siteTest("a latitude sets gravity by the published formula", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    await page.click("text=another value");
    await page.fill("#field-latitude", "90");
    await page.press("#field-latitude", "Enter");
    // GRS 80 normal gravity at the pole, 9.8321863685 m/s² (Bulletin Géodésique 62:3, 1988), to five decimals.
    await expectAddress(page, "g=9.83219");
    await expectSolversPage(page);
    await page.fill("#field-latitude", "91");
    await page.press("#field-latitude", "Enter");
    await expect.poll(() => page.locator("#field-latitude >> xpath=../..").textContent()).toMatch(/90/);
    await expectAddress(page, "g=9.83219");
  });

  siteTest("chooses figures, gravity and the first axis", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    await unfold(page);
    await page.selectOption("#field-figures", "5");
    await page.selectOption("#field-first", "horizontal");
    await page.selectOption("#field-g", { label: "1.62, on the Moon" });
    await expectAddress(page, /g=1\.62.*figures=5.*first=horizontal/);
    await expectSolversPage(page);
    await page.selectOption("#field-upto", "vertical.law");
    await expectAddress(page, /upto=vertical\.law/);
    await expect.poll(() => page.locator('[id="vertical.given"]').isVisible()).toBe(false);
  });
});

/** What is typed, field by field; the address it leads to; what the page then says; the case it is. */
const TYPED = [
  { values: { ax: "12" }, query: "?ax=12", says: /Rope 1 is slack; rope 2 pulls with 65\.1/, kind: "slack" },
  { values: { ax: "0", ay: "-9.8" }, query: "?ay=-9.8", says: /slack/, kind: "slack" },
  { values: { ay: "-12" }, query: "?ay=-12", says: /cannot pull the lantern down/, kind: "impossible" },
  {
    values: { ay: "0", T1: "90", T2: "90" },
    query: "?T1=90&T2=90",
    says: /not determined one by one/,
    kind: "under-determined",
  },
  { values: { T1: "0", T2: "0" }, query: "?T1=180&T2=0", says: /Not possible/, kind: "impossible" },
  { values: { T1: "-20", T2: "60" }, query: "?T1=-160&T2=60", says: /Rope 1 pulls with/, kind: "taut" },
] as const;

describe("every case", () => {
  siteTest("is reached by typing alone, one after the other and back to the start", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1280, height: 900 } });
    await ready(page);
    await openAll(page);
    await unfold(page);
    for (const { values, query, says, kind } of TYPED) {
      for (const [field, text] of Object.entries(values)) await type(page, field, text);
      await expect.poll(() => new URL(page.url()).search).toBe(query);
      await expectSolversPage(page);
      expect(derivedFor(query).kind, query).toBe(kind);
      await expect.poll(() => page.textContent(".outcome"), { message: query }).toMatch(says);
      const shown = await page.evaluate(
        () => document.body.innerText + (document.querySelector(".stage")?.outerHTML ?? ""),
      );
      expect(shown).not.toMatch(/NaN|\bundefined\b|Infinity|\[object/);
    }
    await page.click("text=Reset");
    await expectAddress(page, /^$/);
    await expectSolversPage(page);
  });
});
