// From the pointer to angles. Points are in the picture's units, y downwards; angles are degrees anticlockwise from the x axis.
import type { Point } from "./geometry.ts";

/** The directions a rope can be dragged to: from its own side over the top to the other. Level and below are typed. */
export const dragRange = { least: 5, most: 175 } as const;

/** Whole degrees, or tenths where `fine`, kept within the range. */
export function settle(degrees: number, fine: boolean): number {
  const steps = fine ? 10 : 1;
  const kept = Math.min(Math.max(degrees, dragRange.least), dragRange.most);
  return Math.round(kept * steps) / steps;
}

/**
 * The direction of a rope whose end is dragged to a point: the one in which the point is seen from the load. Below the load it stays at
 * the end of the range on the side where it was (`before`), so that it never jumps across.
 */
export function ropeDirection(load: Point, end: Point, before: number, fine: boolean): number {
  const up = load.y - end.y;
  const right = end.x - load.x;
  if (up <= 0) return before <= 90 ? dragRange.least : dragRange.most;
  return settle((Math.atan2(up, right) * 180) / Math.PI, fine);
}

/** The directions of all ropes when the load is dragged to a point and their ends stay. `before` are the directions until then. */
export function loadDirections(
  ends: readonly Point[],
  load: Point,
  before: readonly number[],
  fine: boolean,
): number[] {
  return ends.map((end, index) => ropeDirection(load, end, before[index] ?? 90, fine));
}

/** Where the load is when the directions from it to two fixed ends at one height are known; null where they do not meet below. */
export function loadPlace(ends: readonly [Point, Point], degrees: readonly [number, number]): Point | null {
  const [first, second] = degrees.map((d) => 1 / Math.tan((d * Math.PI) / 180));
  if (first === undefined || second === undefined || Math.abs(first - second) < 1e-9) return null;
  const depth = (ends[0].x - ends[1].x) / (first - second);
  return depth > 0 ? { x: ends[0].x - depth * first, y: ends[0].y + depth } : null;
}
