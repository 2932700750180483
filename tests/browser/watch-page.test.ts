import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { watch } from "../support/watch-page.ts";

describe("the watch kept on a page", () => {
  siteTest("notices a console message, an error and a missing file", async ({ site, browser }) => {
    const complaints: string[] = [];
    const page = await browser.newPage();
    watch(page, site.origin, complaints);
    await page.goto(`${site.origin}/no-such-page/`);
    await page.evaluate(() => {
      console.warn("a seeded warning");
      setTimeout(() => {
        throw new Error("a seeded error");
      });
    });
    await expect.poll(() => complaints.join("\n")).toContain("uncaught: a seeded error");
    await page.close();
    expect(complaints.join("\n")).toContain("console warning: a seeded warning");
    expect(complaints.join("\n")).toContain("answer 404");
  });

  siteTest("notices a request to another origin", async ({ site, browser }) => {
    const complaints: string[] = [];
    const page = await browser.newPage();
    watch(page, "http://localhost:1", complaints);
    await page.goto(`${site.origin}/`);
    await page.close();
    expect(complaints.join("\n")).toContain(`foreign request: ${site.origin}/`);
  });
});
