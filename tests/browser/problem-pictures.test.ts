import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { encodeDocumentState } from "../../shared/link/document-link.ts";
import { siteTest } from "../support/site-test.ts";
import { layOutAll, openAll } from "./lesson-page.ts";
import { enter, expectSaid, openProblem, press } from "./problem-page.ts";

const settings = { figures: 3, firstAxis: "vertical", axes: "along", mark: "point" } as const;
const linkTo = (example: string): string => {
  const file = new URL(`../../shared/problem/examples/${example}.json`, import.meta.url);
  const document = JSON.parse(readFileSync(file, "utf8")) as object;
  const none = { document: {}, settings, upTo: null };
  return `?${encodeDocumentState({ ...none, document }, none) ?? ""}`;
};
const colourOf = (page: Page, selector: string): Promise<string> =>
  page
    .locator(selector)
    .first()
    .evaluate((e) => {
      const { color, stroke } = getComputedStyle(e);
      return e instanceof SVGElement ? stroke : color;
    });

describe("the pictures of a set-up", () => {
  siteTest("are the situation, and for each body its forces before and after and head to tail", async ({ open }) => {
    const page = await openProblem(open, linkTo("slope-and-hanging-bucket"), {
      viewport: { width: 1440, height: 900 },
    });
    await openAll(page);
    await expect.poll(() => page.locator(".stage svg").count()).toBe(1);
    expect(await page.locator(".stage svg text").allTextContents()).toEqual(
      expect.arrayContaining([expect.stringContaining("30"), "T"]),
    );
    for (const part of ["diagram", "answer", "check"])
      await expect.poll(() => page.locator(`#part-${part} svg.picture:visible`).count(), { message: part }).toBe(2);
    const sizes = await page.locator("#part-answer svg text").allTextContents();
    expect(sizes.join("")).toMatch(/71\.0.N/);
    // A picture is followed by what is typed.
    await page.click("summary:has-text('The set-up')");
    await enter(page, "water bucket, mass, kg", "16");
    await expectSaid(page, /accelerates/);
    await page.locator("#part-answer .drawn").scrollIntoViewIfNeeded();
    await expect
      .poll(async () => (await page.locator("#part-answer svg text").allTextContents()).join(""))
      .not.toMatch(/71\.0.N/);
  });

  siteTest("and the letters of the lines have one colour a force", async ({ open }) => {
    const page = await openProblem(open, linkTo("knot-with-three-ropes"), { viewport: { width: 1440, height: 900 } });
    await openAll(page);
    await layOutAll(page);
    await expect.poll(() => page.locator('#part-answer .katex-html [data-ref="T3"]').count()).toBeGreaterThan(0);
    const letters = await Promise.all(
      ["T1", "T2", "T3"].map((id) => colourOf(page, `#part-answer .katex-html [data-ref="${id}"]`)),
    );
    expect(new Set(letters).size).toBe(3);
    const labels = await Promise.all(
      ["T1", "T2", "T3"].map((id) =>
        page
          .locator(`#part-diagram svg .label[data-ref="${id}"] text`)
          .first()
          .evaluate((e) => getComputedStyle(e).fill),
      ),
    );
    expect(labels).toEqual(letters);
  });

  siteTest("give way to words where nothing is set up, and fade where the document has faults", async ({ open }) => {
    const page = await openProblem(open);
    await press(page, "Start empty");
    await expect.poll(() => page.textContent(".stage .no-picture")).toMatch(/Nothing to draw yet/);
    await press(page, "Undo");
    await expect.poll(() => page.locator(".stage svg").count()).toBe(1);
    await page.getByLabel(/, mass, kg$/).fill("-1");
    await expect.poll(() => page.locator(".stage .is-stale svg").count()).toBe(1);
  });
});
