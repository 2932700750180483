// Isolating one unknown in an equation that holds more.
import { isInteger, symbol } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { sideExpr, termExpr } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import type { Writer } from "../writer.ts";
import { combined, divided, gather } from "./terms.ts";
import type { Equality } from "./types.ts";
import { whyNotZero } from "./settle.ts";

/** An unknown written as other terms over one divisor. */
export interface IsolatedTerm {
  readonly unknown: string;
  readonly terms: readonly Term[];
  readonly divisor: Expr;
  readonly expr: Expr;
  readonly line: string;
}

/** Isolates `unknown`: everything else to the other side, then divide. Nothing is written where it stands alone already. */
export function isolateIn(writer: Writer, e: Equality, unknown: string, name: string): IsolatedTerm {
  const { mine, rest, moved, flipped } = gather(e, unknown);
  const { sign, factor } = combined(mine);
  const terms = sign < 0 ? rest.map((t): Term => ({ ...t, sign: t.sign > 0 ? -1 : 1 })) : rest;
  let line = e.line;
  if (moved.length > 0 || flipped)
    line = writer.line({
      id: `${name}.gather`,
      sides: [sideExpr(mine), sideExpr(rest)],
      from: [line],
      reason:
        moved.length > 0 ? { kind: "gather", moved: moved.map(termExpr), flipped: false } : { kind: "other-way-round" },
    });
  if (mine.length > 1)
    line = writer.line({
      id: `${name}.collect`,
      sides: [termExpr({ sign: 1, unknown, factor }), sideExpr(terms)],
      from: [line],
      reason: { kind: "collect", unknown },
    });
  if (isInteger(factor, 1) && sign > 0) return { unknown, terms, divisor: factor, expr: sideExpr(terms), line };
  const expr = divided(terms, factor);
  line = writer.line({
    id: `${name}.divide`,
    sides: [symbol(unknown), expr],
    from: [line],
    reason: isInteger(factor, 1) ? { kind: "change-signs" } : { kind: "divide", by: factor, why: whyNotZero(factor) },
  });
  return { unknown, terms, divisor: factor, expr, line };
}
