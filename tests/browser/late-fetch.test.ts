// A page whose solver could not be fetched says so, and works at the next touch once the connection is back.
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON } from "./lesson-page.ts";

describe("a late fetch that fails", () => {
  siteTest("is told, and tried again at the next touch", async ({ site, browser }) => {
    const context = await browser.newContext();
    const page = await context.newPage();
    let isDown = true;
    await page.route(/\/awake\.[^/]*\.js$/, (route) => (isDown ? route.abort() : route.continue()));
    await page.goto(site.origin + LESSON);
    await page.locator("#field-load").focus();
    const notice = page.getByText("could not be fetched");
    await notice.waitFor();
    isDown = false;
    await page.locator("#field-load").fill("8.4");
    await page.locator("#field-load").press("Enter");
    await expect.poll(() => page.url()).toContain("mass=8.4");
    expect(await notice.count()).toBe(0);
    await context.close();
  });
});
