// How each body moves under a hypothesis: what is known of its acceleration, and what is left to be found.
import type { Contact, SetUp, SetUpBody } from "../../1-bodies/types.ts";
import type { SetUpHypothesis } from "../../2-forces/types.ts";
import { axisDirection, cosineBetween } from "../../algebra/turned.ts";
import type { Turned } from "../../algebra/turned.ts";
import type { BodyMotion, MotionPart } from "../set-up-types.ts";

/** The motion of every body. */
export function motionsOf(setUp: SetUp, hypothesis: SetUpHypothesis): readonly BodyMotion[] {
  return setUp.bodies.map((body) => ({ body: body.id, ...motionOf(setUp, hypothesis, body, []) }));
}

type Parts = Omit<BodyMotion, "body">;

function motionOf(setUp: SetUp, hypothesis: SetUpHypothesis, body: SetUpBody, above: readonly string[]): Parts {
  const { freedom } = body;
  const carried = frameParts(setUp);
  if (freedom.kind === "given") return { own: givenParts(body), carried: [] };
  if (freedom.kind === "rest") return { own: [], carried };
  if (freedom.kind === "free") return { own: freeParts(body), carried: [] };
  const under = contactAlong(setUp, body);
  const state = under === null ? undefined : hypothesis.contacts[under.id];
  // A stated line is kept whatever happens; a body of which nothing was said is free once it does not touch.
  if (state?.touch === "lifted" && !freedom.stated) return { own: freeParts(body), carried: [] };
  const base = freedom.seenFrom === null ? null : setUp.bodies.find((b) => b.id === freedom.seenFrom);
  const from =
    base == null || above.includes(base.id)
      ? { own: [], carried }
      : motionOf(setUp, hypothesis, base, [...above, body.id]);
  const holds = state?.touch === "touching" && (state.grip === "sticks" || state.grip === "held");
  if (holds && freedom.value === null) return from;
  const line: MotionPart = {
    letter: body.letters.acceleration,
    unknown: freedom.value === null,
    toward: freedom.along,
  };
  return { own: freedom.value?.decimal === 0 ? from.own : [...from.own, line], carried: from.carried };
}

/** The contact along which a body's line of motion runs: what holds it there holds it still. */
export function contactAlong(setUp: SetUp, body: SetUpBody): Contact | null {
  const { freedom } = body;
  if (freedom.kind !== "line") return null;
  const along = (c: Contact): boolean =>
    c.on === body.id && c.of === freedom.seenFrom && isAcross(setUp, c.normal, freedom.along);
  return setUp.contacts.find(along) ?? null;
}

const isAcross = (setUp: SetUp, a: Turned, b: Turned): boolean => cosineBetween(a, b, setUp.angles).sign === 0;

function frameParts(setUp: SetUp): MotionPart[] {
  const { x, y } = setUp.frame;
  const parts: MotionPart[] = [];
  if (x.decimal !== 0) parts.push({ letter: "Ax", unknown: false, toward: axisDirection(0) });
  if (y.decimal !== 0) parts.push({ letter: "Ay", unknown: false, toward: axisDirection(1) });
  return parts;
}

function givenParts(body: SetUpBody): MotionPart[] {
  const { x, y } = body.acceleration;
  const parts: MotionPart[] = [];
  if (x.decimal !== 0) parts.push(groundPart(body, 0, false));
  if (y.decimal !== 0) parts.push(groundPart(body, 1, false));
  return parts;
}

const freeParts = (body: SetUpBody): MotionPart[] => [groundPart(body, 0, true), groundPart(body, 1, true)];

const groundPart = (body: SetUpBody, axis: 0 | 1, unknown: boolean): MotionPart => ({
  letter: `${body.letters.acceleration}${axis === 0 ? "x" : "y"}`,
  unknown,
  toward: axisDirection(axis),
});
