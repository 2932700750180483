import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareRationals, rational, ratio } from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";
import { exactDecimal, toDecimals, toFigures } from "../../shared/format/index.ts";
import type { Printed } from "../../shared/format/index.ts";
import { rationals } from "../arbitraries/exact.ts";

function shown({ digits, negative, exponent }: Printed): string {
  return (negative ? "-" : "") + digits + (exponent === null ? "" : ` x 10^${exponent}`);
}

const finite = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e300, max: 1e300 }),
  fc.double({ noNaN: true, noDefaultInfinity: true, min: -2e6, max: 2e6 }),
  fc.integer({ min: -(10 ** 9), max: 10 ** 9 }).map((n) => n / 1000),
);

/** The shortest decimal of a double, exactly, over the range that the exact core reads. */
function decimalOf(value: number): Rational {
  const [mantissa = "", power = "0"] = value.toExponential().split("e");
  const shift = Number(power);
  const factor = 10n ** BigInt(Math.abs(shift));
  return rational(mantissa).mul(shift < 0 ? ratio(1n, factor) : ratio(factor, 1n));
}

describe("a number to so many significant figures", () => {
  test.each([
    [32.643, 3, "32.6"],
    [18.009, 3, "18.0"],
    [18.009, 5, "18.009"],
    [41.16, 3, "41.2"],
    [9.995, 3, "10.0"],
    [1.005, 3, "1.01"],
    [2.5, 1, "3"],
    [-2.5, 1, "-3"],
    [99.96, 3, "100"],
    [999.6, 3, "1000"],
    [0.09999, 2, "0.10"],
    [1.2, 3, "1.20"],
    [5, 4, "5.000"],
    [0.001, 3, "0.00100"],
    [0.00099999, 3, "0.00100"],
    [0.000999, 3, "9.99 x 10^-4"],
    [123456, 3, "123000"],
    [999499, 3, "999000"],
    [999999, 3, "1.00 x 10^6"],
    [1e6, 3, "1.00 x 10^6"],
    [-6.02214076e23, 4, "-6.022 x 10^23"],
    [5e-324, 2, "5.0 x 10^-324"],
    [0.1 + 0.2, 17, "0.30000000000000004"],
    [0, 3, "0"],
    [-0, 3, "0"],
  ])("%d to %i is %s", (value, figures, text) => {
    expect(shown(toFigures(value, figures))).toBe(text);
  });

  test("says what it is worth, with its sign, and how wide its last figure is", () => {
    expect(toFigures(-32.643, 3)).toEqual({
      digits: "32.6",
      negative: true,
      exponent: null,
      value: -32.6,
      halfUnit: 0.05,
    });
    expect(toFigures(123456, 3)).toMatchObject({ value: 123000, halfUnit: 500 });
    expect(toFigures(4.567e-9, 2)).toMatchObject({ digits: "4.6", exponent: -9, value: 4.6e-9, halfUnit: 5e-11 });
    expect(toFigures(99.96, 3)).toMatchObject({ value: 100, halfUnit: 0.5 });
    expect(toFigures(0, 3)).toEqual({ digits: "0", negative: false, exponent: null, value: 0, halfUnit: 0 });
  });

  test("takes the decimal comma, and groups only when asked", () => {
    expect(toFigures(32.643, 3, { mark: "," }).digits).toBe("32,6");
    expect(toFigures(12345.678, 8).digits).toBe("12345.678");
    expect(toFigures(12345.678, 8, { group: true, mark: "," }).digits).toBe("12\u202F345,678");
    expect(toFigures(12345.678, 8, { mark: "," }).value).toBe(12345.678);
  });

  test("is within half a unit, with as many figures as asked for", () => {
    fc.assert(
      fc.property(finite, fc.integer({ min: 1, max: 17 }), (value, figures) => {
        const printed = toFigures(value, figures);
        expect(printed.digits).toMatch(/^(?:0|[1-9]\d*)(?:\.\d+)?$/);
        expect(Math.abs(printed.value - value)).toBeLessThanOrEqual(
          printed.halfUnit * (1 + 1e-9) + Math.abs(value) * 3e-16,
        );
        expect(Object.is(printed.value, -0)).toBe(false);
        expect(printed.negative).toBe(printed.value < 0);
        if (value === 0) return;
        const size = Math.abs(printed.value);
        expect(printed.exponent === null).toBe(size >= 1e-3 && size < 1e6);
        const significant = printed.digits.replace(".", "").replace(/^0+/, "");
        // Zeros that only hold the place of a whole part may come on top: 123000 to three.
        expect(significant.slice(figures)).toMatch(/^0*$/);
        expect(significant.length).toBeGreaterThanOrEqual(figures);
        if (printed.digits.includes(".")) expect(significant.length).toBe(figures);
      }),
      { numRuns: 3000 },
    );
  });

  test("halves go away from zero, by the decimal that the double stands for", () => {
    const halves = fc.tuple(fc.integer({ min: 10, max: 99_999 }), fc.integer({ min: -6, max: 6 }));
    fc.assert(
      fc.property(halves, ([n, power]) => {
        const figures = String(n).length;
        const printed = toFigures(Number(`${n}5e${power}`), figures);
        expect(printed.value).toBe(Number(`${n + 1}e${power + 1}`));
      }),
    );
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])("%d is refused", (value) => {
    expect(() => toFigures(value, 3)).toThrow(RangeError);
    expect(() => toDecimals(value, 3)).toThrow(RangeError);
  });

  test.each([0, 18, 2.5, -1, Number.NaN])("%d figures are refused", (figures) => {
    expect(() => toFigures(1, figures)).toThrow(RangeError);
  });
});

describe("a number to so many decimals", () => {
  test.each([
    [32.645, 2, "32.65"],
    [1.005, 2, "1.01"],
    [9.996, 2, "10.00"],
    [0.5, 0, "1"],
    [0.49, 0, "0"],
    [-0.5, 0, "-1"],
    [-0.001, 2, "0.00"],
    [0.006, 2, "0.01"],
    [0.0006, 2, "0.00"],
    [0, 2, "0.00"],
    [1234567.891, 1, "1234567.9"],
    [1e21, 1, "1000000000000000000000.0"],
    [1e-7, 7, "0.0000001"],
  ])("%d to %i is %s", (value, decimals, text) => {
    expect(shown(toDecimals(value, decimals))).toBe(text);
    expect(toDecimals(value, decimals).halfUnit).toBe(Number(`5e${-decimals - 1}`));
  });

  test("is the nearest decimal, halves away from zero", () => {
    const values = fc.integer({ min: -(10 ** 9), max: 10 ** 9 }).map((n) => n / 10_000);
    fc.assert(
      fc.property(values, fc.integer({ min: 0, max: 6 }), (value, decimals) => {
        const scale = ratio(10n ** BigInt(decimals), 1n);
        const scaled = decimalOf(value).mul(scale);
        const printed = rational((value < 0 ? "-" : "") + toDecimals(value, decimals).digits).mul(scale);
        const away = printed.sub(scaled);
        const order = compareRationals(away.abs(), ratio(1n, 2n));
        expect(order).toBeLessThanOrEqual(0);
        if (order === 0) expect(compareRationals(printed.abs(), scaled.abs())).toBe(1);
      }),
      { numRuns: 2000 },
    );
  });

  test.each([-1, 18, 0.5])("%d decimals are refused", (decimals) => {
    expect(() => toDecimals(1, decimals)).toThrow(RangeError);
  });
});

describe("an exact number as it was written", () => {
  test.each([
    ["4.2", "4.2"],
    ["9.80665", "9.80665"],
    ["-0.5", "-0.5"],
    ["115", "115"],
    ["4.20", "4.2"],
    ["100000", "100000"],
    ["1000000", "1 x 10^6"],
    ["0.001", "0.001"],
    ["0.00042", "4.2 x 10^-4"],
    ["1e9", "1 x 10^9"],
    ["123456789.012345", "1.23456789012345 x 10^8"],
    ["0", "0"],
    ["-0", "0"],
  ])("%s is %s", (text, expected) => {
    const printed = exactDecimal(rational(text));
    expect(printed === null ? null : shown(printed)).toBe(expected);
    expect(printed?.halfUnit).toBe(0);
    expect(printed?.value).toBe(Number(text) + 0);
  });

  test.each(["1/3", "1.234567890123456", "1e-30/7"])("%s is not", (text) => {
    expect(exactDecimal(text.includes("e") ? ratio(1n, 7n * 10n ** 30n) : rational(text))).toBeNull();
  });

  test("what is printed is the number itself", () => {
    fc.assert(
      fc.property(rationals(10_000), (value) => {
        const printed = exactDecimal(value);
        if (printed === null) return;
        const size = rational(printed.exponent === null ? printed.digits : `${printed.digits}e${printed.exponent}`);
        expect(compareRationals(printed.negative ? size.neg() : size, value)).toBe(0);
      }),
    );
  });
});
