// Isolating one unknown in an equation that holds more.
import { symbol } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { opposite } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import type { Writer } from "../writer.ts";
import { combined } from "./like.ts";
import { isOne, sideExpr, termExpr } from "./order.ts";
import { divided, exprOf, inverse, ratioOf, reduced, shared, times } from "./ratio.ts";
import { gatherLine, whyNotZero } from "./settle.ts";
import { gather } from "./terms.ts";
import type { Equality } from "./types.ts";

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
  const gathered = gather(e, unknown);
  const { mine, rest } = gathered;
  const { sign, factor } = combined(mine);
  const terms = sign < 0 ? rest.map(opposite) : rest;
  let line = gatherLine(writer, e, gathered, `${name}.gather`);
  if (mine.length > 1)
    line = writer.line({
      id: `${name}.collect`,
      sides: [termExpr({ sign: 1, unknown, factor }), sideExpr(terms)],
      from: [line],
      reason: { kind: "collect", unknown },
    });
  if (isOne(factor) && sign > 0) return { unknown, terms, divisor: factor, expr: sideExpr(terms), line };
  const expr = divided(terms, factor);
  line = writer.line({
    id: `${name}.divide`,
    sides: [symbol(unknown), expr],
    from: [line],
    reason: isOne(factor) ? { kind: "change-signs" } : { kind: "divide", by: factor, why: whyNotZero(factor) },
  });
  return { unknown, ...cancelled(terms, factor), expr, line };
}

/** Terms over a divisor with the factors cancelled that all terms share with it. */
function cancelled(terms: readonly Term[], divisor: Expr): Pick<IsolatedTerm, "terms" | "divisor"> {
  const all = shared(terms.map((t) => ratioOf(t.factor)));
  const left = reduced(times(all, inverse(ratioOf(divisor))));
  const above = { ...left, under: 1, below: [] };
  return {
    terms: terms.map(({ sign, unknown, factor }) => ({
      sign,
      unknown,
      factor: exprOf(reduced(times(times(ratioOf(factor), inverse(all)), above))),
    })),
    divisor: exprOf({ whole: left.under, under: 1, over: left.below, below: [] }),
  };
}
