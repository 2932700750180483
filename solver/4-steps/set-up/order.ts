// Products and terms in the order in which the trade writes them: numbers, coefficients, masses, g, sizes and accelerations, brackets, sines and cosines.
import { isInteger, negative, product, quotient, sum, symbol, ZERO } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Term } from "../../algebra/linear.ts";

/** The letters of accelerations: a, a1, ax, a1y. */
export const isAccelerationLetter = (id: string): boolean => /^a\d*[xy]?$/.test(id);

const isWeightLetter = (id: string): boolean => /^W\d*$/.test(id);

/** Whether an expression is a weight, a multiple of one, or a sum of such. */
function isWeight(e: Expr): boolean {
  if (e.kind === "symbol") return isWeightLetter(e.id);
  if (e.kind === "sum") return e.terms.every(isWeight);
  return e.kind === "product" && e.factors.every((f) => f.kind === "integer" || isWeight(f));
}

/** Whether an expression is a mass given by its weight: W/g, or several: (W1 + W2)/g. */
export const isWeightOverG = (e: Expr): boolean =>
  e.kind === "quotient" && e.under.kind === "symbol" && e.under.id === "g" && isWeight(e.over);

/** Whether an expression is a mass, a multiple or share of one, or a sum of such. */
export function isMassive(e: Expr): boolean {
  if (e.kind === "symbol") return /^m\d*$/.test(e.id);
  if (e.kind === "product") return e.factors.some(isMassive);
  if (e.kind === "sum") return e.terms.every((t) => isMassive(t.kind === "negative" ? t.of : t));
  return e.kind === "quotient" && (isWeightOverG(e) || isMassive(e.over));
}

function rank(e: Expr): number {
  if (e.kind === "trig") return e.fn === "sin" ? 8 : e.fn === "cos" ? 9 : 10;
  if (isMassive(e)) return e.kind === "sum" ? 3 : 2;
  if (e.kind === "symbol") return e.id.startsWith("mu") ? 1 : isWeightLetter(e.id) ? 4 : e.id === "g" ? 5 : 6;
  return 7;
}

/** The factors of a product; any other expression alone. */
export const factorsOf = (e: Expr): readonly Expr[] => (e.kind === "product" ? e.factors : [e]);

/** A product in the trade's order. */
export function ordered(factors: readonly Expr[], ref?: string): Expr {
  const made = product(factors);
  if (made.kind !== "product") return made;
  return product(
    [...made.factors].sort((a, b) => rankWithWhole(a) - rankWithWhole(b) || numberOf(a) - numberOf(b)),
    ref,
  );
}

const rankWithWhole = (e: Expr): number => (e.kind === "integer" ? 0 : rank(e));

/** The number of a mass: m1 before m2. */
const numberOf = (e: Expr): number => (e.kind === "symbol" && isMassive(e) ? Number(e.id.slice(1)) : 0);

/** A term without its sign. */
function bodyOf(t: Term): Expr {
  if (t.shown !== undefined) return t.shown;
  if (t.unknown !== null) return sizeTimes(symbol(t.unknown), t.factor, t.ref);
  return t.ref !== undefined && t.factor.kind === "product" ? { ...t.factor, ref: t.ref } : t.factor;
}

/** A size times its factor: T cos 30°, T sin 30°/m, but (W/g) a. */
function sizeTimes(size: Expr, factor: Expr, ref: string | undefined): Expr {
  if (factor.kind === "quotient" && !isWeightOverG(factor))
    return quotient(sizeTimes(size, factor.over, ref), factor.under);
  return ordered([factor, size], ref);
}

/** A term as an expression, sign included. */
export const termExpr = (t: Term): Expr => (t.sign < 0 ? negative(bodyOf(t)) : bodyOf(t));

/** Terms as one sum, those with a plus first. */
export function sideExpr(terms: readonly Term[]): Expr {
  if (terms.length === 0) return ZERO;
  return plusFirst(terms.map(termExpr));
}

/** A sum, terms with a plus first. */
export const plusFirst = (parts: readonly Expr[]): Expr =>
  sum([...parts.filter((p) => p.kind !== "negative"), ...parts.filter((p) => p.kind === "negative")]);

/** Whether an expression is exactly one. */
export const isOne = (e: Expr): boolean => isInteger(e, 1);
