// Ropes that lie along one line: only a combination of their pulls can be found, or no pulls can do it at all.
import type { WorldRope } from "../1-bodies/types.ts";
import type { AxisLaw } from "../3-equations/types.ts";
import { isInteger, negative, product, quantity, quotient, sum, trig, ZERO } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { sideExpr, opposite, termExpr } from "../algebra/linear.ts";
import { decomposeMass } from "./mass.ts";
import type { Live } from "./live.ts";
import { combinationExpr } from "./one-sided.ts";
import { whyNonZero } from "./settle.ts";
import type { Writer } from "./writer.ts";

/** Solves for the combination on the first axis that holds it, and gives its expression. */
export function writeCombination(
  writer: Writer,
  lives: readonly Live[],
  ids: readonly [string, string],
  sense: "sum" | "difference",
): Expr {
  const live =
    lives.find((l) => l.axis === 1 && l.left.some((t) => t.unknown !== null)) ??
    lives.find((l) => l.left.some((t) => t.unknown !== null));
  if (live === undefined) throw new Error("ropes along one line have a component along some axis");
  const pulls = live.left.filter((t) => t.unknown !== null);
  const flipped = pulls.find((t) => t.unknown === ids[0])?.sign === -1;
  const others = live.left.filter((t) => t.unknown === null);
  const mine = flipped ? pulls.map(opposite) : pulls;
  const rest = flipped ? [...others, ...live.right.map(opposite)] : [...others.map(opposite), ...live.right];
  let line = live.line;
  if (others.length > 0 || flipped)
    line = writer.line({
      id: "combination.gather",
      sides: [sideExpr(mine), sideExpr(rest)],
      from: [line],
      reason: { kind: "gather", moved: (flipped ? pulls : others).map(termExpr), flipped },
    });
  const joined = decomposeMass(rest);
  const right = joined ?? sideExpr(rest);
  if (joined !== null)
    line = writer.line({
      id: "combination.factor",
      sides: [sideExpr(mine), joined],
      from: [line],
      reason: { kind: "factor-mass" },
    });
  const both = combinationExpr(ids[0], ids[1], sense);
  const factor = pulls[0]?.factor ?? ZERO;
  if (!isInteger(factor, 1)) {
    line = writer.line({
      id: "combination.collect",
      sides: [product([both, factor]), right],
      from: [line],
      reason: { kind: "only-combination" },
    });
    line = writer.line({
      id: "combination.divide",
      sides: [both, quotient(right, factor)],
      from: [line],
      reason: { kind: "divide", by: factor, why: whyNonZero(factor) },
    });
  }
  const value = quotient(right, factor);
  writer.line({
    id: "combination.number",
    sides: [both, value, quantity(value, "N", "working")],
    kind: "number",
    relation: "≈",
    status: "rounded",
    from: [line],
    reason: { kind: "work-out" },
  });
  writer.line({
    id: "combination.answer",
    sides: [both, quantity(value, "N", "answer")],
    kind: "number",
    relation: "≈",
    status: "rounded",
    from: [line],
    reason: { kind: "round" },
  });
  return value;
}

/** Shows that pulls along one oblique line cannot give what is needed: across that line nothing pulls, and something should. */
export function writeOffLine(
  writer: Writer,
  rope: WorldRope,
  laws: readonly [AxisLaw, AxisLaw],
  from: readonly string[],
): void {
  // Across the line the needed force must vanish: needed-up · cos = needed-sideways · sin, with the line's own sides.
  const [x, y] = laws;
  const up = needed(y);
  const across = needed(x);
  const sideways =
    rope.side * rope.rise < 0
      ? negative(product([across, trig("sin", rope.angle)]))
      : product([across, trig("sin", rope.angle)]);
  writer.line({
    id: "line.across",
    sides: [product([up, trig("cos", rope.angle)]), sideways],
    from,
    status: "contradiction",
    reason: { kind: "across-the-line" },
  });
}

/** m·a less the known forces along an axis: what the pulls have to make. */
function needed(law: AxisLaw): Expr {
  const inertia = law.motion.kind === "none" ? [] : [law.massTimesAcceleration];
  return sum([...law.known.map((t) => (t.sign < 0 ? t.factor : negative(t.factor))), ...inertia]);
}
