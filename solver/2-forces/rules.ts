// The rules a force takes from a table: a learner's slip is one row replaced.
import type { WorldBody, WorldRope } from "../1-bodies/types.ts";
import { ONE, ZERO, product, symbol, trig } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import type { AxisIndex, DirectionCosine, SetUpForce } from "./types.ts";

/** The table of rules that forces and equations are made by. */
export interface Rules {
  /** The cosine of a straight rope's direction along an axis. */
  readonly component: (rope: WorldRope, axis: AxisIndex) => DirectionCosine;
  /** The size of the weight, in letters. */
  readonly weight: (body: WorldBody) => Expr;
  /** Any force of a set-up of several bodies, as it should be; a slip gives another. */
  readonly setUpForce: (force: SetUpForce) => SetUpForce;
}

/** Side and rise by right triangle: the side next to the acute angle is the cosine (horizontal), the side opposite the sine (vertical). */
function component(rope: WorldRope, axis: AxisIndex): DirectionCosine {
  if (axis === 0)
    return { sign: rope.side, factor: rope.side === 0 ? ZERO : rope.rise === 0 ? ONE : trig("cos", rope.angle) };
  return { sign: rope.rise, factor: rope.rise === 0 ? ZERO : rope.side === 0 ? ONE : trig("sin", rope.angle) };
}

/** mg where the mass is given, W where the weight is. */
const weight = (body: WorldBody): Expr => (body.givenBy === "mass" ? product([symbol("m"), symbol("g")]) : symbol("W"));

/** The rules of mechanics as they are. */
export const standardRules: Rules = { component, weight, setUpForce: (force) => force };
