/**
 * A test in a real browser on the built site: `open` gives a page, and when the test ends, every page opened must have
 * kept quiet (no console message, no error) and have asked no other origin for anything.
 */
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { expect, test } from "vitest";
import { openBrowser } from "./browser.ts";
import { openSite } from "./site.ts";
import { watch } from "./watch-page.ts";

/**
 * Opens a path of the site, such as "/lessons/two-ropes/?m=5", in a browser context of its own and waits until it is
 * loaded. `options` are the context's: viewport, colorScheme, reducedMotion, javaScriptEnabled and so on.
 */
export type Open = (path: string, options?: BrowserContextOptions) => Promise<Page>;

export const siteTest = test
  .extend("site", { scope: "file" }, async ({}, { onCleanup }) => {
    const site = await openSite();
    onCleanup(site.close);
    return site;
  })
  .extend("browser", { scope: "file" }, async ({}, { onCleanup }): Promise<Browser> => {
    const browser = await openBrowser();
    onCleanup(() => browser.close());
    return browser;
  })
  .extend("open", ({ site, browser }, { onCleanup }): Open => {
    const closings: (() => Promise<void>)[] = [];
    const complaints: string[] = [];
    onCleanup(async () => {
      for (const close of closings) await close();
      expect(complaints, "console messages, errors and foreign requests of the pages").toEqual([]);
    });
    return async (path, options = {}) => {
      const context = await browser.newContext(options);
      closings.push(() => context.close());
      const page = await context.newPage();
      watch(page, site.origin, complaints);
      await page.goto(site.origin + path);
      return page;
    };
  });
