import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, expectAddress, expectField, expectSolversPage, ready } from "./lesson-page.ts";

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const e = document.activeElement;
    return e === null || e === document.body ? "" : e.id !== "" ? `#${e.id}` : e.textContent.trim();
  });

/** Presses Tab until the focus is on something, at most so often. Gives what it passed. */
async function tabTo(page: Page, wanted: string, most = 60): Promise<string[]> {
  const passed: string[] = [];
  for (let i = 0; i < most; i++) {
    await page.keyboard.press("Tab");
    const now = await focused(page);
    if (now === wanted) return passed;
    passed.push(now);
  }
  throw new Error(`Tab does not come to ${wanted}; it came to ${passed.join(", ")}`);
}

describe("the keyboard alone", () => {
  siteTest("does what a drag does, by number and by range, and takes it back", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1440, height: 900 } });
    await ready(page);
    await tabTo(page, "#field-T1");
    await page.keyboard.press("ArrowUp");
    await expectField(page, "T1", "66");
    await page.keyboard.press("Tab");
    await page.keyboard.press("ArrowRight");
    await expectField(page, "T1", "67");
    await expectAddress(page, /^\?T1=113$/);
    await tabTo(page, "#field-T2");
    await page.keyboard.press("ControlOrMeta+A");
    await page.keyboard.type("27,5");
    await page.keyboard.press("Enter");
    await expectAddress(page, /^\?T1=113&T2=27.5$/);
    await expectSolversPage(page);
    await tabTo(page, "Undo");
    await page.keyboard.press("Enter");
    await expectField(page, "T2", "40");
    await page.keyboard.press("Enter");
    await expectField(page, "T1", "66");
    await tabTo(page, "Redo");
    await page.keyboard.press("Enter");
    await expectField(page, "T1", "67");
    await tabTo(page, "Reset");
    await page.keyboard.press("Enter");
    await expectAddress(page, /^$/);
    await expectSolversPage(page);
  });

  siteTest("reaches every control, and none of the handles of the picture", async ({ open }) => {
    const page = await open(LESSON, { viewport: { width: 1440, height: 900 } });
    await ready(page);
    const first = await tabTo(page, "Open all");
    expect(first[0]).toBe("To the lesson");
    for (const id of ["T1", "T2", "load", "g"]) expect(first).toContain(`#field-${id}`);
    for (const name of ["Reset", "Copy link", "The support accelerates", "How it is written"])
      expect(first).toContain(name);
    expect(await page.locator("svg [tabindex], svg [role=slider], svg a").count()).toBe(0);
  });

  siteTest("opens an entry of the outline in place, and closes it", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    await page.focus("#part-law > summary");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator('[id="vertical.law"]').isVisible()).toBe(true);
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator('[id="vertical.law"]').isVisible()).toBe(false);
  });
});
