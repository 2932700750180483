import { isPlaced } from "../problem/index.ts";
import type { Problem, Rope } from "../problem/index.ts";
import type { Figures, FirstAxis } from "./types.ts";

/** The counts of figures that a page offers. */
export const FIGURES: readonly Figures[] = [2, 3, 4, 5, 6];
/** The first axes that a page offers. */
export const FIRST_AXES: readonly FirstAxis[] = ["vertical", "horizontal"];
/** Axes along the slope a body lies on, or level and upright for every body. */
export const AXES = ["along", "level"] as const;
/** The decimal mark of the lines. */
export const MARKS = ["point", "comma"] as const;
/** How long a query may be; the longest that a page writes is about a quarter of this. */
export const LONGEST_QUERY = 2000;
/** So many faults are told at once; more would help nobody. */
export const MOST_FAULTS = 12;
/** What the id of a line looks like. Whether there is such a line is the page's affair. */
export const LINE_ID = /^[A-Za-z][A-Za-z0-9.-]{0,79}$/;

/** The names of all parameters of a page with this problem, in the order in which an address has them. */
export function parametersOf(problem: Problem): readonly string[] {
  const ropes = turnable(problem).map((rope) => rope.id);
  return ["mass", "weight", "g", ...ropes, "ax", "ay", "figures", "first", "upto"];
}

/** The ropes whose direction an address can change: those that are given by a direction. */
export function turnable({ ropes, bodies }: Problem): readonly Rope[] {
  return ropes.filter((rope) => !isPlaced(rope, bodies));
}
