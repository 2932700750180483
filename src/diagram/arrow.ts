// Arrows of several kinds: a force of known size, one of unknown size, a component, an acceleration.
import { along, boxOf, distance, turned, unitTo, type Point } from "./geometry.ts";
import { polyline } from "./path-text.ts";
import { avoid, type Sketch } from "./sketch.ts";

/** A straight arrow to be drawn. `paint` is the class that gives colour and line pattern, such as "force-1". */
export interface ArrowSpec {
  readonly key: string;
  readonly from: Point;
  readonly to: Point;
  readonly paint: string;
  readonly ref: string;
}

const headSize = { length: 11, half: 4.6 };
/** Shorter than this, an arrow is drawn as a tick across its end. */
export const tickBelow = 5;

function headPoints(from: Point, to: Point, size: number): [Point, Point, Point] {
  const unit = unitTo(from, to);
  const across = turned(unit);
  const back = along(to, unit, -headSize.length * size);
  return [along(back, across, headSize.half * size), to, along(back, across, -headSize.half * size)];
}

/** A head no longer than seven tenths of its arrow. */
function headScale(length: number, size: number): number {
  return Math.min(size, (0.7 * length) / headSize.length);
}

/** A force drawn at full length with a filled head; a very short one becomes a tick. Gives whether it is a tick. */
export function forceArrow(sketch: Sketch, spec: ArrowSpec, shaftLook = "shaft", size = 1): boolean {
  const { key, from, to, paint, ref } = spec;
  const length = distance(from, to);
  if (length < tickBelow) {
    const across = turned(unitTo(from, to));
    const ends = [along(to, across, 6), along(to, across, -6)];
    sketch.lines(`${key}-shaft`, [from, to], `${shaftLook} ${paint}`, avoid.shaft, ref);
    sketch.solid(key, polyline(ends), `tick ${paint}`, ref, boxOf(ends));
    return true;
  }
  const head = headPoints(from, to, headScale(length, size));
  const neck = along(to, unitTo(from, to), -headSize.length * headScale(length, size) * 0.8);
  sketch.lines(`${key}-shaft`, [from, neck], `${shaftLook} ${paint}`, avoid.shaft, ref);
  sketch.solid(key, polyline(head, true), `head ${paint}`, ref, boxOf(head));
  return false;
}

/** A force whose size is not known: its end fades into dots, and its head is open. */
export function openArrow(sketch: Sketch, spec: ArrowSpec): void {
  const { key, from, to, paint, ref } = spec;
  const unit = unitTo(from, to);
  const length = distance(from, to);
  const at = (share: number): Point => along(from, unit, length * share);
  sketch.lines(`${key}-shaft`, [from, at(0.55)], `shaft ${paint}`, avoid.shaft, ref);
  sketch.lines(`${key}-tail`, [at(0.58), at(0.8)], `tail ${paint}`, avoid.shaft, ref);
  sketch.lines(`${key}-end`, [at(0.83), to], `tail fainter ${paint}`, avoid.shaft, ref);
  const head = headPoints(from, to, 1.05);
  sketch.solid(key, polyline(head), `open-head ${paint}`, ref, boxOf(head));
}

/** The acceleration, or mass times it: two thin parallel lines and an open head, unlike any force. */
export function doubleArrow(sketch: Sketch, spec: ArrowSpec): void {
  const { key, from, to, ref } = spec;
  const length = distance(from, to);
  const size = headScale(length, 1.15);
  const unit = unitTo(from, to);
  const across = turned(unit);
  const neck = along(to, unit, -headSize.length * size * 0.45);
  const rail = (offset: number): Point[] => [along(from, across, offset), along(neck, across, offset)];
  const gap = Math.min(2, size * 2);
  sketch.lines(`${key}-rail-1`, rail(gap), "rail accel", avoid.shaft, ref);
  sketch.lines(`${key}-rail-2`, rail(-gap), "rail accel", avoid.shaft, ref);
  const head = headPoints(from, to, size);
  sketch.solid(key, polyline(head), "open-head accel", ref, boxOf(head));
}

/** A wavy stroke across the middle of an arrow: the force is replaced and no longer counts. */
export function strikeOut(sketch: Sketch, key: string, from: Point, to: Point, ref: string): void {
  const unit = unitTo(from, to);
  const across = turned(unit);
  const middle = distance(from, to) * 0.55;
  const wave = Array.from({ length: 25 }, (_, i) => {
    const place = along(from, unit, middle + (i - 12) * 1.5);
    return along(place, across, 5 * Math.sin((i * Math.PI) / 4));
  });
  sketch.lines(key, wave, "strike", avoid.outline, ref);
}
