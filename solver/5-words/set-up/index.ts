// Stage 5 for any number of bodies: moves to words.
import type { SetUpResult } from "../../cases/types.ts";
import type { Passage, SetUpPassageData } from "../../4-steps/types.ts";
import {
  breach,
  clash,
  eliminateSize,
  isolateSize,
  openSizes,
  settleSize,
  spare,
  unmentioned,
  vanishing,
  zeroSize,
} from "../en/set-up/algebra.ts";
import { axesSentences } from "../en/set-up/axes.ts";
import { caseHeading, caseSentences, standsWords } from "../en/set-up/case.ts";
import { allAnswers, checkConditions, checkLaws, sizes } from "../en/set-up/ending.ts";
import { forcesOfBody } from "../en/set-up/forces.ts";
import { bodyLaw, countAll, frictionLaws, givenAngles, parts, partsIn, turnedLaws } from "../en/set-up/laws.ts";
import { setUpOpenings } from "../en/set-up/opening.ts";
import type { NamedOpening } from "../en/set-up/opening.ts";
import { impossibleSentences, setUpOutcome } from "../en/set-up/outcome.ts";
import type { SetUpSpeaker } from "../en/set-up/passage.ts";
import { setUpRecap } from "../en/set-up/recap.ts";
import { ties } from "../en/set-up/ties.ts";
import type { SpokenPassage } from "../en/passage.ts";
import { inPageOrder, newNumbering, paragraphOf, plainParagraph } from "../paragraphs.ts";
import type { Numbering, Spoken } from "../paragraphs.ts";
import type { WordSettings } from "../wording.ts";
import type { Paragraph, Part, Sentence } from "../types.ts";
import { limitHeading, limitSentences } from "../en/set-up/limit.ts";
import { Standing } from "./again.ts";
import { SetUpSpeech } from "./speech.ts";

type Kind = SetUpPassageData["kind"];

/** A passage without an entry does not compile. */
const SPEAKERS: { readonly [K in Kind]: SetUpSpeaker<K> } = {
  "body-law": bodyLaw,
  ties,
  "friction-laws": frictionLaws,
  "count-all": countAll,
  "given-angles": givenAngles,
  parts,
  "parts-in-laws": partsIn,
  "turned-laws": turnedLaws,
  "settle-size": settleSize,
  "isolate-size": isolateSize,
  "zero-size": zeroSize,
  vanishing,
  "eliminate-size": eliminateSize,
  spare,
  "open-sizes": openSizes,
  unmentioned,
  clash,
  breach,
  sizes,
  "all-answers": allAnswers,
  "check-laws": checkLaws,
  "check-conditions": checkConditions,
};

/** In further attempts what comes before the answer stands with the case. */
const IN_CASE: ReadonlySet<Part> = new Set(["forces", "axes", "law", "count", "angles", "components", "algebra"]);

/** The paragraphs of a whole derivation, lines numbered from 1. */
export function speakSetUp(result: SetUpResult, settings: WordSettings): Spoken {
  const speeches = result.attempts.map((attempt) => new SetUpSpeech(result, attempt, settings));
  const [first] = speeches;
  const last = speeches[speeches.length - 1];
  if (first === undefined || last === undefined) return { paragraphs: [], outcome: [] };
  const standing = new Standing();
  const numbering = newNumbering((line) => standing.stands(line));
  const paragraphs: Paragraph[] = setUpOpenings(first).map((o) => opening(o, first, o.part));
  speeches.forEach((s, i) => {
    const before = speeches[i - 1];
    standing.begin(s.attempt);
    const spoken = passages(s, numbering, before === undefined ? null : "case");
    if (before !== undefined) paragraphs.push(...caseOpening(s, before, i, standing));
    paragraphs.push(...spoken);
  });
  if (result.kind === "impossible")
    paragraphs.push(
      plainParagraph("impossible", "turning", "case", last.attempt.id, "Not possible", impossibleSentences(last)),
    );
  const limits = result.limits.map((attempt) => new SetUpSpeech(result, attempt, settings));
  for (const s of limits) {
    const { attempt } = s;
    standing.begin(attempt);
    const spoken = passages(s, numbering, "check");
    const head = [...limitSentences(s), ...standsIn(standing)];
    paragraphs.push(
      plainParagraph(`limit.${attempt.id}`, "limit", "check", attempt.id, limitHeading(s), head),
      ...spoken,
    );
  }
  const shown = new Set(paragraphs.flatMap((p) => p.lines.map((l) => l.id)));
  paragraphs.push(
    plainParagraph("recap", "recap", "recap", last.attempt.id, "What was done", setUpRecap(speeches, limits, shown)),
  );
  return { paragraphs: inPageOrder(paragraphs.map((p) => standing.settled(p))), outcome: setUpOutcome(last) };
}

function opening(o: NamedOpening, s: SetUpSpeech, part: Part): Paragraph {
  return {
    ...plainParagraph(o.id, o.id.split(".")[0] ?? o.id, part, s.attempt.id, o.heading, o.sentences),
    refers: o.refers,
  };
}

const standsIn = (standing: Standing): Sentence[] => {
  const lines = standing.references();
  return lines.length === 0 ? [] : [standsWords(lines)];
};

/** The next case: what is assumed now, what stands, and the forces and axes that change. */
function caseOpening(s: SetUpSpeech, before: SetUpSpeech, index: number, standing: Standing): Paragraph[] {
  const prefix = `case${index + 1}.`;
  const { id } = s.attempt;
  const sentences = [...caseSentences(s, before), ...standsIn(standing)];
  const axes = axesSentences(s).slice(0, -1);
  const isNew = JSON.stringify(axes) !== JSON.stringify(axesSentences(before).slice(0, -1));
  return [
    plainParagraph(`${prefix}assume`, "assume", "case", id, caseHeading(s, before), sentences),
    ...forcesOfBody(s, prefix, before).map((o) => opening(o, s, "case")),
    ...(isNew ? [plainParagraph(`${prefix}axes`, "axes", "case", id, "Axes", axes)] : []),
  ];
}

/** The passages of an attempt as paragraphs; those of which every line stands already are left out. */
function passages(s: SetUpSpeech, numbering: Numbering, instead: "case" | "check" | null): Paragraph[] {
  const told = instead === "check" ? s.attempt.passages.filter((p) => p.data.kind !== "count-all") : s.attempt.passages;
  return told.flatMap((p) => {
    const spoken = passage(p, s, numbering, instead);
    return spoken.lines.length === 0 && p.steps.length > 0 && instead !== null ? [] : [spoken];
  });
}

function passage(p: Passage, s: SetUpSpeech, numbering: Numbering, instead: Part | null): Paragraph {
  const speaker = SPEAKERS[p.data.kind as Kind] as (d: unknown, p: Passage, s: SetUpSpeech) => SpokenPassage;
  const spoken = speaker(p.data, p, s);
  const moves = instead === "check" || (instead === "case" && IN_CASE.has(spoken.part));
  return paragraphOf(p, moves ? { ...spoken, part: instead } : spoken, s, numbering);
}
