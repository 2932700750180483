// What carries the ropes: beams, walls, posts, rings in the ground, and what holds each fixed pulley.
import { along, boxOf, crosses, turned, unitTo, type Point } from "../geometry.ts";
import { circlePath, polyline } from "../path-text.ts";
import { avoid, type Sketch } from "../sketch.ts";
import { groundAlong } from "./supports.ts";
import type { Face } from "./faces.ts";
import type { PlacedPulley, PlacedTie } from "./layout.ts";
import { dot, heading, plus, times } from "./vector.ts";
import type { Part, SystemView } from "./view.ts";

const thickness = 7;
const stub = 17;

/** Draws the supports of a part. */
export function drawSupports(sketch: Sketch, part: Part, view: SystemView): void {
  part.beams.forEach(({ y, left, right }, index) => {
    const [a, b] = [view.at({ x: left, y }), view.at({ x: right, y })];
    plate(sketch, `beam-${part.layout.bodies[0]?.id ?? ""}-${index}`, a, b, { x: 0, y: -1 });
  });
  for (const tie of part.layout.ties) drawTie(sketch, part, tie, view);
  for (const pulley of part.layout.fixed) drawHolder(sketch, part, pulley, view);
}

/** A solid strip along a line, on one side of it. */
function plate(sketch: Sketch, key: string, a: Point, b: Point, side: Point): void {
  const corners = [a, b, along(b, side, thickness), along(a, side, thickness)];
  sketch.path(key, polyline(corners, true), "support");
  const box = boxOf(corners);
  if (Math.min(box.width, box.height) <= thickness + 0.01) sketch.block(box);
  else sketch.keepOff([along(a, side, thickness / 2), along(b, side, thickness / 2)], avoid.shaft);
}

function drawTie(sketch: Sketch, part: Part, tie: PlacedTie, view: SystemView): void {
  const at = view.at(tie.at);
  const key = `support-${tie.rope}-${tie.pull}`;
  if (tie.kind === "ring") {
    plate(sketch, key, { x: at.x - stub, y: at.y }, { x: at.x + stub, y: at.y }, { x: 0, y: 1 });
    sketch.path(`${key}-eye`, circlePath(at, 2.6), "eye");
  }
  if (tie.kind === "wall") drawWall(sketch, key, part, tie, view);
  if (tie.kind === "post") drawPost(sketch, key, part, tie, view);
}

/** A wall beside a rope's end; it goes on down to a floor or up to the beam where one is near. */
function drawWall(sketch: Sketch, key: string, part: Part, tie: PlacedTie, view: SystemView): void {
  const at = view.at(tie.at);
  const side = heading(tie.degrees).x > 0 ? 1 : -1;
  const floor = part.faces.find(({ kind }) => kind === "floor");
  const floorY = floor === undefined ? null : view.at(floor.start).y;
  const beamY = part.beams[0] === undefined ? null : view.at({ x: 0, y: part.beams[0].y }).y;
  const isFree = (top: number, bottom: number): boolean => {
    const box = { x: Math.min(at.x, at.x + side * thickness) - 2, y: top, width: thickness + 4, height: bottom - top };
    return !part.layout.strands.some(({ key, start, end }) => {
      const [a, b] = [view.at(start), view.at(end)];
      return key !== `${tie.rope}-${tie.pull}` && crosses(box, a.x, a.y, b.x, b.y);
    });
  };
  const toFloor = floorY !== null && floorY > at.y && floorY - at.y < 90 && isFree(at.y + stub, floorY);
  const toBeam = beamY !== null && beamY < at.y && at.y - beamY < 60 && reachesBeam(part, tie) && isFree(beamY, at.y);
  const bottom = toFloor ? floorY : at.y + stub;
  const top = toBeam ? beamY - thickness : at.y - stub;
  plate(sketch, key, { x: at.x, y: top }, { x: at.x, y: bottom }, { x: side, y: 0 });
}

const reachesBeam = ({ beams }: Part, { at }: PlacedTie): boolean =>
  beams[0] !== undefined && at.x > beams[0].left - 4 && at.x < beams[0].right + 4;

/** A post across the surface along which the rope pulls. */
function drawPost(sketch: Sketch, key: string, part: Part, tie: PlacedTie, view: SystemView): void {
  const ground = groundAlong(part.layout.grounds, tie.body, tie.degrees);
  const face = part.faces.find((one) => one.ground.key === ground?.key);
  if (ground === null || face === undefined) return;
  const height = dot(tie.at, ground.normal) - face.ground.level;
  const foot = view.at(plus(tie.at, times(ground.normal, 0 - height)));
  const top = view.at(plus(tie.at, times(ground.normal, 9)));
  const { x, y } = heading(tie.degrees);
  plate(sketch, key, foot, top, { x, y: 0 - y });
}

function drawHolder(sketch: Sketch, part: Part, pulley: PlacedPulley, view: SystemView): void {
  const axle = view.at(pulley.axle);
  const key = `holder-${pulley.key}`;
  const faces = part.faces.filter(({ ground }) => ground.surfaces.some(({ on }) => pulley.bodies.includes(on)));
  // On the ridge of two slopes the axle is in the solid.
  if (pulley.mount === "edge" && faces.filter(({ kind }) => kind === "wedge").length > 1) return;
  const end = pulley.mount === "edge" ? edgeNear(faces, pulley, view) : view.at(pulley.held);
  sketch.lines(key, [end, axle], "holder", avoid.outline);
  if (pulley.mount !== "bracket") return;
  const ahead = unitTo(axle, end);
  const across = turned(ahead);
  plate(sketch, `${key}-plate`, along(end, across, -stub), along(end, across, stub), ahead);
}

/** The corner of the surface at whose edge a pulley stands. */
function edgeNear(faces: readonly Face[], pulley: PlacedPulley, view: SystemView): Point {
  const corners = faces.flatMap(({ start, end }) => [start, end]);
  const far = (corner: { x: number; y: number }): number =>
    Math.hypot(corner.x - pulley.axle.x, corner.y - pulley.axle.y);
  const nearest = corners.reduce((a, b) => (far(b) < far(a) ? b : a), corners[0] ?? pulley.axle);
  return view.at(nearest);
}
