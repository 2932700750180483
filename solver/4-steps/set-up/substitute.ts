// Putting an isolated unknown into another equation: first as it stands, then multiplied out and collected.
import { product } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { isPlain, sideExpr, termExpr } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import { termsFor } from "../isolate.ts";
import type { Writer } from "../writer.ts";
import type { IsolatedTerm } from "./isolate.ts";
import { inOrder, joinTerms, signed } from "./terms.ts";
import type { Equality } from "./types.ts";

/** The equality with the isolated unknown replaced; itself where the unknown is not in it. */
export function substituteIn(writer: Writer, e: Equality, isolated: IsolatedTerm, name: string): Equality {
  const hits = [...e.left, ...e.right].filter((t) => t.unknown === isolated.unknown);
  if (hits.length === 0) return e;
  const side = (terms: readonly Term[]): Expr =>
    inOrder(
      terms.map((t) => (t.unknown === isolated.unknown ? signed(t, product([isolated.expr, t.factor])) : termExpr(t))),
    );
  let line = writer.line({
    id: `${name}.put`,
    sides: [side(e.left), side(e.right)],
    from: [isolated.line, e.line],
    reason: { kind: "substitute", unknown: isolated.unknown },
  });
  const expand = (terms: readonly Term[]): Term[] =>
    terms.flatMap((t) => (t.unknown === isolated.unknown ? termsFor(t, isolated) : [t]));
  let left = expand(e.left);
  let right = expand(e.right);
  // One term in place of another needs no multiplying out.
  const plain =
    isolated.terms.length <= 1 ||
    (hits.every(isPlain) && isPlain({ sign: 1, unknown: null, factor: isolated.divisor }));
  if (!plain || hits.some((t) => t.sign < 0 && isolated.terms.length > 1))
    line = writer.line({
      id: `${name}.multiply`,
      sides: [sideExpr(left), sideExpr(right)],
      from: [line],
      reason: { kind: "multiply-out" },
    });
  for (const unknown of new Set([...left, ...right].flatMap((t) => (t.unknown === null ? [] : [t.unknown])))) {
    const joinedLeft = joinTerms(left, unknown);
    const joinedRight = joinTerms(right, unknown);
    if (joinedLeft === null && joinedRight === null) continue;
    left = joinedLeft ?? left;
    right = joinedRight ?? right;
    line = writer.line({
      id: `${name}.collect.${unknown}`,
      sides: [sideExpr(left), sideExpr(right)],
      from: [line],
      reason: { kind: "collect", unknown },
    });
  }
  return { ...e, left, right, line };
}
