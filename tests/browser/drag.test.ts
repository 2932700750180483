import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, drag, expectAddress, expectField, expectSolversPage, openAll, ready } from "./lesson-page.ts";

const WIDE = { viewport: { width: 1440, height: 900 } };
const degrees = async (page: Page, rope: string): Promise<number> => Number(await page.inputValue(`#field-${rope}`));

describe("dragging", () => {
  siteTest("a rope's end changes its angle and every line of the algebra", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await openAll(page);
    await drag(page, "T2", -120, 0);
    await expectAddress(page, /^\?T2=\d+$/);
    await expectSolversPage(page);
    expect(await degrees(page, "T2")).toBeGreaterThan(40);
    await expectField(page, "T1", "65");
  });

  siteTest("the lantern changes both angles", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await drag(page, "load", 60, -20);
    await expectAddress(page, /^\?T1=\d+&T2=\d+$/);
    await expectSolversPage(page);
    expect(await degrees(page, "T1")).toBeLessThan(65);
    expect(await degrees(page, "T2")).toBeGreaterThan(40);
  });

  siteTest("over the vertical is followed, and back again", async ({ open }) => {
    const page = await open(`${LESSON}?T2=80`, WIDE);
    await ready(page);
    await drag(page, "T2", -260, 0);
    await expect.poll(() => degrees(page, "T2")).toBeGreaterThan(90);
    await expectSolversPage(page);
    await drag(page, "T2", 260, 0);
    await expect.poll(() => degrees(page, "T2")).toBeLessThan(90);
    await expectSolversPage(page);
  });

  siteTest("while the pointer is held, the page already shows where it is", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await openAll(page);
    await drag(page, "T1", 90, 0, true);
    await expectAddress(page, /T1=/);
    await expectSolversPage(page);
    await page.mouse.up();
  });

  siteTest("is taken back by Escape, and leaves nothing to undo", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await drag(page, "T2", -120, 0, true);
    await expect.poll(() => page.inputValue("#field-T2")).not.toBe("40");
    await page.keyboard.press("Escape");
    await expectField(page, "T2", "40");
    await page.mouse.move(300, 300);
    await page.mouse.up();
    await expectField(page, "T2", "40");
    await expectSolversPage(page);
    expect(await page.isDisabled("text=Undo")).toBe(true);
  });

  siteTest("with a finger does the same, and does not scroll the page", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 360, height: 800 }, hasTouch: true, isMobile: true });
    await ready(page);
    const handle = page.locator('[data-handle="T2"]');
    await handle.scrollIntoViewIfNeeded();
    const box = await handle.boundingBox();
    if (box === null) throw new Error("no handle");
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const scrolled = await page.evaluate(() => scrollY);
    const fingers = await page.context().newCDPSession(page);
    const touch = (kind: "touchStart" | "touchMove" | "touchEnd", points: { x: number; y: number }[]) =>
      fingers.send("Input.dispatchTouchEvent", { type: kind, touchPoints: points });
    await touch("touchStart", [{ x, y }]);
    for (let i = 1; i <= 8; i++) await touch("touchMove", [{ x: x - 5 * i, y: y - 3 * i }]);
    await touch("touchEnd", []);
    await expectAddress(page, /^\?T2=\d+$/);
    await expectSolversPage(page);
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
  });

  siteTest("with Shift gives tenths of a degree", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await page.keyboard.down("Shift");
    await drag(page, "T2", -43, 0);
    await page.keyboard.up("Shift");
    await expectAddress(page, /T2=\d+\.\d$/);
    await expectSolversPage(page);
  });

  siteTest("is one step to undo, and to do again; a reset can be undone too", async ({ open }) => {
    const page = await open(LESSON, WIDE);
    await ready(page);
    await drag(page, "T2", -120, 0);
    await expectAddress(page, /T2=\d+/);
    const dragged = await page.inputValue("#field-T2");
    await page.click("text=Undo");
    await expectField(page, "T2", "40");
    await page.click("text=Redo");
    await expectField(page, "T2", dragged);
    await page.click("text=Reset");
    await expectAddress(page, /^$/);
    await expectSolversPage(page);
    await page.click("text=Undo");
    await expectField(page, "T2", dragged);
    await expectAddress(page, /T2=\d+/);
    await expectSolversPage(page);
  });
});
