// The force diagram at the answer: every arrow to scale from the dot.
import { forceArrow, tickBelow } from "./arrow.ts";
import { pulls, type Pull } from "./direction.ts";
import { extentOf, largestScale, placeView } from "./fit-view.ts";
import { accelerationApart, angleAtDot, levelAxis, note, paintOf, textSize, weightRuns } from "./force-marks.ts";
import { along, type Box, type Point } from "./geometry.ts";
import { symbol, words, type Run } from "./label.ts";
import { newtonScale, type NewtonScale } from "./newton-scale.ts";
import { circlePath } from "./path-text.ts";
import type { Picture } from "./picture.ts";
import type { DiagramScene, ScenePoint } from "./scene.ts";
import { avoid, Sketch } from "./sketch.ts";
import { beyondTip } from "./spots.ts";

/** The size of the pictures that are to scale, and the room for arrows in them. */
export const scaledSize = { width: 360, height: 320 };
export const scaledRoom: Box = { x: 64, y: 36, width: 232, height: 232 };
export const scaledRest: Point = { x: 180, y: 158 };

/** A pull and its force in newtons, y upwards. */
export interface SizedPull {
  readonly pull: Pull;
  readonly force: ScenePoint;
}

/** The pulls whose size is known. */
export function sizedPulls(scene: DiagramScene): SizedPull[] {
  if (!scene.solved) return [];
  return pulls(scene, "found").flatMap((pull) => {
    const { tension } = pull.rope;
    if (tension === null) return [];
    return [{ pull, force: { x: tension * pull.unit.x, y: -tension * pull.unit.y } }];
  });
}

/** All arrows to scale, with the scale. Of forces that are not determined nothing is drawn. */
export function forceDiagramToScale(scene: DiagramScene): Picture {
  const sketch = new Sketch("force-diagram-to-scale", scaledSize.width, scaledSize.height);
  const sized = sizedPulls(scene);
  const extent = extentOf([...sized.map(({ force }) => force), { x: 0, y: -scene.weight }]);
  const scale = newtonScale(largestScale(extent, scaledRoom));
  const dot = scale === null ? scaledRest : placeView(extent, scaledRoom, scale.perNewton, scaledRest);
  levelAxis(sketch, { x: 180, y: dot.y }, 160);
  accelerationApart(sketch, scene);
  sized.forEach(({ pull, force }, index) => {
    sizedArrow(sketch, scale, dot, {
      key: pull.rope.id,
      force,
      paint: paintOf(pull),
      runs: withSize(symbol(pull.rope.label), pull.rope.tensionText),
    });
    const length = Math.hypot(force.x, force.y) * (scale?.perNewton ?? 0);
    if (length > 24) angleAtDot(sketch, dot, pull, Math.min(26 + 10 * index, 0.8 * length));
  });
  sizedArrow(sketch, scale, dot, {
    key: "weight",
    force: { x: 0, y: -scene.weight },
    paint: "weight",
    runs: withSize(weightRuns(scene), scene.weightText),
  });
  sketch.path("dot", circlePath(dot, 4.5), "dot");
  if (scale !== null) scaleBar(sketch, scale);
  if (!scene.solved) note(sketch, "note", "sizes not determined", scaledSize.height - 22);
  return sketch.picture();
}

/** A force to be drawn to scale, in its unit, y upwards. */
export interface SizedArrow {
  readonly key: string;
  readonly force: ScenePoint;
  readonly paint: string;
  readonly runs: readonly Run[];
  /** What it stands for, where that is not its key. */
  readonly ref?: string;
}

/** A force to scale from a point, with its label beyond its tip; nothing where it is zero. */
export function sizedArrow(sketch: Sketch, scale: NewtonScale | null, dot: Point, arrow: SizedArrow): void {
  const { key, force, paint, runs, ref = key } = arrow;
  if (scale === null || (force.x === 0 && force.y === 0)) return;
  const tip = { x: dot.x + force.x * scale.perNewton, y: dot.y - force.y * scale.perNewton };
  const length = Math.hypot(force.x, force.y);
  const unit = { x: force.x / length, y: -force.y / length };
  const tick = forceArrow(sketch, { key, from: dot, to: tip, paint, ref });
  const said = tick ? [...runs, words(", too short to see")] : runs;
  const home = tick ? along(tip, unit, tickBelow) : tip;
  sketch.label({
    key: `${key}-label`,
    runs: said,
    size: tick ? textSize.note : textSize.symbol - 1,
    look: `symbol ${paint}`,
    ref,
    spots: beyondTip(tip, unit, tick ? 9 : 4),
    home,
  });
}

/** A symbol with its size, where a print of the size is given. */
export function withSize(runs: readonly Run[], text: string | null | undefined): Run[] {
  return text === null || text === undefined ? [...runs] : [...runs, words(` = ${text}`)];
}

/** The bar that shows the scale, at the lower edge. */
export function scaleBar(sketch: Sketch, scale: NewtonScale): void {
  const { length, runs } = scale.bar;
  const y = scaledSize.height - 14;
  const x = 14;
  const ends = [
    { x, y },
    { x: x + length, y },
  ];
  sketch.lines("scale-bar", ends, "scale-bar", avoid.shaft);
  for (const [index, end] of ends.entries()) {
    sketch.lines(
      `scale-end-${index}`,
      [
        { x: end.x, y: y - 4 },
        { x: end.x, y: y + 4 },
      ],
      "scale-bar",
      avoid.shaft,
    );
  }
  const at = { x: x + length, y };
  const spots = [{ at, away: { x: 1, y: 0 }, gap: 6 }];
  sketch.label({ key: "scale", runs, size: textSize.note, look: "note", ref: null, spots, home: at });
}
