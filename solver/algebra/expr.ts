// Expressions in letters: what every move works on. Exact and decimal values are evaluations of the same tree, so no second elimination exists.
import type { Surd } from "../../shared/exact/index.ts";

/** An angle as a signed sum of angle letters: alpha + beta is [{sign: 1, id: "alpha"}, {sign: 1, id: "beta"}]. */
export type AngleSum = readonly { readonly sign: 1 | -1; readonly id: string }[];

/** Sine, cosine or tangent. */
export type TrigName = "sin" | "cos" | "tan";

/** How a number is to be printed: as the problem states it, with guard figures, or as an answer. Printing itself is not done here. */
export type QuantityRole = "given" | "working" | "answer";

/** An expression tree. Sizes are positive letters; a minus sign is a node of its own. */
export type Expr =
  | { readonly kind: "integer"; readonly value: number }
  | { readonly kind: "exact"; readonly value: Surd }
  | { readonly kind: "symbol"; readonly id: string }
  | { readonly kind: "trig"; readonly fn: TrigName; readonly angle: AngleSum }
  | { readonly kind: "negative"; readonly of: Expr }
  | { readonly kind: "sum"; readonly terms: readonly Expr[] }
  | { readonly kind: "product"; readonly factors: readonly Expr[]; readonly ref?: string }
  | { readonly kind: "quotient"; readonly over: Expr; readonly under: Expr }
  | { readonly kind: "root"; readonly of: Expr }
  | { readonly kind: "square"; readonly of: Expr }
  | { readonly kind: "measured"; readonly of: Expr; readonly unit: string }
  | { readonly kind: "quantity"; readonly of: Expr; readonly unit: string; readonly role: QuantityRole };

/** A whole number, such as the 2 of 2 T sin 45°. */
export const integer = (value: number): Expr => ({ kind: "integer", value });
/** Zero. */
export const ZERO: Expr = integer(0);
/** One. */
export const ONE: Expr = integer(1);
/** A letter: m, g, T1, T1x. */
export const symbol = (id: string): Expr => ({ kind: "symbol", id });
/** An exact value with roots. */
export const exact = (value: Surd): Expr => ({ kind: "exact", value });
/** The sine, cosine or tangent of one angle letter. */
export const trig = (fn: TrigName, id: string): Expr => ({ kind: "trig", fn, angle: [{ sign: 1, id }] });
/** The square root of an expression. */
export const root = (of: Expr): Expr => ({ kind: "root", of });
/** The square of an expression. */
export const square = (of: Expr): Expr => ({ kind: "square", of });
/** The value of an expression, to be printed as a number with a unit ("" for none). */
export const quantity = (of: Expr, unit: string, role: QuantityRole): Expr => ({ kind: "quantity", of, unit, role });

/** An expression written with its unit: 12√5 N. */
export const measured = (of: Expr, unit: string): Expr => ({ kind: "measured", of, unit });

/** Whether the expression is the whole number `value`. */
export const isInteger = (e: Expr, value: number): boolean => e.kind === "integer" && e.value === value;

/** The opposite; minus minus cancels and zero has no sign. */
export function negative(of: Expr): Expr {
  if (of.kind === "negative") return of.of;
  return isInteger(of, 0) ? of : { kind: "negative", of };
}

/** A product without factors 1; zero if any factor is zero; whole numbers are multiplied and put first. Signs are taken out in front. */
export function product(factors: readonly Expr[], ref?: string): Expr {
  const kept: Expr[] = [];
  let whole = 1;
  let sign = 1;
  const take = (f: Expr): void => {
    if (f.kind === "negative") {
      sign = -sign;
      take(f.of);
    } else if (f.kind === "integer") whole *= f.value;
    else if (f.kind === "product" && f.ref === undefined) f.factors.forEach(take);
    else kept.push(f);
  };
  factors.forEach(take);
  if (whole === 0) return ZERO;
  if (whole < 0) sign = -sign;
  if (Math.abs(whole) !== 1) kept.unshift(integer(Math.abs(whole)));
  const first = kept[0];
  let made: Expr;
  if (first === undefined) made = ONE;
  else if (kept.length === 1) made = first;
  else made = ref === undefined ? { kind: "product", factors: kept } : { kind: "product", factors: kept, ref };
  return sign < 0 ? negative(made) : made;
}

/** A sum without zeros, nested sums opened. */
export function sum(terms: readonly Expr[]): Expr {
  const kept: Expr[] = [];
  for (const t of terms) {
    if (t.kind === "sum") kept.push(...t.terms);
    else if (!isInteger(t, 0)) kept.push(t);
  }
  const first = kept[0];
  if (first === undefined) return ZERO;
  return kept.length === 1 ? first : { kind: "sum", terms: kept };
}

/** A quotient; dividing by 1 leaves the dividend, and zero over anything is zero. The caller vouches that `under` is not zero. */
export function quotient(over: Expr, under: Expr): Expr {
  if (isInteger(under, 1) || isInteger(over, 0)) return over;
  if (over.kind === "negative") return negative(quotient(over.of, under));
  return { kind: "quotient", over, under };
}

/** Whether two trees are the same letter for letter. */
export function same(a: Expr, b: Expr): boolean {
  if (a === b) return true;
  switch (a.kind) {
    case "integer":
      return b.kind === "integer" && a.value === b.value;
    case "symbol":
      return b.kind === "symbol" && a.id === b.id;
    case "trig":
      return b.kind === "trig" && a.fn === b.fn && sameAngle(a.angle, b.angle);
    case "negative":
    case "root":
    case "square":
      return a.kind === b.kind && same(a.of, b.of);
    case "sum":
      return b.kind === "sum" && sameList(a.terms, b.terms);
    case "product":
      return b.kind === "product" && sameList(a.factors, b.factors);
    case "quotient":
      return b.kind === "quotient" && same(a.over, b.over) && same(a.under, b.under);
    case "quantity":
      return b.kind === "quantity" && a.unit === b.unit && same(a.of, b.of);
    case "measured":
      return b.kind === "measured" && a.unit === b.unit && same(a.of, b.of);
    case "exact":
      return false;
  }
}

const sameList = (a: readonly Expr[], b: readonly Expr[]): boolean =>
  a.length === b.length && a.every((e, i) => same(e, b[i] ?? ZERO));

const sameAngle = (a: AngleSum, b: AngleSum): boolean =>
  a.length === b.length && a.every((part, i) => part.id === b[i]?.id && part.sign === b[i].sign);

/** The parts of an expression, one level down. */
export function partsOf(e: Expr): readonly Expr[] {
  switch (e.kind) {
    case "negative":
    case "root":
    case "square":
    case "measured":
    case "quantity":
      return [e.of];
    case "sum":
      return e.terms;
    case "product":
      return e.factors;
    case "quotient":
      return [e.over, e.under];
    default:
      return [];
  }
}

/** Whether the expression or a part of it, at any depth, passes the test. */
export const some = (e: Expr, test: (part: Expr) => boolean): boolean =>
  test(e) || partsOf(e).some((p) => some(p, test));
