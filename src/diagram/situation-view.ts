// How the situation is laid into its picture. On its own it is as large as fits; during a drag it keeps what the reader holds in place.
import { extentOf, fits, largestScale, placeView, toScreen, type Extent, type View } from "./fit-view.ts";
import type { Box, Point } from "./geometry.ts";
import { hangingCurve } from "./hanging-curve.ts";
import type { DiagramScene, ScenePoint, SceneRope } from "./scene.ts";

/** The size of the picture of the situation. */
export const situationSize = { width: 360, height: 278 };
/** Where ends of ropes and the load may be. */
const room: Box = { x: 26, y: 58, width: 308, height: 170 };
/** The same, with less distance to the edge: enough while a drag lasts. */
const looseRoom: Box = { x: 14, y: 44, width: 332, height: 200 };
const tallest = 136;
const pieces = 40;

/** The points of a slack rope from its end to the load. */
export function slackCurve(scene: DiagramScene, rope: SceneRope): ScenePoint[] {
  return hangingCurve(rope.anchor, scene.position, rope.length, pieces);
}

/** Everything that has to be in the picture. */
function extent(scene: DiagramScene): Extent {
  const points: ScenePoint[] = [scene.position];
  for (const rope of scene.ropes) {
    points.push(rope.anchor);
    if (rope.state === "slack") points.push(...slackCurve(scene, rope));
  }
  return extentOf(points);
}

/** The view in which all fits; the one wished for, where that does. */
export function situationView(scene: DiagramScene, wished: View | null = null): View {
  const all = extent(scene);
  if (wished !== null && fits(all, looseRoom, wished)) return wished;
  const scale = Math.min(tallest, largestScale(all, room));
  const rest = {
    x: room.x + room.width / 2,
    y: room.y + (room.height + (all.high + all.low) * scale) / 2,
  };
  return placeView(all, room, scale, rest);
}

/**
 * The view in which the ropes' ends stay where they were drawn while the load is dragged. Two ends fix it; a single one, or two at one
 * place, leave the height open, and then the load's wished height is taken.
 */
export function viewWithEnds(scene: DiagramScene, ends: readonly Point[], load: Point): View | null {
  const first = scene.ropes[0];
  const end = ends[0];
  if (first === undefined || end === undefined) return null;
  let scale = (load.y - end.y) / first.anchor.y;
  scene.ropes.forEach((rope, index) => {
    const apart = rope.anchor.x - first.anchor.x;
    const drawn = (ends[index]?.x ?? end.x) - end.x;
    if (Math.abs(apart) > 1e-6 && apart * drawn > 0) scale = drawn / apart;
  });
  if (!(scale > 0)) return null;
  return { x: end.x - scale * first.anchor.x, y: end.y + scale * first.anchor.y, scale };
}

/** Where the ropes' ends are drawn under a view. */
export function drawnEnds(scene: DiagramScene, view: View): Point[] {
  return scene.ropes.map((rope) => toScreen(view, rope.anchor));
}
