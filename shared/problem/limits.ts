import { compareRationals, isZeroRational, rational } from "../exact/index.ts";
import type { Rational } from "../exact/index.ts";
import type { Units } from "./types.ts";

/** The kinds of number in a problem. */
export type Quantity =
  | "mass"
  | "loadMass"
  | "weight"
  | "gravity"
  | "angle"
  | "angleFromVertical"
  | "accelerationX"
  | "accelerationY"
  | "accelerationAlong"
  | "frameX"
  | "frameY"
  | "run"
  | "rise"
  | "placeX"
  | "placeY"
  | "length"
  | "coefficient"
  | "push";

/** The range of one kind of number, both ends included, as text so that it stays exact. */
export type Limit = {
  readonly minimum: string;
  readonly maximum: string;
  /** Whether 0 is accepted although `minimum` is larger. */
  readonly orZero: boolean;
  /** The unit as it is printed in each system; "" for a pure number. */
  readonly unit: Readonly<Record<Units, string>>;
  /** What the number is, for the JSON Schema and for messages. */
  readonly meaning: string;
};

const LARGEST = "1000000000";
const SMALLEST = "0.000000001";

const NUMBER = { SI: "", "lbf-ft": "" };
const DEGREES = { SI: "degrees", "lbf-ft": "degrees" };
const MASS = { SI: "kg", "lbf-ft": "slug" };
const FORCE = { SI: "N", "lbf-ft": "lbf" };
const ACCELERATION = { SI: "m/s²", "lbf-ft": "ft/s²" };
const LENGTH = { SI: "m", "lbf-ft": "ft" };

type Unit = Limit["unit"];

const between = (minimum: string, maximum: string, unit: Unit, meaning: string): Limit => ({
  minimum,
  maximum,
  orZero: false,
  unit,
  meaning,
});
const eitherWay = (unit: Unit, meaning: string): Limit => between(`-${LARGEST}`, LARGEST, unit, meaning);

/**
 * Ranges far beyond any lesson, so that a problem never overflows a double or a line on the page. What has to be larger
 * than 0 begins at 10⁻⁹.
 */
export const LIMITS: Readonly<Record<Quantity, Limit>> = {
  mass: { ...between(SMALLEST, LARGEST, MASS, "mass of the body"), orZero: true },
  loadMass: between(SMALLEST, LARGEST, MASS, "mass of the load on its ropes"),
  weight: between(SMALLEST, LARGEST, FORCE, "weight of the body"),
  gravity: between("0", LARGEST, ACCELERATION, "acceleration of free fall"),
  angle: between("-360", "360", DEGREES, "direction, anticlockwise from the positive x axis"),
  angleFromVertical: between("0", "180", DEGREES, "direction, measured from straight up towards the side"),
  accelerationX: eitherWay(ACCELERATION, "acceleration of the body to the right, seen from the ground"),
  accelerationY: eitherWay(ACCELERATION, "acceleration of the body upwards, seen from the ground"),
  accelerationAlong: eitherWay(ACCELERATION, "acceleration of the body along the line"),
  frameX: eitherWay(ACCELERATION, "acceleration of the supports to the right, seen from the ground"),
  frameY: eitherWay(ACCELERATION, "acceleration of the supports upwards, seen from the ground"),
  run: eitherWay(NUMBER, "how far it goes to the right"),
  rise: eitherWay(NUMBER, "how far it goes up"),
  placeX: eitherWay(LENGTH, "how far to the right of the common origin"),
  placeY: eitherWay(LENGTH, "how far above the common origin"),
  length: between(SMALLEST, LARGEST, LENGTH, "length of the rope"),
  coefficient: between("0", "100", NUMBER, "coefficient of friction"),
  push: between("0", LARGEST, FORCE, "size of the push"),
};

/** Whether a value lies within the limits of its kind. */
export function isWithinLimits(quantity: Quantity, value: Rational): boolean {
  const { minimum, maximum, orZero } = LIMITS[quantity];
  if (orZero && isZeroRational(value)) return true;
  return compareRationals(value, rational(minimum)) >= 0 && compareRationals(value, rational(maximum)) <= 0;
}

/** The unit of one kind of number: of one system of units ("kg"), or, where that is not known, of all ("kg, or slug"). */
export function unitInWords(quantity: Quantity, units?: Units): string {
  const { unit } = LIMITS[quantity];
  if (units !== undefined) return unit[units];
  return unit.SI === unit["lbf-ft"] ? unit.SI : `${unit.SI}, or ${unit["lbf-ft"]}`;
}

/** The range of one kind of number in words: "a number from 0 to 1000000000 (m/s²)". `units` as in `unitInWords`. */
export function rangeInWords(quantity: Quantity, units?: Units): string {
  const { minimum, maximum, orZero } = LIMITS[quantity];
  const unit = unitInWords(quantity, units);
  return `${orZero ? "0, or " : ""}a number from ${minimum} to ${maximum}${unit === "" ? "" : ` (${unit})`}`;
}
