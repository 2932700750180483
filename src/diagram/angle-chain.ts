// The angle goes from the beam to the load: the level line through the load is parallel to the beam, the rope crosses both.
import { angleMark, radiusAtEnd } from "./angle-mark.ts";
import { angleRef, givenDegrees, unitOf } from "./direction.ts";
import { extentOf, largestScale, placeView, toScreen } from "./fit-view.ts";
import { textSize } from "./force-marks.ts";
import { along, type Box, type Point } from "./geometry.ts";
import { letter, words, type Run } from "./label.ts";
import { circlePath } from "./path-text.ts";
import type { Picture } from "./picture.ts";
import type { DiagramScene, SceneRope } from "./scene.ts";
import { avoid, Sketch } from "./sketch.ts";
import { atAngle } from "./spots.ts";

const size = { width: 360, height: 226 };
const room: Box = { x: 40, y: 44, width: 280, height: 142 };

/** Beam, level line and ropes, with equal arcs at both ends of each rope that is neither level nor upright. */
export function angleChain(scene: DiagramScene): Picture {
  const sketch = new Sketch("angle-chain", size.width, size.height);
  const extent = extentOf(scene.ropes.map((rope) => rope.anchor));
  const scale = Math.min(130, largestScale(extent, room));
  const rest = { x: size.width / 2, y: room.y + (room.height + (extent.high + extent.low) * scale) / 2 };
  const view = placeView(extent, room, scale, rest);
  const load = toScreen(view, { x: 0, y: 0 });
  const level = (y: number): Point[] => [
    { x: 10, y },
    { x: size.width - 10, y },
  ];
  sketch.lines("level", level(load.y), "axis strong", avoid.outline);
  const beam = scene.ropes.find((rope) => rope.anchor.kind === "beam");
  if (beam !== undefined) sketch.lines("beam", level(toScreen(view, beam.anchor).y), "beam-line", avoid.outline);
  const ends = scene.ropes.map((rope) => toScreen(view, rope.anchor));
  for (const [index, rope] of scene.ropes.entries()) {
    chainOf(sketch, rope, ends[index] ?? load, load, radiusAtEnd(ends, index, load, 30 + 3 * (index % 2)));
  }
  sketch.path("dot", circlePath(load, 4.5), "dot");
  return sketch.picture();
}

function chainOf(sketch: Sketch, rope: SceneRope, end: Point, load: Point, radius: number): void {
  sketch.lines(`rope-${rope.id}`, [end, load], "rope", avoid.shaft, rope.id);
  if (rope.anchor.kind === "post" && rope.rise !== 0) {
    const reach = [along(end, { x: -1, y: 0 }, 50), along(end, { x: 1, y: 0 }, 50)];
    sketch.lines(`level-${rope.id}`, reach, "axis strong", avoid.outline);
  }
  if (rope.side === 0 || rope.rise === 0) return;
  const degrees = givenDegrees(rope);
  const from = rope.side === 1 ? 0 : 180;
  const ref = angleRef(rope.angleLetter);
  const value = [words(rope.degreesText)];
  const named = [letter(rope.angleLetter), words(` = ${rope.degreesText}`)];
  const key = `${ref}-${rope.id}`;
  anglePart(sketch, `${key}-beam`, ref, end, radius, from + 180, degrees + 180, value);
  anglePart(sketch, `${key}-load`, ref, load, radius, from, degrees, named);
}

function anglePart(
  sketch: Sketch,
  key: string,
  ref: string,
  centre: Point,
  radius: number,
  from: number,
  to: number,
  runs: readonly Run[],
): void {
  angleMark(sketch, { key: `${key}-arc`, centre, radius, from, to, ref });
  const home = along(centre, unitOf((from + to) / 2), radius);
  const spots = atAngle(centre, radius, from, to);
  sketch.label({ key: `${key}-label`, runs, size: textSize.angle, look: "angle-text", ref, spots, home });
}
