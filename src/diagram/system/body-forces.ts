// The force diagram of one body of several: before the answer with open ends, at the answer to a scale that all bodies share.
import { angleMark } from "../angle-mark.ts";
import { forceArrow, openArrow } from "../arrow.ts";
import { sideStep, turnBetween, unitOf } from "../direction.ts";
import { extentOf, largestScale, placeView } from "../fit-view.ts";
import { openLength } from "../force-diagram.ts";
import { accelerationArrow, note, textSize, tipLabel } from "../force-marks.ts";
import { along, turned, type Point } from "../geometry.ts";
import { letter, words, type Run } from "../label.ts";
import { circlePath } from "../path-text.ts";
import type { Picture } from "../picture.ts";
import type { ScenePoint } from "../scene.ts";
import { Sketch } from "../sketch.ts";
import { atAngle, beside, beyondTip } from "../spots.ts";
import type { SystemBody, SystemForce, SystemScene } from "../system-scene.ts";
import { scaleBar, scaledRest, scaledRoom, scaledSize, sizedArrow, withSize } from "../to-scale.ts";
import { idOf, paintOf, shownForces, vectorOf, type ShownForce } from "./forces.ts";
import { bodyScale, scaleRemark, type BodyScale } from "./scale.ts";

const openSize = { width: 360, height: 300 };
const openDot: Point = { x: 180, y: 152 };
/** How far an axis reaches from the dot, and how near in direction two arrows are drawn side by side. */
const axisReach = 132;
const axisMargin = 16;
/** What it costs a label to lie on an axis: more than to stand beside it. */
const besideAxis = 6;
const alike = 4;

/** The force diagram of a body; empty where the scene has no such body. */
export function bodyForceDiagram(scene: SystemScene, bodyId: string, mode: "unknown" | "to-scale"): Picture {
  const scaled = mode === "to-scale";
  const { width, height } = scaled ? scaledSize : openSize;
  const sketch = new Sketch(scaled ? "body-forces-to-scale" : "body-forces", width, height);
  const body = scene.bodies.find(({ id }) => id === bodyId);
  if (body === undefined) return sketch.picture();
  if (scaled) drawScaled(sketch, scene, body);
  else drawOpen(sketch, scene, body);
  return sketch.picture();
}

function drawOpen(sketch: Sketch, scene: SystemScene, body: SystemBody): void {
  const shown = shownForces(body.forces);
  axes(sketch, body, openDot, openSize.height);
  const sense = body.along === null || body.accelerationGiven ? null : unitOf(body.along);
  const known = body.accelerationGiven ? body.acceleration : null;
  const acceleration = sense === null ? known : { x: sense.x, y: 0 - sense.y };
  drawAcceleration(sketch, body, acceleration);
  let open = 0;
  shown.forEach((force, index) => {
    const unit = unitOf(force.degrees);
    const from = along(openDot, turned(unit), sideStep(force, shown, alike));
    const length = force.given ? (force.kind === "weight" ? 84 : 72) : 0.82 * openLength(open);
    const tip = along(from, unit, length);
    const spec = { key: force.key, from, to: tip, paint: paintOf(scene, force), ref: force.ref };
    if (force.given) forceArrow(sketch, spec);
    else openArrow(sketch, spec);
    open += force.given ? 0 : 1;
    drawAngle(sketch, openDot, force, 30 + 10 * index);
    tipLabel(sketch, force.key, force.label, tip, unit, spec.paint, force.ref);
  });
  finish(sketch, body, openDot, openSize.height);
  if (open > 0) note(sketch, "note", "open end: size unknown", openSize.height);
  else if (shown.length === 0) note(sketch, "note", "no force acts", openSize.height);
}

function drawScaled(sketch: Sketch, scene: SystemScene, body: SystemBody): void {
  const found = scaleFor(scene, body);
  const scale = found?.scale ?? null;
  const shown = shownForces(body.forces.filter(({ size }) => size !== null && size !== 0));
  const extent = extentOf(shown.map(vectorOf));
  const dot = scale === null ? scaledRest : placeView(extent, scaledRoom, scale.perNewton, scaledRest);
  axes(sketch, body, dot, scaledSize.height);
  drawAcceleration(sketch, body, body.acceleration);
  const drawn = shown.map((force) => ({ ...force, degrees: acting(force) }));
  drawn.forEach((force, index) => {
    const from = along(dot, turned(unitOf(force.degrees)), sideStep(force, drawn, alike));
    const said = withSize(force.label, force.text);
    sizedArrow(sketch, scale, from, {
      key: force.key,
      ref: force.ref,
      force: vectorOf({ ...force, size: Math.abs(force.size ?? 0) }),
      paint: paintOf(scene, force),
      runs: said,
    });
    const length = Math.abs(force.size ?? 0) * (scale?.perNewton ?? 0);
    if (length > 24) drawAngle(sketch, dot, force, Math.min(26 + 10 * index, 0.8 * length));
  });
  finish(sketch, body, dot, scaledSize.height);
  if (scale !== null) scaleBar(sketch, scale);
  remark(sketch, body, found?.times ?? 1);
}

/** The direction in which a force of this size acts: against its given one where the size is below zero. */
const acting = ({ degrees, size }: SystemForce): number => ((size ?? 0) < 0 ? degrees + 180 : degrees);

function scaleFor(scene: SystemScene, body: SystemBody): BodyScale | null {
  const fits = ({ forces }: SystemBody): number => largestScale(extentOf(forces.map(vectorOf)), scaledRoom);
  const longest = Math.max(0, ...body.forces.map(({ size }) => Math.abs(size ?? 0)));
  return bodyScale(scene.bodies.map(fits), fits(body), longest, scene.forceUnit);
}

/** The two axes through the dot, as far as the picture goes. */
function axes(sketch: Sketch, body: SystemBody, dot: Point, height: number): void {
  for (const { name, unit, ahead } of axesOf(body, dot, height)) {
    const back = axisEnd(dot, { x: 0 - unit.x, y: 0 - unit.y }, height);
    sketch.lines(`axis-${name}`, [back, ahead], "axis", besideAxis);
  }
}

interface Axis {
  readonly name: "x" | "y";
  readonly unit: Point;
  /** Its positive end. */
  readonly ahead: Point;
}

function axesOf(body: SystemBody, dot: Point, height: number): Axis[] {
  return (["x", "y"] as const).map((name) => {
    const unit = unitOf(body.axes[name]);
    return { name, unit, ahead: axisEnd(dot, unit, height) };
  });
}

/** Where an axis ends: at its reach, or at the margin of the picture. */
function axisEnd(dot: Point, unit: Point, height: number): Point {
  const room = (at: number, step: number, most: number): number =>
    Math.abs(step) < 1e-9 ? Infinity : ((step > 0 ? most - axisMargin : axisMargin) - at) / step;
  const reach = Math.min(axisReach, room(dot.x, unit.x, openSize.width), room(dot.y, unit.y, height));
  return along(dot, unit, Math.max(reach, 20));
}

/** The dot over the arrows' beginnings, and the axes' letters, which choose their places after the forces' labels. */
function finish(sketch: Sketch, body: SystemBody, dot: Point, height: number): void {
  sketch.path("dot", circlePath(dot, 4.5), "dot");
  for (const { name, unit, ahead } of axesOf(body, dot, height)) {
    sketch.label({
      key: `axis-${name}-label`,
      runs: [letter(name)],
      size: textSize.angle,
      look: "note",
      ref: null,
      spots: [...beyondTip(ahead, unit, 3).slice(0, 3), ...beside(along(ahead, unit, -20), ahead, 1, 6, [0.7, 0.2])],
      home: ahead,
    });
  }
}

function drawAcceleration(sketch: Sketch, body: SystemBody, acceleration: ScenePoint | null): void {
  if (acceleration === null) return;
  const runs = body.accelerationLabel;
  accelerationArrow(sketch, { ...acceleration, runs, ref: idOf(runs) });
}

function drawAngle(sketch: Sketch, dot: Point, force: ShownForce, radius: number): void {
  if (force.angle == null) return;
  const { from, label, ref } = force.angle;
  const to = from + turnBetween(from, force.degrees);
  if (Math.abs(to - from) < 0.005 || Math.abs(to - from) > 90 - 1e-9) return;
  const key = `angle-${force.key}`;
  angleMark(sketch, { key, centre: dot, radius, from, to, ref });
  sketch.label({
    key: `${key}-label`,
    runs: label,
    size: textSize.angle,
    look: "angle-text",
    ref,
    spots: atAngle(dot, radius, from, to),
    home: along(dot, unitOf((from + to) / 2), radius),
  });
}

/** Says which forces are zero and so have no arrow, or that sizes are not determined. */
function remark(sketch: Sketch, body: SystemBody, times: number): void {
  const height = scaledSize.height - 22;
  if (body.forces.some(({ size }) => size === null)) {
    note(sketch, "note", "sizes not determined", height);
    return;
  }
  const zero = shownForces(body.forces.filter(({ size }) => size === 0));
  const once = zero.filter((force, index) => zero.findIndex(({ ref }) => ref === force.ref) === index);
  if (once.length > 0) note(sketch, "note", zeroRuns(once), height);
  else if (body.forces.length === 0) note(sketch, "note", "no force acts", height);
  const said = scaleRemark(times);
  if (said.length > 0) note(sketch, "scale-note", said, once.length > 0 ? height - 18 : height);
}

function zeroRuns(zero: readonly SystemForce[]): Run[] {
  return zero.flatMap(({ label }, index) => [...(index > 0 ? [words(", ")] : []), ...label, words(" = 0")]);
}
