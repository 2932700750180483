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
import { allAnswers, checkConditions, checkLaws, sizes } from "../en/set-up/ending.ts";
import { forcesOfBody } from "../en/set-up/forces.ts";
import { bodyLaw, countAll, frictionLaws, givenAngles, parts, partsIn, ties } from "../en/set-up/laws.ts";
import { axesSentences, hangingWords, setUpOpenings } from "../en/set-up/opening.ts";
import type { NamedOpening } from "../en/set-up/opening.ts";
import { impossibleSentences, setUpOutcome } from "../en/set-up/outcome.ts";
import type { SetUpSpeaker } from "../en/set-up/passage.ts";
import { setUpRecap } from "../en/set-up/recap.ts";
import type { SpokenPassage } from "../en/passage.ts";
import { inPageOrder, newNumbering, paragraphOf, plainParagraph } from "../paragraphs.ts";
import type { Numbering, Spoken } from "../paragraphs.ts";
import { say } from "../sentence.ts";
import type { WordSettings } from "../wording.ts";
import type { Paragraph, Part } from "../types.ts";
import { limitHeading, limitSentences } from "../en/set-up/limit.ts";
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
  const limits = result.limits.map((attempt) => new SetUpSpeech(result, attempt, settings));
  const [first] = speeches;
  const last = speeches[speeches.length - 1];
  if (first === undefined || last === undefined) return { paragraphs: [], outcome: [] };
  const numbering = newNumbering();
  const paragraphs: Paragraph[] = setUpOpenings(first).map((o) => opening(o, first, o.part));
  speeches.forEach((s, i) => {
    if (i > 0) paragraphs.push(...caseOpening(s, i));
    for (const p of s.attempt.passages) paragraphs.push(passage(p, s, numbering, i > 0 ? "case" : null));
  });
  if (result.kind === "impossible")
    paragraphs.push(
      plainParagraph("impossible", "turning", "case", last.attempt.id, "Not possible", impossibleSentences(last)),
    );
  for (const s of limits) {
    const name = `limit.${s.attempt.id}`;
    paragraphs.push(plainParagraph(name, "limit", "check", s.attempt.id, limitHeading(s), limitSentences(s)));
    for (const p of s.attempt.passages.filter((one) => one.data.kind !== "count-all"))
      paragraphs.push(passage(p, s, numbering, "check"));
  }
  const shown = new Set(paragraphs.flatMap((p) => p.lines.map((l) => l.id)));
  paragraphs.push(
    plainParagraph("recap", "recap", "recap", last.attempt.id, "What was done", setUpRecap(speeches, shown)),
  );
  return { paragraphs: inPageOrder(paragraphs), outcome: setUpOutcome(last) };
}

function opening(o: NamedOpening, s: SetUpSpeech, part: Part): Paragraph {
  return {
    ...plainParagraph(o.id, o.id.split(".")[0] ?? o.id, part, s.attempt.id, o.heading, o.sentences),
    refers: o.refers,
  };
}

/** The next case: what is assumed now, and the forces that then act. */
function caseOpening(s: SetUpSpeech, index: number): Paragraph[] {
  const prefix = `case${index + 1}.`;
  const states = [
    ...s.setUp.ropes
      .filter((r) => s.attempt.hypothesis.ropes[r.id] === "slack")
      .map((r) => say`${s.rope(r.id)} hangs slack`),
    ...s.setUp.contacts.flatMap((c) => {
      const state = s.attempt.hypothesis.contacts[c.id];
      if (state?.touch === "lifted") return [say`${s.body(c.on)} does not touch ${s.surface(c.id)}`];
      if (state?.grip === "slides") return [say`${s.body(c.on)} slides on ${s.surface(c.id)}`];
      return state?.grip === "sticks" ? [say`${s.body(c.on)} does not slide on ${s.surface(c.id)}`] : [];
    }),
  ];
  const assume = say`Now assume: ${states.flatMap((x, i) => (i === 0 ? x : say`; ${x}`))}. The forces change with it, and the laws are written anew.`;
  const head = plainParagraph(`${prefix}assume`, "assume", "case", s.attempt.id, "Another case", [
    states.length === 0 ? say`Now assume that everything is straight and in touch. The laws are written anew.` : assume,
    ...(s.setUp.hanging?.kind === "placed" ? hangingWords(s, s.setUp.hanging.at) : []),
  ]);
  const axes = plainParagraph(`${prefix}axes`, "axes", "case", s.attempt.id, "Axes", axesSentences(s).slice(0, -1));
  return [head, ...forcesOfBody(s, prefix).map((o) => opening(o, s, "case")), axes];
}

function passage(p: Passage, s: SetUpSpeech, numbering: Numbering, instead: Part | null): Paragraph {
  const speaker = SPEAKERS[p.data.kind as Kind] as (d: unknown, p: Passage, s: SetUpSpeech) => SpokenPassage;
  const spoken = speaker(p.data, p, s);
  const moves = instead === "check" || (instead === "case" && IN_CASE.has(spoken.part));
  return paragraphOf(p, moves ? { ...spoken, part: instead } : spoken, s, numbering);
}
