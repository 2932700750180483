// Terms taken together: those that differ only by a number are added up, and sin² + cos² of one angle is 1.
import { negative, same } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Term } from "../../algebra/linear.ts";
import { exprOf, joined, ratioOf, ratioOfTerm, reduced, sameFactors, times, wholeRatio } from "./ratio.ts";
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
    const rest = { ...r, over: r.over.filter((_, i) => i !== at) };
    return exprOf(reduced(times(rest, ratioOf(simpler))));
  }
  if (e.kind !== "sum") return null;
  const terms = e.terms.map((t): Term => ({
    sign: t.kind === "negative" ? -1 : 1,
    unknown: null,
    factor: t.kind === "negative" ? t.of : t,
  }));
  const joinedTerms = squaresJoined(terms);
  if (!isShorter(terms, joinedTerms)) return null;
  const whole = joined(
    joinedTerms.map((t) => t.sign),
    joinedTerms.map(ratioOfTerm),
  );
  const made = exprOf(wholeRatio(whole));
  return whole.sign < 0 ? negative(made) : made;
}

/** Terms in which sin² and cos² of one angle with the same size and factor stand, with that alone in their place. */
export function squaresJoined(terms: readonly Term[]): readonly Term[] {
  const parts = terms.map((t) => ({ t, ratio: ratioOf(t.factor) }));
  for (const [i, a] of parts.entries()) {
    const angle = squareIn(a.ratio, "sin");
    if (angle === null) continue;
    const rest = withoutSquare(a.ratio, angle);
    const j = parts.findIndex((b) => {
      const other = squareIn(b.ratio, "cos");
      return (
        b.t.sign === a.t.sign &&
        b.t.unknown === a.t.unknown &&
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
    const left = parts.flatMap(({ t }, k): Term[] => {
      if (k === first) return [{ sign: t.sign, unknown: t.unknown, factor: exprOf(rest) }];
      return k === i || k === j ? [] : [t];
    });
    return squaresJoined(added(left));
  }
  return terms;
}

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
