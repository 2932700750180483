// What ties the motions of bodies together. A rope that keeps its length: what its ends take in, they give out; so the accelerations along
// its pulls, seen from the supports, add up to zero. A surface that is not left: no acceleration apart along its normal. What sticks: none along it.
import type { Contact, SetUp, SetUpRope } from "../../1-bodies/types.ts";
import type { SetUpHypothesis } from "../../2-forces/types.ts";
import { same } from "../../algebra/expr.ts";
import { quarterTurn } from "../../algebra/turned.ts";
import type { Turned } from "../../algebra/turned.ts";
import type { BodyMotion, MotionPart, MotionTerm, Tie } from "../set-up-types.ts";
import { alongDirection } from "./law.ts";
import { contactAlong } from "./motion.ts";

/** All ties that say something of an unknown. */
export function tiesOf(setUp: SetUp, hypothesis: SetUpHypothesis, motions: readonly BodyMotion[]): Tie[] {
  const ropes = setUp.ropes
    .filter((rope) => hypothesis.ropes[rope.id] === "taut")
    .map((rope): Tie => ({
      kind: "rope",
      id: `rope.${rope.id}`,
      of: rope.id,
      terms: takenIn(setUp, motions, rope),
    }));
  const contacts = setUp.contacts.flatMap((contact): Tie[] => {
    const state = hypothesis.contacts[contact.id];
    if (state === undefined || state.touch === "lifted") return [];
    const touch: Tie = {
      kind: "touch",
      id: `touch.${contact.id}`,
      of: contact.id,
      terms: apart(setUp, motions, contact, contact.normal),
    };
    if (state.grip !== "sticks" && state.grip !== "held") return [touch];
    const body = setUp.bodies.find((b) => b.id === contact.on);
    if (body !== undefined && contactAlong(setUp, body) === contact) return [touch];
    const terms = apart(setUp, motions, contact, contact.tangent);
    return [touch, { kind: "stick", id: `stick.${contact.id}`, of: contact.id, terms }];
  });
  return [...ropes, ...contacts].filter(
    (tie) => tie.terms.some((t) => t.unknown) || (tie.terms.length > 0 && !isGiven(setUp, tie)),
  );
}

/** Whether the problem itself says how a body of the tie accelerates: it is then taken at its word. */
function isGiven(setUp: SetUp, tie: Tie): boolean {
  const rope = setUp.ropes.find((r) => r.id === tie.of);
  const contact = setUp.contacts.find((c) => c.id === tie.of);
  const bodies = [...(rope?.pulls.map((p) => p.on) ?? []), contact?.on, contact?.of];
  return setUp.bodies.some(
    ({ id, freedom }) =>
      bodies.includes(id) &&
      (freedom.kind === "given" || (freedom.kind === "line" && freedom.stated && freedom.value !== null)),
  );
}

/** How fast the ends of a rope come to take in more of it, second by second squared: zero while it is taut. */
export const takenIn = (setUp: SetUp, motions: readonly BodyMotion[], rope: SetUpRope): MotionTerm[] =>
  joined(rope.pulls.flatMap((pull) => along(setUp, motions, pull.on, pull.toward)));

/** The acceleration of a contact's body along a direction, as seen from the surface. */
export const apart = (
  setUp: SetUp,
  motions: readonly BodyMotion[],
  contact: Contact,
  direction: Turned,
): MotionTerm[] =>
  joined([
    ...along(setUp, motions, contact.on, direction),
    ...along(setUp, motions, contact.of, quarterTurn(direction, 2)),
  ]);

const along = (setUp: SetUp, motions: readonly BodyMotion[], body: string | null, direction: Turned): MotionTerm[] =>
  alongDirection(setUp, seenFromSupports(setUp, motions, body), direction);

/** A body's acceleration less that of the supports; a support's own is nothing. */
function seenFromSupports(setUp: SetUp, motions: readonly BodyMotion[], body: string | null): MotionPart[] {
  const motion = motions.find((m) => m.body === body);
  if (motion === undefined) return [];
  if (motion.carried.length > 0) return [...motion.own];
  const frame = motions.find((m) => m.carried.length > 0)?.carried ?? frameOf(setUp);
  const isGround = motion.own.some((p) => p.letter.endsWith("x") || p.letter.endsWith("y"));
  return isGround
    ? [...motion.own, ...frame.map((p) => ({ ...p, toward: quarterTurn(p.toward, 2) }))]
    : [...motion.own];
}

/** The supports' acceleration, where no body is carried by them. */
function frameOf(setUp: SetUp): MotionPart[] {
  const axis = (letter: string, quarters: 0 | 1): MotionPart => ({
    letter,
    unknown: false,
    toward: { heading: { degrees: 0, side: 1, rise: 0, angle: "" }, quarters },
  });
  return [
    ...(setUp.frame.x.decimal === 0 ? [] : [axis("Ax", 0)]),
    ...(setUp.frame.y.decimal === 0 ? [] : [axis("Ay", 1)]),
  ];
}

/** Terms of one letter and factor taken together; those that cancel go. */
function joined(terms: readonly MotionTerm[]): MotionTerm[] {
  const kept: MotionTerm[] = [];
  for (const term of terms) {
    const twin = kept.findIndex(
      (other) => other.letter === term.letter && other.sign === -term.sign && same(other.factor, term.factor),
    );
    if (twin >= 0) kept.splice(twin, 1);
    else kept.push(term);
  }
  return kept;
}
