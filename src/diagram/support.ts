// What holds the ropes: one beam overhead, and a post for each rope that does not rise.
import type { Point } from "./geometry.ts";
import { polyline } from "./path-text.ts";
import type { SceneRope } from "./scene.ts";
import { situationSize } from "./situation-view.ts";
import { avoid, type Sketch } from "./sketch.ts";

const ground = situationSize.height - 14;
const thickness = 7;

/** The beam, from edge to edge, its lower side at a height of the picture. */
export function drawBeam(sketch: Sketch, y: number): void {
  const left = 6;
  const right = situationSize.width - 6;
  const corners = [
    { x: left, y: y - thickness },
    { x: right, y: y - thickness },
    { x: right, y },
    { x: left, y },
  ];
  sketch.path("beam", polyline(corners, true), "support");
  sketch.keepOff(
    [
      { x: left, y: y - thickness / 2 },
      { x: right, y: y - thickness / 2 },
    ],
    avoid.shaft,
  );
}

/** A post from the ground to a rope's end, on the side away from the load, with the level line from which its angle is measured. */
export function drawPost(sketch: Sketch, rope: SceneRope, end: Point): void {
  const away = rope.side === 0 ? 1 : rope.side;
  const inner = end.x;
  const outer = end.x + away * thickness;
  const top = rope.side === 0 ? end.y : end.y - 10;
  const corners = [
    { x: inner, y: top },
    { x: outer, y: top },
    { x: outer, y: ground },
    { x: inner, y: ground },
  ];
  sketch.path(`post-${rope.id}`, polyline(corners, true), "support");
  const middle = (inner + outer) / 2;
  sketch.keepOff(
    [
      { x: middle, y: top },
      { x: middle, y: ground },
    ],
    avoid.shaft,
  );
  const foot = [
    { x: middle - 18, y: ground },
    { x: middle + 18, y: ground },
  ];
  sketch.lines(`foot-${rope.id}`, foot, "foot", avoid.outline);
}
