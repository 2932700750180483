// Solving an equation that holds one unknown: gather, factor, collect, divide. Each is a line of its own, and only if it does something.
import { decomposeMass } from "./mass.ts";
import { isInteger, negative, product, quotient, symbol, ZERO } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { collect, isPlain, opposite, sideExpr, termExpr } from "../algebra/linear.ts";
import type { Term } from "../algebra/linear.ts";
import type { Live } from "./live.ts";
import type { NonZero, Solved } from "./types.ts";
import type { Writer } from "./writer.ts";

/** Why the factor of an unknown cannot be zero. */
export function whyNonZero(factor: Expr): NonZero {
  if (factor.kind === "sum") return "not-one-line";
  const part = factor.kind === "product" ? (factor.factors.find((f) => f.kind === "trig") ?? factor) : factor;
  if (part.kind !== "trig") return part.kind === "integer" ? "number" : "not-one-line";
  return part.fn === "cos" ? "not-vertical" : "not-level";
}

/** Solves `live` for its only unknown. Lines are named `${name}.gather`, `.factor`, `.collect`, `.divide`. */
export function settle(writer: Writer, live: Live, unknown: string, name: string): Solved {
  const ours = live.left.filter((t) => t.unknown === unknown);
  const others = live.left.filter((t) => t.unknown !== unknown);
  const flipped = ours.every((t) => t.sign < 0);
  const mine = flipped ? ours.map(opposite) : ours;
  const rest: Term[] = flipped ? [...others, ...live.right.map(opposite)] : [...others.map(opposite), ...live.right];
  let line = live.line;
  if (others.length > 0 || flipped) {
    const moved = [...(flipped ? ours : []), ...others.filter(() => !flipped)].map((t) => termExpr(t));
    line = writer.line({
      id: `${name}.gather`,
      sides: [sideExpr(mine), sideExpr(rest)],
      from: [line],
      reason: { kind: "gather", moved, flipped },
    });
  }
  const joined = decomposeMass(rest);
  if (joined !== null)
    line = writer.line({
      id: `${name}.factor`,
      sides: [sideExpr(mine), joined],
      from: [line],
      reason: { kind: "factor-mass" },
    });
  return divideOff(writer, unknown, mine, joined ?? sideExpr(rest), line, name);
}

function divideOff(
  writer: Writer,
  unknown: string,
  mine: readonly Term[],
  right: Expr,
  before: string,
  name: string,
): Solved {
  let line = before;
  const first = mine[0];
  if (mine.length === 1 && first !== undefined && isPlain(first)) return { unknown, expr: right, line };
  const { sign, factor } = collect(mine);
  const value = sign < 0 ? negative(right) : right;
  if (mine.length > 1)
    line = writer.line({
      id: `${name}.collect`,
      sides: [product([symbol(unknown), factor]), value],
      from: [line],
      reason: { kind: "collect", unknown },
    });
  if (isInteger(factor, 1)) return { unknown, expr: value, line };
  const zero = isInteger(value, 0);
  const expr = zero ? ZERO : quotient(value, factor);
  line = writer.line({
    id: `${name}.divide`,
    sides: [symbol(unknown), expr],
    from: [line],
    reason: { kind: zero ? "divide-zero" : "divide", by: factor, why: whyNonZero(factor) },
  });
  return { unknown, expr, line };
}
