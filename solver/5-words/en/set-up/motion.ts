// How each body moves, as far as that is known or assumed before anything is solved.
import type { BodyMotion, MotionPart } from "../../../3-equations/types.ts";
import { listed, say } from "../../sentence.ts";
import { capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { alongWords } from "./directions.ts";
import { ownParts } from "./moved.ts";

/** The sentences of the paragraph on motion. */
export function motionWords(s: SetUpSpeech): Sentence[] {
  const { attempt, setUp } = s;
  const { motions } = attempt.equations;
  const still = motions.filter((m) => m.own.length === 0 && m.carried.length === 0);
  const carried = motions.filter((m) => m.carried.length > 0 && m.own.length === 0);
  const unknown = motions.filter((m) => m.own.some((p) => p.unknown));
  const stuck = setUp.contacts.filter((c) => attempt.hypothesis.contacts[c.id]?.grip === "sticks");
  const moving = motions.some((m) => m.own.length + m.carried.length > 0);
  return [
    ...stillWords(s, still),
    ...givenWords(s, motions),
    ...carriedWords(s, carried),
    ...unknownWords(s, unknown),
    ...(moving
      ? [
          say`The forces on a body add up to its mass times its acceleration, seen from the ground. The acceleration is not a force and gets no arrow among the forces.`,
        ]
      : []),
    ...(stuck.length > 0
      ? [
          say`Whether static friction can really hold ${listed(stuck.map((c) => s.body(c.on)))} is not known yet: assume that it does, solve, and check.`,
        ]
      : []),
  ];
}

function stillWords(s: SetUpSpeech, still: readonly BodyMotion[]): Sentence[] {
  const isSteady = (m: BodyMotion): boolean => {
    const { freedom } = s.bodyOf(m.body);
    return freedom.kind === "line" && freedom.value?.decimal === 0;
  };
  const isTried = (m: BodyMotion): boolean =>
    s.setUp.contacts.some((c) => c.on === m.body && s.attempt.hypothesis.contacts[c.id]?.grip === "sticks") &&
    s.bodyOf(m.body).freedom.kind === "line";
  const groups = [
    { who: still.filter((m) => !isSteady(m) && !isTried(m)), how: "at rest" },
    { who: still.filter(isTried), how: "taken to be at rest" },
    { who: still.filter(isSteady), how: "in steady motion" },
  ].filter((g) => g.who.length > 0);
  const each = groups.map(
    ({ who, how }) => say`${listed(who.map((m) => s.body(m.body)))} ${who.length > 1 ? "are" : "is"} ${how}`,
  );
  if (each.length === 0) return [];
  const steady = groups.some((g) => g.how === "in steady motion");
  return [
    capital(
      say`${listed(each)}: no acceleration${steady ? ", for the velocity stays as it is" : ""}. So the forces on ${still.length > 1 ? "each" : "it"} add up to zero along any axis.`,
    ),
  ];
}

/** A known acceleration by its letter: a = −1 m/s², counted positive to the right. */
const knownPart = (s: SetUpSpeech, p: MotionPart): Sentence =>
  say`${s.letter(p.letter)} = ${s.givenLetter(p.letter, s.units.acceleration)}, counted positive ${alongWords(p.toward)}`;

/** Accelerations that the problem gives. */
const givenWords = (s: SetUpSpeech, motions: readonly BodyMotion[]): Sentence[] =>
  motions.flatMap((m) => {
    const known = ownParts(s, m.body).filter((p) => !p.unknown);
    return known.length === 0
      ? []
      : [say`The acceleration of ${s.body(m.body)} is given: ${listed(known.map((p) => knownPart(s, p)))}.`];
  });

function carriedWords(s: SetUpSpeech, carried: readonly BodyMotion[]): Sentence[] {
  if (carried.length === 0) return [];
  const [move, have] = carried.length > 1 ? ["move", "have"] : ["moves", "has"];
  const parts = carried[0]?.carried.map((p) => knownPart(s, p)) ?? [];
  return [
    capital(
      say`${listed(carried.map((m) => s.body(m.body)))} ${move} with the supports and ${have} their acceleration, seen from the ground: ${listed(parts)}.`,
    ),
  ];
}

/** What is new about the motion in a further attempt: accelerations that are to be found now and were not before. */
export function newMotionWords(s: SetUpSpeech, before: SetUpSpeech): Sentence[] {
  const letters = (speech: SetUpSpeech): Set<string> =>
    new Set(speech.attempt.equations.motions.flatMap((m) => m.own.flatMap((p) => (p.unknown ? [p.letter] : []))));
  const old = letters(before);
  const fresh = s.attempt.equations.motions.filter((m) => m.own.some((p) => p.unknown && !old.has(p.letter)));
  return unknownWords(s, fresh);
}

/** Letters of accelerations with whose they are; those that are counted positive the same way together. */
function countedWords(s: SetUpSpeech, unknown: readonly BodyMotion[]): Sentence {
  const named = unknown.flatMap((m) => {
    const { freedom } = s.bodyOf(m.body);
    const on = freedom.kind === "line" ? freedom.seenFrom : null;
    const seen = on !== null ? ` seen from ${s.body(on)}` : m.carried.length > 0 ? " seen from the supports" : "";
    return ownParts(s, m.body)
      .filter((p) => p.unknown)
      .map((p) => ({ way: alongWords(p.toward), who: say`${s.letter(p.letter)} of ${s.body(m.body)}${seen}` }));
  });
  const clauses = [...new Set(named.map((n) => n.way))].map((way) => {
    const who = named.filter((n) => n.way === way).map((n) => n.who);
    return say`${listed(who)}, ${who.length > 1 ? (who.length > 2 ? "all " : "both ") : ""}counted positive ${way}`;
  });
  return clauses.flatMap((c, i) => say`${i === 0 ? "" : i === clauses.length - 1 ? "; and " : "; "}${c}`);
}

/** A body that does not slide on another one has its acceleration. */
function ridesOn(s: SetUpSpeech, m: BodyMotion): Sentence[] {
  const base = s.setUp.bodies.find((b) => m.own.some((p) => p.letter === b.letters.acceleration));
  if (base === undefined) return [];
  return [capital(say`${s.body(m.body)} does not slide on ${s.body(base.id)}, and so has the same acceleration.`)];
}

function unknownWords(s: SetUpSpeech, unknown: readonly BodyMotion[]): Sentence[] {
  const count = unknown.flatMap((m) => ownParts(s, m.body).filter((p) => p.unknown)).length;
  if (count === 0) return [];
  const riders = unknown.flatMap((m) => {
    const { freedom } = s.bodyOf(m.body);
    const base = freedom.kind === "line" ? freedom.seenFrom : null;
    return base === null || ownParts(s, m.body).length === 0 ? [] : [{ body: s.body(m.body), base: s.body(base) }];
  });
  const along = unknown.flatMap((m) => (ownParts(s, m.body).length > 0 ? [] : ridesOn(s, m)));
  return [
    count > 1
      ? say`Not known yet are the accelerations ${countedWords(s, unknown)}. One that comes out negative points the other way.`
      : say`Not known yet is the acceleration ${countedWords(s, unknown)}. Should it come out negative, it points the other way.`,
    ...along,
    ...riders.map(
      ({ body, base }) =>
        say`Seen from the ground, ${body} has both: the acceleration of ${base} and, added to it, its own along ${base}.`,
    ),
  ];
}
