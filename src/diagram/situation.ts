// The situation: support, ropes at their true angles, the load where it hangs, each angle marked at the beam, and the handles.
import { radiusAtEnd } from "./angle-mark.ts";
import { doubleArrow } from "./arrow.ts";
import { toScreen, type View } from "./fit-view.ts";
import { accelerationRefs, textSize } from "./force-marks.ts";
import { along, distance, type Box, type Point } from "./geometry.ts";
import { letter } from "./label.ts";
import { glyphSize, loadGlyph } from "./load-glyph.ts";
import { circlePath } from "./path-text.ts";
import type { Picture } from "./picture.ts";
import { handlePlaces, handleRadius } from "./rope-handles.ts";
import type { DiagramScene } from "./scene.ts";
import { angleAtLoad, angleAtSupport } from "./situation-angles.ts";
import { drawRope, ropeName } from "./situation-ropes.ts";
import { situationSize, situationView } from "./situation-view.ts";
import { avoid, Sketch } from "./sketch.ts";
import { beside } from "./spots.ts";
import { drawBeam, drawPost } from "./support.ts";

/** The picture of the situation; `wished` is the view a drag would keep, taken if everything fits in it. */
export function situation(scene: DiagramScene, wished: View | null = null): Picture {
  const sketch = new Sketch("situation", situationSize.width, situationSize.height);
  const view = situationView(scene, wished);
  const load = toScreen(view, scene.position);
  const assumed = toScreen(view, { x: 0, y: 0 });
  const elsewhere = distance(load, assumed) > 0.5;
  const beam = scene.ropes.find((rope) => rope.anchor.kind === "beam");
  if (beam !== undefined) drawBeam(sketch, toScreen(view, beam.anchor).y);
  const ends = scene.ropes.map((rope) => toScreen(view, rope.anchor));
  for (const [index, rope] of scene.ropes.entries()) {
    const end = ends[index] ?? assumed;
    if (rope.anchor.kind === "post") drawPost(sketch, rope, end);
    if (elsewhere) sketch.lines(`outline-${rope.id}`, [end, assumed], "rope-outline", avoid.outline, rope.id);
    drawRope(sketch, scene, rope, view);
    angleAtSupport(sketch, rope, end, radiusAtEnd(ends, index, assumed, 30));
  }
  if (elsewhere) sketch.path("assumed", circlePath(assumed, 4), "outline");
  drawLoad(sketch, scene, load);
  addHandles(sketch, scene, view, assumed);
  if (scene.theta !== null) angleAtLoad(sketch, scene, load);
  for (const rope of scene.ropes) ropeName(sketch, scene, rope, view);
  drawAcceleration(sketch, scene);
  return sketch.picture();
}

function drawLoad(sketch: Sketch, scene: DiagramScene, load: Point): void {
  for (const part of loadGlyph(scene.bodyName, load)) sketch.path(`load-${part.key}`, part.d, part.look, "weight");
  const { width, height } = glyphSize;
  sketch.block({ x: load.x - width / 2, y: load.y, width, height });
}

function addHandles(sketch: Sketch, scene: DiagramScene, view: View, assumed: Point): void {
  const tied = scene.ropes.filter((rope) => rope.anchor.kind === "beam");
  const ends = tied.map((rope) => toScreen(view, rope.anchor));
  for (const [index, centre] of handlePlaces(ends).entries()) {
    const rope = tied[index];
    const end = ends[index];
    if (rope === undefined || end === undefined) continue;
    sketch.lines(`stem-${rope.id}`, [end, { x: centre.x, y: centre.y + 8 }], "stem", avoid.helper);
    sketch.path(`eye-${rope.id}`, circlePath(end, 2.6), "eye");
    sketch.handle(`handle-${rope.id}`, rope.id, centre, handleRadius, end);
  }
  // A post stands where it stands: with one, the load's place is not free, and its angles are typed.
  if (tied.length === scene.ropes.length) sketch.handle("handle-load", null, assumed, handleRadius, assumed);
}

/** The support's acceleration, in the freest of the four corners. */
function drawAcceleration(sketch: Sketch, scene: DiagramScene): void {
  const { x, y } = scene.acceleration;
  const size = Math.hypot(x, y);
  if (size === 0) return;
  const corners = [34, situationSize.width - 34].flatMap((left) =>
    [situationSize.height - 34, 30].map((top) => ({ x: left, y: top })),
  );
  const around = (p: Point): Box => ({ x: p.x - 26, y: p.y - 26, width: 52, height: 52 });
  const costs = corners.map((corner) => sketch.cost(around(corner)));
  const corner = corners[costs.indexOf(Math.min(...costs))] ?? { x: 34, y: 30 };
  const unit = { x: x / size, y: -y / size };
  const ref = accelerationRefs(scene);
  const to = along(corner, unit, 21);
  doubleArrow(sketch, { key: "a", from: along(corner, unit, -21), to, paint: "accel", ref });
  const spots = beside(along(corner, unit, -21), to, 1, 4, [0.5]);
  sketch.label({
    key: "a-label",
    runs: [letter("a")],
    size: textSize.symbol,
    look: "symbol accel",
    ref,
    spots,
    home: corner,
  });
}
