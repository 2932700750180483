// Each tension struck out and replaced by its two components, as legs of a right triangle.
import { forceArrow, openArrow, strikeOut } from "./arrow.ts";
import { pulls, sideStep, type Pull } from "./direction.ts";
import { openLength } from "./force-diagram.ts";
import {
  accelerationApart,
  angleAtDot,
  levelAxis,
  note,
  paintOf,
  textSize,
  tipLabel,
  weightRuns,
} from "./force-marks.ts";
import { along, turned, type Point } from "./geometry.ts";
import { symbol } from "./label.ts";
import { squareMark } from "./angle-mark.ts";
import { circlePath } from "./path-text.ts";
import type { Picture } from "./picture.ts";
import type { Attempt, DiagramScene } from "./scene.ts";
import { Sketch } from "./sketch.ts";
import { beside } from "./spots.ts";

const size = { width: 360, height: 300 };
const dot: Point = { x: 180, y: 152 };

/** The components of every tension; one that points along an axis has none to be replaced by. */
export function components(scene: DiagramScene, attempt: Attempt = "found"): Picture {
  const sketch = new Sketch("components", size.width, size.height);
  levelAxis(sketch, dot, 128);
  accelerationApart(sketch, scene);
  const shown = pulls(scene, attempt);
  shown.forEach((pull, index) => {
    const straight = pull.side === 0 || pull.rise === 0;
    const from = straight ? along(dot, turned(pull.unit), sideStep(pull, shown)) : dot;
    const tip = along(from, pull.unit, openLength(index) + 6);
    if (straight) {
      openArrow(sketch, { key: pull.rope.id, from, to: tip, paint: paintOf(pull), ref: pull.rope.id });
      tipLabel(sketch, pull.rope.id, symbol(pull.rope.label), tip, pull.unit, paintOf(pull));
    } else {
      replaced(sketch, pull, tip, levelFirst(pull, shown));
      angleAtDot(sketch, dot, pull, 30 + 8 * index, "letter");
    }
  });
  if (scene.weight > 0) {
    const tip = { x: dot.x, y: dot.y + 96 };
    forceArrow(sketch, { key: "weight", from: dot, to: tip, paint: "weight", ref: "weight" });
    tipLabel(sketch, "weight", weightRuns(scene), tip, { x: 0, y: 1 }, "weight");
  }
  sketch.path("dot", circlePath(dot, 4.5), "dot");
  if (shown.some((pull) => pull.side !== 0 && pull.rise !== 0))
    note(sketch, "note", "struck out: replaced by its parts", size.height);
  return sketch.picture();
}

/** Of two pulls into one quarter, the steeper one's legs go up first, so that the two triangles lie on both sides. */
function levelFirst(pull: Pull, shown: readonly Pull[]): boolean {
  return !shown.some(
    (other) =>
      other !== pull &&
      other.side === pull.side &&
      other.rise === pull.rise &&
      (other.acute.degrees < pull.acute.degrees ||
        (other.acute.degrees === pull.acute.degrees && other.rope.number < pull.rope.number)),
  );
}

function replaced(sketch: Sketch, pull: Pull, tip: Point, level: boolean): void {
  const { id, label } = pull.rope;
  const paint = paintOf(pull);
  forceArrow(sketch, { key: id, from: dot, to: tip, paint: `${paint} replaced`, ref: id });
  strikeOut(sketch, `${id}-strike`, dot, tip, id);
  const corner = level ? { x: tip.x, y: dot.y } : { x: dot.x, y: tip.y };
  const x = level ? { from: dot, to: corner } : { from: corner, to: tip };
  const y = level ? { from: corner, to: tip } : { from: dot, to: corner };
  forceArrow(sketch, { key: `${id}x`, ...x, paint, ref: `${id}x` }, "leg", 0.85);
  forceArrow(sketch, { key: `${id}y`, ...y, paint, ref: `${id}y` }, "leg", 0.85);
  const turn = pull.side * pull.rise;
  if (Math.min(Math.abs(tip.x - dot.x), Math.abs(tip.y - dot.y)) > 16) {
    const inward = { x: Math.sign(tip.x - corner.x), y: 0 };
    const upward = { x: 0, y: Math.sign(tip.y - corner.y) };
    if (level) squareMark(sketch, `${id}-right`, corner, { x: -pull.side, y: 0 }, upward, null);
    else squareMark(sketch, `${id}-right`, corner, inward, { x: 0, y: pull.rise }, null);
  }
  // The legs' labels stand outside the triangle, the whole force's label on its inside beyond the tip.
  const outside = (level ? turn === 1 : turn === -1) ? -1 : 1;
  const parts = [
    { key: `${id}x-label`, axis: "x", ref: `${id}x`, leg: x },
    { key: `${id}y-label`, axis: "y", ref: `${id}y`, leg: y },
  ] as const;
  for (const { key, axis, ref, leg } of parts) {
    const home = { x: (leg.from.x + leg.to.x) / 2, y: (leg.from.y + leg.to.y) / 2 };
    sketch.label({
      key,
      runs: symbol(label, axis),
      size: textSize.symbol - 1,
      look: `symbol ${paint}`,
      ref,
      spots: beside(leg.from, leg.to, outside),
      home,
    });
  }
  tipLabel(sketch, id, symbol(label), tip, pull.unit, paint);
}
