import { readFileSync } from "node:fs";
import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";
import { layOutAll, openAll } from "./lesson-page.ts";
import { documentOn, expectDerivationOf, expectSaid, openProblem, press } from "./problem-page.ts";

const folder = new URL("../../shared/problem/examples/", import.meta.url);
const index = JSON.parse(readFileSync(new URL("index.json", folder), "utf8")) as { id: string; title: string }[];
const documentOf = (id: string): object => JSON.parse(readFileSync(new URL(`${id}.json`, folder), "utf8")) as object;

describe("every example", () => {
  siteTest(
    "opens in the form and is derived as the solver derives it, one after another on one page",
    async ({ open }) => {
      const page = await openProblem(open);
      await openAll(page);
      await layOutAll(page);
      for (const { id, title } of index) {
        await page.getByLabel("Start from an example").selectOption({ label: title });
        await press(page, "Open it");
        await expect.poll(() => documentOn(page), { message: id }).toEqual(documentOf(id));
        await expectDerivationOf(page, documentOf(id));
        await expectSaid(page, new RegExp(`“${title.replaceAll(/[()?]/g, "\\$&")}” opened`));
        expect(await page.locator(".stale-note, #document-faults").count(), id).toBe(0);
        expect(await page.evaluate(() => document.body.innerText), id).not.toMatch(/NaN|undefined|Infinity|\[object/);
      }
      expect(index.length).toBeGreaterThan(30);
    },
    300_000,
  );
});
