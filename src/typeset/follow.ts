// Keeps paragraphs on the page in step with a derivation: text is patched, a formula is typeset again only when its form changes.
import type { Line, Paragraph, Run, Sentence, SlottedTex } from "../../solver/index.ts";
import { lineMarkup, mathMarkup, paragraphMarkup, sentenceMarkup } from "./markup.ts";
import type { Writing } from "./markup.ts";
import { RestQueue, findSlots, patchSlots } from "./slot-nodes.ts";
import type { ShownMath } from "./slot-nodes.ts";

interface ShownSentence {
  readonly element: Element;
  runs: Sentence;
  maths: (ShownMath | null)[];
}

interface ShownLine {
  readonly element: HTMLElement;
  line: Line;
  math: ShownMath;
  readonly formula: Element;
  readonly reason: ShownSentence;
  smaller: ShownLine[];
}

interface ShownParagraph {
  readonly element: HTMLElement;
  paragraph: Paragraph;
  readonly heading: Element;
  before: ShownSentence[];
  lines: ShownLine[];
  after: ShownSentence[];
}

/** One part of the page: the paragraphs in one element, as they stand. */
export class Follower {
  private readonly root: HTMLElement;
  private readonly writing: Writing;
  private readonly rest: RestQueue;
  private shown: ShownParagraph[];

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
    const byId = new Map(this.shown.map((s) => [s.paragraph.id, s]));
    const kept: ShownParagraph[] = [];
    // Whatever has to be typeset is typeset before anything is moved, so that a missing printer leaves the page whole.
    const fresh = new Map(next.filter((p) => !byId.has(p.id)).map((p) => [p.id, paragraphMarkup(p, this.writing)]));
    for (const paragraph of next) {
      const known = byId.get(paragraph.id);
      if (known !== undefined) this.patchParagraph(known, paragraph);
      kept.push(known ?? adopt(fromMarkup(fresh.get(paragraph.id) ?? ""), paragraph));
    }
    const ids = new Set(next.map((p) => p.id));
    for (const old of this.shown) if (!ids.has(old.paragraph.id)) old.element.remove();
    placeInOrder(
      this.root,
      kept.map((k) => k.element),
    );
    this.shown = kept;
  }

  private patchParagraph(shown: ShownParagraph, next: Paragraph): void {
    if (shown.paragraph === next) return;
    setText(shown.heading, next.heading);
    shown.before = this.patchSentences(shown.element, ".before", shown.before, next.before);
    shown.lines = this.patchLines(childOf(shown.element, ".lines"), shown.lines, next.lines);
    shown.after = this.patchSentences(shown.element, ".after", shown.after, next.after);
    shown.paragraph = next;
  }

  private patchSentences(
    paragraph: HTMLElement,
    where: string,
    shown: readonly ShownSentence[],
    next: readonly Sentence[],
  ): ShownSentence[] {
    const container = childOf(paragraph, where);
    const patched = next.map((sentence, i) => {
      const known = shown[i];
      if (known !== undefined) {
        this.patchSentence(known, sentence);
        return known;
      }
      const element = fromMarkup(`<p>${sentenceMarkup(sentence, this.writing)}</p>`);
      container.append(element);
      return adoptSentence(element, sentence);
    });
    for (const extra of shown.slice(next.length)) extra.element.remove();
    return patched;
  }

  private patchSentence(shown: ShownSentence, next: Sentence): void {
    if (shown.runs === next) return;
    if (!sameShape(shown.runs, next)) {
      shown.element.innerHTML = sentenceMarkup(next, this.writing);
      shown.maths = mathsOf(shown.element, next);
    } else next.forEach((run, i) => this.patchRun(shown, run, i));
    shown.runs = next;
  }

  private patchRun(shown: ShownSentence, run: Run, i: number): void {
    const node = shown.element.childNodes[i];
    if (node === undefined) return;
    if (run.kind === "text") {
      if (node.nodeValue !== run.text) node.nodeValue = run.text;
    } else if (run.kind === "math") {
      const math = shown.maths[i];
      if (math !== null && math !== undefined) patchSlots(math, run.tex.slots, this.rest);
    } else if (node instanceof Element) {
      setText(node, run.kind === "value" ? run.text : `(${String(this.writing.numberOf(run.id) ?? "–")})`);
    }
  }

  private patchLines(container: HTMLElement, shown: readonly ShownLine[], next: readonly Line[]): ShownLine[] {
    const byId = new Map(shown.map((s) => [s.line.id, s]));
    const fresh = new Map(next.filter((l) => !byId.has(l.id)).map((l) => [l.id, lineMarkup(l, this.writing)]));
    const kept = next.map((line) => {
      const known = byId.get(line.id);
      if (known === undefined) return adoptLine(fromMarkup(fresh.get(line.id) ?? ""), line);
      this.patchLine(known, line);
      return known;
    });
    const ids = new Set(next.map((l) => l.id));
    for (const old of shown) if (!ids.has(old.line.id)) old.element.remove();
    placeInOrder(
      container,
      kept.map((k) => k.element),
    );
    return kept;
  }

  private patchLine(shown: ShownLine, next: Line): void {
    if (shown.line === next) return;
    if (shown.math.form === next.tex.form) patchSlots(shown.math, next.tex.slots, this.rest);
    else {
      shown.formula.innerHTML = mathMarkup(next.tex, true, this.writing.cache);
      shown.math = findSlots(shown.formula, next.tex);
    }
    if (shown.line.number !== next.number) {
      const number = childOf(shown.element, ".number");
      setText(number, next.number === 0 ? "" : String(next.number));
      if (next.number !== 0) number.setAttribute("aria-label", `Line ${next.number}`);
    }
    if (shown.line.status !== next.status) shown.element.className = `line is-${next.status}`;
    if (shown.line.from.join(" ") !== next.from.join(" ")) shown.element.dataset.from = next.from.join(" ");
    this.patchSentence(shown.reason, next.reason);
    this.patchSmaller(shown, next);
    shown.line = next;
  }

  private patchSmaller(shown: ShownLine, next: Line): void {
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

function adopt(element: HTMLElement, paragraph: Paragraph): ShownParagraph {
  const lines = [...childOf(element, ".lines").children];
  return {
    element,
    paragraph,
    heading: childOf(element, "h3"),
    before: adoptSentences(childOf(element, ".before"), paragraph.before),
    lines: paragraph.lines.map((line, i) => adoptLine(elementAt(lines, i), line)),
    after: adoptSentences(childOf(element, ".after"), paragraph.after),
  };
}

const adoptSentences = (container: Element, list: readonly Sentence[]): ShownSentence[] =>
  list.map((s, i) => adoptSentence(elementAt([...container.children], i), s));
const adoptSentence = (element: Element, runs: Sentence): ShownSentence => ({
  element,
  runs,
  maths: mathsOf(element, runs),
});

function adoptLine(element: HTMLElement, line: Line): ShownLine {
  const formula = childOf(element, ".shown");
  const small = [...element.querySelectorAll(":scope > .smaller > .line")];
  return {
    element,
    line,
    formula,
    math: findSlots(formula, line.tex),
    reason: adoptSentence(childOf(element, ".reason"), line.reason),
    smaller: line.smaller.map((l, i) => adoptLine(elementAt(small, i), l)),
  };
}

function mathsOf(element: Element, runs: Sentence): (ShownMath | null)[] {
  return runs.map((run, i) => {
    const node = element.childNodes[i];
    return run.kind === "math" && node instanceof Element ? findSlots(node, run.tex) : null;
  });
}

const formOf = (run: Run): SlottedTex["form"] | null =>
  run.kind === "math" ? run.tex.form : run.kind === "line" ? run.id : run.kind === "value" ? run.ref : null;
const sameShape = (a: Sentence, b: Sentence): boolean =>
  a.length === b.length && a.every((run, i) => run.kind === b[i]?.kind && formOf(run) === formOf(b[i]));

function setText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

function fromMarkup(markup: string): HTMLElement {
  const template = document.createElement("template");
  template.innerHTML = markup;
  return elementAt([...template.content.children], 0);
}

function elementAt(elements: readonly Element[], index: number): HTMLElement {
  const found = elements[index];
  if (found instanceof HTMLElement) return found;
  throw new Error("the page does not hold the paragraphs it was built with");
}

/** The nearest child that fits a simple selector. */
function childOf(element: Element, selector: string): HTMLElement {
  const found = element.querySelector<HTMLElement>(`:scope > ${selector}`);
  if (found === null) throw new Error(`the page does not hold ${selector} where it was built`);
  return found;
}

/** Puts elements into a container in order, moving only those out of place; other children stay before them. */
function placeInOrder(container: Element, elements: readonly HTMLElement[]): void {
  let before: ChildNode | null = null;
  for (let i = elements.length - 1; i >= 0; i--) {
    const element = elements[i];
    if (element === undefined) continue;
    if (element.parentNode !== container || element.nextSibling !== before) container.insertBefore(element, before);
    before = element;
  }
}
