import type { ProblemDocument } from "../../../shared/problem/index.ts";

/** A problem, and what a rigid-body engine finds for its answers. */
export interface RigidCase {
  readonly name: string;
  readonly document: ProblemDocument;
  /** Answers by id: newtons and m/s². */
  readonly run: () => Readonly<Record<string, number>>;
  /** How far the two may be apart, beside the weight and g. */
  readonly within: number;
}

/** The engine's speeds are exact for forces that stay the same; what is left is rounding and the last rounds over its contacts. */
export const EXACT = 1e-9;

/** Its bodies sink into each other by some millimetres, so that a level rope of 10 km is off by some ten-millionths of its direction. */
export const SUNK = 2e-6;
