// The ropes: straight stretches, the way round each wheel, slack ones hanging loose; and the wheels themselves.
import { along, distance, turned, unitTo, type Point } from "../geometry.ts";
import { arcPath, circlePath, polyline } from "../path-text.ts";
import { avoid, type Sketch } from "../sketch.ts";
import type { SystemRope } from "../system-scene.ts";
import type { Layout, PlacedStrand } from "./layout.ts";
import { hookLength } from "./strands.ts";
import { heading, left, plus, times, type Vec } from "./vector.ts";
import type { SystemView } from "./view.ts";

/** Draws all ropes of a part. */
export function drawRopes(sketch: Sketch, layout: Layout, ropes: readonly SystemRope[], view: SystemView): void {
  for (const strand of layout.strands) {
    const rope = ropes.find(({ id }) => id === strand.rope);
    if (rope !== undefined) drawStrand(sketch, strand, rope, view);
  }
  drawSpreaders(sketch, layout, view);
  for (const pulley of layout.fixed) {
    const rope = ropes.find(({ id }) => id === pulley.rope);
    const [a, b] = pulley.pulls.map((pull) => rope?.pulls[pull]?.degrees ?? 90);
    if (rope === undefined || a === undefined || b === undefined) continue;
    const rims = [times(left(heading(a)), -pulley.sense), times(left(heading(b)), pulley.sense)] as const;
    drawBend(sketch, `bend-${pulley.key}`, rope, { ...pulley, centre: pulley.axle, rims }, view);
  }
  for (const sheave of layout.sheaves) {
    const rope = ropes.find(({ id }) => id === sheave.rope);
    const body = layout.bodies.find(({ id }) => id === sheave.body);
    const [a, b] = [sheave.first, sheave.second].map((pull) => rope?.pulls[pull]?.degrees ?? 90);
    if (rope === undefined || body === undefined || a === undefined || b === undefined) continue;
    const rims = [times(left(heading(a)), sheave.sense), times(left(heading(b)), -sheave.sense)] as const;
    const centre = plus(body.at, sheave.axle);
    drawBend(sketch, `bend-${rope.id}-${sheave.first}`, rope, { ...sheave, centre, rims }, view);
  }
}

/** The bar to which ropes are tied that pull a body side by side. */
function drawSpreaders(sketch: Sketch, { bodies, strands }: Layout, view: SystemView): void {
  for (const { id, at, shape } of bodies) {
    if (shape.kind === "pulley") continue;
    const holds = strands.flatMap(({ from, to }) => [from, to].filter((hold) => hold.at === id));
    const offsets = holds.map(({ offset }) => offset).filter(({ x, y }) => Math.hypot(x, y) > 0.01);
    offsets.forEach((offset, index) => {
      const ends = [at, plus(at, offset)].map((place) => view.at(place));
      sketch.path(`spreader-${id}-${index}`, polyline(ends), "strap");
    });
  }
}

const lookOf = (rope: SystemRope): string =>
  rope.state === "slack" ? "rope slack" : rope.idle === true ? "rope idle" : "rope";

function drawStrand(sketch: Sketch, strand: PlacedStrand, rope: SystemRope, view: SystemView): void {
  const key = `rope-${strand.key}`;
  const points = rope.state === "slack" ? looseLine(strand, view) : [view.at(strand.start), view.at(strand.end)];
  sketch.lines(key, points, lookOf(rope), avoid.shaft, rope.id);
  const oblique =
    rope.state === "slack" && rope.length === null && rope.pulls[strand.pulls[0] ?? 0]?.degreesText != null;
  if (oblique)
    sketch.lines(
      `outline-${strand.key}`,
      [view.at(strand.start), view.at(strand.end)],
      "rope-outline",
      avoid.outline,
      rope.id,
    );
}

/** The line of a slack rope in the picture: its curve, or waves along an upright one. */
export function looseLine({ start, end, loose }: PlacedStrand, view: SystemView): Point[] {
  if (loose !== null) return loose.map((place) => view.at(place));
  const [a, b] = [view.at(start), view.at(end)];
  const ahead = unitTo(a, b);
  const length = distance(a, b);
  const waves = Math.max(1, Math.round(length / 26));
  return Array.from({ length: 12 * waves + 1 }, (_, i) => {
    const share = i / (12 * waves);
    return along(along(a, ahead, share * length), turned(ahead), 3 * Math.sin(2 * Math.PI * waves * share));
  });
}

interface Bend {
  readonly centre: Vec;
  readonly radius: number;
  readonly sense: 1 | -1;
  /** Where the rope comes to the rim and leaves it, seen from the axle, with length 1. */
  readonly rims: readonly [Vec, Vec];
}

/** The rope on the rim of a wheel. */
function drawBend(sketch: Sketch, key: string, rope: SystemRope, bend: Bend, view: SystemView): void {
  const [from, to] = bend.rims.map(({ x, y }) => (Math.atan2(y, x) * 180) / Math.PI);
  if (from === undefined || to === undefined) return;
  const swept = ((((to - from) * bend.sense) % 360) + 360) % 360;
  if (swept < 0.5 || swept > 359.5) return;
  const centre = view.at(bend.centre);
  const radius = bend.radius * view.scale;
  const halves = swept > 179 ? [0, swept / 2, swept] : [0, swept];
  const arcs = halves.slice(1).map((share, index) => {
    const before = halves[index] ?? 0;
    return arcPath(centre, radius, from + bend.sense * before, from + bend.sense * share);
  });
  sketch.path(key, arcs.join(""), lookOf(rope), rope.id);
}

/** Draws the wheels under the ropes: fixed ones with what holds them, movable ones with their straps. */
export function drawWheels(sketch: Sketch, layout: Layout, view: SystemView): void {
  for (const { key, axle, radius } of layout.fixed) drawWheel(sketch, key, view.at(axle), radius * view.scale);
  for (const { id, shape, at } of layout.bodies) {
    if (shape.kind !== "pulley") continue;
    const own = layout.sheaves.filter((sheave) => sheave.body === id);
    const axles = own.length === 0 ? [{ x: 0, y: 0 }] : own.map(({ axle }) => axle);
    const radius = own[0]?.radius ?? shape.height / 2 - 2;
    axles.forEach((axle, index) => {
      drawWheel(sketch, `wheel-${id}-${index}`, view.at(plus(at, axle)), radius * view.scale, id);
    });
    drawStraps(
      sketch,
      layout,
      id,
      axles.map((axle) => plus(at, axle)),
      radius,
      view,
    );
  }
}

function drawWheel(sketch: Sketch, key: string, centre: Point, radius: number, ref: string | null = null): void {
  sketch.path(key, circlePath(centre, radius), "wheel", ref);
  sketch.path(`${key}-axle`, circlePath(centre, Math.min(2.6, radius / 3)), "dot");
  sketch.block({ x: centre.x - radius, y: centre.y - radius, width: 2 * radius, height: 2 * radius });
}

/** From the axles of a block to the ropes that are tied to it. */
function drawStraps(
  sketch: Sketch,
  layout: Layout,
  id: string,
  axles: readonly Vec[],
  radius: number,
  view: SystemView,
): void {
  const tied = layout.strands.flatMap((strand) => {
    const far = heading(strand.degrees);
    const ends: Vec[] = [];
    if (strand.body === id && strand.hidden[0] > radius) ends.push(plus(strand.start, times(far, 2)));
    if (strand.to.at === id && strand.hidden[1] > radius) ends.push(plus(strand.end, times(far, -2)));
    return ends.map((hook) => ({
      key: `strap-${strand.key}-${id}`,
      hook,
      far: strand.body === id ? far : times(far, -1),
    }));
  });
  if (axles.length > 1) sketch.path(`strap-${id}`, polyline(axles.map((axle) => view.at(axle))), "strap");
  for (const { key, hook, far } of tied) {
    const back = plus(hook, times(far, 0 - radius - hookLength - 2));
    const nearest = axles.reduce((a, b) =>
      Math.hypot(a.x - back.x, a.y - back.y) <= Math.hypot(b.x - back.x, b.y - back.y) ? a : b,
    );
    sketch.path(key, polyline([nearest, back, hook].map((place) => view.at(place))), "strap");
  }
}
