// Solving an equation that holds one unknown: gather, take common factors out, collect, divide. Each is a line, and only if it does something.
import { isInteger, negative, quotient, symbol, ZERO } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { opposite, sideExpr, termExpr } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import type { NonZero, Solved } from "../types.ts";
import type { Writer } from "../writer.ts";
import { added, isShorter } from "./ratio.ts";
import { combined, commonOut, divided, gather, sharedFactors } from "./terms.ts";
import type { Equality } from "./types.ts";

/** Why what is divided by cannot be zero. */
export function whyNotZero(factor: Expr): NonZero {
  if (factor.kind === "integer") return "number";
  if (factor.kind === "sum") return factor.terms.every(isMass) ? "masses" : "bracket";
  const parts = factor.kind === "product" ? factor.factors : [factor];
  return parts.some((p) => p.kind === "trig") ? "at-this-angle" : "mass";
}

/** A mass, or a multiple or share of one. */
function isMass(e: Expr): boolean {
  if (e.kind === "symbol") return /^m\d*$/.test(e.id);
  if (e.kind === "quotient") return e.over.kind === "symbol" && /^W\d*$/.test(e.over.id);
  return e.kind === "product" && e.factors.every((f) => f.kind === "integer" || isMass(f));
}

/** Solves an equality for its only open unknown. Lines are named `${name}.gather`, `.collect`, `.factor`, `.divide`. */
export function settleIn(writer: Writer, e: Equality, unknown: string, name: string): Solved {
  const { mine, rest, moved, flipped } = gather(e, unknown);
  let line = e.line;
  if (moved.length > 0 || flipped)
    line = writer.line({
      id: `${name}.gather`,
      sides: [sideExpr(mine), sideExpr(rest)],
      from: [line],
      reason:
        moved.length > 0 ? { kind: "gather", moved: moved.map(termExpr), flipped: false } : { kind: "other-way-round" },
    });
  const { sign, factor } = combined(mine);
  const right = sign < 0 ? rest.map(opposite) : rest;
  if (mine.length > 1)
    line = writer.line({
      id: `${name}.collect`,
      sides: [termExpr({ sign: 1, unknown, factor }), sideExpr(right)],
      from: [line],
      reason: { kind: "collect", unknown },
    });
  else if (sign < 0)
    line = writer.line({
      id: `${name}.signs`,
      sides: [termExpr({ sign: 1, unknown, factor }), sideExpr(right)],
      from: [line],
      reason: { kind: "change-signs" },
    });
  const total = added(right);
  if (isShorter(right, total))
    line = writer.line({
      id: `${name}.add`,
      sides: [termExpr({ sign: 1, unknown, factor }), sideExpr(total)],
      from: [line],
      reason: { kind: "add-up" },
    });
  const joined = joinedRight(total);
  if (joined !== null)
    line = writer.line({
      id: `${name}.factor`,
      sides: [termExpr({ sign: 1, unknown, factor }), joined],
      from: [line],
      reason: { kind: "factor-mass" },
    });
  if (isInteger(factor, 1)) return { unknown, expr: joined ?? sideExpr(total), line };
  return divideOff(writer, unknown, factor, total, joined, line, name);
}

/** The right side with its common factors in front, where that changes it. */
const joinedRight = (right: readonly Term[]): Expr | null =>
  right.length > 1 && sharedFactors(right).length > 0 ? commonOut(right) : null;

function divideOff(
  writer: Writer,
  unknown: string,
  factor: Expr,
  right: readonly Term[],
  joined: Expr | null,
  before: string,
  name: string,
): Solved {
  const zero = right.length === 0;
  const expr = zero ? ZERO : whole(right, factor, joined);
  const line = writer.line({
    id: `${name}.divide`,
    sides: [symbol(unknown), expr],
    from: [before],
    reason: { kind: zero ? "divide-zero" : "divide", by: factor, why: whyNotZero(factor) },
  });
  return { unknown, expr, line };
}

function whole(right: readonly Term[], factor: Expr, joined: Expr | null): Expr {
  const made = divided(right, factor);
  if (made.kind !== "quotient" || joined === null) return made;
  return joined.kind === "negative" ? negative(quotient(joined.of, made.under)) : made;
}
