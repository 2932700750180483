// The forces head to tail. What they leave is mass times acceleration, drawn in the acceleration's own style; at rest they close.
import { doubleArrow, forceArrow } from "./arrow.ts";
import { extentOf, largestScale, placeView, toScreen, type View } from "./fit-view.ts";
import { accelerationRefs, note, paintOf, textSize, weightRuns } from "./force-marks.ts";
import { between, distance, type Box, type Point } from "./geometry.ts";
import { letter, symbol, type Run } from "./label.ts";
import { newtonScale, type NewtonScale } from "./newton-scale.ts";
import { circlePath } from "./path-text.ts";
import type { Picture } from "./picture.ts";
import type { DiagramScene, ScenePoint } from "./scene.ts";
import { Sketch } from "./sketch.ts";
import { beside } from "./spots.ts";
import { scaleBar, scaledSize, sizedPulls, withSize } from "./to-scale.ts";

const room: Box = { x: 84, y: 24, width: 192, height: 248 };
/** A polygon flatter than this has its sides drawn beside each other. */
const flat = 14;

/** One side of the polygon: an arrow in newtons, y upwards. */
export interface PolygonSide {
  readonly key: string;
  /** What it stands for, where that is not its key. */
  readonly ref?: string;
  readonly paint: string;
  readonly runs: readonly Run[];
  readonly from: ScenePoint;
  readonly to: ScenePoint;
}

/** The sides in order: the weight first, then the tensions; each begins where the one before ends. */
export function polygonSides(scene: DiagramScene): PolygonSide[] {
  const forces = [
    {
      key: "weight",
      paint: "weight",
      runs: withSize(weightRuns(scene), scene.weightText),
      force: { x: 0, y: -scene.weight },
    },
    ...sizedPulls(scene).map(({ pull, force }) => ({
      key: pull.rope.id,
      paint: paintOf(pull),
      runs: withSize(symbol(pull.rope.label), pull.rope.tensionText),
      force,
    })),
  ];
  let from: ScenePoint = { x: 0, y: 0 };
  return forces.flatMap(({ force, ...side }) => {
    if (force.x === 0 && force.y === 0) return [];
    const to = { x: from.x + force.x, y: from.y + force.y };
    const drawn = { ...side, from, to };
    from = to;
    return [drawn];
  });
}

/** The polygon to scale. Where the tensions are not determined, it says so and draws none. */
export function forcePolygon(scene: DiagramScene): Picture {
  const sketch = new Sketch("force-polygon", scaledSize.width, scaledSize.height);
  if (!scene.solved) {
    note(sketch, "note", "sizes not determined", scaledSize.height);
    return sketch.picture();
  }
  const sides = polygonSides(scene);
  const scale = newtonScale(polygonScale(sides, scene.netForce));
  if (scale === null) note(sketch, "note", "no force acts", scaledSize.height);
  else
    drawPolygon(
      sketch,
      sides,
      { ...scene.netForce, runs: [letter("ma")], ref: `ma ${accelerationRefs(scene)}` },
      scale,
    );
  return sketch.picture();
}

/** What the forces leave: mass times acceleration, in the unit of force. */
export interface NetForce extends ScenePoint {
  readonly runs: readonly Run[];
  readonly ref: string;
}

/** The largest scale at which a polygon fits into its picture. */
export function polygonScale(sides: readonly PolygonSide[], net: ScenePoint): number {
  return largestScale(extentOf([...sides.map((side) => side.to), net]), room);
}

/** Draws the sides head to tail, what they leave, and the scale. */
export function drawPolygon(sketch: Sketch, sides: readonly PolygonSide[], net: NetForce, scale: NewtonScale): void {
  const extent = extentOf([...sides.map((side) => side.to), net]);
  const rest = {
    x: room.x + room.width / 2 - ((extent.left + extent.right) / 2) * scale.perNewton,
    y: room.y + room.height / 2 + ((extent.low + extent.high) / 2) * scale.perNewton,
  };
  const view = placeView(extent, room, scale.perNewton, rest);
  const apart = apartness(sides, net, view);
  sketch.path("start", circlePath(toScreen(view, { x: 0, y: 0 }), 3), "dot");
  const middle = toScreen(view, centreOf(sides));
  sides.forEach((side, index) => {
    drawSide(sketch, side, view, moved(apart, index), middle);
  });
  drawNet(sketch, net, view, moved(apart, sides.length), middle);
  scaleBar(sketch, scale);
}

/** How far apart neighbouring sides are drawn, as an offset for each further side: nothing while the polygon is open enough. */
function apartness(sides: readonly PolygonSide[], net: ScenePoint, view: View): Point {
  const points = [...sides.map((side) => side.to), net].map((p) => ({ x: p.x * view.scale, y: p.y * view.scale }));
  const longest = points.reduce((a, b) => (Math.hypot(b.x, b.y) > Math.hypot(a.x, a.y) ? b : a), { x: 0, y: -1 });
  const length = Math.hypot(longest.x, longest.y);
  const along = { x: longest.x / length, y: longest.y / length };
  const widths = points.map((p) => p.x * along.y - p.y * along.x);
  const width = Math.max(0, ...widths) - Math.min(0, ...widths);
  // To the side on which the polygon already bulges, so that no side is pushed onto another.
  const bulge = Math.max(0, ...widths) >= -Math.min(0, ...widths) - 1e-6 ? 1 : -1;
  const offset = bulge * Math.max(0, flat - width);
  return { x: offset * along.y, y: offset * along.x };
}

function moved(apart: Point, times: number): Point {
  return { x: apart.x * times, y: apart.y * times };
}

/** The mean of the corners. */
function centreOf(sides: readonly PolygonSide[]): ScenePoint {
  const count = Math.max(1, sides.length);
  const sum = sides.reduce((a, { from }) => ({ x: a.x + from.x, y: a.y + from.y }), { x: 0, y: 0 });
  return { x: sum.x / count, y: sum.y / count };
}

function drawSide(sketch: Sketch, side: PolygonSide, view: View, offset: Point, middle: Point): void {
  const a = toScreen(view, side.from);
  const b = toScreen(view, side.to);
  const from = { x: a.x + offset.x, y: a.y + offset.y };
  const to = { x: b.x + offset.x, y: b.y + offset.y };
  const ref = side.ref ?? side.key;
  forceArrow(sketch, { key: side.key, from, to, paint: side.paint, ref });
  sideLabel(sketch, side.key, side.runs, side.paint, ref, from, to, middle);
}

function drawNet(sketch: Sketch, { x, y, runs, ref }: NetForce, view: View, offset: Point, middle: Point): void {
  if (x === 0 && y === 0) return;
  const a = toScreen(view, { x: 0, y: 0 });
  const b = toScreen(view, { x, y });
  const from = { x: a.x + offset.x, y: a.y + offset.y };
  const to = { x: b.x + offset.x, y: b.y + offset.y };
  if (distance(from, to) < 0.5) return;
  doubleArrow(sketch, { key: "ma", from, to, paint: "accel", ref });
  sideLabel(sketch, "ma", runs, "accel", ref, from, to, middle);
}

function sideLabel(
  sketch: Sketch,
  key: string,
  runs: readonly Run[],
  paint: string,
  ref: string,
  a: Point,
  b: Point,
  middle: Point,
): void {
  // Outside first: on the left of someone going from a to b if the middle of the polygon is on the right.
  const right = (b.x - a.x) * (middle.y - a.y) - (b.y - a.y) * (middle.x - a.x) > 0;
  sketch.label({
    key: `${key}-label`,
    runs,
    size: textSize.symbol - 1,
    look: `symbol ${paint}`,
    ref,
    spots: beside(a, b, right ? 1 : -1, 6),
    home: between(a, b, 0.5),
  });
}
