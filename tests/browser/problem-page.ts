// The page of any problem as tests see it: worked with, and compared with what the solver writes for a document.
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { readProblem } from "../../shared/problem/schema.ts";
import { defaultSettings, derive } from "../../solver/index.ts";
import type { Settings } from "../../solver/index.ts";
import { expectParagraphs, ready } from "./lesson-page.ts";
import { writtenOf } from "./written.ts";

/** The page under test. */
export const PROBLEM = "/problem/";
const SOON = { timeout: 15_000 };

/** Waits until the page shows, node for node, the derivation of a document. */
export async function expectDerivationOf(
  page: Page,
  document: object,
  settings: Partial<Settings> = {},
): Promise<void> {
  const reading = readProblem(JSON.stringify(document));
  if (!reading.ok) throw new Error(`the test's document has faults: ${JSON.stringify(reading.faults)}`);
  const written = writtenOf(derive(reading.problem, { ...defaultSettings, ...settings }));
  await expectParagraphs(page, () => written);
}

/** What the text area holds, as data. */
export const documentOn = async (page: Page): Promise<unknown> => JSON.parse(await page.inputValue("#document"));

/** Opens the page and waits until its cells answer. */
export async function openProblem(
  open: (path: string, options?: object) => Promise<Page>,
  query = "",
  options: object = {},
): Promise<Page> {
  const page = await open(PROBLEM + query, options);
  await ready(page);
  return page;
}

/** Shows the document's text area. */
export const showDocument = (page: Page): Promise<void> =>
  page.locator("details.document").evaluate((e) => e.setAttribute("open", ""));

/** Waits until the line that is read aloud says a thing. */
export const expectSaid = (page: Page, words: RegExp): Promise<void> =>
  expect.poll(() => page.textContent(".outcome"), SOON).toMatch(words);

/** Types into a field that has a label, and leaves it. */
export async function enter(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(text);
  await field.press("Tab");
}

/** Chooses by what a reader sees. */
export async function choose(page: Page, label: string, words: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).selectOption({ label: words });
}

/** Presses a button by its name. */
export const press = (page: Page, name: string): Promise<void> =>
  page.getByRole("button", { name, exact: true }).click();
