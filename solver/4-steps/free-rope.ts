// The load on one rope whose direction is not known: its two components are the unknowns; each law gives one at once.
import type { World } from "../1-bodies/types.ts";
import { product, quantity, quotient, root, square, sum, symbol, trig } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import type { AttemptValues } from "./values.ts";
import { valueOfExpr } from "./values.ts";
import type { Solved } from "./types.ts";
import type { Writer } from "./writer.ts";

/** Size and direction from the two components. Adds the size and the angle theta to the values. Gives the size as a solved unknown. */
export function writeFreeRope(
  writer: Writer,
  world: World,
  rope: string,
  solved: readonly Solved[],
  values: AttemptValues,
): Solved {
  const [x, y] = [symbol(`${rope}x`), symbol(`${rope}y`)];
  const lines = solved.map((s) => s.line);
  const { push, lift } = world.body;
  const size = symbol(rope);
  if (push === 0 || lift === 0) {
    const only = push === 0 ? y : x;
    addAngle(values, lift === 0 ? 0 : 1, lift === 0 ? 1 : 0);
    const line = writer.line({
      id: `free.${rope}`,
      sides: [size, only],
      from: lines,
      kind: "geometry",
      reason: { kind: "only-component" },
    });
    values.symbols.set(rope, valueOfExpr(only, values));
    return { unknown: rope, expr: only, line };
  }
  const expr: Expr = root(sum([square(x), square(y)]));
  values.symbols.set(rope, valueOfExpr(expr, values));
  const newtons = (e: Expr): Expr => square(quantity(e, "N", "working"));
  addAngle(values, valueOfExpr(y, values).decimal, valueOfExpr(x, values).decimal);
  const line = writer.line({
    id: `free.${rope}`,
    sides: [size, expr],
    from: lines,
    kind: "geometry",
    reason: { kind: "pythagoras" },
  });
  writer.line({
    id: `number.${rope}`,
    sides: [size, root(sum([newtons(x), newtons(y)])), quantity(size, "N", "working")],
    from: [line],
    kind: "number",
    relation: "≈",
    status: "rounded",
    reason: { kind: "work-out" },
  });
  const theta = symbol("theta");
  const tangent = writer.line({
    id: "free.theta",
    sides: [trig("tan", "theta"), quotient(y, x)],
    from: lines,
    kind: "geometry",
    angles: "letters",
    reason: { kind: "tangent-of-direction" },
  });
  writer.line({
    id: "free.theta.number",
    sides: [trig("tan", "theta"), quantity(quotient(y, x), "", "working")],
    from: [tangent],
    kind: "number",
    relation: "≈",
    status: "rounded",
    angles: "letters",
    reason: { kind: "work-out" },
  });
  writer.line({
    id: "free.theta.answer",
    sides: [theta, quantity(theta, "°", "answer")],
    from: [tangent],
    kind: "number",
    relation: "≈",
    status: "rounded",
    angles: "letters",
    reason: { kind: "round" },
  });
  return { unknown: rope, expr, line };
}

/** theta from its opposite and adjacent sides, both positive or one zero. */
function addAngle(values: AttemptValues, up: number, across: number): void {
  const radians = Math.atan2(Math.abs(up), Math.abs(across));
  const size = Math.hypot(up, across);
  values.angles.set("theta", {
    degrees: null,
    radians,
    sine: { decimal: Math.abs(up) / size, exact: null },
    cosine: { decimal: Math.abs(across) / size, exact: null },
  });
  values.symbols.set("theta", { decimal: radians, exact: null });
}

/** Nearer than this, relative, a rope counts as just as long as the distance it has to bridge. */
export const LENGTH_MARGIN = 1e-9;

/** A slack rope's length against the distance it has to bridge, in multiples of the height h. */
export function writeLengthCheck(
  writer: Writer,
  slack: { readonly id: string; readonly number: number; readonly length: number },
  dx: number,
  dy: number,
  values: AttemptValues,
): void {
  const h = symbol("h");
  const times = (id: string): Expr => product([quantity(symbol(id), "", "working"), h]);
  const length = `L${slack.number}`;
  values.symbols.set(length, { decimal: slack.length, exact: null });
  values.symbols.set("d", { decimal: Math.hypot(dx, dy), exact: null });
  values.symbols.set("dx", { decimal: Math.abs(dx), exact: null });
  values.symbols.set("dy", { decimal: Math.abs(dy), exact: null });
  const rounded = { kind: "number", relation: "≈", status: "rounded" } as const;
  const first = writer.line({
    id: `length.${slack.id}`,
    sides: [symbol(length), times(length)],
    ...rounded,
    kind: "geometry",
    reason: { kind: "rope-length", rope: slack.id },
  });
  const second = writer.line({
    id: "length.distance",
    sides: [symbol("d"), root(sum([square(times("dx")), square(times("dy"))])), times("d")],
    ...rounded,
    reason: { kind: "distance" },
  });
  const just = Math.abs(Math.hypot(dx, dy) - slack.length) <= LENGTH_MARGIN * slack.length;
  writer.line({
    id: "length.slack",
    relation: just ? "=" : "<",
    sides: [symbol("d"), symbol(length)],
    kind: "geometry",
    from: [second, first],
    reason: { kind: just ? "just-as-long" : "shorter-than-rope", rope: slack.id },
  });
}
