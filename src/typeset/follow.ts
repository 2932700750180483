// Keeps paragraphs on the page in step with a derivation: text is patched, a formula is typeset again only when its form changes.
import type { Line, Paragraph, Run, Sentence } from "../../solver/index.ts";
import { adopt, adoptLine, adoptSentence, mathsOf, sameShape } from "./adopt.ts";
import type { ShownLine, ShownParagraph, ShownSentence } from "./adopt.ts";
import { childOf, elementAt, fromMarkup, placeInOrder } from "./elements.ts";
import { lineMarkup, mathMarkup, paragraphMarkup, sentenceMarkup } from "./markup.ts";
import type { Writing } from "./markup.ts";
import { findSlots, patchSlots } from "./slot-nodes.ts";
import type { RestQueue } from "./slot-nodes.ts";

/** One part of the page: the paragraphs in one element, as they stand. */
export class Follower {
  private readonly root: HTMLElement;
  private readonly writing: Writing;
  private readonly rest: RestQueue;
  private shown: ShownParagraph[];
  /** Paragraphs and lines that went away: a drag to and fro brings them back without typesetting. */
  private readonly pastParagraphs = new Map<string, ShownParagraph>();
  private readonly pastLines = new Map<string, ShownLine>();

  /** Takes over the paragraphs that the build wrote into `root`; they show `built`. */
  constructor(root: HTMLElement, built: readonly Paragraph[], writing: Writing, rest: RestQueue) {
    this.root = root;
    this.writing = writing;
    this.rest = rest;
    const elements = [...root.children];
    this.shown = built.map((paragraph, i) => adopt(elementAt(elements, i), paragraph));
  }

  /** Shows other paragraphs. Throws NotYetTypeset, with the page in a state that a later call completes, if a new form cannot be typeset yet. */
  show(next: readonly Paragraph[]): void {
    const byId = new Map([...this.pastParagraphs, ...this.shown.map((s) => [s.paragraph.id, s] as const)]);
    // Whatever has to be typeset is typeset before anything is moved, so that a missing printer leaves the page whole.
    const fresh = new Map(next.filter((p) => !byId.has(p.id)).map((p) => [p.id, paragraphMarkup(p, this.writing)]));
    const kept = next.map((paragraph) => {
      const known = byId.get(paragraph.id);
      if (known === undefined) return adopt(fromMarkup(fresh.get(paragraph.id) ?? ""), paragraph);
      this.patchParagraph(known, paragraph);
      return known;
    });
    const ids = new Set(next.map((p) => p.id));
    for (const old of this.shown) {
      if (ids.has(old.paragraph.id)) continue;
      old.element.remove();
      this.pastParagraphs.set(old.paragraph.id, old);
    }
    for (const id of ids) this.pastParagraphs.delete(id);
    placeInOrder(
      this.root,
      kept.map((k) => k.element),
    );
    this.shown = kept;
  }

  private patchParagraph(shown: ShownParagraph, next: Paragraph): void {
    if (shown.paragraph === next) return;
    if (shown.paragraph.kind !== next.kind) shown.element.className = `paragraph of-${next.kind}`;
    if (shown.paragraph.heading !== next.heading) shown.heading.textContent = next.heading;
    shown.before = this.patchSentences(shown.boxes.before, shown.before, next.before);
    shown.lines = this.patchLines(shown.boxes.lines, shown.lines, next.lines);
    shown.after = this.patchSentences(shown.boxes.after, shown.after, next.after);
    shown.paragraph = next;
  }

  private patchSentences(
    container: HTMLElement,
    shown: readonly ShownSentence[],
    next: readonly Sentence[],
  ): ShownSentence[] {
    shown.forEach((known, i) => {
      const sentence = next[i];
      if (sentence !== undefined) this.patchSentence(known, sentence);
    });
    // Made before any is appended: where one has to wait for the printer, none may stand there already.
    const added = next
      .slice(shown.length)
      .map((sentence) => adoptSentence(fromMarkup(`<p>${sentenceMarkup(sentence, this.writing)}</p>`), sentence));
    container.append(...added.map((one) => one.element));
    const patched = [...shown.slice(0, next.length), ...added];
    for (const extra of shown.slice(next.length)) extra.element.remove();
    return patched;
  }

  private patchSentence(shown: ShownSentence, next: Sentence): void {
    if (shown.runs === next) return;
    if (!sameShape(shown.runs, next)) {
      shown.element.innerHTML = sentenceMarkup(next, this.writing);
      shown.maths = mathsOf(shown.element, next);
      shown.numbers = this.numbersOf(next);
    } else next.forEach((run, i) => this.patchRun(shown, run, i));
    shown.runs = next;
  }

  /** Nothing is read from the page: what stands there is known from the run before. */
  private patchRun(shown: ShownSentence, run: Run, i: number): void {
    const before = shown.runs[i];
    if (run.kind === "math") {
      const math = shown.maths[i];
      if (math !== null && math !== undefined) patchSlots(math, run.tex.slots, this.rest);
    } else if (run.kind === "line") {
      const number = this.writing.numberOf(run.id);
      if (shown.numbers[i] === number) return;
      shown.numbers[i] = number;
      const node = shown.element.childNodes[i];
      if (node !== undefined) node.textContent = `(${String(number ?? "–")})`;
    } else if (before?.kind === run.kind && before.text !== run.text) {
      const node = shown.element.childNodes[i];
      const text = run.kind === "text" ? node : node?.firstChild;
      if (text !== null && text !== undefined) text.nodeValue = run.text;
    }
  }

  private numbersOf(runs: Sentence): (number | undefined)[] {
    return runs.map((run) => (run.kind === "line" ? this.writing.numberOf(run.id) : undefined));
  }

  private patchLines(container: HTMLElement, shown: readonly ShownLine[], next: readonly Line[]): ShownLine[] {
    const byId = new Map(shown.map((s) => [s.line.id, s]));
    const find = (id: string): ShownLine | undefined => byId.get(id) ?? this.pastLines.get(id);
    const fresh = new Map(next.filter((l) => find(l.id) === undefined).map((l) => [l.id, lineMarkup(l, this.writing)]));
    const kept = next.map((line) => {
      const known = find(line.id);
      if (known === undefined) return adoptLine(fromMarkup(fresh.get(line.id) ?? ""), line);
      this.pastLines.delete(line.id);
      this.patchLine(known, line);
      return known;
    });
    const ids = new Set(next.map((l) => l.id));
    for (const old of shown) {
      if (ids.has(old.line.id)) continue;
      old.element.remove();
      this.pastLines.set(old.line.id, old);
    }
    placeInOrder(
      container,
      kept.map((k) => k.element),
    );
    return kept;
  }

  private patchLine(shown: ShownLine, next: Line): void {
    if (shown.line === next) return;
    if (shown.math.form === next.tex.form) patchSlots(shown.math, next.tex.slots, this.rest);
    else this.changeForm(shown, next);
    if (shown.line.number !== next.number) {
      const number = childOf(shown.element, ".number");
      number.textContent = next.number === 0 ? "" : String(next.number);
      if (next.number !== 0) number.setAttribute("aria-label", `Line ${next.number}`);
    }
    if (shown.line.status !== next.status) shown.element.className = `line is-${next.status}`;
    if (shown.line.from.join(" ") !== next.from.join(" ")) shown.element.dataset.from = next.from.join(" ");
    this.patchSentence(shown.reason, next.reason);
    this.patchSmaller(shown, next);
    shown.line = next;
  }

  /** Another form: the nodes it had before if it has been shown, else typeset now. The old form's nodes are kept. */
  private changeForm(shown: ShownLine, next: Line): void {
    const known = shown.formulas.get(next.tex.form);
    const markup = known === undefined ? mathMarkup(next.tex, true, this.writing.cache) : "";
    shown.formulas.set(shown.math.form, { nodes: [...shown.formula.childNodes], math: shown.math });
    if (known === undefined) {
      shown.formula.replaceChildren(fromMarkup(markup));
      shown.math = findSlots(shown.formula, next.tex);
      return;
    }
    shown.formula.replaceChildren(...known.nodes);
    shown.math = known.math;
    patchSlots(shown.math, next.tex.slots, this.rest);
  }

  private patchSmaller(shown: ShownLine, next: Line): void {
    if (shown.smaller.length === 0 && next.smaller.length === 0) return;
    const known = shown.element.querySelector<HTMLElement>(":scope > .smaller");
    if (next.smaller.length === 0) {
      known?.remove();
      shown.smaller = [];
      return;
    }
    const details =
      known ??
      shown.element.appendChild(fromMarkup('<details class="smaller"><summary>smaller moves</summary></details>'));
    shown.smaller = this.patchLines(details, shown.smaller, next.smaller);
  }
}
