// Arrows of the layout's plane. Unlike the drawing plane it has y upwards, as the scene does.
import { unitOf } from "../direction.ts";

/** A place or an arrow, y upwards. */
export interface Vec {
  readonly x: number;
  readonly y: number;
}

/** The direction of an angle, anticlockwise from the x axis, with length 1; level and upright ones are exact. */
export function heading(degrees: number): Vec {
  const { x, y } = unitOf(degrees);
  return { x, y: 0 - y };
}

/** The sum of two. */
export const plus = (a: Vec, b: Vec): Vec => ({ x: a.x + b.x, y: a.y + b.y });

/** `a` without `b`: the arrow from `b` to `a`. */
export const minus = (a: Vec, b: Vec): Vec => ({ x: a.x - b.x, y: a.y - b.y });

/** An arrow so many times as long. */
export const times = (a: Vec, factor: number): Vec => ({ x: a.x * factor, y: a.y * factor });

/** The product that is largest for two of one direction and zero for two at a right angle. */
export const dot = (a: Vec, b: Vec): number => a.x * b.x + a.y * b.y;

/** The product that is positive where `b` points to the left of `a`, and zero for two along one line. */
export const cross = (a: Vec, b: Vec): number => a.x * b.y - a.y * b.x;

/** A quarter turn to the left. */
export const left = (a: Vec): Vec => ({ x: 0 - a.y, y: a.x });

/** The same direction with length 1; straight up where it has none. */
export function unit(a: Vec): Vec {
  const length = Math.hypot(a.x, a.y);
  return length < 1e-12 ? { x: 0, y: 1 } : times(a, 1 / length);
}

/** How far points reach in a direction. */
export function reach(points: readonly Vec[], direction: Vec): number {
  return Math.max(...points.map((point) => dot(point, direction)));
}

/** Points turned about the origin, anticlockwise. */
export function spin(points: readonly Vec[], degrees: number): Vec[] {
  const along = heading(degrees);
  const up = left(along);
  return points.map((p) => plus(times(along, p.x), times(up, p.y)));
}

/** How far from the origin a ray leaves a convex outline that holds the origin. */
export function exit(outline: readonly Vec[], direction: Vec): number {
  let furthest = 0;
  outline.forEach((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a;
    const edge = minus(b, a);
    const across = cross(direction, edge);
    if (Math.abs(across) < 1e-9) return;
    const distance = cross(a, edge) / across;
    const share = cross(a, direction) / across;
    if (share >= -1e-9 && share <= 1 + 1e-9) furthest = Math.max(furthest, distance);
  });
  return furthest;
}

/** A circle as an outline. */
export function ring(centre: Vec, radius: number, corners = 16): Vec[] {
  return Array.from({ length: corners }, (_, i) => plus(centre, times(heading((360 * i) / corners), radius)));
}
