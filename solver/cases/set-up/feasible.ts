// Is there any choice of open unknowns at which all inequalities hold, between which values can each lie, and if there is none, which comes closest?
// A region cut out by planes has a corner, if it has a point at all and no whole line in it; so the corners are tried.
import type { Inequality } from "./checks.ts";
import { regionOf } from "./region.ts";
import type { Many, Point } from "./region.ts";

/** Between which values an open unknown can lie. */
export interface Range {
  readonly id: string;
  readonly least: number;
  readonly most: number;
}

/** A point of the region, and the open unknowns that lie between two values, which may be one. */
export interface Feasible {
  readonly point: Point;
  readonly ranges: readonly Range[];
}

type Holds = (inequality: Inequality, margin: number, at: (letter: string) => number) => boolean;
type Given = (letter: string) => number;

const at =
  (point: Point, given: Given) =>
  (letter: string): number =>
    point.get(letter) ?? given(letter);

/** A point at which all inequalities hold, in the middle of all there are; null where there is none. */
export function feasiblePoint(
  solution: Many,
  inequalities: readonly Inequality[],
  given: Given,
  holds: Holds,
): Feasible | null {
  const { candidates, ways } = regionOf(solution, inequalities, given);
  const fits = (point: Point): boolean => {
    const value = at(point, given);
    return inequalities.every((q) => holds(q, q.margin(value), value));
  };
  const corners = candidates.filter(fits);
  if (corners.length === 0) return fits(solution.values) ? { point: solution.values, ranges: [] } : null;
  const largest = Math.max(...corners.flatMap((c) => [...c.values()].map(Math.abs)));
  const clean = (x: number): number => (Math.abs(x) <= 1e-10 * largest ? 0 : x);
  const open = new Set(solution.free.flatMap((direction) => [...direction.keys()]));
  const ranges = [...open]
    .filter((id) => !ways.some((way) => way.has(id)))
    .map((id): Range => {
      const ends = corners.map((c) => clean(c.get(id) ?? 0));
      return { id, least: Math.min(...ends), most: Math.max(...ends) };
    });
  return { point: middle(corners, clean), ranges };
}

/** Whether a range is a single value. */
export const isSettled = ({ least, most }: Range): boolean =>
  most - least <= 1e-9 * Math.max(Math.abs(least), Math.abs(most));

/** Where no point will do: the corner at which the fewest inequalities are broken, and these. */
export function closestPoint(
  solution: Many,
  inequalities: readonly Inequality[],
  given: Given,
  holds: Holds,
): { readonly point: Point; readonly broken: readonly Inequality[] } {
  const { candidates } = regionOf(solution, inequalities, given);
  const judged = [...candidates, solution.values].map((point) => {
    const value = at(point, given);
    return { point, broken: inequalities.filter((q) => !holds(q, q.margin(value), value)) };
  });
  judged.sort((a, b) => a.broken.length - b.broken.length);
  return judged[0] ?? { point: solution.values, broken: [] };
}

/** The mean of the corners lies in the region too, and off its walls. */
function middle(corners: readonly Point[], clean: (x: number) => number): Point {
  const letters = new Set(corners.flatMap((c) => [...c.keys()]));
  return new Map(
    [...letters].map((l) => [l, clean(corners.reduce((total, c) => total + (c.get(l) ?? 0), 0) / corners.length)]),
  );
}
