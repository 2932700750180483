// The situation of any number of bodies, to scale of its own: ropes and slopes at their true angles, every body on what carries it.
import { note } from "../force-marks.ts";
import { letter } from "../label.ts";
import type { Point } from "../geometry.ts";
import type { Picture } from "../picture.ts";
import { Sketch } from "../sketch.ts";
import type { SystemScene } from "../system-scene.ts";
import { drawAngles } from "./draw-angles.ts";
import { drawBodies } from "./draw-bodies.ts";
import { drawFrame } from "./draw-frame.ts";
import { drawFaces } from "./draw-faces.ts";
import { accelerationNear, drawPushes, nameBodies, nameRopes } from "./draw-names.ts";
import { drawRopes, drawWheels } from "./draw-ropes.ts";
import { drawSupports } from "./draw-supports.ts";
import { layoutsOf } from "./layout.ts";
import { arranged, cornersOf, viewOf, type Part, type SystemView } from "./view.ts";

/** The picture of the situation. */
export function systemSituation(scene: SystemScene): Picture {
  const parts = arranged(layoutsOf(scene));
  const view = viewOf(parts, scene.frame);
  const sketch = new Sketch("system-situation", view.width, view.height);
  drawFrame(sketch, parts, scene, view);
  for (const part of parts) {
    drawFaces(sketch, part, view);
    drawSupports(sketch, part, view);
    drawWheels(sketch, part.layout, view);
    drawRopes(sketch, part.layout, scene.ropes, view);
    drawBodies(sketch, part.layout.bodies, scene.bodies, view);
  }
  for (const part of parts) drawPushes(sketch, part, view);
  for (const part of parts) drawAngles(sketch, part, scene, view);
  drawAccelerations(sketch, parts, scene, view);
  for (const part of parts) nameRopes(sketch, part, scene, view);
  for (const part of parts) nameBodies(sketch, part, scene, view, (kind) => kind !== "knot");
  for (const part of parts) nameBodies(sketch, part, scene, view, (kind) => kind === "knot");
  if (parts.some(({ layout }) => !layout.faithful)) note(sketch, "note", notAsGiven, view.height);
  return sketch.picture();
}

const notAsGiven = "not all of this can be drawn as it is given";

function drawAccelerations(sketch: Sketch, parts: readonly Part[], scene: SystemScene, view: SystemView): void {
  const { width, height } = view;
  const corners = [25, width - 25].flatMap((x) => [height / 2, height - 34, 34].map((y) => ({ x, y })));
  accelerationNear(sketch, { key: "a-frame", ...scene.frame, runs: [letter("a")], ref: "a" }, corners);
  for (const placed of parts.flatMap((part) => part.layout.bodies)) {
    const body = scene.bodies.find(({ id }) => id === placed.id);
    if (body?.acceleration == null || !body.accelerationGiven) continue;
    const { x, y } = body.acceleration;
    if (x === scene.frame.x && y === scene.frame.y) continue;
    const around = cornersOf(placed).map((corner) => view.at(corner));
    accelerationNear(
      sketch,
      { key: `a-${body.id}`, x, y, runs: body.accelerationLabel, ref: "a" },
      placesAround(around, view),
    );
  }
}

function placesAround(corners: readonly Point[], view: SystemView): Point[] {
  const middle = {
    x: corners.reduce((sum, { x }) => sum + x, 0) / corners.length,
    y: corners.reduce((sum, { y }) => sum + y, 0) / corners.length,
  };
  const inside = (value: number, most: number): number => Math.max(28, Math.min(most - 28, value));
  return [44, 58, 76].flatMap((far) =>
    [90, 0, 180, 45, 135, -45, -135, -90].map((degrees) => {
      const angle = (degrees * Math.PI) / 180;
      return {
        x: inside(middle.x + far * Math.cos(angle), view.width),
        y: inside(middle.y - far * Math.sin(angle), view.height),
      };
    }),
  );
}
