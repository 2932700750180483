import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  add,
  cosineOf,
  equal,
  exactCosine,
  exactSine,
  multiply,
  one,
  rational,
  sineOf,
  toNumber,
} from "../../shared/exact/index.ts";
import type { Surd } from "../../shared/exact/index.ts";

function text(x: Surd | null): string | null {
  return x === null ? null : x.terms.map((t) => `${t.coefficient.toFraction()}√${t.radicand}`).join(" ");
}

describe("exact sines and cosines", () => {
  test.each([
    [0, "", "1√1"],
    [15, "-1/4√2 1/4√6", "1/4√2 1/4√6"],
    [30, "1/2√1", "1/2√3"],
    [45, "1/2√2", "1/2√2"],
    [60, "1/2√3", "1/2√1"],
    [75, "1/4√2 1/4√6", "-1/4√2 1/4√6"],
    [90, "1√1", ""],
    [105, "1/4√2 1/4√6", "1/4√2 -1/4√6"],
    [180, "", "-1√1"],
    [210, "-1/2√1", "-1/2√3"],
    [270, "-1√1", ""],
    [345, "1/4√2 -1/4√6", "1/4√2 1/4√6"],
    [-30, "-1/2√1", "1/2√3"],
    [-360, "", "1√1"],
    [750, "1/2√1", "1/2√3"],
    [-1065, "-1/4√2 1/4√6", "1/4√2 1/4√6"],
  ])("of %i°", (degrees, sine, cosine) => {
    expect(text(exactSine(rational(BigInt(degrees))))).toBe(sine);
    expect(text(exactCosine(rational(BigInt(degrees))))).toBe(cosine);
  });

  test.each(["1", "40", "22.5", "7.5", "15.0001", "-44"])("there is none of %s°", (degrees) => {
    expect(exactSine(rational(degrees))).toBeNull();
    expect(exactCosine(rational(degrees))).toBeNull();
  });

  test("squares of sine and cosine sum to 1, and the sum rule holds", () => {
    for (let a = -360; a <= 360; a += 15) {
      const [sa, ca] = [exactSine(rational(BigInt(a))), exactCosine(rational(BigInt(a)))];
      if (sa === null || ca === null) throw new Error(`no exact sine of ${a}`);
      expect(equal(add(multiply(sa, sa), multiply(ca, ca)), one)).toBe(true);
      for (let b = 0; b < 360; b += 15) {
        const [sb, cb] = [exactSine(rational(BigInt(b))), exactCosine(rational(BigInt(b)))];
        const sum = exactSine(rational(BigInt(a + b)));
        if (sb === null || cb === null || sum === null) throw new Error(`no exact sine of ${b}`);
        expect(equal(add(multiply(sa, cb), multiply(ca, sb)), sum)).toBe(true);
      }
    }
  });
});

describe("sines and cosines as doubles", () => {
  test.each([
    ["0", 0, 1],
    ["30", 0.5, Math.sqrt(3) / 2],
    ["90", 1, 0],
    ["150", 0.5, -Math.sqrt(3) / 2],
    ["180", 0, -1],
    ["270", -1, 0],
    ["-90", -1, 0],
    ["360", 0, 1],
    ["-180", 0, -1],
    ["300", -Math.sqrt(3) / 2, 0.5],
  ])("of %s° are right, zeros and halves exactly", (degrees, sine, cosine) => {
    expect(Object.is(sineOf(rational(degrees)), sine) || Math.abs(sineOf(rational(degrees)) - sine) < 2e-16).toBe(true);
    expect(Math.abs(cosineOf(rational(degrees)) - cosine)).toBeLessThan(2e-16);
    if (sine === 0) expect(Object.is(sineOf(rational(degrees)), 0)).toBe(true);
    if (cosine === 0) expect(Object.is(cosineOf(rational(degrees)), 0)).toBe(true);
    if (Math.abs(sine) === 0.5) expect(sineOf(rational(degrees))).toBe(sine);
    if (Math.abs(cosine) === 0.5) expect(cosineOf(rational(degrees))).toBe(cosine);
  });

  test("agree with the exact face at every multiple of 15°", () => {
    for (let degrees = -720; degrees <= 720; degrees += 15) {
      const exact = exactSine(rational(BigInt(degrees)));
      expect(exact === null ? NaN : toNumber(exact)).toBe(sineOf(rational(BigInt(degrees))));
    }
  });

  test("agree with the library's functions, and sin(90° − a) is cos a to the last bit", () => {
    const tenths = fc.integer({ min: -3600, max: 3600 });
    fc.assert(
      fc.property(tenths, (n) => {
        const angle = rational(`${n}/10`);
        expect(Math.abs(sineOf(angle) - Math.sin((n * Math.PI) / 1800))).toBeLessThan(2e-15);
        expect(Math.abs(cosineOf(angle) - Math.cos((n * Math.PI) / 1800))).toBeLessThan(2e-15);
        expect(sineOf(rational(90n).sub(angle))).toBe(cosineOf(angle));
        expect(sineOf(angle.neg()) + sineOf(angle)).toBe(0);
      }),
    );
  });

  test("a thousandth of a degree beside a right angle keeps its digits", () => {
    // cos 89.999° = sin 0.001°, whose series is x − x³/6 with x = π/180000.
    const x = Math.PI / 180_000;
    expect(cosineOf(rational("89.999"))).toBe(x - (x * x * x) / 6);
    expect(cosineOf(rational("90.001"))).toBe(-(x - (x * x * x) / 6));
  });
});
