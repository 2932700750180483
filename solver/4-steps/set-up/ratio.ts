// Products over products, and sums of them: factors that stand above and below cancel, those that all terms share stand in front.
import { negative, product, quotient, same, symbol, ONE } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Term } from "../../algebra/linear.ts";
import { isWeightOverG, ordered, plusFirst } from "./order.ts";

/** A product over a product, its whole numbers apart. */
export interface Ratio {
  readonly whole: number;
  readonly under: number;
  readonly over: readonly Expr[];
  readonly below: readonly Expr[];
}

const UNIT: Ratio = { whole: 1, under: 1, over: [], below: [] };

function gcd(a: number, b: number): number {
  return b === 0 ? Math.abs(a) : gcd(b, a % b);
}

/** An expression without a sign as such a ratio. */
export function ratioOf(e: Expr): Ratio {
  if (e.kind === "integer") return { ...UNIT, whole: e.value };
  if (e.kind === "product") return e.factors.map(ratioOf).reduce(times, UNIT);
  if (e.kind === "quotient") return times(ratioOf(e.over), inverse(ratioOf(e.under)));
  return { ...UNIT, over: [e] };
}

/** A term's size, unknown included, as a ratio. */
export const ratioOfTerm = (t: Term): Ratio =>
  t.unknown === null ? ratioOf(t.factor) : times(ratioOf(t.factor), { ...UNIT, over: [symbol(t.unknown)] });

/** The product of two ratios, nothing cancelled. */
export const times = (a: Ratio, b: Ratio): Ratio => ({
  whole: a.whole * b.whole,
  under: a.under * b.under,
  over: [...a.over, ...b.over],
  below: [...a.below, ...b.below],
});

/** One over a ratio. */
export const inverse = (r: Ratio): Ratio => ({ whole: r.under, under: r.whole, over: r.below, below: r.over });

/** A list without one of each factor of another list, and what of that was not in it. */
function takeOut(list: readonly Expr[], factors: readonly Expr[]): { rest: Expr[]; missing: Expr[] } {
  const rest = [...list];
  const missing = factors.filter((f) => {
    const at = rest.findIndex((x) => same(x, f));
    if (at >= 0) rest.splice(at, 1);
    return at < 0;
  });
  return { rest, missing };
}

/** The ratio with what stands above and below taken out. */
export function reduced(r: Ratio): Ratio {
  const { rest: below, missing: over } = takeOut(r.below, r.over);
  const common = gcd(r.whole, r.under) || 1;
  return { whole: r.whole / common, under: r.under / common, over, below };
}

/** A ratio as an expression. A weight over g stays together: it is a mass. */
export function exprOf(r: Ratio): Expr {
  const below = [...r.below];
  const over = r.over.map((f) => {
    const g = below.findIndex((b) => b.kind === "symbol" && b.id === "g");
    const mass = quotient(f, symbol("g"));
    if (g < 0 || !isWeightOverG(mass)) return f;
    below.splice(g, 1);
    return mass;
  });
  const above = ordered([{ kind: "integer", value: r.whole }, ...over]);
  return quotient(above, ordered([{ kind: "integer", value: r.under }, ...below]));
}

/** Whether two products have the same factors, in whatever order. */
export const sameFactors = (a: readonly Expr[], b: readonly Expr[]): boolean =>
  a.length === b.length && takeOut(a, b).missing.length === 0;

/** factor · by / divisor, cancelled. */
export const scaled = (factor: Expr, by: Ratio): Expr => exprOf(reduced(times(ratioOf(factor), by)));

/** What all ratios have above, and what all have below. */
export function shared(list: readonly Ratio[]): Ratio {
  const [first, ...others] = list;
  if (first === undefined) return UNIT;
  const common = (of: (r: Ratio) => readonly Expr[]): Expr[] =>
    others.reduce((kept, r) => takeOut(kept, takeOut(kept, of(r)).rest).rest, [...of(first)]);
  const whole = list.map((r) => r.whole).reduce(gcd);
  const under = others.every((r) => r.under === first.under) ? first.under : 1;
  return { whole, under, over: common((r) => r.over), below: common((r) => r.below) };
}

/** A number of signed ratios as one: what they share in front, a bracket of the rest, and the sign of all. */
export interface Joined {
  readonly sign: 1 | -1;
  readonly front: Ratio;
  /** The bracket; null where there is one ratio and nothing is left of it. */
  readonly inner: Expr | null;
}

/** Takes out what all share; where all are negative, the sign too. */
export function joined(signs: readonly (1 | -1)[], list: readonly Ratio[]): Joined {
  const sign = signs.every((s) => s < 0) ? -1 : 1;
  const [only] = list;
  if (list.length === 1 && only !== undefined) return { sign, front: only, inner: null };
  const front = shared(list);
  const parts = list.map((r, i) => {
    const rest = exprOf(reduced(times(r, inverse(front))));
    return (signs[i] ?? 1) * sign < 0 ? negative(rest) : rest;
  });
  return { sign, front, inner: plusFirst(parts) };
}

/** Front and bracket as one ratio, the bracket a factor above. */
export const wholeRatio = ({ front, inner }: Joined): Ratio =>
  inner === null ? front : times(front, { ...UNIT, over: [inner] });

/** Terms as one expression with what they share in front: (m2 − m1) g; −(mg sin 20° + f). */
export function commonOut(terms: readonly Term[]): Expr {
  const made = joined(
    terms.map((t) => t.sign),
    terms.map(ratioOfTerm),
  );
  const e = exprOf(wholeRatio(made));
  return made.sign < 0 ? negative(e) : e;
}

/** Terms over a divisor as one expression, what all of them share with it cancelled. */
export function divided(terms: readonly Term[], divisor: Expr): Expr {
  if (terms.length === 0) return { kind: "integer", value: 0 };
  const made = joined(
    terms.map((t) => t.sign),
    terms.map(ratioOfTerm),
  );
  const front = reduced(times(made.front, inverse(ratioOf(divisor))));
  if (made.inner !== null && isUnit(front)) return made.sign < 0 ? minusAll(made.inner) : made.inner;
  const e = exprOf(wholeRatio({ ...made, front }));
  return made.sign < 0 ? negative(e) : e;
}

/** A bracket that stands alone with a minus stays one bracket. */
const minusAll = (inner: Expr): Expr => negative(inner);

const isUnit = (r: Ratio): boolean => r.whole === 1 && r.under === 1 && r.over.length === 0 && r.below.length === 0;

/** Whether terms share anything worth taking out. */
export function shareSomething(terms: readonly Term[]): boolean {
  if (terms.length < 2) return false;
  const front = shared(terms.map(ratioOfTerm));
  return front.over.length > 0 || front.below.length > 0;
}

/** Whether nothing is left below of `factor` over `divisor`. */
export function residue(factor: Expr, divisor: Expr): Ratio {
  const { under, below } = reduced(times(ratioOf(factor), inverse(ratioOf(divisor))));
  return { ...UNIT, whole: under, over: below };
}

/** The product of factors as an expression; 1 where there are none. */
export const residueExpr = (r: Ratio): Expr => (r.over.length === 0 && r.whole === 1 ? ONE : product([exprOf(r)]));
