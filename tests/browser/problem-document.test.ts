import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { documentOn, expectDerivationOf, expectSaid, openProblem, press, showDocument } from "./problem-page.ts";

const BELL = {
  format: 1,
  gravity: 9.81,
  bodies: [{ id: "bell", name: "ship's bell", weight: 61 }],
  ropes: [
    { id: "left", on: "bell", direction: { angle: 30, from: "vertical", side: "left" } },
    { id: "right", on: "bell", direction: { run: 3, rise: 4 } },
  ],
};
const TEXT = JSON.stringify(BELL);

/** Lets go of a file over the page, as a hand does. */
const drop = (page: Page, text: string, over = "#document"): Promise<void> =>
  page.locator(over).evaluate((element, content) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([content], "bell.json", { type: "application/json" }));
    for (const type of ["dragenter", "dragover", "drop"])
      element.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
  }, text);

describe("the document", () => {
  siteTest("that is pasted fills the form and the page", async ({ open }) => {
    const page = await openProblem(open);
    await showDocument(page);
    await page.fill("#document", TEXT);
    await expectDerivationOf(page, BELL);
    expect(await page.inputValue("#document")).toBe(TEXT);
    expect(await page.getByLabel("Name of body 1").inputValue()).toBe("ship's bell");
    expect(await page.getByLabel("ship's bell, weight, N").inputValue()).toBe("61");
    expect(await page.getByLabel("Rope left, angle, °", { exact: true }).inputValue()).toBe("30");
    expect(await page.getByLabel("Rope left, angle measured from").inputValue()).toBe("vertical");
    expect(await page.getByLabel("Rope right, rise", { exact: true }).inputValue()).toBe("4");
  });

  siteTest("that is dropped anywhere on the page is opened", async ({ open }) => {
    const page = await openProblem(open);
    await drop(page, TEXT, ".stage");
    await expectSaid(page, /bell\.json opened/);
    await expectDerivationOf(page, BELL);
    expect(await documentOn(page)).toEqual(BELL);
  });

  siteTest("comes from a file and goes into one", async ({ open }) => {
    const page = await openProblem(open);
    await showDocument(page);
    const folder = mkdtempSync(join(tmpdir(), "problem-"));
    writeFileSync(join(folder, "bell.json"), TEXT);
    await page.setInputFiles('input[type="file"]', join(folder, "bell.json"));
    await expectDerivationOf(page, BELL);
    const saving = page.waitForEvent("download");
    await press(page, "Save as a file");
    const saved = await saving;
    expect(saved.suggestedFilename()).toBe("problem.json");
    expect(JSON.parse(readFileSync(await saved.path(), "utf8"))).toEqual(BELL);
  });

  siteTest("with faults stays as typed, is told what is wrong, and leaves the last derivation", async ({ open }) => {
    const page = await openProblem(open);
    await showDocument(page);
    await page.fill("#document", TEXT);
    await expectDerivationOf(page, BELL);
    const faulty = TEXT.replace("61", '"heavy"').replace('"left"}', '"top"}').replace('"gravity":9.81,', "");
    await page.fill("#document", faulty);
    const faults = page.locator("#document-faults li");
    await expect.poll(() => faults.count()).toBe(3);
    const texts = (await faults.allTextContents()).join("\n");
    for (const path of ["/gravity", "/bodies/0/weight", "/ropes/0/direction/side"])
      expect(texts).toMatch(new RegExp(`${path}: found .+; accepted: .+`));
    expect(texts).toMatch(/rope left, direction, side/);
    expect(await page.inputValue("#document")).toBe(faulty);
    expect(await page.getAttribute("#document", "aria-invalid")).toBe("true");
    await expectSaid(page, /3 things are not accepted; the last derivation is still shown/);
    expect(await page.locator(".stale-note").isVisible()).toBe(true);
    await expectDerivationOf(page, BELL);
    // A press on a fault goes to its field.
    await page.locator("#document-faults button", { hasText: "weight" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("at-bodies-0-weight");
    await page.fill("#document", TEXT.replace("61", "62"));
    await expect.poll(() => faults.count()).toBe(0);
    expect(await page.locator(".stale-note").count()).toBe(0);
  });

  siteTest(
    "that is no JSON leaves the form as it was, and a change there takes its place until undone",
    async ({ open }) => {
      const page = await openProblem(open);
      await showDocument(page);
      const before = await documentOn(page);
      await page.fill("#document", '{ "format": 1, ');
      await page.press("#document", "Tab");
      await expectSaid(page, /cannot be read/);
      expect(await page.locator("#document-faults li").textContent()).toMatch(/not JSON/);
      await page.getByLabel(/, mass, kg$/).fill("5");
      await page.getByLabel(/, mass, kg$/).press("Tab");
      expect(await documentOn(page)).toEqual({
        ...(before as object),
        bodies: [{ id: "board", name: "noodle shop sign", mass: 5 }],
      });
      await press(page, "Undo");
      expect(await page.inputValue("#document")).toBe('{ "format": 1, ');
    },
  );

  siteTest("loses no digit of a number to the form", async ({ open }) => {
    const page = await openProblem(open);
    await showDocument(page);
    await page.fill("#document", TEXT.replace("9.81", '"9.80665000000000000001"').replace("61", "60.250"));
    await press(page, "Add a rope");
    const text = await page.inputValue("#document");
    expect(text).toContain('"gravity": "9.80665000000000000001"');
    expect(text).toContain('"weight": 60.25');
  });
});

describe("an example", () => {
  siteTest("is chosen by its title and can be taken back", async ({ open }) => {
    const page = await openProblem(open);
    const before = await page.inputValue("#document");
    await page.getByLabel("Start from an example").selectOption({ label: "Lantern on two ropes" });
    expect(await page.textContent(".start-from .note")).toMatch(/\w+/);
    expect(await page.inputValue("#document")).toBe(before);
    await press(page, "Open it");
    await expectSaid(page, /“Lantern on two ropes” opened/);
    const example = JSON.parse(readFileSync("shared/problem/examples/lantern-on-two-ropes.json", "utf8")) as object;
    expect(await documentOn(page)).toEqual(example);
    await expectDerivationOf(page, example);
    await press(page, "Undo");
    expect(await page.inputValue("#document")).toBe(before);
  });
});
