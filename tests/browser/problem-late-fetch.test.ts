import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { ready } from "./lesson-page.ts";
import { documentOn, enter, expectDerivationOf, PROBLEM } from "./problem-page.ts";

describe("the solver that comes late", () => {
  siteTest("finds everything that was entered while it was on its way", async ({ open }) => {
    const page = await open("/");
    let release: () => void = () => undefined;
    const held = new Promise<void>((done) => (release = done));
    await page.route(/\/(?:works|katex)\.[^/]*js$/, async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(new URL(PROBLEM, page.url()).href);
    await ready(page);
    await enter(page, "Rope T2, angle, °", "33");
    await enter(page, "noodle shop sign, mass, kg", "12");
    await page.getByRole("button", { name: "Undo" }).click();
    await enter(page, "noodle shop sign, mass, kg", "14");
    const document = await documentOn(page);
    expect(document).toMatchObject({ bodies: [{ mass: 14 }], ropes: [{}, { direction: { angle: 33 } }] });
    expect(new URL(page.url()).search).toBe("");
    release();
    await expectDerivationOf(page, document as object);
    await expect.poll(() => new URL(page.url()).search).toMatch(/mass:14/);
  });
});
