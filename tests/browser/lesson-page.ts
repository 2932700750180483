// The lesson's page as tests see it: opened, worked with, and compared with what the solver writes for its address.
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { writtenFor } from "./written.ts";
import type { Written } from "./written.ts";

/** The lesson under test. */
export const LESSON = "/lessons/two-ropes/";
const SOON = { timeout: 15_000 };

/** How the paragraphs of the page differ from those wanted; what merely marks or hides an element does not count. */
const differences = (page: Page, wanted: readonly Written[]): Promise<string[]> =>
  page.evaluate((list) => {
    const plain = (source: Element): string => {
      const copy = source.cloneNode(true) as Element;
      for (const e of [copy, ...copy.querySelectorAll("*")]) {
        e.removeAttribute("hidden");
        e.removeAttribute("style");
        e.classList.remove("lit", "is-source", "is-target");
        if (e.getAttribute("class") === "") e.removeAttribute("class");
        if (e instanceof HTMLDetailsElement) e.open = false;
      }
      return copy.outerHTML;
    };
    const shown = [...document.querySelectorAll(".paragraph")];
    const ids = shown.map((e) => e.getAttribute("data-paragraph") ?? "");
    const wantedIds = list.map((w) => w.id);
    if (ids.join() !== wantedIds.join()) return [`the paragraphs are ${ids.join()}, not ${wantedIds.join()}`];
    const box = document.createElement("template");
    return list.flatMap(({ id, markup }, i) => {
      box.innerHTML = markup;
      const [is, should] = [shown[i], box.content.firstElementChild].map((e) => (e ? plain(e) : ""));
      if (is === undefined || should === undefined || is === should) return [];
      let at = 0;
      while (is[at] === should[at]) at++;
      return [`${id}: …${is.slice(Math.max(0, at - 80), at + 80)}…, not …${should.slice(at, at + 80)}…`];
    });
  }, wanted);

/** Waits until the page's paragraphs are, node for node, those wanted at present. */
export const expectParagraphs = (page: Page, wanted: () => readonly Written[]): Promise<void> =>
  expect.poll(() => differences(page, wanted()), SOON).toEqual([]);

/**
 * Waits until every paragraph of the page is, node for node, what the solver and the build's typesetting write for the
 * page's own address: words, line numbers, maths for the eye and maths for reading aloud.
 */
export const expectSolversPage = (page: Page): Promise<void> =>
  expectParagraphs(page, () => writtenFor(new URL(page.url()).search));

/** Waits until the address holds a text. */
export const expectAddress = (page: Page, text: string | RegExp): Promise<void> =>
  expect.poll(() => new URL(page.url()).search, SOON).toMatch(text);

/** Waits until a field shows a value. */
export const expectField = (page: Page, field: string, value: string): Promise<void> =>
  expect.poll(() => page.inputValue(`#field-${field}`), SOON).toBe(value);

/** Opens every part of the outline. */
export const openAll = (page: Page): Promise<void> => page.click("[data-open-all]");

/** Lays out what the browser skips while it is out of view: skipped content has no boxes of its own. */
export const layOutAll = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const e of document.querySelectorAll<HTMLElement>(".paragraph, .drawn, .shown"))
      e.style.contentVisibility = "visible";
  });

/** Opens the settings that are folded away beside the picture. */
export const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const e of document.querySelectorAll<HTMLDetailsElement>("details.more")) e.open = true;
  });

/** Types into a field and leaves it. */
export async function type(page: Page, field: string, text: string): Promise<void> {
  await page.fill(`#field-${field}`, text);
  await page.press(`#field-${field}`, "Tab");
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
