import { compareRationals, rational } from "../exact/index.ts";
import type { Rational } from "../exact/index.ts";

/** The kinds of number in a problem. */
export type Quantity =
  "mass" | "weight" | "gravity" | "angle" | "angleFromVertical" | "accelerationX" | "accelerationY" | "run" | "rise";

/** The range of one kind of number, both ends included, as text so that it stays exact. */
export type Limit = {
  readonly minimum: string;
  readonly maximum: string;
  /** The unit as it is printed; "" for a pure number. */
  readonly unit: string;
  /** What the number is, for the JSON Schema and for messages. */
  readonly meaning: string;
};

const LARGEST = "1000000000";

/**
 * Ranges far beyond any lesson, so that a problem never overflows a double or a line on the page. A mass or a weight
 * is larger than 0; the smallest accepted is 10⁻⁹.
 */
export const LIMITS: Readonly<Record<Quantity, Limit>> = {
  mass: { minimum: "0.000000001", maximum: LARGEST, unit: "kg", meaning: "mass of the body" },
  weight: { minimum: "0.000000001", maximum: LARGEST, unit: "N", meaning: "weight of the body" },
  gravity: { minimum: "0", maximum: LARGEST, unit: "m/s²", meaning: "acceleration of free fall" },
  angle: {
    minimum: "-360",
    maximum: "360",
    unit: "degrees",
    meaning: "direction in which the rope pulls, anticlockwise from the positive x axis",
  },
  angleFromVertical: {
    minimum: "0",
    maximum: "180",
    unit: "degrees",
    meaning: "direction in which the rope pulls, measured from straight up towards the side",
  },
  accelerationX: {
    minimum: `-${LARGEST}`,
    maximum: LARGEST,
    unit: "m/s²",
    meaning: "acceleration of the body to the right, seen from the ground",
  },
  accelerationY: {
    minimum: `-${LARGEST}`,
    maximum: LARGEST,
    unit: "m/s²",
    meaning: "acceleration of the body upwards, seen from the ground",
  },
  run: { minimum: `-${LARGEST}`, maximum: LARGEST, unit: "", meaning: "how far the rope goes to the right" },
  rise: { minimum: `-${LARGEST}`, maximum: LARGEST, unit: "", meaning: "how far the rope goes up" },
};

/** Whether a value lies within the limits of its kind. */
export function isWithinLimits(quantity: Quantity, value: Rational): boolean {
  const { minimum, maximum } = LIMITS[quantity];
  return compareRationals(value, rational(minimum)) >= 0 && compareRationals(value, rational(maximum)) <= 0;
}

/** The range of one kind of number in words: "a number from 0 to 1000000000 (m/s²)". */
export function rangeInWords(quantity: Quantity): string {
  const { minimum, maximum, unit } = LIMITS[quantity];
  return `a number from ${minimum} to ${maximum}${unit === "" ? "" : ` (${unit})`}`;
}
