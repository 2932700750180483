// The forces on each body with the reason for each, and those that are absent with the reason for that.
import type { SetUpForce } from "../../../2-forces/types.ts";
import { say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import { Capital } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { countWord } from "../passage.ts";
import { wayWords } from "./directions.ts";
import { frictionRole, frictionSentence } from "./friction.ts";
import type { NamedOpening } from "./opening.ts";
import { pushWord } from "./pushes.ts";

/** What one attempt's forces are told with: what was explained once is not explained again. */
interface Telling {
  readonly s: SetUpSpeech;
  /** The attempt before; null in the first. */
  readonly before: SetUpSpeech | null;
  readonly told: Set<string>;
}

/** A paragraph of forces for each body whose forces are not just those of the attempt before; `prefix` keeps ids of further attempts apart. */
export function forcesOfBody(s: SetUpSpeech, prefix: string, before: SetUpSpeech | null): NamedOpening[] {
  const telling: Telling = { s, before, told: new Set() };
  return s.setUp.bodies.flatMap((body): NamedOpening[] => {
    const acting = forcesOn(s, body.id);
    const fresh = acting.filter((f) => !isAsBefore(telling, f));
    const missing = absent(telling, body.id);
    if (before !== null && fresh.length + missing.length === 0) return [];
    const sentences = fresh.map((f) => forceSentence(telling, f));
    const others = fresh.length > 0 ? "other forces" : "forces that remain";
    const rest = fresh.length < acting.length ? [say`The ${others} on ${s.body(body.id)} act as before.`] : [];
    return [
      {
        id: `${prefix}forces.${body.id}`,
        part: "forces",
        heading: `The forces on ${s.body(body.id)}`,
        sentences: [...(acting.length === 0 ? [say`Nothing acts on it.`] : sentences), ...missing, ...rest],
        refers: [...new Set(acting.map((f) => f.ref))],
      },
    ];
  });
}

/** The forces on a body, two strands of one rope as one. */
function forcesOn(s: SetUpSpeech, body: string): SetUpForce[] {
  const own = s.attempt.forces.filter((f) => f.on === body);
  return own.filter((f, i) => own.findIndex((o) => o.kind === f.kind && o.ref === f.ref) === i);
}

/** Whether the attempt before had the same force for the same reason. */
function isAsBefore({ s, before }: Telling, f: SetUpForce): boolean {
  if (before === null) return false;
  const same = (o: SetUpForce): boolean =>
    o.kind === f.kind && o.ref === f.ref && o.on === f.on && wayWords(o.toward) === wayWords(f.toward);
  return (
    before.attempt.forces.some(same) &&
    (f.kind !== "friction" || frictionRole(s, f.ref) === frictionRole(before, f.ref))
  );
}

/** Says something the first time it is asked for, and nothing after that. */
function once(told: Set<string>, key: string, words: string): string {
  if (told.has(key)) return "";
  told.add(key);
  return words;
}

function forceSentence({ s, before, told }: Telling, f: SetUpForce): Sentence {
  const body = s.body(f.on);
  switch (f.kind) {
    case "weight": {
      const afar = once(
        told,
        "weight",
        ` It acts from afar; every other force comes from something that touches ${body}.`,
      );
      if (f.unknown !== null) return say`Weight ${s.letter(f.ref)}: gravity pulls ${body} straight down.`;
      const { givenBy } = s.bodyOf(f.on);
      const size =
        givenBy === "weight" ? say`= ${s.givenOf(f.size, s.units.force)}` : s.sizeOf(f.size, s.units.force, f.ref);
      return say`Weight: gravity pulls ${body} straight down with ${s.math(f.size)} ${size}.${afar}`;
    }
    case "tension": {
      const strands = strandsOf(s, f);
      return strands > 1
        ? say`Tension ${s.letter(f.ref)}, ${strands === 2 ? "twice" : `${countWord(strands)} times`}: ${s.rope(f.from)} runs round ${body}, and each of its ${countWord(strands)} strands pulls, ${wayOfStrands(s, f)}.`
        : say`Tension ${s.letter(f.ref)}: ${s.rope(f.from)} pulls ${body} along itself, ${wayWords(f.toward)}.`;
    }
    case "push": {
      const push = s.setUp.pushes.find((p) => p.id === f.from);
      const word = push === undefined ? "push" : pushWord(s, push);
      return f.unknown === null
        ? say`${Capital(word)} ${s.letter(f.ref)} from outside, ${wayWords(f.toward)}: ${s.givenLetter(f.ref, s.units.force)}, as given.`
        : say`${Capital(word)} ${s.letter(f.ref)} from outside, ${wayWords(f.toward)}: its size is to be found.`;
    }
    case "normal":
      return normalSentence(s, told, f, before !== null);
    case "friction":
      return frictionSentence(s, f, once(told, `friction${f.ref}`, "first") === "");
  }
}

const strandsOf = (s: SetUpSpeech, f: SetUpForce): number =>
  s.attempt.forces.filter((o) => o.kind === f.kind && o.ref === f.ref && o.on === f.on).length;

/** The ways in which the strands of one rope pull a body, each once. */
function wayOfStrands(s: SetUpSpeech, f: SetUpForce): string {
  const strands = s.attempt.forces.filter((o) => o.kind === f.kind && o.ref === f.ref && o.on === f.on);
  const ways = [...new Set(strands.map((o) => wayWords(o.toward)))];
  if (ways.length === 1) return ways[0] ?? "";
  return ways.length === strands.length ? ways.map((w) => `one ${w}`).join(" and ") : ways.join(" or ");
}

function normalSentence(s: SetUpSpeech, told: Set<string>, f: SetUpForce, again: boolean): Sentence {
  const body = s.body(f.on);
  const way = wayWords(f.toward);
  if (f.by === null) {
    const why = again
      ? ""
      : once(told, "normal", " It is as large as it has to be to keep the two apart, and no more.");
    return say`Normal force ${s.letter(f.ref)}: ${s.surface(f.from)} pushes ${body} at right angles to where they touch, ${way}.${why}`;
  }
  const other = s.body(f.by);
  if (once(told, `normal${f.ref}`, "first") === "")
    return say`Normal force ${s.letter(f.ref)} again, as its partner by Newton's third law: ${other} pushes ${body} just as hard the other way, ${way}.`;
  const why = again ? "" : once(told, "normal", " It is as large as it has to be to keep the two apart, and no more.");
  return say`Normal force ${s.letter(f.ref)}: ${other} pushes ${body} at right angles to where they touch, ${way}.${why}`;
}

/** What one might expect and what does not act, with the reason. */
function absent({ s, before, told }: Telling, body: string): Sentence[] {
  const { setUp, attempt } = s;
  const kind = s.bodyOf(body);
  const sentences: Sentence[] = [];
  const own = setUp.contacts.filter((c) => c.on === body || c.of === body);
  if (before === null) {
    if (kind.massless) sentences.push(say`No weight, for it has no mass.`);
    else if (kind.weight.decimal === 0) sentences.push(say`No weight: ${s.letter("g")} is zero here.`);
  }
  for (const c of own) {
    const state = attempt.hypothesis.contacts[c.id];
    const other = c.on === body ? s.surface(c.id) : s.body(c.on);
    const wasLifted = before?.attempt.hypothesis.contacts[c.id]?.touch === "lifted";
    if (state?.touch === "lifted" && !wasLifted) sentences.push(say`No force from ${other}: they do not touch.`);
    else if (state?.touch === "touching" && c.staticFriction === null && before === null)
      sentences.push(...smoothWords(told, c.id, other));
  }
  if (own.length === 0 && kind.kind === "load" && before === null)
    sentences.push(say`No normal force and no friction: ${s.body(body)} touches no surface.`);
  for (const rope of setUp.ropes) {
    const slack = (speech: SetUpSpeech): boolean => speech.attempt.hypothesis.ropes[rope.id] === "slack";
    if (slack(s) && (before === null || !slack(before)) && rope.pulls.some((p) => p.on === body))
      sentences.push(say`${Capital(s.rope(rope.id))} hangs loose, and a loose rope pulls on nothing.`);
  }
  return sentences;
}

const smoothWords = (told: Set<string>, contact: string, other: string): Sentence[] =>
  once(told, `smooth${contact}`, "first") === "" ? [] : [say`No friction at ${other}: it counts as smooth.`];
