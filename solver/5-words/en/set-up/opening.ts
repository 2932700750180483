// The paragraphs before any law: problem, picture, motion, forces of each body, axes.
import { symbol } from "../../../algebra/expr.ts";
import type { Place } from "../../../1-bodies/types.ts";
import type { BodyAxes } from "../../../3-equations/types.ts";
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import { Capital } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import type { Opening } from "../opening.ts";
import { alongWords, headingWords } from "./directions.ts";
import { forcesOfBody } from "./forces.ts";
import { problemSentences } from "./problem.ts";

/** An opening paragraph with its id. */
export type NamedOpening = Opening & { readonly id: string };

/** The opening paragraphs of the first attempt. */
export function setUpOpenings(s: SetUpSpeech): NamedOpening[] {
  const letters = s.setUp.ropes.map((r) => r.id);
  return [
    { id: "problem", part: "problem", heading: "The problem", sentences: problemSentences(s), refers: letters },
    { id: "guess", part: "problem", heading: "A guess first", sentences: [guess(s)], refers: [] },
    { id: "situation", part: "picture", heading: "The situation", sentences: situation(s), refers: letters },
    { id: "motion", part: "motion", heading: "How it moves", sentences: motion(s), refers: [] },
    ...forcesOfBody(s, ""),
    {
      id: "diagram",
      part: "diagram",
      heading: s.setUp.bodies.length > 1 ? "A diagram for each body" : "The force diagram",
      sentences: diagram(s),
      refers: [],
    },
    { id: "axes", part: "axes", heading: "Axes and signs", sentences: axesSentences(s), refers: [] },
  ];
}

function guess(s: SetUpSpeech): Sentence {
  const { setUp } = s;
  const [ropes, rough] = [setUp.ropes.length, setUp.contacts.some((c) => c.staticFriction !== null)];
  const moves = setUp.bodies.some((b) => b.freedom.kind === "line" && b.freedom.value === null);
  if (rough)
    return say`Before any algebra: does anything slide, and if so which way? Settle on a guess and keep it for the check.`;
  if (moves)
    return say`Before any algebra: which way will it go, and is the acceleration a large or a small part of ${s.math(symbol("g"))}? Settle on a guess and keep it for the check.`;
  return ropes > 1
    ? say`Before any algebra: which rope pulls hardest, and does any pull with more than the whole weight? Settle on a guess and keep it for the check.`
    : say`Before any algebra: how large will the forces be beside the weight? Settle on a guess and keep it for the check.`;
}

function situation(s: SetUpSpeech): Sentence[] {
  const { setUp } = s;
  const count = setUp.bodies.length;
  const each =
    count > 1
      ? say`Each body is followed on its own, with the forces on it and no others.`
      : say`We follow ${s.body(setUp.bodies[0]?.id ?? "")} alone.`;
  const turns = setUp.ropes.some((r) => r.pulls.length > 1);
  const ropes =
    setUp.ropes.length === 0
      ? []
      : [
          say`Ropes are light and do not stretch, so each pulls equally hard all along its length${turns ? ", also round a pulley that turns without friction" : ""}. Bodies count as points.`,
        ];
  const { hanging } = setUp;
  const place = hanging?.kind === "placed" ? hangingWords(s, hanging.at) : [];
  return [say`Drawn with true angles. ${each}`, ...ropes, ...place];
}

/** Where lengths of ropes put the body, and which way the straight ones then run. */
export function hangingWords(s: SetUpSpeech, at: Place): Sentence[] {
  const straight = s.setUp.ropes.filter((r) => s.attempt.hypothesis.ropes[r.id] === "taut");
  const body = s.body(s.setUp.bodies[0]?.id ?? "");
  const where = say`at ${s.figure(at.x, "")} to the right and ${s.figure(at.y, "")} up, in ${s.units.length === "m" ? "metres" : "feet"}`;
  const ways = straight.map((r) => say`${s.rope(r.id)} runs ${headingWords(s, r.pulls[0]?.toward.heading ?? NOWHERE)}`);
  return [
    straight.length > 1
      ? say`If both ropes are straight, ${body} is as far from each anchor as its rope is long, at the lower of the two points where the two circles meet: ${where}. There ${listed(ways)}.`
      : say`On one straight rope ${body} comes to rest ${where}.`,
  ];
}

const NOWHERE = { degrees: 90, side: 0, rise: 1, angle: "" } as const;

function motion(s: SetUpSpeech): Sentence[] {
  const { attempt, setUp } = s;
  const sentences: Sentence[] = [];
  const still = attempt.equations.motions.filter((m) => m.own.length === 0 && m.carried.length === 0);
  const loads = still.filter((m) => s.bodyOf(m.body).kind !== "knot" || setUp.bodies.length === 1);
  const moving = attempt.equations.motions.filter((m) => m.own.some((p) => p.unknown));
  const stuck = setUp.contacts.filter((c) => attempt.hypothesis.contacts[c.id]?.grip === "sticks");
  if (loads.length > 0)
    sentences.push(
      say`${Capital(say2(loads.map((m) => s.body(m.body))))} ${loads.length > 1 ? "are" : "is"} ${stuck.length > 0 ? "taken to be at rest" : loads.some((m) => isSteady(s, m.body)) ? "in steady motion" : "at rest"}: no acceleration. By Newton's second law the forces on ${loads.length > 1 ? "each" : "it"} then add up to zero along each axis.`,
    );
  for (const m of moving)
    sentences.push(
      say`${Capital(s.body(m.body))} has an acceleration that is not known yet: ${listed(m.own.filter((p) => p.unknown).map((p) => say`${s.letter(p.letter)}, counted positive ${alongWords(p.toward)}`))}. Should it come out negative, it points the other way.`,
    );
  const carried = attempt.equations.motions.filter((m) => m.carried.length > 0 && m.own.length === 0);
  if (carried.length > 0)
    sentences.push(
      say`${Capital(say2(carried.map((m) => s.body(m.body))))} ${carried.length > 1 ? "move" : "moves"} with the supports and ${carried.length > 1 ? "have" : "has"} their acceleration, seen from the ground.`,
    );
  if (moving.length > 0 || carried.length > 0)
    sentences.push(
      say`The forces on a body add up to its mass times its acceleration. The acceleration is not a force and gets no arrow among the forces.`,
    );
  if (stuck.length > 0)
    sentences.push(
      say`Whether static friction can really hold ${listed(stuck.map((c) => s.body(c.on)))} is not known yet: assume that it does, solve, and check.`,
    );
  return sentences;
}

/** Whether a body moves at a steady velocity. */
function isSteady(s: SetUpSpeech, id: string): boolean {
  const { freedom } = s.bodyOf(id);
  return freedom.kind === "line" && freedom.value?.decimal === 0;
}

/** A list of names as plain words. */
const say2 = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1] ?? ""}`;

function diagram(s: SetUpSpeech): Sentence[] {
  const several = s.setUp.bodies.length > 1;
  return [
    say`Every force is an arrow that starts at the body it acts on and points the way it acts. ${several ? "Each body has a diagram of its own: a rope that joins two bodies appears in both, pulling each towards the other. " : ""}Open ends mark sizes that are not known yet.`,
  ];
}

/** The axes of each body and why these. */
export function axesSentences(s: SetUpSpeech): Sentence[] {
  const { axes } = s.attempt.equations;
  const tilted = axes.filter((a) => a.kind !== "level" && a.kind !== "counted");
  const counted = axes.filter((a) => a.kind === "counted");
  const level = axes.filter((a) => a.kind === "level");
  const sentences: Sentence[] = tilted.map((a) => tiltedWords(s, a));
  if (level.length > 0) {
    const who = tilted.length + counted.length === 0 ? say`` : say`For ${listed(level.map((a) => s.body(a.body)))}: `;
    const slope = s.setUp.contacts.some(
      (c) => level.some((a) => a.body === c.on) && c.tangent.heading.side !== 0 && c.tangent.heading.rise !== 0,
    );
    sentences.push(
      say`${who}${who.length === 0 ? "Take" : "take"} ${s.math(symbol("x"))} to the right and ${s.math(symbol("y"))} upwards${slope ? ", as asked for; then the forces of the slope have to be taken apart" : ": weights then lie along an axis and need not be taken apart"}.`,
    );
  }
  for (const a of counted) {
    const upright = alongWords(a.y) === "downwards";
    sentences.push(
      say`For ${s.body(a.body)} take ${s.math(symbol(upright ? "y" : "x"))} ${upright ? "downwards" : "to the left"}, the way in which its motion is counted.`,
    );
  }
  sentences.push(
    say`A letter of a force is its size; its sign is read from the diagram: plus along an axis, minus against it.${axes.length > 1 && tilted.length > 0 ? " Each body may have axes of its own; sizes are the same in all of them." : ""}`,
  );
  return sentences;
}

function tiltedWords(s: SetUpSpeech, a: BodyAxes): Sentence {
  const [x, y] = [s.math(symbol("x")), s.math(symbol("y"))];
  const body = s.body(a.body);
  return a.kind === "slope"
    ? say`For ${body} take ${x} along the slope, ${alongWords(a.x)}, and ${y} away from the slope: it can move only along ${x}, the normal force lies along ${y}, and of all forces only those that point neither way have to be taken apart. Level and upright axes would do as well, with more parts to write.`
    : say`For ${body} take ${x} along its line of motion and ${y} across it: all its acceleration then lies along ${x}.`;
}
