// Newton's second law for one body along one of its axes.
import type { SetUp, SetUpBody } from "../../1-bodies/types.ts";
import type { SetUpForce } from "../../2-forces/types.ts";
import { ONE } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { cosineBetween } from "../../algebra/turned.ts";
import type { Cosine, Turned } from "../../algebra/turned.ts";
import type { BodyAxes, BodyLaw, BodyMotion, ForcePart, MotionPart, MotionTerm } from "../set-up-types.ts";

/** What the laws of all bodies are made from. */
export interface LawInput {
  readonly setUp: SetUp;
  readonly forces: readonly SetUpForce[];
  readonly motions: readonly BodyMotion[];
  /** Names component letters, so that one letter never stands for two sizes. */
  readonly nameOf: (force: SetUpForce, axis: 0 | 1, factor: Expr) => string;
}

/** The laws of one body, along x and along y. */
export function lawsOfBody(input: LawInput, body: SetUpBody, axes: BodyAxes): readonly [BodyLaw, BodyLaw] {
  return [lawOf(input, body, axes.x, 0), lawOf(input, body, axes.y, 1)];
}

function lawOf(input: LawInput, body: SetUpBody, direction: Turned, axis: 0 | 1): BodyLaw {
  const parts: ForcePart[] = [];
  const without: string[] = [];
  for (const force of input.forces.filter((f) => f.on === body.id)) {
    const cosine = cosineBetween(direction, force.toward, input.setUp.angles);
    if (cosine.sign === 0) {
      if (!without.includes(force.ref)) without.push(force.ref);
      continue;
    }
    const factor = factorOf(cosine);
    const id = cosine.trig === null ? force.ref : input.nameOf(force, axis, factor);
    parts.push({ force, id, sign: cosine.sign, factor });
  }
  const motion = input.motions.find((m) => m.body === body.id);
  const moving = [...(motion?.own ?? []), ...(motion?.carried ?? [])];
  return {
    kind: "law",
    id: `${body.id}.${axis === 0 ? "x" : "y"}`,
    body: body.id,
    axis,
    parts,
    without,
    motion: alongDirection(input.setUp, moving, direction),
    letter: `${body.letters.acceleration}${axis === 0 ? "x" : "y"}`,
    mass: body.massless ? null : body.letters.mass,
  };
}

const factorOf = (cosine: Cosine): Expr =>
  cosine.trig === null ? ONE : { kind: "trig", fn: cosine.trig.fn, angle: cosine.trig.angle };

/** The parts of a motion along a direction. */
export function alongDirection(setUp: SetUp, parts: readonly MotionPart[], direction: Turned): MotionTerm[] {
  return parts.flatMap((part): MotionTerm[] => {
    const cosine = cosineBetween(direction, part.toward, setUp.angles);
    if (cosine.sign === 0) return [];
    return [{ letter: part.letter, unknown: part.unknown, sign: cosine.sign, factor: factorOf(cosine) }];
  });
}
