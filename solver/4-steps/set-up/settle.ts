// Solving an equation that holds one unknown: gather, take common factors out, collect, divide. Each is a line, and only if it does something.
import { isInteger, symbol, ZERO } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { opposite } from "../../algebra/linear.ts";
import type { NonZero, Solved } from "../types.ts";
import type { Writer } from "../writer.ts";
import { added, combined, isShorter, withoutSquares } from "./like.ts";
import { isMassive, isOne, sideExpr, termExpr } from "./order.ts";
import { commonOut, divided, ratioOf, shareSomething } from "./ratio.ts";
import { gather } from "./terms.ts";
import type { Gathered } from "./terms.ts";
import type { Equality } from "./types.ts";

/** Why what is divided by cannot be zero. */
export function whyNotZero(factor: Expr): NonZero {
  if (factor.kind === "integer") return "number";
  const { over } = ratioOf(factor);
  const sum = over.find((f) => f.kind === "sum");
  if (sum?.kind === "sum") {
    if (sum.terms.some((t) => t.kind === "negative")) return "bracket";
    return over.length === 1 && sum.terms.every(isMass) ? "masses" : "positive";
  }
  return over.some((p) => p.kind === "trig") ? "at-this-angle" : "mass";
}

/** A mass, or a multiple of one. */
const isMass = (e: Expr): boolean => isMassive(e) && ratioOf(e).over.every((f) => f.kind === "symbol" && f.id !== "g");

/** Writes the line that brings all terms of an unknown to one side; nothing where they stand there. Gives the line that holds then. */
export function gatherLine(writer: Writer, e: Equality, gathered: Gathered, id: string): string {
  const { mine, rest, moved, flipped } = gathered;
  if (moved.length === 0 && !flipped) return e.line;
  return writer.line({
    id,
    sides: [sideExpr(mine), sideExpr(rest)],
    from: [e.line],
    reason:
      moved.length === 0
        ? { kind: "other-way-round" }
        : {
            kind: "both-sides",
            plus: moved.filter((t) => t.sign < 0).map((t) => termExpr(opposite(t))),
            minus: moved.filter((t) => t.sign > 0).map(termExpr),
          },
  });
}

/** Solves an equality for its only open unknown. Lines are named `${name}.gather`, `.collect`, `.factor`, `.divide`. */
export function settleIn(writer: Writer, e: Equality, unknown: string, name: string): Solved {
  const gathered = gather(e, unknown);
  const { mine, rest } = gathered;
  let line = gatherLine(writer, e, gathered, `${name}.gather`);
  let { factor } = combined(mine);
  const { sign } = combined(mine);
  const turned = sign < 0 ? rest.map(opposite) : rest;
  const right = added(turned);
  const next = (id: string, reason: Parameters<Writer["line"]>[0]["reason"], side = sideExpr(right)): void => {
    line = writer.line({
      id: `${name}.${id}`,
      sides: [termExpr({ sign: 1, unknown, factor }), side],
      from: [line],
      reason,
    });
  };
  if (mine.length > 1) next("collect", { kind: "collect", unknown });
  else if (sign < 0) next("signs", { kind: "change-signs" });
  else if (isShorter(turned, right)) next("add", { kind: "add-up" });
  const simpler = withoutSquares(factor);
  if (simpler !== null) {
    factor = simpler;
    next("squares", { kind: "squares-add-up" });
  }
  const alone = isOne(factor);
  const whole = right.length === 0 ? ZERO : divided(right, factor);
  const front = shareSomething(right) && (alone || !cancelsInto(factor, whole));
  if (front) next("factor", { kind: "factor-mass" }, commonOut(right));
  if (alone) return { unknown, expr: front ? commonOut(right) : sideExpr(right), line };
  line = writer.line({
    id: `${name}.divide`,
    sides: [symbol(unknown), whole],
    from: [line],
    reason: { kind: right.length === 0 ? "divide-zero" : "divide", by: factor, why: whyNotZero(factor) },
  });
  return { unknown, expr: whole, line };
}

/** Whether dividing takes away all that the terms share, so that there is no need to take it out first. */
function cancelsInto(factor: Expr, whole: Expr): boolean {
  const bare = whole.kind === "negative" ? whole.of : whole;
  return !isInteger(factor, 1) && (bare.kind === "sum" || (bare.kind === "quotient" && bare.over.kind === "sum"));
}
