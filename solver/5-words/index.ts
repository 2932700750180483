// Stage 5: moves to words. Everything a page, a terminal or a file shows of a derivation is made here, and nothing is computed.
import type { CaseResult } from "../cases/types.ts";
import type { HangingPassageData, Passage } from "../4-steps/types.ts";
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
import { recapOf } from "./en/recap.ts";
import { scaleSentences } from "./en/scale.ts";
import { inPageOrder, newNumbering, paragraphOf, plainParagraph } from "./paragraphs.ts";
import type { Numbering, Spoken } from "./paragraphs.ts";
import { Speech } from "./speech.ts";
import type { WordSettings } from "./speech.ts";
import type { Paragraph, Part } from "./types.ts";

export type { Line, Paragraph, Part, PlainLine, Run, Sentence, SlottedTex } from "./types.ts";
export type { WordSettings } from "./speech.ts";
export { FIRST_SLOT } from "./print/tex.ts";
export { plainSentence } from "./sentence.ts";
export { exprTex, letterTex, surdTexOf } from "./print/standalone.ts";
export type { Spoken } from "./paragraphs.ts";
export { speakSetUp } from "./set-up/index.ts";
export { setUpLetters, wholeLetter } from "./set-up/letters.ts";

type Kind = HangingPassageData["kind"];

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

/** The paragraphs of a whole derivation, lines numbered from 1. */
export function speak(result: CaseResult, settings: WordSettings): Spoken {
  const speeches = result.attempts.map((attempt) => new Speech(result, attempt, settings));
  const [first] = speeches;
  const last = speeches[speeches.length - 1];
  if (first === undefined || last === undefined) return { paragraphs: [], outcome: [] };
  const numbering = newNumbering();
  const id = first.attempt.hypothesis.id;
  const paragraphs: Paragraph[] = openings(first).map((o) => ({
    ...plainParagraph(o.id, o.id, o.part, id, o.heading, o.sentences),
    refers: o.refers,
  }));
  speeches.forEach((s, i) => {
    for (const p of s.attempt.passages) paragraphs.push(passageParagraph(p, s, numbering, i > 0));
    const turn =
      i < speeches.length - 1 || !s.attempt.holds || result.kind !== "taut" ? (i === 0 ? turning(s) : []) : [];
    if (turn.length > 0)
      paragraphs.push(plainParagraph("turning", "turning", "case", s.attempt.hypothesis.id, turnHeading(result), turn));
  });
  const sizes = result.kind === "taut" || (result.kind === "slack" && speeches.length > 1) ? sizeAndLimits(last) : [];
  if (sizes.length > 0)
    paragraphs.push(
      plainParagraph(
        "check.size",
        "check-size",
        "check",
        last.attempt.hypothesis.id,
        "Check: size, share and limits",
        sizes,
      ),
    );
  if (result.kind === "taut" || result.kind === "slack")
    paragraphs.push(
      plainParagraph(
        "scale",
        "scale",
        "scale",
        last.attempt.hypothesis.id,
        "The diagram, to scale",
        scaleSentences(last),
      ),
    );
  paragraphs.push(
    plainParagraph(
      "recap",
      "recap",
      "recap",
      last.attempt.hypothesis.id,
      "What was done",
      recapOf(speeches, new Set(paragraphs.flatMap((p) => p.lines.map((l) => l.id)))),
    ),
  );
  return { paragraphs: inPageOrder(paragraphs), outcome: outcomeOf(last) };
}

function turnHeading(result: CaseResult): string {
  if (result.kind === "impossible") return "Not possible";
  if (result.kind === "under-determined") return "Not determined";
  return result.attempts.length > 1 ? "The other case" : "Nothing to carry";
}

/** In a second attempt laws and algebra stand with the case, so that the page keeps the order of thought. */
const IN_CASE: ReadonlySet<Part> = new Set(["law", "count", "angles", "components", "algebra"]);

function passageParagraph(p: Passage, s: Speech, numbering: Numbering, second: boolean): Paragraph {
  const speaker = SPEAKERS[p.data.kind as Kind] as (d: unknown, p: Passage, s: Speech) => SpokenPassage;
  const spoken = speaker(p.data, p, s);
  return paragraphOf(p, second && IN_CASE.has(spoken.part) ? { ...spoken, part: "case" } : spoken, s, numbering);
}
