// Terms taken together: those that differ only by a number are added up, and sin² + cos² of one angle is 1.
import { negative, same } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Term } from "../../algebra/linear.ts";
import { exprOf, joined, ratioOf, ratioOfTerm, reduced, sameFactors, wholeRatio } from "./ratio.ts";
import type { Ratio } from "./ratio.ts";

interface Group {
  readonly ratio: Ratio;
  readonly first: Term;
  whole: number;
  under: number;
  count: number;
}

/** Terms whose factors differ only by a number taken together, those that cancel gone; sizes stay in the order they stand. */
export function added(terms: readonly Term[]): readonly Term[] {
  const groups: Group[] = [];
  for (const t of terms) {
    const r = reduced(ratioOf(t.factor));
    const whole = t.sign * r.whole;
    const known = groups.find(
      (g) => g.first.unknown === t.unknown && sameFactors(g.ratio.over, r.over) && sameFactors(g.ratio.below, r.below),
    );
    if (known === undefined) groups.push({ ratio: r, first: t, whole, under: r.under, count: 1 });
    else {
      known.whole = known.whole * r.under + whole * known.under;
      known.under *= r.under;
      known.count++;
    }
  }
  return groups.flatMap((g): Term[] => {
    if (g.count === 1) return [g.first];
    if (g.whole === 0) return [];
    const factor = exprOf(reduced({ ...g.ratio, whole: Math.abs(g.whole), under: g.under }));
    return [{ sign: g.whole > 0 ? 1 : -1, unknown: g.first.unknown, factor }];
  });
}

/** The terms of one unknown as a sign and a factor: like terms added up, what all share in front of a bracket. */
export function combined(terms: readonly Term[]): { readonly sign: 1 | -1; readonly factor: Expr } {
  const [only] = terms;
  if (terms.length === 1 && only !== undefined) return { sign: only.sign, factor: only.factor };
  const made = added(terms.map(({ sign, factor, unknown }) => ({ sign, factor, unknown })));
  if (made.length === 0) return { sign: 1, factor: { kind: "integer", value: 0 } };
  const whole = joined(
    made.map((t) => t.sign),
    made.map((t) => ratioOf(t.factor)),
  );
  return { sign: whole.sign, factor: exprOf(wholeRatio(whole)) };
}

/** A sum in which sin² and cos² of one angle with the same factor stand, with that factor in their place; null where there is no such pair. */
export function withoutSquares(e: Expr): Expr | null {
  if (e.kind === "product" || e.kind === "quotient") {
    const r = ratioOf(e);
    const at = r.over.findIndex((f) => f.kind === "sum" && withoutSquares(f) !== null);
    const found = r.over[at];
    const simpler = found === undefined ? null : withoutSquares(found);
    if (simpler === null) return null;
    const rest = r.over.filter((_, i) => i !== at);
    const inner = ratioOf(simpler);
    return exprOf(
      reduced({
        whole: r.whole * inner.whole,
        under: r.under * inner.under,
        over: [...rest, ...inner.over],
        below: [...r.below, ...inner.below],
      }),
    );
  }
  return e.kind === "sum" ? joinSquares(e.terms) : null;
}

function joinSquares(terms: readonly Expr[]): Expr | null {
  const parts = terms.map((t) => ({ sign: t.kind === "negative" ? (-1 as const) : (1 as const), ratio: bare(t) }));
  for (const [i, a] of parts.entries()) {
    const angle = squareIn(a.ratio, "sin");
    if (angle === null) continue;
    const rest = withoutSquare(a.ratio, angle);
    const j = parts.findIndex((b, k) => {
      const other = squareIn(b.ratio, "cos");
      return (
        k !== i &&
        b.sign === a.sign &&
        other !== null &&
        sameAngle(angle, other) &&
        b.ratio.whole === a.ratio.whole &&
        b.ratio.under === a.ratio.under &&
        sameFactors(withoutSquare(b.ratio, other).over, rest.over) &&
        sameFactors(b.ratio.below, a.ratio.below)
      );
    });
    if (j < 0) continue;
    const first = Math.min(i, j);
    const left = parts.flatMap((p, k) => {
      if (k === first) return [{ ...p, ratio: rest }];
      return k === i || k === j ? [] : [p];
    });
    const made = added(left.map((p) => ({ sign: p.sign, unknown: null, factor: exprOf(p.ratio) })));
    const whole = joined(
      made.map((t) => t.sign),
      made.map(ratioOfTerm),
    );
    const e = exprOf(wholeRatio(whole));
    return whole.sign < 0 ? negative(e) : e;
  }
  return null;
}

const bare = (t: Expr): Ratio => ratioOf(t.kind === "negative" ? t.of : t);

type Trig = Extract<Expr, { kind: "trig" }>;

/** The first of two like factors sin θ (or cos θ) in a product. */
function squareIn(r: Ratio, fn: "sin" | "cos"): Trig | null {
  for (const [i, f] of r.over.entries())
    if (f.kind === "trig" && f.fn === fn && r.over.some((o, k) => k > i && same(o, f))) return f;
  return null;
}

function withoutSquare(r: Ratio, of: Trig): Ratio {
  let left = 2;
  return { ...r, over: r.over.filter((f) => !(same(f, of) && left-- > 0)) };
}

const sameAngle = (a: Trig, b: Trig): boolean => same({ ...a, fn: "sin" }, { ...b, fn: "sin" });

/** Whether adding up changed anything. */
export const isShorter = (before: readonly Term[], after: readonly Term[]): boolean => after.length < before.length;
