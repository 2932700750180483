import fc from "fast-check";
import { add, multiply, ratio, squareRoot, surd, zero } from "../../shared/exact/index.ts";
import type { Rational, Surd } from "../../shared/exact/index.ts";

/** Rationals with numerators to ±bound and denominators to bound. */
export function rationals(bound = 1000): fc.Arbitrary<Rational> {
  return fc
    .tuple(fc.bigInt({ min: -BigInt(bound), max: BigInt(bound) }), fc.bigInt({ min: 1n, max: BigInt(bound) }))
    .map(([numerator, denominator]) => ratio(numerator, denominator));
}

const RADICANDS = [1n, 2n, 3n, 5n, 6n, 7n, 10n, 15n, 30n, 42n, 77n];

/** Sums of up to `most` terms, built by the public operations only. */
export function surds(most = 3, bound = 60): fc.Arbitrary<Surd> {
  const term = fc.tuple(rationals(bound), fc.constantFrom(...RADICANDS)).map(([coefficient, radicand]) => {
    const root = squareRoot(ratio(radicand, 1n));
    if (root === null) throw new Error(`no square root of ${radicand}`);
    return multiply(surd(coefficient), root);
  });
  return fc.array(term, { maxLength: most }).map((terms) => terms.reduce(add, zero));
}

/** The same, never zero. */
export function surdsButZero(most = 3, bound = 60): fc.Arbitrary<Surd> {
  return surds(most, bound).filter((x) => x.terms.length > 0);
}
