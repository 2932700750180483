// What the words stage gives: paragraphs of sentences and lines, each with a stable id and the things it refers to.
import type { Relation, Status, StepKind } from "../4-steps/types.ts";
import type { PlainLine, SlottedTex } from "./print/line.ts";

export type { PlainLine, SlottedTex } from "./print/line.ts";

/** A piece of a sentence: words, a number in the words, maths with slots, or a reference to a line. */
export type Run =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "value"; readonly text: string; readonly ref: string | null }
  | { readonly kind: "math"; readonly tex: SlottedTex; readonly text: string }
  | { readonly kind: "line"; readonly id: string };

/** A sentence is a list of runs. */
export type Sentence = readonly Run[];

/** One line of algebra as shown. */
export interface Line {
  readonly id: string;
  /** The number in the margin; 0 for a smaller move inside a line. */
  readonly number: number;
  readonly tex: SlottedTex;
  readonly attempt: string;
  readonly status: Status;
  readonly kind: StepKind;
  readonly relation: Relation;
  readonly from: readonly string[];
  readonly reason: Sentence;
  readonly smaller: readonly Line[];
  /** The line for a general-purpose evaluator, made on demand. */
  readonly plain: () => PlainLine;
  /** The line for a terminal, made on demand. */
  readonly text: () => string;
}

/** Which part of the page a paragraph stands in; the order of this list is the order of the page. */
export type Part =
  | "problem"
  | "picture"
  | "motion"
  | "forces"
  | "diagram"
  | "axes"
  | "law"
  | "count"
  | "angles"
  | "components"
  | "algebra"
  | "case"
  | "answer"
  | "check"
  | "letters"
  | "scale"
  | "recap";

/** A paragraph: sentences, the lines they lead to, and what follows from them. */
export interface Paragraph {
  readonly id: string;
  readonly kind: string;
  readonly part: Part;
  readonly attempt: string;
  readonly heading: string;
  readonly before: readonly Sentence[];
  readonly lines: readonly Line[];
  readonly after: readonly Sentence[];
  /** Forces, components and angles it speaks of, by id. */
  readonly refers: readonly string[];
}
