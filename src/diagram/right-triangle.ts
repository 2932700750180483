// The right triangle of one tension: the force is the longest side, its components are the others, its angle is the rope's.
import { forceArrow } from "./arrow.ts";
import { angleMark, squareMark } from "./angle-mark.ts";
import { pulls, type Pull } from "./direction.ts";
import { paintOf, textSize } from "./force-marks.ts";
import { between, boxOf, type Point } from "./geometry.ts";
import { letter, symbol, words, type Run } from "./label.ts";
import type { Picture } from "./picture.ts";
import type { Attempt, DiagramScene } from "./scene.ts";
import { Sketch } from "./sketch.ts";
import { atAngle, beside } from "./spots.ts";

const size = { width: 300, height: 220 };
const room = { width: 176, height: 140 };

/** Whether a rope's tension has a right triangle: its direction is neither level nor upright, and it acts. */
export function hasTriangle(scene: DiagramScene, rope: string, attempt: Attempt = "found"): boolean {
  const pull = pulls(scene, attempt).find((one) => one.rope.id === rope);
  return pull !== undefined && pull.side !== 0 && pull.rise !== 0;
}

/** The triangle; where the rope has none, its tension alone along the axis; empty where the rope does not pull. */
export function rightTriangle(scene: DiagramScene, rope: string, attempt: Attempt = "found"): Picture {
  const sketch = new Sketch("right-triangle", size.width, size.height);
  const pull = pulls(scene, attempt).find((one) => one.rope.id === rope);
  if (pull === undefined) return sketch.picture();
  const length = Math.min(room.width / Math.abs(pull.unit.x), room.height / Math.abs(pull.unit.y), 170);
  const reach = { x: pull.unit.x * length, y: pull.unit.y * length };
  const vertex = { x: (size.width - reach.x) / 2, y: (size.height - reach.y) / 2 };
  const tip = { x: vertex.x + reach.x, y: vertex.y + reach.y };
  const { id, label } = pull.rope;
  const paint = paintOf(pull);
  forceArrow(sketch, { key: id, from: vertex, to: tip, paint, ref: id });
  if (pull.side !== 0 && pull.rise !== 0) legs(sketch, pull, vertex, tip);
  // Outside: on the far side from the right angle.
  const side = pull.side * pull.rise === -1 ? -1 : 1;
  sideLabel(sketch, `${id}-label`, symbol(label), paint, id, vertex, tip, side);
  return sketch.picture();
}

function legs(sketch: Sketch, pull: Pull, vertex: Point, tip: Point): void {
  const { id, label } = pull.rope;
  const paint = paintOf(pull);
  const corner = { x: tip.x, y: vertex.y };
  const { ref, letter: name, text } = pull.acute;
  const from = pull.side === 1 ? 0 : 180;
  const box = boxOf([vertex, tip]);
  const small = Math.min(box.width, box.height);
  const radius = Math.min(40, 0.45 * box.width);
  forceArrow(sketch, { key: `${id}x`, from: vertex, to: corner, paint, ref: `${id}x` }, "leg");
  forceArrow(sketch, { key: `${id}y`, from: corner, to: tip, paint, ref: `${id}y` }, "leg");
  if (small > 20) {
    squareMark(
      sketch,
      "right",
      corner,
      { x: -pull.side, y: 0 },
      { x: 0, y: -pull.rise },
      null,
      Math.min(11, small / 3),
    );
  }
  angleMark(sketch, { key: "angle", centre: vertex, radius, from, to: pull.degrees, ref });
  sketch.label({
    key: "angle-label",
    runs: [letter(name), ...(text === "" ? [] : [words(` = ${text}`)])],
    size: textSize.angle,
    look: "angle-text",
    ref,
    spots: atAngle(vertex, radius, from, pull.degrees),
    home: vertex,
  });
  const side = pull.side * pull.rise === 1 ? -1 : 1;
  sideLabel(sketch, `${id}x-label`, symbol(label, "x"), paint, `${id}x`, vertex, corner, side);
  sideLabel(sketch, `${id}y-label`, symbol(label, "y"), paint, `${id}y`, corner, tip, side);
}

function sideLabel(
  sketch: Sketch,
  key: string,
  runs: readonly Run[],
  paint: string,
  ref: string,
  a: Point,
  b: Point,
  side: 1 | -1,
): void {
  const spots = beside(a, b, side);
  sketch.label({ key, runs, size: textSize.symbol, look: `symbol ${paint}`, ref, spots, home: between(a, b, 0.5) });
}
