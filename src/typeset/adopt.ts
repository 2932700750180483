// Taking over what the build wrote: the elements of paragraphs, lines and sentences, with what each shows now.
import type { Line, Paragraph, Run, Sentence, SlottedTex } from "../../solver/index.ts";
import { findSlots } from "./slot-nodes.ts";
import type { ShownMath } from "./slot-nodes.ts";
import { childOf, elementAt } from "./elements.ts";

/** A sentence on the page. */
export interface ShownSentence {
  readonly element: Element;
  runs: Sentence;
  maths: (ShownMath | null)[];
  /** The numbers that references to lines show. */
  numbers: (number | undefined)[];
}

/** A line on the page, with the formulas it has shown before, by form. */
export interface ShownLine {
  readonly element: HTMLElement;
  line: Line;
  math: ShownMath;
  readonly formula: Element;
  readonly formulas: Map<string, { readonly nodes: readonly ChildNode[]; readonly math: ShownMath }>;
  readonly reason: ShownSentence;
  smaller: ShownLine[];
}

/** A paragraph on the page. */
export interface ShownParagraph {
  readonly element: HTMLElement;
  paragraph: Paragraph;
  readonly heading: Element;
  readonly boxes: { readonly before: HTMLElement; readonly lines: HTMLElement; readonly after: HTMLElement };
  before: ShownSentence[];
  lines: ShownLine[];
  after: ShownSentence[];
}

/** Takes over a paragraph. */
export function adopt(element: HTMLElement, paragraph: Paragraph): ShownParagraph {
  const boxes = {
    before: childOf(element, ".before"),
    lines: childOf(element, ".lines"),
    after: childOf(element, ".after"),
  };
  const lines = [...boxes.lines.children];
  return {
    element,
    paragraph,
    heading: childOf(element, "h3"),
    boxes,
    before: adoptSentences(boxes.before, paragraph.before),
    lines: paragraph.lines.map((line, i) => adoptLine(elementAt(lines, i), line)),
    after: adoptSentences(boxes.after, paragraph.after),
  };
}

const adoptSentences = (container: Element, list: readonly Sentence[]): ShownSentence[] =>
  list.map((s, i) => adoptSentence(elementAt([...container.children], i), s));
/** Takes over a sentence. */
export const adoptSentence = (element: Element, runs: Sentence): ShownSentence => ({
  element,
  runs,
  maths: mathsOf(element, runs),
  numbers: runs.map((run, i) => (run.kind === "line" ? numberShown(element.childNodes[i]) : undefined)),
});

/** The number that a reference to a line was written with. */
function numberShown(node: ChildNode | undefined): number | undefined {
  const digits = (node?.textContent ?? "").replace(/\D/g, "");
  return digits === "" ? undefined : Number(digits);
}

/** Takes over a line. */
export function adoptLine(element: HTMLElement, line: Line): ShownLine {
  const formula = childOf(element, ".shown");
  const small = [...element.querySelectorAll(":scope > .smaller > .line")];
  return {
    element,
    line,
    formula,
    formulas: new Map(),
    math: findSlots(formula, line.tex),
    reason: adoptSentence(childOf(element, ".reason"), line.reason),
    smaller: line.smaller.map((l, i) => adoptLine(elementAt(small, i), l)),
  };
}

/** The formulas in a sentence, by run. */
export function mathsOf(element: Element, runs: Sentence): (ShownMath | null)[] {
  return runs.map((run, i) => {
    const node = element.childNodes[i];
    return run.kind === "math" && node instanceof Element ? findSlots(node, run.tex) : null;
  });
}

const formOf = (run: Run): SlottedTex["form"] | null =>
  run.kind === "math" ? run.tex.form : run.kind === "line" ? run.id : run.kind === "value" ? run.ref : null;
/** Whether two sentences differ in texts and numbers alone. */
export const sameShape = (a: Sentence, b: Sentence): boolean =>
  a.length === b.length && a.every((run, i) => run.kind === b[i]?.kind && formOf(run) === formOf(b[i]));
