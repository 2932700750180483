import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import {
  PROBLEM,
  documentOn,
  enter,
  expectDerivationOf,
  expectSaid,
  openProblem,
  press,
  showDocument,
} from "./problem-page.ts";

const search = (page: Page): string => new URL(page.url()).search;
const LANTERN =
  "?doc=(format:1,gravity:9.8,bodies:!((id:lantern,mass:3)),ropes:!((id:T1,on:lantern,direction:(angle:90))))";

describe("the address", () => {
  siteTest("opens the same page elsewhere, form, document and derivation", async ({ open }) => {
    const here = await openProblem(open);
    await enter(here, "Rope T2, angle, °", "27.5");
    await enter(here, "Name of body 1", "it's a “sign” & (more)");
    await expect.poll(() => search(here)).toMatch(/27\.5.*/);
    await expect.poll(() => search(here)).toMatch(/more/);
    const document = await documentOn(here);
    const there = await openProblem(open, search(here));
    await expect.poll(() => documentOn(there)).toEqual(document);
    await expectDerivationOf(there, document as object);
    const values = (page: Page): Promise<string[]> =>
      page
        .locator("input:not([type=file]), select:not(#start-from)")
        .evaluateAll((all) => all.map((e) => `${e.id} ${(e as HTMLInputElement).value}`));
    expect(await values(there)).toEqual(await values(here));
    expect(search(there)).toBe(search(here));
  });

  siteTest(
    "brings a reader to the problem: the form is folded, and the answer is not said before it is come to",
    async ({ open }) => {
      const page = await openProblem(open, LANTERN);
      await expect.poll(() => page.textContent(".statement")).toMatch(/3\skg/);
      expect(await page.locator(".problem-form").isVisible()).toBe(false);
      await page.waitForTimeout(800);
      expect(await page.textContent(".outcome")).toBe("");
      await page.click("summary:has-text('The set-up')");
      await enter(page, "lantern, mass, kg", "4");
      await expectSaid(page, /39\.2\sN/);
    },
  );

  siteTest("is written a little after the change, and not for faults", async ({ open }) => {
    const page = await openProblem(open);
    await showDocument(page);
    await enter(page, "Rope T2, angle, °", "45");
    await expect.poll(() => search(page)).toMatch(/^\?doc=\(format:1,.*angle:45/);
    const good = search(page);
    await page.fill("#document", "{}");
    await expectSaid(page, /not accepted/);
    await page.waitForTimeout(600);
    expect(search(page)).toBe(good);
  });

  siteTest("is what the button copies", async ({ open }) => {
    const page = await openProblem(open, LANTERN, { permissions: ["clipboard-read", "clipboard-write"] });
    await expect.poll(() => documentOn(page)).toMatchObject({ bodies: [{ mass: 3 }] });
    await press(page, "Copy link");
    await expectSaid(page, /The link is copied/);
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(page.url());
  });

  siteTest.for([
    ["brackets left open", "?doc=(format:1"],
    ["a start of brackets", "?doc=(((("],
    ["a broken escape", "?doc=%E0%A4%A"],
    ["two documents", "?doc=(a:1)&doc=(a:2)"],
    ["an unknown name", "?colour=red"],
    ["a setting that is not offered", "?figures=9"],
    ["brackets beyond all measure", `?doc=${"!(".repeat(3000)}`],
    ["the name of an object's own part", "?__proto__=1"],
  ] as const)("with %s is named, and the page's own example stands", async ([, query], { open }) => {
    const page = await openProblem(open, query);
    await expect.poll(() => page.locator('.faults[role="alert"] li').count()).toBe(1);
    expect(await page.textContent('.faults[role="alert"] li')).toMatch(/found .+; accepted: .+/);
    await expectDerivationOf(page, (await documentOn(page)) as object);
  });

  siteTest("that holds a document with faults shows it, and says what is wrong", async ({ open }) => {
    const page = await openProblem(open, LANTERN.replace("mass:3", "mass:-3"));
    await expect.poll(() => page.locator("#document-faults li").count()).toBe(1);
    expect(await documentOn(page)).toMatchObject({ bodies: [{ mass: -3 }] });
    await expectSaid(page, /not accepted/);
  });

  siteTest("stays as it is for a document that is too long, and a file is offered instead", async ({ open }) => {
    const page = await openProblem(open);
    await showDocument(page);
    const digits = (n: number): string => `1.${String(n).padStart(2, "0").repeat(19)}`;
    const items = Array.from({ length: 12 }, (_, i) => i + 10);
    const bodies = items.map((i) => ({ id: `load${i}`, name: "茶".repeat(60), mass: digits(i) }));
    const ropes = items.map((i) => ({ id: `T${i}`, on: `load${i}`, direction: { angle: digits(i) } }));
    const document = JSON.stringify({ format: 1, gravity: 9.8, bodies, ropes });
    await page.fill("#document", document);
    await expect
      .poll(() => page.locator(".stage p.note").allTextContents(), { timeout: 15_000 })
      .toEqual([expect.stringMatching(/too long for a link/)]);
    expect(search(page)).toBe("");
  });
});

describe("the last state", () => {
  siteTest("is offered, never applied by itself", async ({ open }) => {
    const page = await openProblem(open);
    await enter(page, "Rope T2, angle, °", "33");
    await expect.poll(() => search(page)).toMatch(/33/);
    const document = await documentOn(page);
    await page.goto(new URL(PROBLEM, page.url()).href);
    await expect.poll(() => page.getByRole("button", { name: "Go on where you stopped" }).count()).toBe(1);
    expect(await documentOn(page)).not.toEqual(document);
    await press(page, "Go on where you stopped");
    await expect.poll(() => documentOn(page)).toEqual(document);
    await press(page, "Undo");
    expect(await documentOn(page)).not.toEqual(document);
  });
});

describe("a link that stops at a line", () => {
  siteTest("hides what comes after, and one key shows the next line", async ({ open }) => {
    const page = await openProblem(open, `${LANTERN}&upto=vertical.law`);
    await expect.poll(() => documentOn(page)).toMatchObject({ bodies: [{ mass: 3 }] });
    await expect.poll(() => page.locator('[id="vertical.law"]').isVisible()).toBe(true);
    const shown = (): Promise<number> => page.locator(".lines > .line:visible").count();
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Next line");
    await expect.poll(shown).toBeLessThan(4);
    const before = await shown();
    await page.keyboard.press("Enter");
    await expect.poll(shown).toBe(before + 1);
    await press(page, "Show all");
    await expect.poll(shown).toBeGreaterThan(before + 3);
    await expect.poll(() => search(page)).not.toContain("upto");
  });
});
