/**
 * Measures of drawn things, on their own: the drawing plane has y downwards, ways are in degrees anticlockwise as they are seen.
 */
import type { Point } from "../../../src/diagram/index.ts";

/** The direction from one point to another. */
export const wayOf = (from: Point, to: Point): number => (Math.atan2(from.y - to.y, to.x - from.x) * 180) / Math.PI;

/** How far a point is from the line through two others. */
export function distanceToLine(point: Point, a: Point, b: Point): number {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return Math.abs((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)) / length;
}

/** How deep two convex outlines reach into each other; below zero how far they are apart along their best dividing line. */
export function depthOf(one: readonly Point[], other: readonly Point[]): number {
  let depth = Infinity;
  for (const outline of [one, other]) {
    outline.forEach((a, index) => {
      const b = outline[(index + 1) % outline.length] ?? a;
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      if (length < 1e-9) return;
      const across = { x: (b.y - a.y) / length, y: (a.x - b.x) / length };
      for (const sign of [1, -1]) {
        const along = (p: Point): number => sign * (p.x * across.x + p.y * across.y);
        depth = Math.min(depth, Math.max(...one.map(along)) - Math.min(...other.map(along)));
      }
    });
  }
  return depth;
}

/** Whether a straight line passes through the inside of a convex outline. */
export function passesThrough(a: Point, b: Point, outline: readonly Point[]): boolean {
  return depthOf([a, b], outline) > 0.5;
}

/** Whether any of the points is outside a picture. */
export function leavesPicture(
  points: readonly Point[],
  size: { readonly width: number; readonly height: number },
): boolean {
  return points.some(({ x, y }) => x < 0 || y < 0 || x > size.width || y > size.height);
}
