// What ropes and surfaces ask of the motion, with the reason.
import type { SetUpRope } from "../../../1-bodies/types.ts";
import type { Tie } from "../../../3-equations/types.ts";
import { say } from "../../sentence.ts";
import { Capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { countWord } from "../passage.ts";
import type { SetUpSpeaker } from "./passage.ts";

/** The passage of the ties. */
export const ties: SetUpSpeaker<"ties"> = (d, _, s) => ({
  part: "law",
  heading: "What ties the motions together",
  before: d.ties.map((tie) => (tie.kind === "rope" ? ropeTie(s, tie) : contactTie(s, tie))),
  after: [],
  refers: d.ties.map((t) => t.of),
});

const named = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1] ?? ""}`;

/** Bodies of a rope: those that may move, with how many strands end or turn at each. */
function strandsOf(
  s: SetUpSpeech,
  rope: SetUpRope,
): { readonly body: string; readonly count: number; readonly moves: boolean }[] {
  const { motions } = s.attempt.equations;
  return [...new Set(rope.pulls.map((p) => p.on))].map((body) => ({
    body,
    count: rope.pulls.filter((p) => p.on === body).length,
    moves: motions.some((m) => m.body === body && m.own.length > 0),
  }));
}

function ropeTie(s: SetUpSpeech, tie: Tie): Sentence {
  const rope = s.ropeOf(tie.of);
  const strands = strandsOf(s, rope);
  const moving = strands.filter((x) => x.moves);
  const [a, b, c] = moving;
  const start = say`${Capital(s.rope(rope.id))} does not stretch`;
  const name = (x: { readonly body: string } | undefined): string => (x === undefined ? "" : s.body(x.body));
  if (a === undefined) return say`${start}, and nothing at it may move.`;
  const still = strands.filter((x) => !x.moves);
  if (b === undefined) {
    const rest =
      still.length > 0
        ? ` ${Capital(named(still.map(name)))} ${still.length > 1 ? "are" : "is"} at rest, so`
        : " Its other end is held fast, so";
    const what = a.count > 1 && still.length === 0 ? " Both its ends are held fast, so" : rest;
    return say`${start}.${what} ${name(a)} has no acceleration along it either.`;
  }
  if (c === undefined && a.count === 1 && b.count === 1)
    return say`${start}: what one end takes in, the other gives out. So ${name(a)} and ${name(b)} have accelerations of the same size along it.`;
  // Slanting strands get longer by less than the pulley moves.
  const round = tie.terms.every((t) => t.factor.kind === "integer") ? moving.filter((x) => x.count > 1) : [];
  const ends = moving.filter((x) => x.count === 1);
  const strandCount = round[0]?.count ?? 0;
  if (round.length === 1 && ends.length === 1)
    return say`${start}. For every metre that ${name(round[0])} moves, each of the ${countWord(strandCount)} strands at it gets a metre longer or shorter, and ${name(ends[0])} has to make up for ${strandCount === 2 ? "both" : `all ${countWord(strandCount)}`}. So ${name(ends[0])} has ${timesWord(strandCount)} the acceleration of ${name(round[0])}.`;
  if (round.length === 1 && ends.length === 2)
    return say`${start}. For every metre that ${name(round[0])} moves, the ${countWord(strandCount)} strands at it need ${countWord(strandCount)} metres of rope, which ${named(ends.map(name))} together have to give or take. So their accelerations add up, with their signs, to ${timesWord(strandCount)} that of ${name(round[0])}.`;
  return say`${start}: what some of its strands take in, the others give out; where it runs round a pulley, two strands do so at once.`;
}

/** twice, three times. */
const timesWord = (n: number): string => (n === 2 ? "twice" : `${countWord(n)} times`);

function contactTie(s: SetUpSpeech, tie: Tie): Sentence {
  const c = s.contactOf(tie.of);
  const [body, surface] = [s.body(c.on), s.surface(c.id)];
  const { motions } = s.attempt.equations;
  const isAlone = c.of === null || !motions.some((m) => m.body === c.of && m.own.length > 0);
  if (tie.kind === "touch")
    return isAlone
      ? say`As long as ${body} stays on ${surface}, it neither sinks in nor comes off: no acceleration at right angles to where they touch${c.of === null ? "" : ", as seen from there"}.`
      : say`As long as ${body} and ${surface} stay in touch, they have the same acceleration at right angles to where they touch.`;
  return isAlone
    ? say`${Capital(body)} does not slide on ${surface}: no acceleration along it.`
    : say`${Capital(body)} does not slide on ${surface}: both have the same acceleration along it.`;
}
