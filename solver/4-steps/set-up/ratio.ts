// Ratios of products kept short: factors that stand above and below cancel, whole numbers too; terms that differ only by a number are added up.
import { product, quotient, same, ONE } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Term } from "../../algebra/linear.ts";

/** A product over a product, its whole numbers apart. */
interface Ratio {
  readonly whole: number;
  readonly under: number;
  readonly over: readonly Expr[];
  readonly below: readonly Expr[];
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

/** An expression without a sign as such a ratio. */
function ratioOf(e: Expr): Ratio {
  if (e.kind === "integer") return { whole: e.value, under: 1, over: [], below: [] };
  if (e.kind === "product") return e.factors.map(ratioOf).reduce(times, { whole: 1, under: 1, over: [], below: [] });
  if (e.kind === "quotient") return times(ratioOf(e.over), inverse(ratioOf(e.under)));
  return { whole: 1, under: 1, over: [e], below: [] };
}

const times = (a: Ratio, b: Ratio): Ratio => ({
  whole: a.whole * b.whole,
  under: a.under * b.under,
  over: [...a.over, ...b.over],
  below: [...a.below, ...b.below],
});

const inverse = (r: Ratio): Ratio => ({ whole: r.under, under: r.whole, over: r.below, below: r.over });

/** The ratio with what stands above and below taken out. */
function reduced(r: Ratio): Ratio {
  const below = [...r.below];
  const over = r.over.filter((factor) => {
    const at = below.findIndex((b) => same(b, factor));
    if (at < 0) return true;
    below.splice(at, 1);
    return false;
  });
  const shared = gcd(Math.abs(r.whole), Math.abs(r.under)) || 1;
  return { whole: r.whole / shared, under: r.under / shared, over, below };
}

function exprOf({ whole, under, over, below }: Ratio): Expr {
  const above = product([{ kind: "integer", value: whole }, ...inOrder(over)]);
  return quotient(above, product([{ kind: "integer", value: under }, ...below]));
}

/** The trade's order: coefficients, masses, g, other letters, sines and cosines last. */
const inOrder = (factors: readonly Expr[]): readonly Expr[] => [...factors].sort((a, b) => rank(a) - rank(b));

function rank(e: Expr): number {
  if (e.kind === "trig") return 4;
  if (e.kind !== "symbol") return 3;
  return e.id.startsWith("mu") ? 0 : /^m\d*$/.test(e.id) ? 1 : e.id === "g" ? 2 : 3;
}

/** Whether two products have the same factors, in whatever order. */
function sameFactors(a: Ratio, b: Ratio): boolean {
  const matches = (x: readonly Expr[], y: readonly Expr[]): boolean => {
    const left = [...y];
    const all = x.every((f) => {
      const at = left.findIndex((o) => same(o, f));
      if (at >= 0) left.splice(at, 1);
      return at >= 0;
    });
    return all && left.length === 0;
  };
  return matches(a.over, b.over) && matches(a.below, b.below);
}

/** factor · by / divisor, cancelled. */
export const scaled = (factor: Expr, by: Expr, divisor: Expr): Expr =>
  exprOf(reduced(times(times(ratioOf(factor), ratioOf(by)), inverse(ratioOf(divisor)))));

/** Terms whose factors differ only by a number taken together, those that cancel gone; sizes stay in the order they stand. */
export function added(terms: readonly Term[]): readonly Term[] {
  const groups: {
    ratio: Ratio;
    base: Expr;
    unknown: string | null;
    whole: number;
    under: number;
    first: Term;
    count: number;
  }[] = [];
  for (const t of terms) {
    const r = reduced(ratioOf(t.factor));
    const base = exprOf({ ...r, whole: 1, under: 1 });
    const known = groups.find((g) => g.unknown === t.unknown && sameFactors(g.ratio, r));
    const whole = t.sign * r.whole;
    if (known === undefined)
      groups.push({ ratio: r, base, unknown: t.unknown, whole, under: r.under, first: t, count: 1 });
    else {
      known.whole = known.whole * r.under + whole * known.under;
      known.under *= r.under;
      known.count++;
    }
  }
  return groups.flatMap((g): Term[] => {
    if (g.count === 1) return [g.first];
    if (g.whole === 0) return [];
    const size: Expr = { kind: "integer", value: Math.abs(g.whole) };
    const factor = scaled(product([size, g.base]), ONE, { kind: "integer", value: g.under });
    return [{ sign: g.whole > 0 ? 1 : -1, unknown: g.unknown, factor }];
  });
}

/** Whether adding up changed anything. */
export const isShorter = (before: readonly Term[], after: readonly Term[]): boolean => after.length < before.length;
