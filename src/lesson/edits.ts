// Edits of a problem from what a hand does: numbers as text, so that they stay exact.
import { normalisedDegrees } from "../../shared/problem/index.ts";
import type { ProblemChange } from "../../shared/problem/index.ts";
import { rational } from "../../shared/exact/index.ts";

const TENTHS = 10;

/** Directions dragged to, degrees anticlockwise to a tenth, as edits. */
export function turnsOf(turns: readonly { readonly rope: string; readonly degrees: number }[]): ProblemChange[] {
  return turns.map(({ rope, degrees }) => ({ kind: "angle", rope, value: normalisedDegrees(rational(String(Math.round(degrees * TENTHS) / TENTHS))) }));
}
