// Putting an isolated unknown into another equation: first as it stands, then multiplied out, added up and collected.
import { isInteger, product } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { isPlain, sideExpr, termExpr } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import { termsFor } from "../isolate.ts";
import type { Writer } from "../writer.ts";
import type { IsolatedTerm } from "./isolate.ts";
import { added, isShorter, scaled } from "./ratio.ts";
import { inOrder, joinTerms, signed } from "./terms.ts";
import type { Equality } from "./types.ts";

/** The equality with the isolated unknown replaced; itself where the unknown is not in it. */
export function substituteIn(writer: Writer, e: Equality, isolated: IsolatedTerm, name: string): Equality {
  const hits = [...e.left, ...e.right].filter((t) => t.unknown === isolated.unknown);
  if (hits.length === 0) return e;
  const side = (terms: readonly Term[]): Expr =>
    inOrder(terms.map((t) => (t.unknown === isolated.unknown ? signed(t, inPlace(t, isolated)) : termExpr(t))));
  let line = writer.line({
    id: `${name}.put`,
    sides: [side(e.left), side(e.right)],
    from: [isolated.line, e.line],
    reason: { kind: "substitute", unknown: isolated.unknown },
  });
  const expand = (terms: readonly Term[]): Term[] =>
    terms.flatMap((t) => (t.unknown === isolated.unknown ? replacements(t, isolated) : [t]));
  let left: readonly Term[] = expand(e.left);
  let right: readonly Term[] = expand(e.right);
  if (needsMultiplying(hits, isolated))
    line = writer.line({
      id: `${name}.multiply`,
      sides: [sideExpr(left), sideExpr(right)],
      from: [line],
      reason: { kind: "multiply-out" },
    });
  const sums = [added(left), added(right)] as const;
  if (isShorter(left, sums[0]) || isShorter(right, sums[1])) {
    [left, right] = sums;
    line = writer.line({
      id: `${name}.add`,
      sides: [sideExpr(left), sideExpr(right)],
      from: [line],
      reason: { kind: "add-up" },
    });
  }
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

/** The isolated expression times the term's factor, in the trade's order. */
function inPlace(t: Term, { expr }: IsolatedTerm): Expr {
  const bare = expr.kind === "negative" ? expr.of : expr;
  if (bare.kind === "symbol") {
    const shown = termExpr({ sign: 1, unknown: bare.id, factor: t.factor });
    return expr.kind === "negative" ? { kind: "negative", of: shown } : shown;
  }
  return t.factor.kind === "trig" ? product([expr, t.factor]) : product([t.factor, expr]);
}

/** One term in place of another needs no multiplying out, nor does a sum that just stands there with a plus. */
function needsMultiplying(hits: readonly Term[], isolated: IsolatedTerm): boolean {
  const whole = isInteger(isolated.divisor, 1);
  if (isolated.terms.length <= 1) return !whole && !isBareFraction(isolated);
  return !whole || hits.some((t) => t.sign < 0 || !isPlain(t));
}

const isBareFraction = ({ expr }: IsolatedTerm): boolean => expr.kind === "symbol";

/** What comes for one term of the isolated unknown. */
function replacements(t: Term, isolated: IsolatedTerm): Term[] {
  if (t.factor.kind === "trig" && isolated.divisor.kind === "trig") return termsFor(t, isolated);
  return isolated.terms.map((one) => ({
    sign: one.sign === t.sign ? 1 : -1,
    unknown: one.unknown,
    factor: scaled(one.factor, t.factor, isolated.divisor),
  }));
}
