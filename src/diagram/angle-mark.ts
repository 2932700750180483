// Angles: an arc that starts on the line it is measured from, or the square of a right angle.
import { along, distance, type Point } from "./geometry.ts";
import { unitOf } from "./direction.ts";
import { arcPath, onCircle, polyline } from "./path-text.ts";
import { avoid, type Sketch } from "./sketch.ts";

/** An angle at a point, from one direction to another, in degrees anticlockwise; 0 to 90 apart. */
export interface AngleSpec {
  readonly key: string;
  readonly centre: Point;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  readonly ref: string;
}

/**
 * How large an arc at a rope's end may be: no more than `most`, half the rope, and not so far along the beam that it reaches another end.
 */
export function radiusAtEnd(ends: readonly Point[], index: number, load: Point, most: number): number {
  const end = ends[index];
  if (end === undefined) return most;
  const others = ends.filter((_, other) => other !== index).map((other) => distance(other, end));
  const room = Math.min(...others.filter((apart) => apart > 4)) * 0.46;
  return Math.max(8, Math.min(most, distance(end, load) * 0.5, room));
}

/** Draws the mark. Nothing is drawn for an angle of 0. */
export function angleMark(sketch: Sketch, spec: AngleSpec): void {
  const { key, centre, radius, from, to, ref } = spec;
  const size = Math.abs(to - from);
  if (size < 0.005) return;
  if (Math.abs(size - 90) < 1e-9) {
    squareMark(sketch, key, centre, unitOf(from), unitOf(to), ref, Math.min(11, radius * 0.5));
    return;
  }
  sketch.path(key, arcPath(centre, radius, from, to), "arc", ref);
  const pieces = Math.max(1, Math.ceil(size / 15));
  const points = Array.from({ length: pieces + 1 }, (_, i) =>
    onCircle(centre, radius, from + ((to - from) * i) / pieces),
  );
  sketch.keepOff(points, avoid.outline);
}

/** The small square of a right angle between two directions. */
export function squareMark(
  sketch: Sketch,
  key: string,
  corner: Point,
  one: Point,
  other: Point,
  ref: string | null,
  size = 9,
): void {
  const points = [along(corner, one, size), along(along(corner, one, size), other, size), along(corner, other, size)];
  sketch.path(key, polyline(points), "arc", ref);
  sketch.keepOff(points, avoid.outline);
}
