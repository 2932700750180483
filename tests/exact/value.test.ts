import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { add, multiply, ratio, sign, squareRoot, subtract, surd, toNumber, zero } from "../../shared/exact/index.ts";
import type { Surd } from "../../shared/exact/index.ts";
import { surds } from "../arbitraries/exact.ts";
import { doubleTimesTenToSixty, timesTenToSixty } from "./sixty-digits.ts";

function root(n: bigint): Surd {
  const value = squareRoot(ratio(n, 1n));
  if (value === null) throw new Error(`no root of ${n}`);
  return value;
}

function size(n: bigint): bigint {
  return n < 0n ? -n : n;
}

/** |double − value| as a share of the value, in units of 10^-18. */
function errorShare(x: Surd): bigint {
  const value = timesTenToSixty(x);
  if (value === 0n) return 0n;
  return (size(doubleTimesTenToSixty(toNumber(x)) - value) * 10n ** 18n) / size(value);
}

/** p − q√d with p/q a convergent of √d: as near to zero as its digits allow. */
function nearZero(d: bigint, steps: number): Surd {
  // Newton on √d in rationals: each step doubles the digits of p/q that are right.
  let p = 2n;
  let q = 1n;
  for (let step = 0; step < steps; step += 1) [p, q] = [p * p + d * q * q, 2n * p * q];
  return subtract(surd(ratio(p, 1n)), multiply(surd(ratio(q, 1n)), root(d)));
}

describe("the double of an exact number", () => {
  test("agrees with sixty digits to 3·10⁻¹⁵ of the value", () => {
    fc.assert(
      fc.property(surds(4, 500), (x) => {
        expect(errorShare(x)).toBeLessThan(3000n);
      }),
      { numRuns: 500 },
    );
  });

  test.each([1, 2, 3, 4, 5])("loses nothing where terms cancel: p − q√7 after %i steps", (steps) => {
    const x = nearZero(7n, steps);
    expect(toNumber(x)).toBeGreaterThan(0);
    expect(errorShare(x)).toBeLessThan(300n);
  });

  test("√6 − √2 is 4 sin 15°", () => {
    expect(toNumber(subtract(root(6n), root(2n)))).toBeCloseTo(1.035276180410083, 15);
  });

  test("coefficients beyond the range of doubles do not overflow", () => {
    const huge = ratio(10n ** 400n, 1n);
    const x = multiply(surd(huge), add(root(2n), root(3n)));
    expect(toNumber(multiply(x, surd(ratio(1n, 10n ** 400n))))).toBeCloseTo(Math.SQRT2 + Math.sqrt(3), 14);
    const quotient = add(surd(ratio(10n ** 400n + 1n, 10n ** 400n)), multiply(surd(ratio(1n, 10n ** 400n)), root(2n)));
    expect(toNumber(quotient)).toBe(1);
  });

  test("zero is 0", () => {
    expect(Object.is(toNumber(zero), 0)).toBe(true);
  });
});

describe("the sign of an exact number", () => {
  test("agrees with sixty digits", () => {
    fc.assert(
      fc.property(surds(4, 500), (x) => {
        const value = timesTenToSixty(x);
        if (size(value) > 10n) expect(sign(x)).toBe(value > 0n ? 1 : -1);
      }),
      { numRuns: 500 },
    );
  });

  test.each([1, 2, 3, 4, 5, 6])("is found for p − q√2 and its opposite after %i steps", (steps) => {
    const x = nearZero(2n, steps);
    expect(sign(x)).toBe(1);
    expect(sign(subtract(zero, x))).toBe(-1);
  });

  test("of √10 + √17 − √5 − √26 and of zero", () => {
    const sum = subtract(subtract(add(root(10n), root(17n)), root(5n)), root(26n));
    expect(sign(sum)).toBe(Math.sqrt(10) + Math.sqrt(17) - Math.sqrt(5) - Math.sqrt(26) > 0 ? 1 : -1);
    expect(sign(zero)).toBe(0);
  });
});
