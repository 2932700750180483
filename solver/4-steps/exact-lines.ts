// Square roots as a person writes them: exact sines and cosines put in, the fraction made plain, the root out of the denominator.
import { divide, invert, isRational, isZero, multiply, rational, surd } from "../../shared/exact/index.ts";
import type { Surd } from "../../shared/exact/index.ts";
import { exact, measured, product, quotient, some, sum, symbol, ONE } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { exactly } from "../algebra/evaluate.ts";
import type { Values } from "../algebra/evaluate.ts";
import type { World } from "../1-bodies/types.ts";
import type { Solved } from "./types.ts";
import type { Writer } from "./writer.ts";

/** What an exact answer is a multiple of: mg, W, or m(g + ay); null when a sideways acceleration leaves no such multiple. */
export function baseForce(world: World): Expr | null {
  const { body } = world;
  if (body.push !== 0) return null;
  const still = body.acceleration.y.decimal === 0;
  if (body.givenBy === "weight")
    return still ? symbol("W") : product([symbol("W"), sum([ONE, quotient(symbol("ay"), symbol("g"))])]);
  return still ? product([symbol("m"), symbol("g")]) : product([symbol("m"), sum([symbol("g"), symbol("ay")])]);
}

/** Replaces every sine, cosine and tangent, and every size already known as a multiple of the base, by its exact value. */
function withRoots(e: Expr, values: Values, known: ReadonlyMap<string, Expr>): Expr {
  switch (e.kind) {
    case "trig": {
      const x = exactly(e, values);
      return x === null ? e : exact(x);
    }
    case "symbol":
      return known.get(e.id) ?? e;
    case "product":
      return { kind: "product", factors: e.factors.flatMap((f) => flat(withRoots(f, values, known))) };
    case "sum":
      return { kind: "sum", terms: e.terms.map((t) => withRoots(t, values, known)) };
    case "quotient":
      return { kind: "quotient", over: withRoots(e.over, values, known), under: withRoots(e.under, values, known) };
    case "negative":
      return { kind: "negative", of: withRoots(e.of, values, known) };
    default:
      return e;
  }
}

const flat = (e: Expr): readonly Expr[] => (e.kind === "product" ? e.factors : [e]);

/** A surd times a force, with the fraction of whole numbers kept in the surd. */
const multiple = (k: Surd, base: Expr): Expr => (isZero(k) ? exact(k) : product([exact(k), base]));

/** Writes the exact lines of one size; gives the multiple of the base, or null when there is none. */
export function writeExact(
  writer: Writer,
  solved: Solved,
  base: Expr,
  values: Values,
  known: Map<string, Expr>,
): Surd | null {
  const size = exactly(symbol(solved.unknown), values);
  const unit = exactly(base, values);
  if (size === null || unit === null || isZero(unit)) return null;
  const k = divide(size, unit);
  const answer = isUnit(k) ? base : multiple(k, base);
  known.set(solved.unknown, isZero(k) ? exact(k) : answer);
  if (isZero(k) || !some(solved.expr, (e) => e.kind === "trig")) return k;
  const name = `exact.${solved.unknown}`;
  const size0 = symbol(solved.unknown);
  let line = writer.line({
    id: `${name}.values`,
    sides: [size0, withRoots(solved.expr, values, known)],
    from: [solved.line],
    reason: { kind: "exact-values" },
  });
  const under = solved.expr.kind === "quotient" ? exactly(solved.expr.under, values) : null;
  if (under !== null && !isRational(under) && solved.expr.kind === "quotient") {
    const top = divide(multiply(size, under), unit);
    const { over, bottom } = wholeDenominator(top, under);
    line = writer.line({
      id: `${name}.combine`,
      sides: [size0, { kind: "quotient", over: isUnit(over) ? base : multiple(over, base), under: exact(bottom) }],
      from: [line],
      reason: { kind: "exact-combine" },
    });
    writer.line({
      id: `${name}.rationalise`,
      sides: [size0, answer],
      from: [line],
      reason: { kind: "rationalise", by: exact(conjugate(bottom)) },
    });
  } else
    writer.line({ id: `${name}.combine`, sides: [size0, answer], from: [line], reason: { kind: "exact-combine" } });
  return k;
}

const isUnit = (x: Surd): boolean => isRational(x) && x.terms[0]?.coefficient.equals(1) === true;

/** top/under with the whole-number denominators of `under` brought up, common whole factors cancelled: mg/(√6/4 + √2/4) is 4mg/(√6 + √2). */
function wholeDenominator(top: Surd, under: Surd): { readonly over: Surd; readonly bottom: Surd } {
  let scale = rational("1");
  for (const t of under.terms) {
    const scaled = t.coefficient.mul(scale);
    scale = scale.mul(rational(scaled.d));
  }
  const bottom = multiply(under, surd(scale));
  let common = 0n;
  for (const t of bottom.terms) common = gcd(common, t.coefficient.n);
  const over = multiply(top, surd(scale));
  const shared = over.terms.reduce((g, t) => gcd(g, t.coefficient.n), common);
  if (shared <= 1n) return { over, bottom };
  const down = surd(rational(1n).div(rational(shared)));
  return { over: multiply(over, down), bottom: multiply(bottom, down) };
}

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? (a < 0n ? -a : a) : gcd(b, a % b));

/** What the denominator is multiplied by to lose its roots, in whole numbers: √2 for √2, √6 − √2 for √6 + √2. */
function conjugate(bottom: Surd): Surd {
  const inverse = invert(bottom);
  let scale = rational("1");
  for (const t of inverse.terms) scale = scale.mul(rational(t.coefficient.mul(scale).d));
  const whole = multiply(inverse, surd(scale));
  let common = 0n;
  for (const t of whole.terms) common = gcd(common, t.coefficient.n);
  return common <= 1n ? whole : multiply(whole, surd(rational(1n).div(rational(common))));
}

/** Larger numbers under a root are no help to a reader. */
const LARGEST_SHORT_RADICAND = 100n;

/** Whether an exact number of newtons is short enough to print: every whole number in it has at most three digits. */
export const isShort = (x: Surd): boolean =>
  x.terms.length <= 2 &&
  x.terms.every((t) => t.coefficient.n < 1000n && t.coefficient.d < 1000n && t.radicand < LARGEST_SHORT_RADICAND);

/** Writes the answer's exact face: the multiple of the base force first, newtons too when short. */
export function writeExactAnswer(writer: Writer, unknown: string, base: Expr | null, values: Values): void {
  const size = exactly(symbol(unknown), values);
  if (size === null || isZero(size)) return;
  const unit = base === null ? null : exactly(base, values);
  const sides: Expr[] = [symbol(unknown)];
  if (base !== null && unit !== null && !isZero(unit)) {
    const k = divide(size, unit);
    sides.push(isUnit(k) ? base : product([exact(k), base]));
  }
  if (isShort(size) && !isRational(size)) sides.push(measured(exact(size), "N"));
  if (sides.length < 2) return;
  writer.line({ id: `answer.${unknown}.exact`, sides, kind: "number", reason: { kind: "exact-newtons" } });
}
