// The straight stretches of every rope, and the fixed pulleys and ties they lead to.
import { turnBetween } from "../direction.ts";
import type { SystemRope, SystemScene } from "../system-scene.ts";
import type { Hold } from "./plan.ts";
import { armLength, flowOf, halfWidth, senseOf, sideGap, type Bodies, type Sheave } from "./pulleys.ts";
import { ropePath, type Join } from "./rope-path.ts";
import { cross, dot, exit, heading, left, minus, plus, times, type Vec } from "./vector.ts";

/** A straight stretch of a rope. */
export interface Strand {
  readonly key: string;
  readonly rope: string;
  /** The pulls it stands for: one, or two where it goes from body to body. */
  readonly pulls: readonly number[];
  /** The body at its beginning; at its end a body, a fixed pulley or a support. */
  readonly body: string;
  readonly from: Hold;
  readonly to: Hold;
  readonly degrees: number;
  /** How much of it is hidden by what it is tied to, at its beginning and at its end. */
  readonly hidden: readonly [number, number];
}

/** A pulley that is fixed to a support. */
export interface FixedPulley {
  readonly key: string;
  readonly rope: string;
  readonly pulls: readonly [number, number];
  readonly bodies: readonly [string, string];
  readonly radius: number;
  readonly sense: 1 | -1;
}

/** A rope's end at a support. */
export interface Tie {
  readonly key: string;
  readonly rope: string;
  readonly pull: number;
  readonly body: string;
  readonly degrees: number;
}

/** All that the ropes consist of. */
export interface Rigging {
  readonly strands: readonly Strand[];
  readonly fixed: readonly FixedPulley[];
  readonly ties: readonly Tie[];
}

const usualRadius = 16;
/** By how much the shortest glyph of a hanging load ends above the room it is given. */
const underGlyph = 6;
/** Between ropes that are tied side by side. */
const tiedApart = 11;
/** From a pulley's rim to the hook by which a rope holds its axle. */
export const hookLength = 5;

/** Every stretch, fixed pulley and tie of a scene. */
export function riggingOf(scene: SystemScene, bodies: Bodies): Rigging {
  const strands: Strand[] = [];
  const fixed: FixedPulley[] = [];
  const ties: Tie[] = [];
  for (const rope of scene.ropes) {
    const ends = rope.pulls.map((_, pull) => endAt(scene, rope, pull, bodies));
    for (const join of ropePath(rope)) {
      if (join.kind === "tie") tie(rope, join.pull, ends, { strands, ties });
      else if (join.kind === "straight") straight(rope, join, ends, strands);
      else if (join.kind === "turn") over(rope, join, ends, bodies, { strands, fixed });
    }
  }
  return { strands, fixed, ties };
}

/** Where a rope takes hold of a body. */
interface RopeEnd {
  readonly body: string;
  readonly degrees: number;
  readonly hold: Hold;
  readonly hidden: number;
}

function endAt(scene: SystemScene, rope: SystemRope, pull: number, bodies: Bodies): RopeEnd {
  const { on, degrees } = rope.pulls[pull] ?? { on: "", degrees: 90 };
  const along = heading(degrees);
  const wheel = bodies.sheaves.find((s) => s.rope === rope.id && (s.first === pull || s.second === pull));
  if (wheel !== undefined) {
    const offset = rim(wheel, along, wheel.first === pull);
    return { body: on, degrees, hold: { at: on, offset }, hidden: 0 };
  }
  const shape = bodies.shapes.get(on);
  const own = bodies.sheaves.filter((s) => s.body === on && s.rope === rope.id);
  const offset =
    shape?.kind !== "pulley"
      ? besideOthers(scene, rope, pull)
      : own.length > 1
        ? besideSheaves(own, along)
        : { x: 0, y: 0 };
  const hidden =
    shape === undefined || shape.kind === "knot"
      ? 0
      : shape.kind === "pulley"
        ? (own[0]?.radius ?? shape.height / 2 - 2) + hookLength
        : exit(shape.outline, along) - (shape.kind === "hanging" && along.y < 0 ? underGlyph : 0);
  return { body: on, degrees, hold: { at: on, offset }, hidden };
}

/** Where a stretch leaves a wheel, on which the rope arrives at its first pull and leaves at its second. */
function rim({ axle, radius, sense }: Sheave, along: Vec, arrives: boolean): Vec {
  return plus(axle, times(left(along), (arrives ? 1 : -1) * sense * radius));
}

/** Ropes that pull a body in one direction are tied to it side by side, the first on the left. */
function besideOthers(scene: SystemScene, rope: SystemRope, pull: number): Vec {
  const own = rope.pulls[pull];
  if (own === undefined) return { x: 0, y: 0 };
  const alike = scene.ropes.flatMap((other) =>
    other.pulls.flatMap(({ on, degrees }, index) =>
      on === own.on && Math.abs(turnBetween(degrees, own.degrees)) < 0.5 ? [`${other.id}-${index}`] : [],
    ),
  );
  const place = alike.indexOf(`${rope.id}-${pull}`) - (alike.length - 1) / 2;
  return times(left(heading(own.degrees)), 0 - place * tiedApart);
}

/** A rope tied to a block of several wheels holds it at the side where it begins. */
function besideSheaves(own: readonly Sheave[], along: Vec): Vec {
  const [first] = own;
  if (first === undefined) return { x: 0, y: 0 };
  const outward = first.axle;
  const far = Math.hypot(outward.x, outward.y) + first.radius + armLength;
  const across = left(along);
  return times(across, Math.sign(dot(across, outward)) * far);
}

function tie(rope: SystemRope, pull: number, ends: readonly RopeEnd[], out: { strands: Strand[]; ties: Tie[] }): void {
  const end = ends[pull];
  if (end === undefined) return;
  const key = `end-${rope.id}-${pull}`;
  const { body, degrees, hold: from, hidden } = end;
  out.ties.push({ key, rope: rope.id, pull, body, degrees });
  const to = { at: key, offset: { x: 0, y: 0 } };
  out.strands.push({
    key: `${rope.id}-${pull}`,
    rope: rope.id,
    pulls: [pull],
    body,
    from,
    to,
    degrees,
    hidden: [hidden, 0],
  });
}

type Span = Extract<Join, { kind: "straight" | "turn" }>;

function straight(rope: SystemRope, { first, second }: Span, ends: readonly RopeEnd[], strands: Strand[]): void {
  const [a, b] = [ends[first], ends[second]];
  if (a === undefined || b === undefined) return;
  strands.push({
    key: `${rope.id}-${first}`,
    rope: rope.id,
    pulls: [first, second],
    body: a.body,
    from: a.hold,
    to: b.hold,
    degrees: a.degrees,
    hidden: [a.hidden, b.hidden],
  });
}

function over(
  rope: SystemRope,
  { first, second }: Span,
  ends: readonly RopeEnd[],
  bodies: Bodies,
  out: { strands: Strand[]; fixed: FixedPulley[] },
): void {
  const [a, b] = [ends[first], ends[second]];
  if (a === undefined || b === undefined) return;
  const key = `pulley-${rope.id}-${first}`;
  const { radius, sense } = wheelBetween(rope, a, b, bodies);
  out.fixed.push({ key, rope: rope.id, pulls: [first, second], bodies: [a.body, b.body], radius, sense });
  for (const [end, pull, turn] of [
    [a, first, -sense],
    [b, second, sense],
  ] as const) {
    out.strands.push({
      key: `${rope.id}-${pull}`,
      rope: rope.id,
      pulls: [pull],
      body: end.body,
      from: end.hold,
      to: { at: key, offset: times(left(heading(end.degrees)), turn * radius) },
      degrees: end.degrees,
      hidden: [end.hidden, 0],
    });
  }
}

/** The size of a fixed pulley and its side of the rope. One that turns the rope back keeps what hangs on both sides apart. */
function wheelBetween(rope: SystemRope, a: RopeEnd, b: RopeEnd, bodies: Bodies): { radius: number; sense: 1 | -1 } {
  const [up, other] = [heading(a.degrees), heading(b.degrees)];
  const flow = flowOf(rope);
  const sense = senseOf(up, times(other, -1), flow);
  if (Math.abs(cross(up, other)) > 0.02) return { radius: usualRadius, sense };
  const side = left(up);
  if (a.body === b.body) {
    const apart = dot(minus(b.hold.offset, a.hold.offset), side);
    return { radius: Math.abs(apart) / 2, sense: apart >= 0 ? 1 : -1 };
  }
  const towards = times(side, sense);
  const needed =
    spread(bodies, a.body) + spread(bodies, b.body) + sideGap - dot(minus(a.hold.offset, b.hold.offset), towards);
  return { radius: Math.max(usualRadius - 2, needed / 2), sense };
}

/** How far a body reaches to a side, with what hangs from its wheels. */
function spread(bodies: Bodies, id: string): number {
  const own = bodies.sheaves.filter((sheave) => sheave.body === id);
  const down = own.filter((sheave) => sheave.radius > 15.5);
  return Math.max(halfWidth(bodies.shapes.get(id)), ...down.map((sheave) => 2 * sheave.radius - sideGap / 2));
}
