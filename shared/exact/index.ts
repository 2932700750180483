/**
 * Exact numbers: rationals (fraction.js), and on top of them the field of sums of rationals times square roots. Text
 * and integers in, exact values and correctly rounded doubles out; a binary float never gets in.
 */
export { ExactError } from "./exact-error.ts";
export { compareRationals, equalRationals, isZeroRational, ratio, signedNumerator } from "./rational.ts";
export type { Rational } from "./rational.ts";
export { rationalToNumber } from "./rational-number.ts";
export {
  LARGEST_EXPONENT,
  LONGEST_NUMBER_TEXT,
  NUMBER_TEXT_ACCEPTED,
  parseRational,
  rational,
  toDecimalText,
  toExactText,
} from "./rational-text.ts";
export { asRational, equal, isRational, isZero, one, surd, zero } from "./surd.ts";
export type { Surd, SurdTerm } from "./surd.ts";
export { add, divide, invert, multiply, negate, subtract } from "./surd-arithmetic.ts";
export { sign, toNumber } from "./surd-value.ts";
export { squareRoot } from "./square-root.ts";
export { cosineOf, exactCosine, exactSine, sineOf } from "./angle.ts";
