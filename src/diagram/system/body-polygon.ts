// The forces on one body head to tail: they leave its mass times its acceleration, and close where it has none.
import { note } from "../force-marks.ts";
import { turnBetween } from "../direction.ts";
import type { Picture } from "../picture.ts";
import { drawPolygon, polygonScale, type PolygonSide } from "../polygon.ts";
import { Sketch } from "../sketch.ts";
import type { SystemBody, SystemScene } from "../system-scene.ts";
import { scaledSize, withSize } from "../to-scale.ts";
import { idOf, paintOf, shownForces, vectorOf } from "./forces.ts";
import { bodyScale, scaleRemark } from "./scale.ts";

/** The polygon of a body, to a scale that all bodies share. Where sizes are not determined it says so and draws none. */
export function bodyPolygon(scene: SystemScene, bodyId: string): Picture {
  const sketch = new Sketch("body-polygon", scaledSize.width, scaledSize.height);
  const body = scene.bodies.find(({ id }) => id === bodyId);
  if (body === undefined) return sketch.picture();
  if (!isKnown(body)) {
    note(sketch, "note", "sizes not determined", scaledSize.height);
    return sketch.picture();
  }
  const fits = (one: SystemBody): number => polygonScale(bodySides(scene, one), one.net ?? { x: 0, y: 0 });
  const sides = bodySides(scene, body);
  const longest = Math.max(0, ...body.forces.map(({ size }) => Math.abs(size ?? 0)));
  const found = bodyScale(scene.bodies.filter(isKnown).map(fits), fits(body), longest, scene.forceUnit);
  if (found === null) note(sketch, "note", "no force acts", scaledSize.height);
  else {
    const { x, y, label } = body.net ?? { x: 0, y: 0, label: [] };
    const ref = `${idOf(label)} ${idOf(body.accelerationLabel)}`;
    drawPolygon(sketch, sides, { x, y, runs: label, ref }, found.scale);
    const said = scaleRemark(found.times);
    if (said.length > 0) note(sketch, "scale-note", said, scaledSize.height - 18);
  }
  return sketch.picture();
}

const isKnown = ({ forces, net }: SystemBody): boolean => net !== null && forces.every(({ size }) => size !== null);

/** The sides in order: from the weight on as they turn anticlockwise, so that no two lie on each other if that can be. */
export function bodySides(scene: SystemScene, body: SystemBody): PolygonSide[] {
  const around = (degrees: number): number => (turnBetween(-90, degrees) + 360.001) % 360;
  const forces = shownForces(body.forces)
    .map((force) => ({
      ...force,
      vector: vectorOf(force),
      turn: around(force.degrees + ((force.size ?? 0) < 0 ? 180 : 0)),
    }))
    .filter(({ size }) => size !== 0)
    .sort((a, b) => a.turn - b.turn);
  let from = { x: 0, y: 0 };
  return forces.map((force) => {
    const to = { x: from.x + force.vector.x, y: from.y + force.vector.y };
    const side: PolygonSide = {
      key: force.key,
      ref: force.ref,
      paint: paintOf(scene, force),
      runs: withSize(force.label, force.text),
      from,
      to,
    };
    from = to;
    return side;
  });
}
