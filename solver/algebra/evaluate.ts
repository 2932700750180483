// The decimal and the exact face of an expression: two evaluations of the same tree.
import {
  add,
  divide,
  isZero,
  multiply,
  negate,
  one,
  rational,
  squareRoot,
  surd,
  toNumber,
  zero,
} from "../../shared/exact/index.ts";
import type { Rational, Surd } from "../../shared/exact/index.ts";
import type { AngleSum, Expr, TrigName } from "./expr.ts";

/** A known number: its decimal, and its exact face where it has one. */
export interface Value {
  readonly decimal: number;
  readonly exact: Surd | null;
}

/** An angle between 0° and 90°: degrees where it was given in degrees, the sine and cosine of it, and radians. */
export interface AngleValue {
  readonly degrees: Rational | null;
  readonly radians: number;
  readonly sine: Value;
  readonly cosine: Value;
}

/** What the letters stand for. */
export interface Values {
  readonly symbols: ReadonlyMap<string, Value>;
  readonly angles: ReadonlyMap<string, AngleValue>;
}

/** Raised when an expression names a letter that has no value: a fault of the program, not of the problem. */
export class UnknownLetterError extends Error {}

function angleOf(values: Values, id: string): AngleValue {
  const found = values.angles.get(id);
  if (found === undefined) throw new UnknownLetterError(`no value for the angle ${id}`);
  return found;
}

/** The decimal value of an expression. Throws UnknownLetterError for a letter without a value. */
export function decimal(e: Expr, values: Values): number {
  switch (e.kind) {
    case "integer":
      return e.value;
    case "exact":
      return toNumber(e.value);
    case "symbol": {
      const found = values.symbols.get(e.id);
      if (found === undefined) throw new UnknownLetterError(`no value for ${e.id}`);
      return found.decimal;
    }
    case "trig":
      return decimalTrig(e.fn, e.angle, values);
    case "negative":
      return -decimal(e.of, values);
    case "sum": {
      let total = 0;
      for (const t of e.terms) total += decimal(t, values);
      return total;
    }
    case "product": {
      let total = 1;
      for (const f of e.factors) total *= decimal(f, values);
      return total;
    }
    case "quotient":
      return decimal(e.over, values) / decimal(e.under, values);
    case "root":
      return Math.sqrt(decimal(e.of, values));
    case "square": {
      const x = decimal(e.of, values);
      return x * x;
    }
    case "measured":
    case "quantity":
      return decimal(e.of, values);
  }
}

/** Sine and cosine of a signed sum of angles, by the addition theorems. */
function decimalTrig(fn: TrigName, angle: AngleSum, values: Values): number {
  let s = 0;
  let c = 1;
  for (const part of angle) {
    const a = angleOf(values, part.id);
    const sa = part.sign * a.sine.decimal;
    const ca = a.cosine.decimal;
    [s, c] = [s * ca + c * sa, c * ca - s * sa];
  }
  return fn === "sin" ? s : fn === "cos" ? c : s / c;
}

function exactTrig(fn: TrigName, angle: AngleSum, values: Values): Surd | null {
  let s = zero;
  let c = one;
  for (const part of angle) {
    const a = angleOf(values, part.id);
    if (a.sine.exact === null || a.cosine.exact === null) return null;
    const sa = part.sign < 0 ? negate(a.sine.exact) : a.sine.exact;
    const ca = a.cosine.exact;
    if (angle.length === 1) [s, c] = [sa, ca];
    else [s, c] = [add(multiply(s, ca), multiply(c, sa)), add(multiply(c, ca), negate(multiply(s, sa)))];
  }
  if (fn === "sin") return s;
  if (fn === "cos") return c;
  return isZero(c) ? null : divide(s, c);
}

/** The exact value of an expression, or null where a part of it has none (an ordinary angle, a division by zero). */
export function exactly(e: Expr, values: Values): Surd | null {
  switch (e.kind) {
    case "integer":
      return surd(rational(BigInt(e.value)));
    case "exact":
      return e.value;
    case "symbol":
      return values.symbols.get(e.id)?.exact ?? null;
    case "trig":
      return exactTrig(e.fn, e.angle, values);
    case "negative": {
      const x = exactly(e.of, values);
      return x === null ? null : negate(x);
    }
    case "sum":
      return foldExactly(e.terms, values, zero, add);
    case "product":
      return foldExactly(e.factors, values, one, multiply);
    case "quotient": {
      const over = exactly(e.over, values);
      const under = over === null ? null : exactly(e.under, values);
      return over === null || under === null || isZero(under) ? null : divide(over, under);
    }
    case "root":
      return exactRoot(exactly(e.of, values));
    case "square": {
      const x = exactly(e.of, values);
      return x === null ? null : multiply(x, x);
    }
    case "measured":
    case "quantity":
      return exactly(e.of, values);
  }
}

function exactRoot(x: Surd | null): Surd | null {
  if (x === null) return null;
  if (isZero(x)) return x;
  const only = x.terms[0];
  return x.terms.length === 1 && only?.radicand === 1n ? squareRoot(only.coefficient) : null;
}

function foldExactly(
  parts: readonly Expr[],
  values: Values,
  start: Surd,
  join: (a: Surd, b: Surd) => Surd,
): Surd | null {
  let total = start;
  for (const part of parts) {
    const x = exactly(part, values);
    if (x === null) return null;
    total = join(total, x);
  }
  return total;
}
