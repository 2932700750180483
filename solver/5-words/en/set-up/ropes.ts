// What each rope joins, place by place along it.
import type { SetUpPull, SetUpRope } from "../../../1-bodies/types.ts";
import { degreesOfTurned } from "../../../algebra/turned.ts";
import { MINUS } from "../../../../shared/format/index.ts";
import { say } from "../../sentence.ts";
import { capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { headingWords } from "./directions.ts";

/** All sentences about ropes. */
export function ropeSentences(s: SetUpSpeech): Sentence[] {
  const { ropes, bodies } = s.setUp;
  const placed = ropes.some((r) => r.anchor !== null) || (ropes.length > 0 && bodies.some((b) => b.at !== null));
  const unit = s.units.length === "m" ? "metres" : "feet";
  return [
    ...ropes.map((r) => capital(ropeSentence(s, r))),
    ...(placed ? [say`A place is how far to the right and how far up, in ${unit}.`] : []),
  ];
}

/** What a rope joins. */
function ropeSentence(s: SetUpSpeech, rope: SetUpRope): Sentence {
  const [first, second] = rope.pulls;
  if (first === undefined) return [];
  const called = say`${s.rope(rope.id)} (tension ${s.letter(rope.id)})`;
  const body = s.body(first.on);
  const at = (id: string): Sentence => {
    const place = s.bodyOf(id).at;
    return place === null ? say`${s.body(id)}` : say`${s.body(id)} at ${placeWords(s, place)}`;
  };
  if (rope.length !== null && rope.anchor !== null)
    return say`${called}, ${written(s, rope.length.decimal)} ${s.units.length} long, is tied to a support at ${placeWords(s, rope.anchor)} and to ${body}.`;
  if (second === undefined) {
    const end = rope.anchor === null ? say`a support` : say`a support at ${placeWords(s, rope.anchor)}`;
    return say`${called} runs from ${at(first.on)} ${headingWords(s, first.toward.heading)}, to ${end}.`;
  }
  if (rope.pulls.length === 2 && isStraight(first, second))
    return say`${called} joins ${at(first.on)} to ${at(second.on)}: from ${body} it runs ${headingWords(s, first.toward.heading)}.`;
  return say`${called} runs ${joined(places(s, rope.pulls))}.`;
}

const placeWords = (s: SetUpSpeech, at: { readonly x: number; readonly y: number }): Sentence =>
  say`(${written(s, at.x)}${s.settings.mark === "," ? ";" : ","} ${written(s, at.y)})`;

/** A given number as it was written, near enough for a place or a length. */
const written = (s: SetUpSpeech, x: number): string =>
  String(Number(x.toPrecision(12)))
    .replace("-", MINUS)
    .replace(".", s.settings.mark);

/** Whether two pulls face each other along one straight piece of rope. */
function isStraight(a: SetUpPull, b: SetUpPull): boolean {
  const apart = Math.abs(degreesOfTurned(a.toward) - degreesOfTurned(b.toward)) % 360;
  return a.on !== b.on && Math.abs(apart - 180) < 1e-6;
}

/** The places of a rope in order: where it leaves each body, which way, and what it runs round or over. */
function places(s: SetUpSpeech, pulls: readonly SetUpPull[]): Sentence[] {
  const clauses: Sentence[] = [];
  const isRound = (i: number): boolean => i < pulls.length && pulls[i]?.on === pulls[i + 1]?.on;
  const way = (p: SetUpPull, back = false): Sentence => headingWords(s, p.toward.heading, back);
  for (let i = 0; i < pulls.length;) {
    const here = pulls[i];
    if (here === undefined) break;
    const width = isRound(i) ? 2 : 1;
    const last = pulls[i + width - 1] ?? here;
    const next = pulls[i + width];
    if (i === 0 && width === 2) clauses.push(say`from a support ${way(here, true)}`);
    if (width === 2) clauses.push(say`round ${s.body(here.on)}`);
    const leaves = i === 0 && width === 1 ? say`from ${s.body(here.on)} ${way(last)}` : way(last);
    i += width;
    if (next === undefined) {
      if (width === 2) clauses.push(say`${leaves} to a support`);
      break;
    }
    // On to the next body: straight, or over a pulley that turns the rope.
    const turns = !isStraight(last, next);
    if (turns) clauses.push(leaves, say`over a fixed pulley`);
    const arrives = turns ? way(next, true) : leaves;
    clauses.push(isRound(i) ? arrives : say`${arrives} to ${s.body(next.on)}`);
  }
  return clauses;
}

const joined = (clauses: readonly Sentence[]): Sentence =>
  clauses.flatMap((c, i) => say`${i === 0 ? "" : i === clauses.length - 1 ? ", and " : ", "}${c}`);
