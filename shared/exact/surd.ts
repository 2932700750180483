import { ExactError } from "./exact-error.ts";
import { absolute, greatestCommonDivisor } from "./integer.ts";
import { ratio, signedNumerator } from "./rational.ts";
import type { Rational } from "./rational.ts";

/** One term of an exact number: `coefficient · √radicand`, the radicand a square-free integer ≥ 1 (1 for a rational). */
export type SurdTerm = {
  readonly coefficient: Rational;
  readonly radicand: bigint;
};

/**
 * An exact real number: a sum of rationals times square roots of square-free integers, immutable and in one normal
 * form. It is held as (n₁√d₁ + n₂√d₂ + …)/q, the dᵢ ascending, no nᵢ zero, q > 0 and without a divisor common to q and
 * all nᵢ. Square roots of different square-free integers are linearly independent over the rationals, so two values are
 * equal exactly when their terms are, and zero is "no terms".
 */
export class Surd {
  /** Inside `shared/exact` only: the whole numbers nᵢ. */
  readonly numerators: readonly bigint[];
  /** Inside `shared/exact` only: the radicands dᵢ, ascending. */
  readonly radicands: readonly bigint[];
  /** Inside `shared/exact` only: the common denominator q. */
  readonly denominator: bigint;
  #terms: readonly SurdTerm[] | null = null;

  /** Inside `shared/exact` only, and only with parts in normal form; others start from `surd` or `squareRoot`. */
  constructor(numerators: readonly bigint[], radicands: readonly bigint[], denominator: bigint) {
    this.numerators = numerators;
    this.radicands = radicands;
    this.denominator = denominator;
  }

  /** The terms, radicand ascending, no coefficient zero; empty for 0. */
  get terms(): readonly SurdTerm[] {
    this.#terms ??= this.numerators.map((numerator, index) => ({
      coefficient: ratio(numerator, this.denominator),
      radicand: this.radicands[index] ?? 1n,
    }));
    return this.#terms;
  }
}

/** Parts in normal form but for a common divisor: takes that out. The denominator is positive. */
export function reduced(numerators: readonly bigint[], radicands: readonly bigint[], denominator: bigint): Surd {
  if (numerators.length === 0) return zero;
  let common = denominator;
  for (const numerator of numerators) {
    if (common === 1n) return new Surd(numerators, radicands, denominator);
    common = greatestCommonDivisor(common, numerator);
  }
  if (common === 1n) return new Surd(numerators, radicands, denominator);
  return new Surd(
    numerators.map((numerator) => numerator / common),
    radicands,
    denominator / common,
  );
}

/** The exact number 0. */
export const zero: Surd = new Surd([], [], 1n);
/** The exact number 1. */
export const one: Surd = new Surd([1n], [1n], 1n);

/** A rational as an exact number. */
export function surd(value: Rational): Surd {
  return value.n === 0n ? zero : new Surd([signedNumerator(value)], [1n], value.d);
}

/** Whether the number is exactly 0. */
export function isZero(x: Surd): boolean {
  return x.numerators.length === 0;
}

/** Whether no root is left in the number. */
export function isRational(x: Surd): boolean {
  return isZero(x) || (x.radicands.length === 1 && x.radicands[0] === 1n);
}

/** The number as a rational, or null where a root is left. */
export function asRational(x: Surd): Rational | null {
  if (!isRational(x)) return null;
  return ratio(x.numerators[0] ?? 0n, x.denominator);
}

/** Whether two exact numbers are the same number. */
export function equal(x: Surd, y: Surd): boolean {
  return (
    x.denominator === y.denominator &&
    x.numerators.length === y.numerators.length &&
    x.numerators.every((numerator, index) => numerator === y.numerators[index]) &&
    x.radicands.every((radicand, index) => radicand === y.radicands[index])
  );
}

/** `numerator/denominator · √radicand`, for a radicand known to be square-free. Throws ExactError where q is 0. */
export function rootTerm(numerator: bigint, radicand: bigint, denominator: bigint): Surd {
  if (denominator === 0n) throw new ExactError("a denominator of 0", "a denominator other than 0");
  if (numerator === 0n) return zero;
  const signed = denominator < 0n ? -numerator : numerator;
  return reduced([signed], [radicand], absolute(denominator));
}
