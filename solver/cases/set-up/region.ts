// Where equations leave unknowns open, the inequalities cut a region out of all solutions: its corners, and the ways in which it has no end.
import type { Inequality } from "./checks.ts";
import { solveRows } from "./solve-rows.ts";
import type { Row } from "./rows.ts";
import type { Solution } from "./solve-rows.ts";

/** Equations that leave something open. */
export type Many = Extract<Solution, { kind: "many" }>;
/** A value for each unknown. */
export type Point = ReadonlyMap<string, number>;

/** The points at which enough inequalities are just fulfilled, whether or not the others hold; and the ways without end. */
export interface Region {
  readonly candidates: readonly Point[];
  /** Changes that can be made without limit: a change for each unknown that takes part. */
  readonly ways: readonly Point[];
}

const TINY = 1e-10;

/** The region of a solution with something open. */
export function regionOf(
  solution: Many,
  inequalities: readonly Inequality[],
  given: (letter: string) => number,
): Region {
  const rows = inequalities.map((q, i): Row => {
    // Inequalities are linear and without a constant, so their slope along a direction is their value at it.
    const slope = (direction: Point): number => q.margin((letter) => direction.get(letter) ?? 0);
    const coefficients = solution.free.map((direction, k): [string, number] => [String(k), slope(direction)]);
    const constant = -q.margin((letter) => solution.values.get(letter) ?? given(letter));
    return { id: String(i), coefficients: new Map(coefficients), constant };
  });
  const touched = rows.filter((r) => [...r.coefficients.values()].some((c) => c !== 0));
  const lines = solveRows(touched.map((r) => ({ ...r, constant: 0 })));
  const flat = lines.kind === "many" ? lines.free : untouched(solution, touched);
  const size = solution.free.length - flat.length;
  const candidates = choices(touched, size).flatMap((chosen): Point[] => {
    const solved = solveRows(chosen);
    if (solved.kind === "none") return [];
    if (solved.kind === "many" && solved.free.length > flat.length) return [];
    return [moved(solution, solved.values)];
  });
  const rays = size === 0 ? [] : choices(touched, size - 1).flatMap((chosen) => raysOf(chosen, touched, solution));
  const ways = [...flat, ...rays].map((steps) => stepOf(solution, steps));
  return { candidates, ways: ways.filter((way) => way.size > 0) };
}

/** With no inequality at all every direction is open. */
const untouched = (solution: Many, touched: readonly Row[]): Point[] =>
  touched.length > 0 ? [] : solution.free.map((_, k) => new Map([[String(k), 1]]));

/** Directions along which the chosen inequalities stay as they are and no other is broken ever. */
function raysOf(chosen: readonly Row[], all: readonly Row[], solution: Many): Point[] {
  const directions = solution.free.length === 1 ? [new Map([["0", 1]])] : nullOf(chosen, solution.free.length);
  return directions.flatMap((direction) =>
    [1, -1].flatMap((sense) => {
      const steps = new Map([...direction].map(([k, z]): [string, number] => [k, sense * z]));
      return all.every((row) => slopeOf(row, steps) >= -TINY * sizeOf(row)) ? [steps] : [];
    }),
  );
}

function nullOf(rows: readonly Row[], width: number): readonly Point[] {
  // Every step is named in some row, so that the solver knows of it.
  const named = { id: "", coefficients: new Map(Array.from({ length: width }, (_, k) => [String(k), 0])), constant: 0 };
  const solved = solveRows([...rows.map((r) => ({ ...r, constant: 0 })), named]);
  return solved.kind === "many" && solved.free.length === 1 ? solved.free : [];
}

const slopeOf = (row: Row, steps: Point): number =>
  [...row.coefficients].reduce((total, [k, c]) => total + c * (steps.get(k) ?? 0), 0);
const sizeOf = (row: Row): number => Math.max(...[...row.coefficients.values()].map(Math.abs));

/** The change that steps along the open directions make in each unknown. */
function stepOf(solution: Many, steps: Point): Point {
  const change = new Map<string, number>();
  const sizes = new Map<string, number>();
  for (const [k, z] of steps)
    for (const [letter, step] of solution.free[Number(k)] ?? []) {
      change.set(letter, (change.get(letter) ?? 0) + z * step);
      sizes.set(letter, (sizes.get(letter) ?? 0) + Math.abs(z * step));
    }
  return new Map([...change].filter(([letter, x]) => Math.abs(x) > TINY * (sizes.get(letter) ?? 0)));
}

function moved(solution: Many, steps: Point): Point {
  const point = new Map(solution.values);
  for (const [letter, step] of stepOf(solution, steps)) point.set(letter, (point.get(letter) ?? 0) + step);
  return point;
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
