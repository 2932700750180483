// The usual places for the label of an arrow, a line or an angle, best first.
import { along, between, turned, unitTo, type Point } from "./geometry.ts";
import type { Spot } from "./label-place.ts";
import { onCircle } from "./path-text.ts";

function spun(unit: Point, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { x: unit.x * cos - unit.y * sin, y: unit.x * sin + unit.y * cos };
}

/** Beyond a tip, straight on first, then turning away to both sides. */
export function beyondTip(tip: Point, unit: Point, gap = 5): Spot[] {
  return [0, 35, -35, 70, -70, 110, -110].map((degrees) => ({ at: tip, away: spun(unit, degrees), gap, keep: "edge" }));
}

/** Beside a straight line, at its middle first; `side` 1 begins on the left of someone going from `a` to `b`, -1 on the right. */
export function beside(a: Point, b: Point, side: 1 | -1, gap = 4, shares = [0.5, 0.35, 0.65, 0.2, 0.8]): Spot[] {
  const normal = turned(unitTo(a, b));
  const away = side === 1 ? normal : { x: -normal.x, y: -normal.y };
  const other = { x: -away.x, y: -away.y };
  const on = (share: number, direction: Point): Spot => ({ at: between(a, b, share), away: direction, gap });
  return [...shares.map((share) => on(share, away)), ...shares.map((share) => on(share, other))];
}

/** At an angle between two directions (degrees, anticlockwise): in its opening, further out, then just outside either leg. */
export function atAngle(centre: Point, radius: number, from: number, to: number): Spot[] {
  const middle = onCircle({ x: 0, y: 0 }, 1, (from + to) / 2);
  const turn = to > from ? 1 : -1;
  const beyond = onCircle({ x: 0, y: 0 }, 1, to + 90 * turn);
  const before = onCircle({ x: 0, y: 0 }, 1, from - 90 * turn);
  const opening = [3, 9, 17, 26, 36].map((gap) => ({
    at: along(centre, middle, radius),
    away: middle,
    gap,
    keep: "edge" as const,
  }));
  const outside = [1, 1.5, 0.6].flatMap((share) => [
    { at: onCircle(centre, radius * share, from), away: before, gap: 4 },
    { at: onCircle(centre, radius * share, to), away: beyond, gap: 4 },
  ]);
  return [...opening, ...outside];
}
