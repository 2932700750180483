import Fraction from "fraction.js";
import { ExactError } from "./exact-error.ts";

/**
 * An exact ratio of two integers: sign `s`, numerator `n` ≥ 0 and denominator `d` ≥ 1 without a common divisor. The
 * arithmetic is fraction.js. Never hand a JavaScript number to its methods: it would be approximated without a word.
 */
export type Rational = Fraction;

/** The exact ratio of two integers. Throws ExactError where the denominator is 0. */
export function ratio(numerator: bigint, denominator: bigint): Rational {
  if (denominator === 0n) throw new ExactError("a denominator of 0", "a denominator other than 0");
  return new Fraction(numerator, denominator);
}

/** The numerator with its sign. */
export function signedNumerator(value: Rational): bigint {
  return value.s < 0n ? -value.n : value.n;
}

/** Whether the value is exactly 0. */
export function isZeroRational(value: Rational): boolean {
  return value.n === 0n;
}

/** Whether two exact values are the same. */
export function equalRationals(first: Rational, second: Rational): boolean {
  return signedNumerator(first) === signedNumerator(second) && first.d === second.d;
}

/** Exact order: −1 where the first is smaller, 0 where they are equal, 1 where it is larger. */
export function compareRationals(first: Rational, second: Rational): -1 | 0 | 1 {
  const left = signedNumerator(first) * second.d;
  const right = signedNumerator(second) * first.d;
  return left < right ? -1 : left > right ? 1 : 0;
}
