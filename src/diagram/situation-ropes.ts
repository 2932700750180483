// The ropes of the situation, taut or slack, and their names.
import { toScreen, type View } from "./fit-view.ts";
import { textSize } from "./force-marks.ts";
import { between } from "./geometry.ts";
import { words } from "./label.ts";
import type { DiagramScene, SceneRope } from "./scene.ts";
import { slackCurve } from "./situation-view.ts";
import { avoid, type Sketch } from "./sketch.ts";
import { beside } from "./spots.ts";

/** Draws a rope from its end to the load: straight, or as the curve of its true length. */
export function drawRope(sketch: Sketch, scene: DiagramScene, rope: SceneRope, view: View): void {
  const key = `rope-${rope.id}`;
  if (rope.state === "slack") {
    const curve = slackCurve(scene, rope).map((p) => toScreen(view, p));
    sketch.lines(key, curve, "rope slack", avoid.shaft, rope.id);
    return;
  }
  const ends = [toScreen(view, rope.anchor), toScreen(view, scene.position)];
  sketch.lines(key, ends, rope.tension === 0 ? "rope idle" : "rope", avoid.shaft, rope.id);
}

/** The name of a rope, beside its middle. */
export function ropeName(sketch: Sketch, scene: DiagramScene, rope: SceneRope, view: View): void {
  const middle = slackCurve(scene, rope)[20] ?? rope.anchor;
  const end = toScreen(view, rope.anchor);
  const load = toScreen(view, scene.position);
  const home = rope.state === "slack" ? toScreen(view, middle) : between(end, load, 0.5);
  const outward = end.x < load.x ? -1 : 1;
  const spots =
    rope.state === "slack"
      ? [
          { at: home, away: { x: outward, y: 0 }, gap: 5 },
          { at: home, away: { x: 0, y: 1 }, gap: 4 },
          { at: home, away: { x: -outward, y: 0 }, gap: 5 },
          { at: home, away: { x: 0, y: -1 }, gap: 4 },
        ]
      : beside(end, load, rope.side === -1 ? -1 : 1);
  const text = `rope ${rope.number}${rope.state === "slack" ? ", slack" : ""}`;
  sketch.label({
    key: `name-${rope.id}`,
    runs: [words(text)],
    size: textSize.note,
    look: "note",
    ref: rope.id,
    spots,
    home,
  });
}
