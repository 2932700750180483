// Isolating one unknown in an equation that holds more, chosen by structure alone, so that a drag never swaps the algebra.
import { product, quotient, symbol } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { isPlain, opposite, sideExpr, termExpr, unknownsOf } from "../algebra/linear.ts";
import type { Term } from "../algebra/linear.ts";
import { same } from "../algebra/expr.ts";
import type { Live } from "./live.ts";
import { whyNonZero } from "./settle.ts";
import type { Writer } from "./writer.ts";

/** An unknown written as other terms over one divisor: T2 = (T1 cos 65° + m ax) / cos 40°. */
export interface Isolated {
  readonly unknown: string;
  readonly terms: readonly Term[];
  readonly divisor: Expr;
  readonly expr: Expr;
  readonly line: string;
}

/** The unknown to isolate: one whose factor is 1 whatever the angles are, else the latest. */
export function chooseUnknown(live: Live, open: readonly string[]): string {
  const plain = open.find((u) => live.left.filter((t) => t.unknown === u).every(isPlain));
  return plain ?? open[open.length - 1] ?? "";
}

/** Two sizes that must be equal because they carry the same factor with opposite signs and nothing else stands on the axis; null if not so. */
export function equalPair(live: Live): readonly [string, string] | null {
  const [a, b] = live.left;
  if (live.left.length !== 2 || live.right.length > 0 || a === undefined || b === undefined) return null;
  if (a.unknown === null || b.unknown === null || a.unknown === b.unknown || a.sign === b.sign || isPlain(a))
    return null;
  return same(a.factor, b.factor) ? [a.unknown, b.unknown] : null;
}

/** Isolates `unknown` in `live`: bring everything else to the other side, then divide by its factor. */
export function isolate(writer: Writer, live: Live, unknown: string): Isolated {
  const mine = live.left.find((t) => t.unknown === unknown);
  if (mine === undefined) throw new Error(`no term of ${unknown} to isolate`);
  const others = live.left.filter((t) => t !== mine);
  const flipped = mine.sign < 0;
  const terms: Term[] = flipped ? [...others, ...live.right.map(opposite)] : [...others.map(opposite), ...live.right];
  const alone: Term = flipped ? opposite(mine) : mine;
  const gathered = writer.line({
    id: "isolate.gather",
    sides: [termExpr(alone), sideExpr(terms)],
    from: [live.line],
    reason: { kind: "gather", moved: (flipped ? [mine] : others).map(termExpr), flipped },
  });
  const divisor = mine.factor;
  if (isPlain(mine)) return { unknown, terms, divisor, expr: sideExpr(terms), line: gathered };
  const other = terms[0];
  const twins = terms.length === 1 && other?.unknown != null && other.sign > 0 && same(other.factor, divisor);
  const expr = twins ? symbol(other.unknown) : quotient(sideExpr(terms), divisor);
  const line = writer.line({
    id: "isolate.divide",
    sides: [symbol(unknown), expr],
    from: [gathered],
    reason: { kind: "divide", by: divisor, why: twins ? "same-factor" : whyNonZero(divisor) },
  });
  return { unknown, terms, divisor, expr, line };
}

/** The terms that come for one term of the isolated unknown: its factor over the divisor, sine over cosine joined to a tangent. */
export function termsFor(term: Term, isolated: Isolated): Term[] {
  return isolated.terms.map((t) => ({
    sign: t.sign === term.sign ? 1 : -1,
    unknown: t.unknown,
    factor: scale(t.factor, term.factor, isolated.divisor),
    ...(term.ref === undefined ? {} : { ref: term.ref }),
  }));
}

/** factor · by / divisor, with sin/cos of one angle as its tangent, and cos · tan of one angle as its sine. */
function scale(factor: Expr, by: Expr, divisor: Expr): Expr {
  if (by.kind === "trig" && divisor.kind === "trig" && by.angle[0]?.id === divisor.angle[0]?.id) {
    if (by.fn === "sin" && divisor.fn === "cos") {
      const parts = factor.kind === "product" ? factor.factors : [factor];
      const partner = parts.find((p) => same(p, divisor));
      if (partner !== undefined) return product([...parts.filter((p) => p !== partner), by]);
      return product([factor, { kind: "trig", fn: "tan", angle: by.angle }]);
    }
    if (by.fn === "cos" && divisor.fn === "sin") return quotient(factor, { kind: "trig", fn: "tan", angle: by.angle });
  }
  return same(by, divisor) ? factor : quotient(product([factor, by]), divisor);
}

/** The unknowns that the isolated one is written in. */
export const writtenIn = (isolated: Isolated): string[] => unknownsOf(isolated.terms);
