// Set-ups by a few numbers, read through the public problem document.
import type { Problem } from "../../shared/problem/index.ts";
import { readProblemDocument } from "../../shared/problem/schema.ts";

/** A set-up: directions in degrees anticlockwise, one or two ropes. */
export interface SetUp {
  readonly ropes: readonly (number | { readonly run: number; readonly rise: number })[];
  readonly mass?: number;
  readonly weight?: number;
  readonly gravity?: number;
  readonly ax?: number;
  readonly ay?: number;
}

/** The document of a set-up: a lantern of 4.2 kg under g = 9.8 unless said otherwise. */
export function documentOf({
  ropes,
  mass = 4.2,
  weight,
  gravity = 9.8,
  ax = 0,
  ay = 0,
}: SetUp): Record<string, unknown> {
  const load = weight === undefined ? { mass } : { weight };
  return {
    format: 1,
    gravity,
    bodies: [{ id: "lantern", name: "brass lantern", ...load, acceleration: { x: ax, y: ay } }],
    ropes: ropes.map((direction, i) => ({
      id: `T${i + 1}`,
      on: "lantern",
      direction: typeof direction === "number" ? { angle: direction } : direction,
    })),
  };
}

/** The problem in a document. Throws with the faults if it is refused. */
export function problemFrom(document: unknown): Problem {
  const reading = readProblemDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.problem;
}

/** The problem of a set-up. */
export const problemOf = (setUp: SetUp): Problem => problemFrom(documentOf(setUp));

/** Acute angles on the two usual sides: rope 1 up to the left, rope 2 up to the right. */
export const opposite = (left: number, right: number): [number, number] => [Math.round((180 - left) * 10) / 10, right];
