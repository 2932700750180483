// Stage 3: forces to equations, one law an axis. No order of solving is chosen here.
import type { Side, World, WorldBody } from "../1-bodies/types.ts";
import type { AxisIndex, Force, ForceList } from "../2-forces/types.ts";
import { product, quotient, symbol } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { known } from "../algebra/linear.ts";
import type { Term } from "../algebra/linear.ts";
import type { AxisLaw, AxisMotion, Component } from "./types.ts";

export type { AxisLaw, AxisMotion, Component } from "./types.ts";
export type * from "./set-up-types.ts";
export { apart, takenIn, writeEquations } from "./set-up/index.ts";
export type { AxesChoice } from "./set-up/index.ts";

const NAMES = ["horizontal", "vertical"] as const;
const LETTERS = ["x", "y"] as const;

/** The letter of an axis: x or y. */
export const axisLetter = (axis: AxisIndex): "x" | "y" => LETTERS[axis];

/** Newton's second law along the horizontal and the vertical axis of the ground. */
export function writeLaws(world: World, forces: ForceList): readonly [AxisLaw, AxisLaw] {
  return [writeLaw(world, forces, 0), writeLaw(world, forces, 1)];
}

function writeLaw(world: World, forces: ForceList, axis: AxisIndex): AxisLaw {
  const components: Component[] = [];
  const without: string[] = [];
  const knownTerms: Term[] = [];
  for (const force of forces.acting) {
    const found = componentOf(force, axis);
    if (force.kind === "weight") {
      const sign = force.cosines[axis]?.sign ?? 0;
      if (sign !== 0) knownTerms.push(known(sign, force.size, "weight"));
    } else if (found === null) without.push(force.id);
    else components.push(found);
  }
  const { body } = world;
  return {
    axis,
    name: NAMES[axis],
    components,
    without,
    known: knownTerms,
    massTimesAcceleration: product([massOf(body), symbol(`a${LETTERS[axis]}`)]),
    motion: motionAlong(world, axis),
    needed: neededSign(body, axis),
  };
}

function componentOf(force: Force, axis: AxisIndex): Component | null {
  if (force.kind === "weight") return null;
  const id = `${force.id}${LETTERS[axis]}`;
  if (force.kind === "free-tension") {
    const sign = force.sides[axis] ?? 0;
    // A component whose side is not known cannot be there: nothing along this axis calls for it, and the law will say so.
    return { id, force: force.id, axis, sign: sign === 0 ? 1 : sign, factor: null };
  }
  const cosine = force.cosines[axis];
  return cosine === undefined || cosine.sign === 0
    ? null
    : { id, force: force.id, axis, sign: cosine.sign, factor: cosine.factor };
}

/** The mass in letters: m, or W/g where the weight is given. */
export const massOf = (body: WorldBody): Expr =>
  body.givenBy === "mass" ? symbol("m") : quotient(symbol("W"), symbol("g"));

function motionAlong(world: World, axis: AxisIndex): AxisMotion {
  const { x, y } = world.body.acceleration;
  const a = axis === 0 ? x : y;
  if (a.decimal === 0) return { kind: "none" };
  return axis === 1 && world.body.lift === 0 && world.gravity.decimal !== 0 ? { kind: "free-fall" } : { kind: "given" };
}

const neededSign = (body: WorldBody, axis: AxisIndex): Side => (axis === 0 ? body.push : body.lift);
