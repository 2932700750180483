import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { LESSON, drag, expectAddress, expectField, expectSolversPage, ready } from "./lesson-page.ts";

/** All text of the lesson, line by line, but for what was only said about a change. */
const linesOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    for (const e of document.querySelectorAll("details")) e.open = true;
    const said = document.querySelector(".outcome")?.textContent ?? "";
    return document.body.innerText.split("\n").filter((line) => line !== "" && line !== said);
  });

const valuesOf = (page: Page): Promise<string[]> =>
  page.locator("input, select").evaluateAll((all) => all.map((e) => `${e.id} ${(e as HTMLInputElement).value}`));

describe("the address", () => {
  siteTest("opens the same page elsewhere, line by line", async ({ open }) => {
    const here = await open(LESSON);
    await ready(here);
    await drag(here, "T2", -60, 0);
    await here.fill("#field-load", "7,30");
    await here.press("#field-load", "Tab");
    await expectAddress(here, /mass=7\.3&T2=\d+/);
    await expectSolversPage(here);
    const there = await open(LESSON + new URL(here.url()).search);
    await ready(there);
    await expectSolversPage(there);
    expect(await linesOf(there)).toEqual(await linesOf(here));
    expect(await valuesOf(there)).toEqual(await valuesOf(here));
  });

  siteTest("is what the button copies", async ({ open }) => {
    const page = await open(`${LESSON}?mass=5`, { permissions: ["clipboard-read", "clipboard-write"] });
    await ready(page);
    await page.click("text=Copy link");
    await expect.poll(() => page.textContent(".copied")).toBe("Copied.");
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(page.url());
  });

  siteTest("with other numbers shows them in every line, for the eye and for reading aloud", async ({ open }) => {
    const page = await open(`${LESSON}?mass=7.3&g=9.81&T1=128&T2=33&ax=1.5&ay=-2&figures=4&first=horizontal`);
    await ready(page);
    await expectSolversPage(page);
    const wanted = { load: "7.3", T1: "52", T2: "33", ax: "1.5", ay: "-2", figures: "4", first: "horizontal" };
    for (const [field, value] of Object.entries(wanted)) await expectField(page, field, value);
  });

  siteTest("that is malformed is named parameter by parameter, and the rest is shown", async ({ open }) => {
    const page = await open(`${LESSON}?mass=abc&g=-3&T2=50&colour=red&figures=9&ax=1&ax=2`);
    await ready(page);
    const items = page.locator(".faults li");
    await expect.poll(() => items.count()).toBe(5);
    const texts = await items.allTextContents();
    for (const name of ["mass", "g", "colour", "figures", "ax"])
      expect(texts.filter((text) => text.trim().startsWith(`${name}:`) && /accepted: \S/.test(text))).toHaveLength(1);
    await expectSolversPage(page);
    await expectField(page, "T2", "50");
    await expectField(page, "load", "4.2");
  });

  siteTest.for(["?T1=%E0%A4%A&T2=50", `?T2=50&${"x".repeat(3000)}`, "?T2=50&__proto__=1", "?T2=50#%E0%A4%A"])(
    "no text in it breaks the page: %s",
    async (query, { open }) => {
      const page = await open(LESSON + query);
      await ready(page);
      await expectSolversPage(page);
      await page.click("[data-open-all]");
      expect(await page.locator('[id="vertical.law"]').isVisible()).toBe(true);
    },
  );

  siteTest("wins over the stored state, which one quiet button offers", async ({ open }) => {
    const page = await open(LESSON);
    await ready(page);
    await drag(page, "T2", -60, 0);
    await expectAddress(page, /T2=\d+/);
    const stored = new URL(page.url()).search;
    await page.goto(new URL(`${LESSON}?T2=33`, page.url()).href);
    await ready(page);
    await expectSolversPage(page);
    await expectField(page, "T2", "33");
    expect(await page.locator("text=Go on where you stopped").count()).toBe(1);
    await page.click("text=Go on where you stopped");
    await expectAddress(page, stored.slice(1));
    await expectSolversPage(page);
    expect(await page.locator("text=Go on where you stopped").count()).toBe(0);
  });

  siteTest("works where the browser stores nothing", async ({ open }) => {
    const page = await open(LESSON);
    await page.addInitScript(() => {
      Object.defineProperty(window, "localStorage", {
        get() {
          throw new DOMException("no", "SecurityError");
        },
      });
    });
    await page.reload();
    await ready(page);
    await drag(page, "T2", -60, 0);
    await expectAddress(page, /T2=\d+/);
    await expectSolversPage(page);
  });
});
