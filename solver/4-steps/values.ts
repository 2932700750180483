// What the letters stand for in one attempt: the givens, the sizes found, and the components that follow from them.
import { product, symbol } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { decimal, exactly } from "../algebra/evaluate.ts";
import type { AngleValue, Value, Values } from "../algebra/evaluate.ts";
import { isZero, rational, surd, toNumber, zero } from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";
import type { World, WorldRope } from "../1-bodies/types.ts";
import type { Component } from "../3-equations/types.ts";
import type { Solved } from "./types.ts";
import type { PullSign } from "./verdict.ts";

/** Values that can still be added to while an attempt is written. */
export interface AttemptValues extends Values {
  readonly symbols: Map<string, Value>;
  readonly angles: Map<string, AngleValue>;
}

/** Zero, exactly. */
export const ZERO_VALUE: Value = { decimal: 0, exact: zero };

/** The name of a quarter turn, where an angle is taken from the vertical. */
export const QUARTER = "quarter";
/** The name of a rope's angle from the vertical. */
export const verticalOf = (rope: WorldRope): string => `${rope.id}Vertical`;

/** An angle that is only printed: degrees as given, radians for evaluating. */
function addGivenAngle(
  symbols: Map<string, Value>,
  angles: Map<string, AngleValue>,
  id: string,
  degrees: Rational,
): void {
  const radians = (degrees.valueOf() * Math.PI) / 180;
  symbols.set(id, { decimal: radians, exact: null });
  angles.set(id, {
    degrees,
    radians,
    sine: { decimal: Math.sin(radians), exact: null },
    cosine: { decimal: Math.cos(radians), exact: null },
  });
}

/** Makes an angle known that lines only print, in degrees. */
export const givenAngle = (values: AttemptValues, id: string, degrees: Rational): void =>
  addGivenAngle(values.symbols, values.angles, id, degrees);

/** Makes a given number known. */
export const givenNumber = (values: AttemptValues, id: string, x: Rational): void => {
  values.symbols.set(id, valueOfRational(x));
};

/** Makes the quarter turn known, for lines in which an angle is taken from it. */
export function quarterAngles(symbols: Map<string, Value>, angles: Map<string, AngleValue>): void {
  addGivenAngle(symbols, angles, QUARTER, rational("90"));
}

/** The givens of a world. */
export function givenValues(world: World): AttemptValues {
  const { body } = world;
  const symbols = new Map<string, Value>();
  if (body.givenBy === "weight") symbols.set("W", body.weight);
  else if (body.mass !== null) symbols.set("m", body.mass);
  symbols.set("g", world.gravity);
  symbols.set("ax", body.acceleration.x);
  symbols.set("ay", body.acceleration.y);
  // What the problem gives stays, also where a failed attempt is shown at an acceleration of its own.
  symbols.set("axGiven", body.acceleration.x);
  symbols.set("ayGiven", body.acceleration.y);
  symbols.set("h", { decimal: 1, exact: surd(rational("1")) });
  const angles = new Map<string, AngleValue>();
  for (const rope of world.ropes) {
    angles.set(rope.angle, rope.acute);
    angles.set(rope.ownAngle, rope.acute);
    if (rope.written.from === "vertical") {
      addGivenAngle(symbols, angles, QUARTER, rational("90"));
      addGivenAngle(symbols, angles, verticalOf(rope), rope.written.angle);
    }
    if (rope.written.from === "slope") {
      symbols.set(`${rope.id}run`, valueOfRational(rope.written.run.abs()));
      symbols.set(`${rope.id}rise`, valueOfRational(rope.written.rise.abs()));
    }
  }
  return { symbols, angles };
}

const valueOfRational = (x: ReturnType<typeof rational>): Value => ({ decimal: x.valueOf(), exact: surd(x) });

/** The value of an expression, its decimal taken from the exact face where there is one. */
export function valueOfExpr(e: Expr, values: Values): Value {
  const exact = exactly(e, values);
  if (exact !== null) return { decimal: isZero(exact) ? 0 : toNumber(exact), exact };
  return { decimal: decimal(e, values), exact: null };
}

/** Adds the sizes found, in the order they were found; `signs` are the exact signs of the pulls where known. */
export function addSolved(values: AttemptValues, solved: readonly Solved[], signs: readonly PullSign[] = []): void {
  for (const s of solved) {
    // A pull that is zero by an exact comparison is zero, whatever rounding leaves of it.
    const isZeroPull = signs.some((p) => p.rope === s.unknown && p.sign === 0);
    values.symbols.set(s.unknown, isZeroPull ? ZERO_VALUE : valueOfExpr(s.expr, values));
  }
}

/** Adds the components of forces whose sizes are known by now. */
export function addComponents(values: AttemptValues, components: readonly Component[]): void {
  for (const c of components) {
    if (c.factor !== null && values.symbols.has(c.force))
      values.symbols.set(c.id, valueOfExpr(product([symbol(c.force), c.factor]), values));
  }
}
