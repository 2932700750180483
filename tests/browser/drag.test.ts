import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, drag, expectAddress, expectSolversLines, openAll, ready, type } from "./lesson-page.ts";

const WIDE = { viewport: { width: 1440, height: 900 } };

describe("dragging", () => {
  siteTest("a rope's end changes its angle and every line of the algebra", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await openAll(page);
    await drag(page, "T2", -120, 0);
    await expectAddress(page, /T2=\d+/);
    await expectSolversLines(page);
    expect(Number(await page.inputValue("#field-T2"))).toBeGreaterThan(40);
    expect(await page.inputValue("#field-T1")).toBe("65");
  });

  siteTest("the lantern changes both angles", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await drag(page, "load", 60, -20);
    await expectAddress(page, /T1=.*T2=/);
    await expectSolversLines(page);
  });

  siteTest("over the vertical is followed, and back again", async ({ open }) => {
    const page = await open(`${LESSON}?T2=80`, WIDE);
    await ready(page);
    await drag(page, "T2", -260, 0);
    await expect.poll(async () => Number(await page.inputValue("#field-T2"))).toBeGreaterThan(90);
    await expectSolversLines(page);
  });

  siteTest("is taken back by Escape", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await drag(page, "T2", -120, 0, true);
    await expect.poll(() => page.inputValue("#field-T2")).not.toBe("40");
    await page.keyboard.press("Escape");
    await expect.poll(() => page.inputValue("#field-T2")).toBe("40");
    await page.mouse.up();
    await expectSolversLines(page);
  });

  siteTest("with Shift gives tenths of a degree", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await page.keyboard.down("Shift");
    await drag(page, "T2", -43, 0);
    await page.keyboard.up("Shift");
    await expectAddress(page, /T2=\d+\.\d/);
  });

  siteTest("is one step to undo, and to do again", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await drag(page, "T2", -120, 0);
    await expectAddress(page, /T2=\d+/);
    const dragged = await page.inputValue("#field-T2");
    await page.click("text=Undo");
    await expect.poll(() => page.inputValue("#field-T2")).toBe("40");
    await page.click("text=Redo");
    await expect.poll(() => page.inputValue("#field-T2")).toBe(dragged);
    await page.click("text=Reset");
    await expect.poll(() => new URL(page.url()).search).toBe("");
    await expectSolversLines(page);
  });
});

describe("the keyboard alone", () => {
  siteTest("does what a drag does, by number and by range", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await page.focus("#field-T1");
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => page.inputValue("#field-T1")).toBe("66");
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => page.inputValue("#field-T1")).toBe("67");
    await expectAddress(page, "T1=113");
    await expectSolversLines(page);
  });

  siteTest("opens an entry of the outline in place", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await page.focus("#part-law > summary");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator('[id="vertical.law"]').isVisible()).toBe(true);
  });
});

describe("typing", () => {
  siteTest("takes a decimal comma", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await type(page, "field-T1", "27,5");
    await expectAddress(page, "T1=152.5");
    await expectSolversLines(page);
  });

  siteTest("says what is wrong and what is accepted, and loses nothing", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await type(page, "field-load", "-3");
    await expect.poll(() => page.textContent("#field-load-note")).toMatch(/accepted: a number from/);
    expect(await page.inputValue("#field-load")).toBe("-3");
    await type(page, "field-load", "heavy");
    await expect.poll(() => page.textContent("#field-load-note")).toMatch(/not a number/);
    await type(page, "field-load", "5");
    await expectAddress(page, "mass=5");
    await expectSolversLines(page);
  });

  siteTest("a latitude sets gravity by the published formula", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await page.click("text=another value");
    await page.fill("#field-latitude", "90");
    await page.press("#field-latitude", "Enter");
    // GRS 80 normal gravity at the pole, 9.8321863685 m/s² (Bulletin Géodésique 62:3, 1988), to five decimals.
    await expectAddress(page, "g=9.83219");
    await expectSolversLines(page);
  });

  siteTest("chooses figures, gravity and the first axis", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await page.click("text=How it is written");
    await page.selectOption("#field-figures", "5");
    await page.selectOption("#field-first", "horizontal");
    await page.selectOption("#field-g", { label: "1.62, on the Moon" });
    await expectAddress(page, /g=1\.62.*figures=5.*first=horizontal/);
    await expectSolversLines(page);
  });
});
