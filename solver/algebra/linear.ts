// Linear equations in unknown sizes, kept as the terms a person sees, in the order written.
import { isInteger, negative, product, quotient, same, sum, symbol, ZERO } from "./expr.ts";
import type { Expr } from "./expr.ts";

/** One term of an equation: a sign, a positive factor, and the unknown size it multiplies (null for a known term). */
export interface Term {
  readonly sign: 1 | -1;
  readonly unknown: string | null;
  readonly factor: Expr;
  /** What the term points at in the pictures: "T1y" for the vertical component of T1. */
  readonly ref?: string;
  /** The term as it stands on the page when that is not plainly unknown times factor (just after a substitution). */
  readonly shown?: Expr;
}

/** An equation: terms left and right of the equals sign. */
export interface Equation {
  readonly axis: number;
  readonly left: readonly Term[];
  readonly right: readonly Term[];
}

/** A known term. */
export const known = (sign: 1 | -1, factor: Expr, ref?: string): Term =>
  ref === undefined ? { sign, unknown: null, factor } : { sign, unknown: null, factor, ref };

/** The opposite term. */
export const opposite = (t: Term): Term => ({ ...t, sign: t.sign === 1 ? -1 : 1 });

/** The term as an expression, sign included. */
export function termExpr(t: Term): Expr {
  const body = t.shown ?? (t.unknown === null ? withRef(t.factor, t.ref) : sizeTimes(t.unknown, t.factor, t.ref));
  return t.sign < 0 ? negative(body) : body;
}

/** A size times its factor, in the trade's order: T cos 30°, but m a, (m1 + m2) a and μ N. */
function sizeTimes(unknown: string, factor: Expr, ref: string | undefined): Expr {
  const first = factor.kind === "product" ? factor.factors[0] : factor;
  const leads = ACCELERATION.test(unknown) || (first?.kind === "symbol" && first.id.startsWith("mu"));
  return product(leads ? [factor, symbol(unknown)] : [symbol(unknown), factor], ref);
}

/** The letters of accelerations: a, a1, ax, a1y. */
const ACCELERATION = /^a\d*[xy]?$/;

const withRef = (e: Expr, ref: string | undefined): Expr =>
  ref !== undefined && e.kind === "product" ? { ...e, ref } : e;

/** A list of terms as one sum, those with a plus first: T2x − T1x rather than −T1x + T2x. */
export function sideExpr(terms: readonly Term[]): Expr {
  if (terms.length === 0) return ZERO;
  const plus = terms.filter((t) => t.sign > 0);
  return sum([...plus, ...terms.filter((t) => t.sign < 0)].map(termExpr));
}

/** The unknowns of a list of terms, each once, in order. */
export function unknownsOf(terms: readonly Term[]): string[] {
  return [...new Set(terms.flatMap((t) => (t.unknown === null ? [] : [t.unknown])))];
}

/** The terms of one unknown joined: T sin 45° + T sin 45° is 2 T sin 45°; T1 sin α + T1 cos α tan β is T1 (sin α + cos α tan β). */
export function collect(terms: readonly Term[]): { readonly sign: 1 | -1; readonly factor: Expr } {
  const first = terms[0];
  if (
    first !== undefined &&
    terms.length > 1 &&
    terms.every((t) => t.sign === first.sign && same(t.factor, first.factor))
  )
    return { sign: first.sign, factor: product([{ kind: "integer", value: terms.length }, first.factor]) };
  const signed = terms.map((t) => (t.sign < 0 ? negative(t.factor) : t.factor));
  if (signed.every((e) => e.kind === "negative")) return { sign: -1, factor: sum(signed.map(negative)) };
  return { sign: 1, factor: sum(signed) };
}

/** Known terms over one divisor, as one expression. */
export const over = (terms: readonly Term[], divisor: Expr): Expr =>
  terms.length === 0 ? ZERO : quotient(sideExpr(terms), divisor);

/** A factor of exactly one. */
export const isPlain = (t: Term): boolean => isInteger(t.factor, 1);
