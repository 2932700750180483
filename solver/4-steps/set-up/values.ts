// What the letters of a set-up stand for before anything is solved.
import type { SetUp, SetUpBody } from "../../1-bodies/types.ts";
import { decimal } from "../../algebra/evaluate.ts";
import type { Value, Values } from "../../algebra/evaluate.ts";
import type { Expr } from "../../algebra/expr.ts";
import { isZero } from "../../../shared/exact/index.ts";
import { quarterAngles, valueOfExpr, ZERO_VALUE } from "../values.ts";
import type { AttemptValues } from "../values.ts";

/** The givens of a set-up: masses, weights, g, accelerations, coefficients, sizes of pushes; and every angle. */
export function setUpValues(setUp: SetUp): AttemptValues {
  const symbols = new Map<string, Value>([["g", setUp.gravity]]);
  const angles = new Map(setUp.angles);
  symbols.set("Ax", setUp.frame.x);
  symbols.set("Ay", setUp.frame.y);
  for (const body of setUp.bodies) addBody(symbols, body);
  for (const contact of setUp.contacts) {
    if (contact.staticFriction !== null) symbols.set(contact.coefficients.static, contact.staticFriction);
    if (contact.kineticFriction !== null) symbols.set(contact.coefficients.kinetic, contact.kineticFriction);
  }
  for (const push of setUp.pushes) if (push.size !== null) symbols.set(push.id, push.size);
  quarterAngles(symbols, angles);
  return { symbols, angles };
}

function addBody(symbols: Map<string, Value>, body: SetUpBody): void {
  const { letters, freedom } = body;
  if (!body.massless) {
    if (body.givenBy === "weight") symbols.set(letters.weightId, body.weight);
    else symbols.set(massLetter(body), body.mass);
  }
  if (freedom.kind === "given") {
    symbols.set(`${letters.acceleration}x`, body.acceleration.x);
    symbols.set(`${letters.acceleration}y`, body.acceleration.y);
  }
  if (freedom.kind === "line" && freedom.value !== null) symbols.set(letters.acceleration, freedom.value);
}

/** The size of an expression before its terms cancel: the sum of the sizes of its terms, also inside brackets and above bars. */
export function sizeOf(e: Expr, values: Values): number {
  switch (e.kind) {
    case "sum":
      return e.terms.reduce((total, t) => total + sizeOf(t, values), 0);
    case "product":
      return e.factors.reduce((total, f) => total * sizeOf(f, values), 1);
    case "quotient":
      return sizeOf(e.over, values) / Math.abs(decimal(e.under, values));
    case "negative":
      return sizeOf(e.of, values);
    default:
      return Math.abs(decimal(e, values));
  }
}

/** Beside the size of its terms, a number smaller than this is what rounding left of zero. */
const ROUNDED_OFF = 1e-13;

/** The value of an expression, zero where its terms cancel. */
export function cleanValue(e: Expr, values: Values): Value {
  const value = valueOfExpr(e, values);
  const none = value.exact === null ? Math.abs(value.decimal) <= ROUNDED_OFF * sizeOf(e, values) : isZero(value.exact);
  return none ? ZERO_VALUE : value;
}

/** The letter of a body's mass, where it is given by its mass. */
const massLetter = (body: SetUpBody): string => (body.letters.mass.kind === "symbol" ? body.letters.mass.id : "m");
