// Where a body comes to rest on ropes of given anchors and lengths: which ropes are straight is part of the answer.
import { add, divide, multiply, rational, squareRoot, subtract, surd, toNumber } from "../../../shared/exact/index.ts";
import type { Rational } from "../../../shared/exact/index.ts";
import type { Problem, Rope } from "../../../shared/problem/index.ts";
import type { Value } from "../../algebra/evaluate.ts";
import type { ReadDirection } from "../direction.ts";
import { acuteAngle } from "../direction.ts";
import type { Hanging } from "../set-up-types.ts";
import type { Side } from "../types.ts";

const MINUS_ONE = surd(rational("-1"));

/** Where the ropes leave the body, and how they then run. */
export interface HangingPlace {
  readonly hanging: Hanging;
  readonly directions: ReadonlyMap<string, ReadDirection>;
}

interface TiedRope {
  readonly id: string;
  readonly x: Rational;
  readonly y: Rational;
  readonly length: Rational;
}

/** The place of the body when the ropes in `loose` hang slack; null where no rope is given by anchor and length. */
export function hangingPlace(problem: Problem, loose: ReadonlySet<string>): HangingPlace | null {
  const tied = problem.ropes.flatMap(tiedRope);
  if (tied.length === 0) return null;
  const apart = tooFarApart(tied);
  if (apart !== null) return { hanging: apart, directions: new Map(tied.map((r) => [r.id, upright()])) };
  const straight = tied.filter((r) => !loose.has(r.id));
  const [a, b] = straight;
  if (a === undefined) return fallen(tied);
  return b === undefined ? onOne(problem, a, tied) : onTwo(a, b);
}

function tiedRope(rope: Rope): TiedRope[] {
  if (rope.direction.kind !== "hangs" || rope.anchor === null || rope.length === null) return [];
  return [{ id: rope.id, x: rope.anchor.x, y: rope.anchor.y, length: rope.length }];
}

/** Two ropes that do not reach from one anchor to the other. */
function tooFarApart([a, b]: readonly TiedRope[]): Hanging | null {
  if (a === undefined || b === undefined) return null;
  const dx = b.x.sub(a.x);
  const dy = b.y.sub(a.y);
  const square = dx.mul(dx).add(dy.mul(dy));
  const reach = a.length.add(b.length);
  if (reach.mul(reach).compare(square) >= 0) return null;
  return { kind: "too-short", distance: Math.sqrt(square.valueOf()), reach: reach.valueOf() };
}

/** No rope straight: nothing says where the body is. */
const fallen = (ropes: readonly TiedRope[]): HangingPlace => ({
  hanging: { kind: "nowhere", bridges: [] },
  directions: new Map(ropes.map((r) => [r.id, upright()])),
});

const upright = (): ReadDirection => ({
  side: 0,
  rise: 1,
  acute: acuteAngle(rational("90")),
  written: { from: "horizontal" },
});

/** On one rope: it points the way of (ax, g + ay), along which it has to pull. */
function onOne(problem: Problem, rope: TiedRope, all: readonly TiedRope[]): HangingPlace {
  const [fx, fy] = needed(problem);
  const size = rootOf(fx.mul(fx).add(fy.mul(fy)));
  if (size.decimal === 0) return fallen(all);
  const direction = directionFrom(valueOver(fx, size), valueOver(fy, size));
  const x = rope.x.valueOf() - (rope.length.valueOf() * fx.valueOf()) / size.decimal;
  const y = rope.y.valueOf() - (rope.length.valueOf() * fy.valueOf()) / size.decimal;
  const bridges = all
    .filter((r) => r.id !== rope.id)
    .map((r) => ({
      rope: r.id,
      distance: Math.hypot(r.x.valueOf() - x, r.y.valueOf() - y),
      length: r.length.valueOf(),
    }));
  return {
    hanging: { kind: "placed", at: { x, y }, bridges },
    directions: new Map(all.map((r) => [r.id, r.id === rope.id ? direction : upright()])),
  };
}

function needed(problem: Problem): readonly [Rational, Rational] {
  const [body] = problem.bodies;
  const given = body?.motion.kind === "given" ? body.acceleration : problem.frame;
  return [given.x, problem.gravity.add(given.y)];
}

/**
 * On two straight ropes: the lower of the two points that are as far from each anchor as its rope is long. With d from
 * anchor 1 to anchor 2 and p = (L1² − L2² + d²)/2, it lies p/d along that line and √(L1² − p²/d²) across it.
 */
function onTwo(a: TiedRope, b: TiedRope): HangingPlace {
  const dx = b.x.sub(a.x);
  const dy = b.y.sub(a.y);
  const square = dx.mul(dx).add(dy.mul(dy));
  if (square.compare(0) === 0) return fromOneAnchor(a, b);
  const p = a.length.mul(a.length).sub(b.length.mul(b.length)).add(square).div(rational("2"));
  const across = a.length.mul(a.length).mul(square).sub(p.mul(p));
  const distance = Math.sqrt(square.valueOf());
  const both = new Map([
    [a.id, upright()],
    [b.id, upright()],
  ]);
  if (across.compare(0) < 0) {
    const rope = a.length.compare(b.length) > 0 ? a.id : b.id;
    return { hanging: { kind: "one-too-long", rope, distance }, directions: both };
  }
  const h = rootOf(across);
  // Of the two points the lower one: the across direction that points down.
  const down = dx.compare(0) >= 0 ? 1 : -1;
  const along = (part: Rational, normal: Rational): Value => {
    const straightPart = p.mul(part).div(square);
    const factor = normal.div(square);
    const exact = h.exact === null ? null : add(surd(straightPart), multiply(surd(factor), h.exact));
    return { decimal: exact === null ? straightPart.valueOf() + factor.valueOf() * h.decimal : toNumber(exact), exact };
  };
  // From anchor 1 to the body.
  const fromA = { x: along(dx, dy.mul(BigInt(down))), y: along(dy, dx.mul(BigInt(-down))) };
  const fromB = { x: less(fromA.x, dx), y: less(fromA.y, dy) };
  return {
    hanging: {
      kind: "placed",
      at: { x: a.x.valueOf() + fromA.x.decimal, y: a.y.valueOf() + fromA.y.decimal },
      bridges: [],
    },
    directions: new Map([
      [a.id, directionFrom(upOver(fromA.x, a.length), upOver(fromA.y, a.length))],
      [b.id, directionFrom(upOver(fromB.x, b.length), upOver(fromB.y, b.length))],
    ]),
  };
}

/** Both ropes tied to one place: straight together only if they are equally long, and then both straight down. */
function fromOneAnchor(a: TiedRope, b: TiedRope): HangingPlace {
  const directions = new Map([
    [a.id, upright()],
    [b.id, upright()],
  ]);
  const longer = a.length.compare(b.length);
  if (longer !== 0)
    return { hanging: { kind: "one-too-long", rope: longer > 0 ? a.id : b.id, distance: 0 }, directions };
  const at = { x: a.x.valueOf(), y: a.y.sub(a.length).valueOf() };
  return { hanging: { kind: "placed", at, bridges: [] }, directions };
}

const less = (v: Value, by: Rational): Value => ({
  decimal: v.exact === null ? v.decimal - by.valueOf() : toNumber(subtract(v.exact, surd(by))),
  exact: v.exact === null ? null : subtract(v.exact, surd(by)),
});

/** −v/length: the rope leaves the body towards its anchor. */
const upOver = (v: Value, length: Rational): Value => {
  const exact = v.exact === null ? null : divide(multiply(MINUS_ONE, v.exact), surd(length));
  return { decimal: exact === null ? -v.decimal / length.valueOf() : toNumber(exact), exact };
};

function rootOf(x: Rational): Value {
  const exact = x.compare(0) === 0 ? surd(x) : squareRoot(x);
  return { decimal: exact === null ? Math.sqrt(x.valueOf()) : toNumber(exact), exact };
}

function valueOver(x: Rational, size: Value): Value {
  const exact = size.exact === null ? null : divide(surd(x), size.exact);
  return { decimal: exact === null ? x.valueOf() / size.decimal : toNumber(exact), exact };
}

function directionFrom(x: Value, y: Value): ReadDirection {
  const side = signOf(x);
  const rise = signOf(y);
  if (side === 0) return { ...upright(), rise };
  if (rise === 0) return { side, rise, acute: acuteAngle(rational("0")), written: { from: "horizontal" } };
  const acute = {
    degrees: null,
    radians: Math.atan2(Math.abs(y.decimal), Math.abs(x.decimal)),
    sine: sizeOf(y),
    cosine: sizeOf(x),
  };
  return { side, rise, acute, written: { from: "horizontal" } };
}

const signOf = (v: Value): Side => (Math.abs(v.decimal) < 1e-14 ? 0 : v.decimal > 0 ? 1 : -1);
function sizeOf(v: Value): Value {
  if (v.decimal >= 0) return v;
  return { decimal: -v.decimal, exact: v.exact === null ? null : multiply(MINUS_ONE, v.exact) };
}
