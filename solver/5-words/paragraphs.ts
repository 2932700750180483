// Paragraphs and numbered lines, whatever they speak of.
import type { Passage, Step } from "../4-steps/types.ts";
import type { SpokenPassage } from "./en/passage.ts";
import { reasonOf } from "./en/reasons.ts";
import { linePlain, lineTex, lineText } from "./print/line.ts";
import { readyPassage } from "./print/rounding.ts";
import type { ReadyLine } from "./print/types.ts";
import type { Line, Paragraph, Part, Sentence } from "./types.ts";
import type { Wording } from "./wording.ts";

/** A derivation in words: its paragraphs, and the outcome in one sentence. */
export interface Spoken {
  readonly paragraphs: readonly Paragraph[];
  readonly outcome: Sentence;
}

const PAGE_ORDER: readonly Part[] = [
  "problem",
  "picture",
  "motion",
  "forces",
  "diagram",
  "axes",
  "law",
  "count",
  "angles",
  "components",
  "algebra",
  "case",
  "answer",
  "check",
  "letters",
  "scale",
  "recap",
];

/** A paragraph of sentences alone. */
export function plainParagraph(
  id: string,
  kind: string,
  part: Part,
  attempt: string,
  heading: string,
  before: readonly Sentence[],
): Paragraph {
  return { id, kind, part, attempt, heading, before, lines: [], after: [], refers: [] };
}

/** A passage as spoken, with its lines printed and numbered. */
export function paragraphOf(p: Passage, spoken: SpokenPassage, s: Wording, numbering: Numbering): Paragraph {
  return {
    id: p.id,
    kind: p.data.kind,
    part: spoken.part,
    attempt: p.attempt,
    heading: spoken.heading,
    before: spoken.before,
    lines: linesOf(p.steps, p.attempt, s, numbering),
    after: spoken.after,
    refers: spoken.refers,
  };
}

/** Numbers lines as they are kept, and remembers the line before. */
export interface Numbering {
  next: number;
  last: Line | null;
  /** Whether a line stands already and need not be written again; null where all are new. */
  readonly stands: ((line: Line) => boolean) | null;
}

const REPEATS: ReadonlySet<string | undefined> = new Set(["round", "as-found", "put-back"]);

/** A rounding or a check that would only say the line before again is left out; all other lines get the next number. */
function keep(line: Line, reason: string | undefined, numbering: Numbering): boolean {
  if (REPEATS.has(reason) && numbering.last?.attempt === line.attempt && numbering.last.text() === line.text())
    return false;
  if (numbering.stands?.(line) === true) return false;
  numbering.next++;
  numbering.last = line;
  return true;
}

/** Begins at 1. */
export const newNumbering = (stands: Numbering["stands"] = null): Numbering => ({ next: 1, last: null, stands });

/** Prints steps; without a numbering they are smaller moves, which have no number. */
function linesOf(steps: readonly Step[], attempt: string, s: Wording, numbering: Numbering | null): Line[] {
  const lines: Line[] = [];
  readyPassage(steps, s.printer).forEach((made, i) => {
    const step = steps[i];
    if (step === undefined) return;
    const line = lineOf(step, made, attempt, s, numbering?.next ?? 0);
    if (numbering === null || keep(line, step.reason.kind, numbering)) lines.push(line);
  });
  return lines;
}

function lineOf(step: Step, made: ReadyLine, attempt: string, s: Wording, number: number): Line {
  return {
    id: step.id,
    number,
    tex: lineTex(made, s.printer),
    attempt,
    status: step.status,
    kind: step.kind,
    relation: made.relation,
    from: step.from,
    reason: reasonOf({ ...step, relation: made.relation }, s),
    smaller: linesOf(step.smaller ?? [], attempt, s, null),
    plain: () => linePlain(made, s.printer),
    text: () => lineText(made, s.printer),
  };
}

/** Paragraphs in the order of the page's parts, otherwise as made. */
export function inPageOrder(paragraphs: readonly Paragraph[]): readonly Paragraph[] {
  return PAGE_ORDER.flatMap((part) => paragraphs.filter((p) => p.part === part));
}
