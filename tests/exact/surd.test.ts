import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  add,
  asRational,
  divide,
  equal,
  ExactError,
  invert,
  isRational,
  isZero,
  multiply,
  negate,
  one,
  ratio,
  rational,
  squareRoot,
  subtract,
  surd,
  zero,
} from "../../shared/exact/index.ts";
import type { Surd } from "../../shared/exact/index.ts";
import { rationals, surds, surdsButZero } from "../arbitraries/exact.ts";

function root(n: bigint): Surd {
  const value = squareRoot(ratio(n, 1n));
  if (value === null) throw new Error(`no root of ${n}`);
  return value;
}

function text(x: Surd): string {
  return x.terms.map(({ coefficient, radicand }) => `${coefficient.toFraction()}√${radicand}`).join(" ");
}

function isNormal(x: Surd): boolean {
  return x.terms.every(({ coefficient, radicand }, index) => {
    const before = x.terms[index - 1];
    const squareFree = [2n, 3n, 5n, 7n, 11n, 13n].every((p) => radicand % (p * p) !== 0n);
    return coefficient.n > 0n && radicand >= 1n && squareFree && (before === undefined || before.radicand < radicand);
  });
}

describe("the numbers with roots are a field", () => {
  test("addition: associative, commutative, 0, opposite", () => {
    fc.assert(
      fc.property(surds(), surds(), surds(), (x, y, z) => {
        expect(equal(add(add(x, y), z), add(x, add(y, z)))).toBe(true);
        expect(equal(add(x, y), add(y, x))).toBe(true);
        expect(equal(add(x, zero), x)).toBe(true);
        expect(isZero(add(x, negate(x)))).toBe(true);
        expect(equal(subtract(x, y), add(x, negate(y)))).toBe(true);
      }),
    );
  });

  test("multiplication: associative, commutative, 1, distributive", () => {
    fc.assert(
      fc.property(surds(), surds(), surds(), (x, y, z) => {
        expect(equal(multiply(multiply(x, y), z), multiply(x, multiply(y, z)))).toBe(true);
        expect(equal(multiply(x, y), multiply(y, x))).toBe(true);
        expect(equal(multiply(x, one), x)).toBe(true);
        expect(equal(multiply(x, add(y, z)), add(multiply(x, y), multiply(x, z)))).toBe(true);
      }),
    );
  });

  test("division: every number but 0 has an inverse", () => {
    fc.assert(
      fc.property(surds(), surdsButZero(), (x, y) => {
        expect(equal(multiply(y, invert(y)), one)).toBe(true);
        expect(equal(multiply(divide(x, y), y), x)).toBe(true);
      }),
    );
  });

  test("a product is zero only where a factor is", () => {
    fc.assert(fc.property(surdsButZero(), surdsButZero(), (x, y) => !isZero(multiply(x, y))));
  });

  test("every result is in normal form", () => {
    fc.assert(
      fc.property(surds(), surdsButZero(), (x, y) =>
        [add(x, y), subtract(x, y), multiply(x, y), divide(x, y), negate(x)].every(isNormal),
      ),
    );
  });

  test("an inverse of five terms over four primes", () => {
    const x = [root(2n), root(3n), root(5n), root(7n), root(30n)].reduce(add, zero);
    expect(equal(multiply(x, invert(x)), one)).toBe(true);
  });

  test("0 has no inverse", () => {
    expect(() => invert(zero)).toThrow(ExactError);
    expect(() => divide(one, subtract(root(8n), multiply(surd(rational(2n)), root(2n))))).toThrow(ExactError);
  });
});

describe("normal form as a person writes it", () => {
  test("2/(√6 − √2) is (√2 + √6)/2", () => {
    expect(text(divide(surd(rational(2n)), subtract(root(6n), root(2n))))).toBe("1/2√2 1/2√6");
  });
  test("√(8/9) is (2/3)√2", () => {
    const value = squareRoot(rational("8/9"));
    expect(value === null ? null : text(value)).toBe("2/3√2");
  });
  test("√6·√10 is 2√15", () => {
    expect(text(multiply(root(6n), root(10n)))).toBe("2√15");
  });
  test("(√2 + √3)(√3 − √2) is 1, a rational", () => {
    const product = multiply(add(root(2n), root(3n)), subtract(root(3n), root(2n)));
    expect(text(product)).toBe("1√1");
    expect(isRational(product)).toBe(true);
    expect(asRational(product)?.toFraction()).toBe("1");
  });
  test("√2 is not a rational, 0 is", () => {
    expect(asRational(root(2n))).toBeNull();
    expect(asRational(zero)?.toFraction()).toBe("0");
    expect(zero.terms).toEqual([]);
  });
});

describe("square roots of rationals", () => {
  test("the square of a root is what was given", () => {
    fc.assert(
      fc.property(rationals(100_000), (value) => {
        const positive = value.abs();
        const found = squareRoot(positive);
        expect(found).not.toBeNull();
        if (found !== null) expect(equal(multiply(found, found), surd(positive))).toBe(true);
      }),
    );
  });
  test("the root of a square is rational however large", () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 1n, max: 10n ** 40n }), (n) => {
        const found = squareRoot(ratio(n * n, 49n));
        expect(found !== null && equal(found, surd(ratio(n, 7n)))).toBe(true);
      }),
    );
  });
  test.each([
    ["the square of a large prime times 2: the rest is a square", 2n * 1_000_003n ** 2n, "1000003√2"],
    ["the square of a prime beyond the bound times another: not settled", 1_000_003n ** 2n * 1_000_033n, null],
    ["a prime a little above a million", 1_000_003n, "1√1000003"],
    ["the square of a prime just below the bound times 3", 3n * 32_749n ** 2n, "32749√3"],
    ["the square of 9973 times 6", 6n * 9973n ** 2n, "9973√6"],
    ["1e12 + 39, a prime", 10n ** 12n + 39n, "1√1000000000039"],
    ["2·3·5·… to 43 times 4, beyond doubles", 13_082_761_331_670_030n * 4n, "2√13082761331670030"],
    ["a product of three primes beyond the bound: not settled", 1_000_003n * 1_000_033n * 1_000_037n, null],
  ])("%s", (_, n, expected) => {
    const found = squareRoot(ratio(n, 1n));
    expect(found === null ? null : text(found)).toBe(expected);
  });
  test("a negative number has none", () => {
    expect(() => squareRoot(rational("-1"))).toThrow(ExactError);
  });
});
