// The lesson's page as tests see it: what stands in each line, and what the solver says should stand there.
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { decodeState } from "../../shared/link/index.ts";
import { readProblem } from "../../shared/problem/schema.ts";
import { defaultSettings, derive } from "../../solver/index.ts";
import type { Derivation, Line } from "../../solver/index.ts";

/** The lesson under test. */
export const LESSON = "/lessons/two-ropes/";
const SOON = { timeout: 15_000 };

/** What the solver derives for a query of the lesson's address. */
export function derivedFor(query: string): Derivation {
  const reading = readProblem(readFileSync(new URL("../../lessons/two-ropes/problem.json", import.meta.url), "utf8"));
  if (!reading.ok) throw new Error("the lesson's problem has faults");
  const start = { problem: reading.problem, settings: { figures: 3, firstAxis: "vertical" }, upTo: null } as const;
  const { state } = decodeState(query, start);
  return derive(state.problem, { ...defaultSettings, ...state.settings });
}

/** A line as it stands on the page: what is seen and what is read aloud, slot by slot, and the number in the margin. */
interface Shown {
  readonly id: string;
  readonly number: string;
  readonly seen: readonly string[];
  readonly read: readonly string[];
}

/** All numbered lines of the page, in order. */
export const shownLines = (page: Page): Promise<Shown[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll(".paragraph > .lines > .line")].map((line) => {
      const formula = line.querySelector(":scope > .shown");
      const slots = (tag: string): string[] => {
        const texts: string[] = [];
        for (const e of formula?.querySelectorAll(`${tag}[data-n]`) ?? [])
          texts[Number(e.getAttribute("data-n"))] = e.textContent;
        return texts;
      };
      return {
        id: line.id,
        number: line.querySelector(":scope > .number")?.textContent ?? "",
        seen: slots("span"),
        read: slots("mn"),
      };
    }),
  );

const expectedLine = (line: Line): Shown => ({
  id: line.id,
  number: String(line.number),
  seen: line.tex.slots,
  read: line.tex.slots,
});

/** Waits until every line of the page shows what the solver derives for the page's own address. */
export async function expectSolversLines(page: Page): Promise<void> {
  await expect
    .poll(async () => {
      const wanted = derivedFor(new URL(page.url()).search).paragraphs.flatMap((p) => p.lines.map(expectedLine));
      return JSON.stringify(await shownLines(page)) === JSON.stringify(wanted)
        ? "same"
        : differenceOf(await shownLines(page), wanted);
    }, SOON)
    .toBe("same");
}

function differenceOf(shown: readonly Shown[], wanted: readonly Shown[]): string {
  const at = wanted.findIndex((line, i) => JSON.stringify(line) !== JSON.stringify(shown[i]));
  return `line ${at}: shown ${JSON.stringify(shown[at])}, wanted ${JSON.stringify(wanted[at])}, ${shown.length} and ${wanted.length} lines`;
}

/** Waits until the address holds a text. */
export const expectAddress = (page: Page, text: string | RegExp): Promise<void> =>
  expect.poll(() => new URL(page.url()).search, SOON).toMatch(text);

/** Opens every part of the outline. */
export const openAll = (page: Page): Promise<void> => page.click("[data-open-all]");

/** Types into a field and leaves it. */
export async function type(page: Page, field: string, text: string): Promise<void> {
  await page.fill(`#${field}`, text);
  await page.press(`#${field}`, "Tab");
}

/** Drags a handle by so many pixels, in steps; the pointer stays down if `hold`. */
export async function drag(page: Page, handle: string, dx: number, dy: number, hold = false): Promise<void> {
  const box = await page.locator(`[data-handle="${handle}"]`).boundingBox();
  if (box === null) throw new Error(`no handle ${handle}`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= 8; i++) await page.mouse.move(x + (dx * i) / 8, y + (dy * i) / 8);
  if (!hold) await page.mouse.up();
}

/** Waits until the page has hydrated: its cells answer. */
export const ready = (page: Page): Promise<void> =>
  expect.poll(() => page.evaluate(() => document.querySelectorAll("astro-island[ssr]").length), SOON).toBe(0);
