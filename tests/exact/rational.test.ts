import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  compareRationals,
  equalRationals,
  ExactError,
  isZeroRational,
  parseRational,
  ratio,
  rational,
  rationalToNumber,
  toDecimalText,
  toExactText,
} from "../../shared/exact/index.ts";
import { rationals } from "../arbitraries/exact.ts";

describe("a number written in digits is read exactly", () => {
  test.each([
    ["4.2", 21n, 5n],
    ["-3/4", -3n, 4n],
    ["1e-3", 1n, 1000n],
    ["9.80665", 196133n, 20000n],
    ["+6/4", 3n, 2n],
    [".5", 1n, 2n],
    ["5.", 5n, 1n],
    ["-0", 0n, 1n],
    ["007", 7n, 1n],
    ["2.5E+2", 250n, 1n],
    ["0.1e-1", 1n, 100n],
    ["1e30", 10n ** 30n, 1n],
    ["1e-30", 1n, 10n ** 30n],
    ["123456789012345678901234567890.5", 246913578024691357802469135781n, 2n],
  ])("%s", (text, numerator, denominator) => {
    expect(equalRationals(rational(text), ratio(numerator, denominator))).toBe(true);
  });

  test("the sum of 0.1 and 0.2 is 0.3", () => {
    expect(equalRationals(rational("0.1").add(rational("0.2")), rational("0.3"))).toBe(true);
  });
});

describe("everything else is refused with the exact core's own error", () => {
  test.each([
    "",
    " ",
    "4,2",
    " 4",
    "4 ",
    "4\n",
    "--4",
    "1/0",
    "1/2/3",
    "1.5/2",
    "1/-2",
    "1e31",
    "1e-31",
    "1e9999",
    "1e",
    "e5",
    ".",
    "+",
    "0x10",
    "NaN",
    "Infinity",
    "1_000",
    "９",
    "−4",
    "0.(3)",
    "1".repeat(61),
    "1".repeat(100_000),
  ])("%j", (text) => {
    expect(parseRational(text)).toBeNull();
    expect(() => rational(text)).toThrow(ExactError);
  });

  test("a JavaScript number is never let in, in whatever type it hides", () => {
    const smuggled = 0.1 as unknown as string;
    expect(() => rational(smuggled)).toThrow(ExactError);
  });

  test("the error says what was found, cut short, and what is accepted", () => {
    const read = (): unknown => rational("x".repeat(500));
    expect(read).toThrow(/^"x{40}…" is not accepted here; accepted is a number like 4\.2, -3\/4 or 1e-3/);
  });

  test("no text makes the reader throw", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 80 }), (text) => {
        expect(() => parseRational(text)).not.toThrow();
      }),
    );
  });

  test("a denominator of 0 is refused", () => {
    expect(() => ratio(1n, 0n)).toThrow(ExactError);
  });
});

describe("text, order and doubles of a rational", () => {
  test.each([
    ["4.20", "4.2"],
    ["-0.375", "-0.375"],
    ["1000", "1000"],
    ["1e-5", "0.00001"],
    ["0", "0"],
    ["7/8", "0.875"],
    ["1/3", null],
    ["1/7", null],
  ])("the shortest decimal text of %s is %s", (text, shortest) => {
    expect(toDecimalText(rational(text))).toBe(shortest);
  });

  test("exact text reads back to the same value", () => {
    fc.assert(fc.property(rationals(1_000_000), (value) => equalRationals(rational(toExactText(value)), value)));
  });

  test("order is that of the cross products, and zero is zero", () => {
    expect(compareRationals(rational("1/3"), rational("0.333333333333333333"))).toBe(1);
    expect(compareRationals(rational("-1/3"), rational("-0.333333333333333333"))).toBe(-1);
    expect(compareRationals(rational("4.20"), rational("21/5"))).toBe(0);
    expect(isZeroRational(rational("-0.0"))).toBe(true);
    expect(isZeroRational(rational("1e-30"))).toBe(false);
  });

  test("the double of a decimal text is the one JavaScript reads from that text", () => {
    const decimals = fc
      .tuple(fc.bigInt({ min: -(10n ** 25n), max: 10n ** 25n }), fc.integer({ min: -30, max: 30 }))
      .map(([digits, power]) => `${digits}e${power}`);
    fc.assert(fc.property(decimals, (text) => rationalToNumber(rational(text)) === Number(text) + 0));
  });

  test("a hair beside the middle between two doubles decides the rounding", () => {
    const middle = 2n ** 53n + 1n;
    const hair = 2n ** 40n;
    expect(rationalToNumber(ratio(middle, 1n))).toBe(2 ** 53);
    expect(rationalToNumber(ratio(middle * hair + 1n, hair))).toBe(2 ** 53 + 2);
    expect(rationalToNumber(ratio(-middle * hair - 1n, hair))).toBe(-(2 ** 53) - 2);
    expect(rationalToNumber(ratio(middle * hair - 1n, hair))).toBe(2 ** 53);
  });

  test("numerators and denominators beyond the range of doubles still give the nearest double", () => {
    const huge = 10n ** 400n;
    expect(rationalToNumber(ratio(3n * huge, 7n * huge + 1n))).toBe(3 / 7);
    expect(rationalToNumber(ratio(huge, 1n))).toBe(Number.POSITIVE_INFINITY);
    expect(rationalToNumber(ratio(-1n, huge))).toBe(-0);
  });
});
