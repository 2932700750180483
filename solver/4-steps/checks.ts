// The checks: put back into each axis, another method in one line, the polygon of forces.
import { isInteger, product, quantity, quotient, sum, symbol, trig, ZERO } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { sideExpr } from "../algebra/linear.ts";
import type { World, WorldRope } from "../1-bodies/types.ts";
import type { Live } from "./live.ts";
import { sumOfNumbers } from "./numbers.ts";
import type { Writer } from "./writer.ts";

/** Puts the sizes back into each axis: the pulls along it add up to m·a less the known forces. */
export function writeBalance(writer: Writer, lives: readonly Live[], isZero: (unknown: string) => boolean): void {
  for (const live of lives) {
    const pulls = live.left.filter((t) => t.unknown !== null);
    if (pulls.length === 0) continue;
    const symbolic = sideExpr(pulls.map((t) => ({ sign: t.sign, unknown: t.unknown, factor: t.factor })));
    const needed = sum([
      ...live.left
        .filter((t) => t.unknown === null)
        .map((t): Expr => (t.sign < 0 ? t.factor : { kind: "negative", of: t.factor })),
      ...live.right.map((t): Expr => (t.sign < 0 ? { kind: "negative", of: t.factor } : t.factor)),
    ]);
    const pulling = pulls.filter((t) => t.unknown !== null && !isZero(t.unknown));
    const line = { id: `check.${live.name}`, kind: "number", from: [live.line], reason: { kind: "put-back" } } as const;
    if (pulling.length === 0) {
      writer.line({ ...line, sides: [symbolic, ZERO] });
      continue;
    }
    const numeric = sumOfNumbers(
      sideExpr(pulling.map((t) => ({ sign: t.sign, unknown: t.unknown, factor: t.factor }))),
    );
    const total = isInteger(needed, 0) ? ZERO : quantity(needed, "N", "working");
    writer.line({
      ...line,
      sides: numeric.kind === "sum" ? [symbolic, numeric, total] : [symbolic, total],
      relation: "≈",
      status: "rounded",
    });
  }
  writer.passageIfAny("check.balance", { kind: "check-balance" });
}

/** The polygon of forces, and where three forces close it, the sine rule with its three equal ratios; then rope 2 alone by an axis across rope 1. */
export function writePolygon(writer: Writer, world: World, base: Expr | null, nonZero: boolean): void {
  const [a, b] = world.ropes;
  const oblique = (r: WorldRope | undefined): r is WorldRope => r !== undefined && r.side !== 0 && r.rise === 1;
  if (oblique(a) && oblique(b) && a.side !== b.side && base !== null && nonZero) {
    const sine: Expr = {
      kind: "trig",
      fn: "sin",
      angle: [
        { sign: 1, id: a.ownAngle },
        { sign: 1, id: b.ownAngle },
      ],
    };
    const [first, second] = [symbol(a.id), symbol(b.id)];
    writer.line({
      id: "check.sine-rule",
      sides: [
        quotient(first, trig("cos", b.ownAngle)),
        quotient(second, trig("cos", a.ownAngle)),
        quotient(base, sine),
      ],
      kind: "geometry",
      reason: { kind: "sine-rule" },
    });
    writer.line({
      id: "check.across",
      sides: [product([second, sine]), product([base, trig("cos", a.ownAngle)])],
      kind: "algebra",
      reason: { kind: "perpendicular", across: a.id },
    });
  }
  writer.passage("check.polygon", { kind: "check-polygon" });
}
