// Paragraphs of a derivation as HTML text: one way of writing, for the build and for what the page adds later.
import type { Line, Paragraph, Run, Sentence, SlottedTex } from "../../solver/index.ts";
import type { FormCache } from "./form-cache.ts";
import { escapeText, filled } from "./slots.ts";

/** Raised where a form is not typeset yet and the printer has not come: the caller waits and tries again. */
export class NotYetTypeset extends Error {}

/** Where line numbers come from, and what is already typeset. */
export interface Writing {
  readonly cache: FormCache;
  readonly numberOf: (line: string) => number | undefined;
}

/** Maths in TeX as markup, slots filled. */
export function mathMarkup(tex: SlottedTex, display: boolean, cache: FormCache): string {
  const form = cache.get(tex.form, display);
  if (form === null) throw new NotYetTypeset(tex.form);
  return filled(form, tex.slots);
}

/** One run of a sentence. Words stay bare text, so that a sentence's nodes match its runs one to one. */
export function runMarkup(run: Run, w: Writing): string {
  switch (run.kind) {
    case "text":
      return escapeText(run.text);
    case "value":
      return `<span class="value"${run.ref === null ? "" : ` data-ref="${escapeText(run.ref)}"`}>${escapeText(run.text)}</span>`;
    case "math":
      return `<span class="math">${mathMarkup(run.tex, false, w.cache)}</span>`;
    case "line":
      return `<a class="to-line" href="#${escapeText(run.id)}" data-line="${escapeText(run.id)}">(${String(w.numberOf(run.id) ?? "–")})</a>`;
  }
}

/** The inside of a sentence. */
export const sentenceMarkup = (sentence: Sentence, w: Writing): string => sentence.map((r) => runMarkup(r, w)).join("");

/** A line: its number, the maths, its reason, and the smaller moves it opens into. */
export function lineMarkup(line: Line, w: Writing): string {
  const id = escapeText(line.id);
  const smaller =
    line.smaller.length === 0
      ? ""
      : `<details class="smaller"><summary>smaller moves</summary>${line.smaller.map((l) => lineMarkup(l, w)).join("")}</details>`;
  const number =
    line.number === 0
      ? '<span class="number"></span>'
      : `<a class="number" href="#${id}" aria-label="Line ${line.number}">${line.number}</a>`;
  return (
    `<div class="line is-${line.status}" id="${id}" data-from="${line.from.map(escapeText).join(" ")}">${number}` +
    `<div class="shown" tabindex="-1">${mathMarkup(line.tex, true, w.cache)}</div><p class="reason">${sentenceMarkup(line.reason, w)}</p>${smaller}</div>`
  );
}

const sentences = (list: readonly Sentence[], w: Writing): string =>
  list.map((s) => `<p>${sentenceMarkup(s, w)}</p>`).join("");

/** A paragraph: heading, sentences before, lines, sentences after. */
export function paragraphMarkup(p: Paragraph, w: Writing): string {
  return (
    `<section class="paragraph of-${escapeText(p.kind)}" data-paragraph="${escapeText(p.id)}"><h3>${escapeText(p.heading)}</h3>` +
    `<div class="before">${sentences(p.before, w)}</div><div class="lines">${p.lines.map((l) => lineMarkup(l, w)).join("")}</div><div class="after">${sentences(p.after, w)}</div></section>`
  );
}
