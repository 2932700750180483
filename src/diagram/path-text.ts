// Numbers and path data as text. Two decimals, so that the server and the browser write the same.
import type { Point } from "./geometry.ts";

/** A coordinate rounded to two decimals, never -0. */
export function rounded(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}

const pair = (p: Point): string => `${rounded(p.x)},${rounded(p.y)}`;

/** Straight lines through the points; `closed` joins the last to the first. */
export function polyline(points: readonly Point[], closed = false): string {
  return points.map((p, i) => (i === 0 ? "M" : "L") + pair(p)).join("") + (closed ? "Z" : "");
}

/** An arc of a circle from one direction to another (degrees, anticlockwise from the x axis), no longer than half a turn. */
export function arcPath(centre: Point, radius: number, from: number, to: number): string {
  const start = onCircle(centre, radius, from);
  const end = onCircle(centre, radius, to);
  return `M${pair(start)}A${rounded(radius)},${rounded(radius)},0,0,${to > from ? 0 : 1},${pair(end)}`;
}

/** The point of a circle in a direction, in degrees anticlockwise as seen on the screen. */
export function onCircle(centre: Point, radius: number, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return { x: centre.x + radius * Math.cos(angle), y: centre.y - radius * Math.sin(angle) };
}

/** A full circle as a path. */
export function circlePath(centre: Point, radius: number): string {
  const r = rounded(radius);
  const left = pair({ x: centre.x - radius, y: centre.y });
  const right = pair({ x: centre.x + radius, y: centre.y });
  return `M${left}A${r},${r},0,1,0,${right}A${r},${r},0,1,0,${left}Z`;
}
