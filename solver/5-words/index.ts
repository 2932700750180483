// Stage 5: moves to words. Everything a page, a terminal or a file shows of a derivation is made here, and nothing is computed.
import type { CaseResult } from "../cases/types.ts";
import type { Passage, PassageData, Step } from "../4-steps/types.ts";
import { eliminate, equal, freeRope, isolate, settle, stuckForGood } from "./en/algebra.ts";
import { angles, components, count, law, substitution } from "./en/laws.ts";
import type { PassageSpeaker, SpokenPassage } from "./en/passage.ts";
import { evidence, oneLine, oneSided, turning } from "./en/case.ts";
import {
  answer,
  checkBalance,
  checkLength,
  checkPolygon,
  exact,
  letters,
  numbers,
  putBack,
  sizeAndLimits,
} from "./en/ending.ts";
import { outcomeOf } from "./en/outcome.ts";
import { openings } from "./en/opening.ts";
import { reasonOf } from "./en/reasons.ts";
import { recapOf } from "./en/recap.ts";
import { scaleSentences } from "./en/scale.ts";
import { linePlain, lineTex, lineText } from "./print/line.ts";
import type { ReadyLine } from "./print/types.ts";
import { readyPassage } from "./print/rounding.ts";
import { Speech } from "./speech.ts";
import type { WordSettings } from "./speech.ts";
import type { Line, Paragraph, Part, Sentence } from "./types.ts";

export type { Line, Paragraph, Part, PlainLine, Run, Sentence, SlottedTex } from "./types.ts";
export type { WordSettings } from "./speech.ts";
export { FIRST_SLOT } from "./print/tex.ts";
export { plainSentence } from "./sentence.ts";
export { exprTex, letterTex, surdTexOf } from "./print/standalone.ts";

type Kind = PassageData["kind"];

/** A passage without an entry does not compile. */
const SPEAKERS: { readonly [K in Kind]: PassageSpeaker<K> } = {
  law,
  count,
  "one-sided": oneSided,
  angles,
  components,
  substitution,
  settle,
  equal,
  isolate,
  eliminate,
  "put-back": putBack,
  "stuck-for-good": stuckForGood,
  "one-line": oneLine,
  evidence,
  "free-rope": freeRope,
  exact,
  numbers,
  answer,
  "check-balance": checkBalance,
  "check-polygon": checkPolygon,
  "check-length": checkLength,
  letters,
};

/** A derivation in words: its paragraphs, and the outcome in one sentence. */
export interface Spoken {
  readonly paragraphs: readonly Paragraph[];
  readonly outcome: Sentence;
}

/** The paragraphs of a whole derivation, lines numbered from 1. */
export function speak(result: CaseResult, settings: WordSettings): Spoken {
  const speeches = result.attempts.map((attempt) => new Speech(result, attempt, settings));
  const [first] = speeches;
  const last = speeches[speeches.length - 1];
  if (first === undefined || last === undefined) return { paragraphs: [], outcome: [] };
  const numbering: Numbering = { next: 1, last: null };
  const paragraphs: Paragraph[] = openings(first).map((o) => ({
    ...plainParagraph(o.id, o.id, o.part, first, o.heading, o.sentences),
    refers: o.refers,
  }));
  speeches.forEach((s, i) => {
    for (const p of s.attempt.passages) paragraphs.push(passageParagraph(p, s, numbering, i > 0));
    const turn =
      i < speeches.length - 1 || !s.attempt.holds || result.kind !== "taut" ? (i === 0 ? turning(s) : []) : [];
    if (turn.length > 0) paragraphs.push(plainParagraph("turning", "turning", "case", s, turnHeading(result), turn));
  });
  const sizes = result.kind === "taut" || (result.kind === "slack" && speeches.length > 1) ? sizeAndLimits(last) : [];
  if (sizes.length > 0)
    paragraphs.push(plainParagraph("check.size", "check-size", "check", last, "Check: size, share and limits", sizes));
  if (result.kind === "taut" || result.kind === "slack")
    paragraphs.push(plainParagraph("scale", "scale", "scale", last, "The diagram, to scale", scaleSentences(last)));
  paragraphs.push(
    plainParagraph(
      "recap",
      "recap",
      "recap",
      last,
      "What was done",
      recapOf(speeches, new Set(paragraphs.flatMap((p) => p.lines.map((l) => l.id)))),
    ),
  );
  return { paragraphs: inPageOrder(paragraphs), outcome: outcomeOf(last) };
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

function turnHeading(result: CaseResult): string {
  if (result.kind === "impossible") return "Not possible";
  if (result.kind === "under-determined") return "Not determined";
  return result.attempts.length > 1 ? "The other case" : "Nothing to carry";
}

function plainParagraph(
  id: string,
  kind: string,
  part: Part,
  s: Speech,
  heading: string,
  before: readonly Sentence[],
): Paragraph {
  return { id, kind, part, attempt: s.attempt.hypothesis.id, heading, before, lines: [], after: [], refers: [] };
}

function passageParagraph(p: Passage, s: Speech, numbering: Numbering, second: boolean): Paragraph {
  const speaker = SPEAKERS[p.data.kind] as (d: PassageData, p: Passage, s: Speech) => SpokenPassage;
  const spoken = speaker(p.data, p, s);
  const lines = linesOf(p.steps, s, numbering);
  const part = second && IN_CASE.has(spoken.part) ? "case" : spoken.part;
  return {
    id: p.id,
    kind: p.data.kind,
    part,
    attempt: p.attempt,
    heading: spoken.heading,
    before: spoken.before,
    lines,
    after: spoken.after,
    refers: spoken.refers,
  };
}

/** Numbers lines as they are kept, and remembers the line before. */
interface Numbering {
  next: number;
  last: Line | null;
}

const REPEATS: ReadonlySet<string | undefined> = new Set(["round", "as-found", "put-back"]);

/** A rounding or a check that would only say the line before again is left out; all other lines get the next number. */
function keep(line: Line, reason: string | undefined, numbering: Numbering): boolean {
  if (REPEATS.has(reason) && numbering.last?.attempt === line.attempt && numbering.last.text() === line.text())
    return false;
  numbering.next++;
  numbering.last = line;
  return true;
}

/** In a second attempt laws and algebra stand with the case, so that the page keeps the order of thought. */
const IN_CASE: ReadonlySet<Part> = new Set(["law", "count", "angles", "components", "algebra"]);

/** Prints steps; without a numbering they are smaller moves, which have no number. */
function linesOf(steps: readonly Step[], s: Speech, numbering: Numbering | null): Line[] {
  const lines: Line[] = [];
  readyPassage(steps, s.printer).forEach((made, i) => {
    const step = steps[i];
    if (step === undefined) return;
    const line = lineOf(step, made, s, numbering?.next ?? 0);
    if (numbering === null || keep(line, step.reason.kind, numbering)) lines.push(line);
  });
  return lines;
}

function lineOf(step: Step, made: ReadyLine, s: Speech, number: number): Line {
  return {
    id: step.id,
    number,
    tex: lineTex(made, s.printer),
    attempt: s.attempt.hypothesis.id,
    status: step.status,
    kind: step.kind,
    relation: made.relation,
    from: step.from,
    reason: reasonOf({ ...step, relation: made.relation }, s),
    smaller: linesOf(step.smaller ?? [], s, null),
    plain: () => linePlain(made, s.printer),
    text: () => lineText(made, s.printer),
  };
}

/** Paragraphs in the order of the page's parts, otherwise as made. */
function inPageOrder(paragraphs: readonly Paragraph[]): readonly Paragraph[] {
  return PAGE_ORDER.flatMap((part) => paragraphs.filter((p) => p.part === part));
}
