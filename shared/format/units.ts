/**
 * Units as exact multiples of each other. The arithmetic of dimensions is safe-units', on exact numbers: a sum of a
 * length and a force does not compile. Apart from index.ts, so that a page in SI units goes without the library.
 */
import { createMeasureType, UnitSystem as BaseUnits } from "safe-units/dist/src/measure/index.js";
import type { GenericMeasure, Unit } from "safe-units/dist/src/measure/index.js";
import { compareRationals, ratio, rational, rationalToNumber, toExactText } from "../exact/index.ts";
import type { Rational } from "../exact/index.ts";
import type { Dimension, UnitSystem } from "./unit-names.ts";

const Exact = createMeasureType<Rational>({
  one: () => ratio(1n, 1n),
  neg: (value) => value.neg(),
  add: (one, other) => one.add(other),
  sub: (one, other) => one.sub(other),
  mult: (one, other) => one.mul(other),
  div: (one, other) => one.div(other),
  reciprocal: (value) => value.inverse(),
  compare: compareRationals,
  format: toExactText,
});

const base = BaseUnits.from({ length: "m", mass: "kg", time: "s" });
type Base = typeof base extends BaseUnits<infer Basis> ? Basis : never;

const metre = Exact.dimension(base, "length");
const kilogram = Exact.dimension(base, "mass");
const second = Exact.dimension(base, "time");
const newton = kilogram.times(metre).per(second.squared());

// International yard and pound agreement of 1959 (Federal Register document 59-5442; NIST Handbook 44, Appendix C): exact.
const foot = Exact.of(rational("0.3048"), metre);
const pound = Exact.of(rational("0.45359237"), kilogram);
// 3rd General Conference on Weights and Measures, 1901: exact.
const standardGravity = Exact.of(rational("9.80665"), metre.per(second.squared()));
// The weight of a pound under standard gravity: 4.4482216152605 N exactly (NIST Special Publication 811, Appendix B).
const poundForce = pound.times(standardGravity);
// What a pound-force speeds up by a foot per second squared.
const slug = poundForce.per(foot.per(second.squared()));

/** What a number of one system's unit is in another's, exactly. */
type Conversion = (value: Rational, from: UnitSystem, to: UnitSystem) => Rational;

function conversion<U extends Unit<Base>>(
  units: Readonly<Record<UnitSystem, GenericMeasure<Rational, Base, U>>>,
): Conversion {
  return (value, from, to) => Exact.of(value, units[from]).valueIn(units[to]);
}

const conversions: Readonly<Record<Dimension, Conversion>> = {
  force: conversion({ SI: newton, "lbf-ft": poundForce }),
  mass: conversion({ SI: kilogram, "lbf-ft": slug }),
  acceleration: conversion({ SI: metre.per(second.squared()), "lbf-ft": foot.per(second.squared()) }),
  length: conversion({ SI: metre, "lbf-ft": foot }),
};

/** A number of the unit of one system as a number of the unit of another, exactly: 1 lbf is 8896443230521/2000000000000 N. */
export function converted(dimension: Dimension, value: Rational, from: UnitSystem, to: UnitSystem): Rational {
  return conversions[dimension](value, from, to);
}

/** The same for a double, by the exact factor rounded once. */
export function convertedDecimal(dimension: Dimension, value: number, from: UnitSystem, to: UnitSystem): number {
  return value * rationalToNumber(converted(dimension, ratio(1n, 1n), from, to));
}
