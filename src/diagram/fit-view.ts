// From the scene's own lengths to the drawing plane, as large as the room allows and no larger than a fixed scale.
import type { Box, Point } from "./geometry.ts";
import type { ScenePoint } from "./scene.ts";

/** Where the scene's origin is drawn, and how long its unit is. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

/** The drawn place of a point of the scene. */
export function toScreen(view: View, p: ScenePoint): Point {
  return { x: view.x + view.scale * p.x, y: view.y - view.scale * p.y };
}

/** The extent of points of the scene, y upwards. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** The extent of the points. */
export function extentOf(points: readonly ScenePoint[]): Extent {
  let left = 0;
  let right = 0;
  let low = 0;
  let high = 0;
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return { left, right, low, high };
}

/** The largest scale at which the extent (which includes the origin) fits into the room; Infinity where it has no size. */
export function largestScale(extent: Extent, room: Box): number {
  return Math.min(room.width / (extent.right - extent.left), room.height / (extent.high - extent.low));
}

/**
 * Places an extent in a room at a scale: the origin stays at `rest` as far as everything then fits, and gives way no more than it must, so
 * that what is drawn moves steadily when the extent does.
 */
export function placeView(extent: Extent, room: Box, scale: number, rest: Point): View {
  const x = clamp(rest.x, room.x - scale * extent.left, room.x + room.width - scale * extent.right);
  const y = clamp(rest.y, room.y + scale * extent.high, room.y + room.height + scale * extent.low);
  return { x, y, scale };
}

/** Whether all of the extent is in the room under this view. */
export function fits(extent: Extent, room: Box, view: View): boolean {
  const slack = 0.01;
  return (
    view.x + view.scale * extent.left >= room.x - slack &&
    view.x + view.scale * extent.right <= room.x + room.width + slack &&
    view.y - view.scale * extent.high >= room.y - slack &&
    view.y - view.scale * extent.low <= room.y + room.height + slack
  );
}

function clamp(value: number, low: number, high: number): number {
  return Math.max(Math.min(value, high), low);
}
