// Where equations leave unknowns open: is there any choice of these at which all inequalities hold? A region cut out by planes has a corner, if it has
// a point at all and no whole line in it; so the corners are tried.
import type { Inequality } from "./checks.ts";
import { solveRows } from "./solve-rows.ts";
import type { Row } from "./rows.ts";
import type { Solution } from "./solve-rows.ts";

type Many = Extract<Solution, { kind: "many" }>;
type Point = ReadonlyMap<string, number>;

/** A point of the region, its corners, and whether it is a single point. */
export interface Feasible {
  readonly point: Point;
  readonly corners: readonly Point[];
  readonly pinned: boolean;
}

/** A point at which all inequalities hold, with the corners of the region; null where there is none. */
export function feasiblePoint(
  solution: Many,
  inequalities: readonly Inequality[],
  given: (letter: string) => number,
  holds: (inequality: Inequality, margin: number, at: (letter: string) => number) => boolean,
): Feasible | null {
  const { rows, candidates, at } = cornersOf(solution, inequalities, given);
  const corners = candidates.filter((point) => inequalities.every((q) => holds(q, q.margin(at(point)), at(point))));
  const [first] = corners;
  if (first !== undefined) {
    const pinned = solution.free.length === 1 && isPinned(rows, corners);
    return { point: pinned ? first : middle(corners), corners, pinned };
  }
  const value = at(solution.values);
  return inequalities.every((q) => holds(q, q.margin(value), value))
    ? { point: solution.values, corners: [], pinned: false }
    : null;
}

/** Where no point will do: the corner at which the fewest inequalities are broken, and these. */
export function closestPoint(
  solution: Many,
  inequalities: readonly Inequality[],
  given: (letter: string) => number,
  holds: (inequality: Inequality, margin: number, at: (letter: string) => number) => boolean,
): { readonly point: Point; readonly broken: readonly Inequality[] } {
  const { candidates, at } = cornersOf(solution, inequalities, given);
  const judged = [...candidates, solution.values].map((point) => ({
    point,
    broken: inequalities.filter((q) => !holds(q, q.margin(at(point)), at(point))),
  }));
  judged.sort((a, b) => a.broken.length - b.broken.length);
  return judged[0] ?? { point: solution.values, broken: [] };
}

/** Each inequality as a row of the open directions, and every point at which enough of them are just fulfilled. */
function cornersOf(
  solution: Many,
  inequalities: readonly Inequality[],
  given: (letter: string) => number,
): { rows: Row[]; candidates: Point[]; at: (point: Point) => (letter: string) => number } {
  const at =
    (point: Point) =>
    (letter: string): number =>
      point.get(letter) ?? given(letter);
  const rows = inequalities.map((q, i): Row => {
    const base = q.margin(at(solution.values));
    const coefficients = new Map(
      solution.free.map((_, k): [string, number] => [String(k), q.margin(at(moved(solution, [[k, 1]]))) - base]),
    );
    return { id: String(i), coefficients, constant: -base };
  });
  const touched = rows.filter((r) => [...r.coefficients.values()].some((c) => c !== 0));
  const candidates: Point[] = [];
  const size = rankOf(touched);
  for (const chosen of choices(touched, size)) {
    const solved = solveRows(chosen);
    if (solved.kind === "none" || (solved.kind === "many" && size === solution.free.length)) continue;
    const point = moved(
      solution,
      [...solved.values].map(([k, z]): [number, number] => [Number(k), z]),
    );
    candidates.push(point);
  }
  return { rows, candidates, at };
}

/** With one thing open: whether some inequality forbids more of it and another forbids less, and all corners are one. */
function isPinned(rows: readonly Row[], corners: readonly Point[]): boolean {
  const slopes = rows.map((r) => r.coefficients.get("0") ?? 0);
  if (!slopes.some((s) => s > 0) || !slopes.some((s) => s < 0)) return false;
  const [first, ...others] = corners;
  const letters = [...(first?.keys() ?? [])];
  const size = Math.max(...corners.flatMap((c) => [...c.values()].map(Math.abs)), 0);
  return others.every((c) => letters.every((l) => Math.abs((c.get(l) ?? 0) - (first?.get(l) ?? 0)) <= 1e-9 * size));
}

function moved(solution: Many, by: readonly (readonly [number, number])[]): Point {
  const point = new Map(solution.values);
  for (const [k, z] of by)
    for (const [letter, step] of solution.free[k] ?? []) point.set(letter, (point.get(letter) ?? 0) + z * step);
  return point;
}

/** The mean of the corners lies in the region too, and off its walls. */
function middle(corners: readonly Point[]): Point {
  const letters = new Set(corners.flatMap((c) => [...c.keys()]));
  return new Map(
    [...letters].map((l) => [l, corners.reduce((total, c) => total + (c.get(l) ?? 0), 0) / corners.length]),
  );
}

function rankOf(rows: readonly Row[]): number {
  const letters = new Set(rows.flatMap((r) => [...r.coefficients.keys()]));
  const solved = solveRows(rows.map((r) => ({ ...r, constant: 0 })));
  return letters.size - (solved.kind === "many" ? solved.free.length : 0);
}

const MOST_CHOICES = 3000;

/** All ways to choose so many rows. */
function choices(rows: readonly Row[], count: number): Row[][] {
  let made: Row[][] = [[]];
  for (const [i, row] of rows.entries()) {
    const left = rows.length - i;
    made = made.flatMap((c) => [...(c.length + left > count ? [c] : []), ...(c.length < count ? [[...c, row]] : [])]);
    if (made.length > MOST_CHOICES) break;
  }
  return made.filter((c) => c.length === count);
}
