// The force diagram before the answer: true directions, sizes unknown. Arrows leave the dot; the acceleration stands apart.
import { forceArrow, openArrow } from "./arrow.ts";
import { pulls, sideStep } from "./direction.ts";
import { accelerationApart, angleAtDot, levelAxis, note, paintOf, tipLabel, weightRuns } from "./force-marks.ts";
import { along, turned, type Point } from "./geometry.ts";
import { symbol } from "./label.ts";
import { circlePath } from "./path-text.ts";
import type { Picture } from "./picture.ts";
import type { Attempt, DiagramScene } from "./scene.ts";
import { Sketch } from "./sketch.ts";

const size = { width: 360, height: 300 };
const dot: Point = { x: 180, y: 152 };
const weightLength = 96;

/** How long an arrow of unknown size is drawn: not the same for all, so that nobody takes them for equal. */
export function openLength(index: number): number {
  return [116, 96, 80][index % 3] ?? 80;
}

/** The force diagram, tensions with open ends. */
export function forceDiagram(scene: DiagramScene, attempt: Attempt = "found"): Picture {
  const sketch = new Sketch("force-diagram", size.width, size.height);
  levelAxis(sketch, dot, 128);
  accelerationApart(sketch, scene);
  const shown = pulls(scene, attempt);
  shown.forEach((pull, index) => {
    const from = along(dot, turned(pull.unit), sideStep(pull, shown));
    const tip = along(from, pull.unit, openLength(index));
    openArrow(sketch, { key: pull.rope.id, from, to: tip, paint: paintOf(pull), ref: pull.rope.id });
    angleAtDot(sketch, dot, pull, 30 + 10 * index);
    tipLabel(sketch, pull.rope.id, symbol(pull.rope.label), tip, pull.unit, paintOf(pull));
  });
  if (scene.weight > 0) {
    const tip = { x: dot.x, y: dot.y + weightLength };
    forceArrow(sketch, { key: "weight", from: dot, to: tip, paint: "weight", ref: "weight" });
    tipLabel(sketch, "weight", weightRuns(scene), tip, { x: 0, y: 1 }, "weight");
  }
  sketch.path("dot", circlePath(dot, 4.5), "dot");
  if (shown.length > 0) note(sketch, "note", "open end: size unknown", size.height);
  return sketch.picture();
}
