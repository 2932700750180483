/**
 * Exact factors against their published definitions, and conversions against another program's units.
 * Sources: the international yard and pound agreement of 1959 (1 yd = 0.9144 m, 1 lb = 0.45359237 kg); the 3rd General
 * Conference on Weights and Measures, 1901 (9.80665 m/s²); NIST Special Publication 811 (2008), Appendix B.8, whose
 * seven-digit factors are from memory: lbf 4.448 222 N, slug 14.593 90 kg, ft/s² 3.048 E-01 m/s².
 */
import fc from "fast-check";
import { unit } from "mathjs";
import { describe, expect, test } from "vitest";
import { rational, rationalToNumber, toDecimalText } from "../../shared/exact/index.ts";
import { unitNames } from "../../shared/format/index.ts";
import type { Dimension, UnitSystem } from "../../shared/format/index.ts";
import { converted, convertedDecimal } from "../../shared/format/units.ts";
import { LIMITS } from "../../shared/problem/index.ts";

const one = rational("1");
const dimensions: readonly Dimension[] = ["force", "mass", "acceleration", "length"];

describe("one unit of pound-force and foot in SI units", () => {
  test.each([
    ["force", "4.4482216152605"],
    ["length", "0.3048"],
    ["acceleration", "0.3048"],
  ] as const)("of %s is exactly %s", (dimension, value) => {
    expect(toDecimalText(converted(dimension, one, "lbf-ft", "SI"))).toBe(value);
  });

  test("of mass is the weight of a pound under standard gravity over a foot per second squared", () => {
    const slug = converted("mass", one, "lbf-ft", "SI");
    // 0.45359237 · 9.80665 / 0.3048, multiplied out by hand: nothing of the program is in it.
    expect([slug.n, slug.d]).toEqual([8896443230521n, 609600000000n]);
    expect(rationalToNumber(slug).toFixed(5)).toBe("14.59390");
  });

  test("a slug under so many feet per second squared weighs so many pound-force: no factor is between them", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), fc.integer({ min: 1, max: 10_000 }), (mass, gravity) => {
        const kilograms = converted("mass", rational(`${mass}/7`), "lbf-ft", "SI");
        const acceleration = converted("acceleration", rational(`${gravity}/11`), "lbf-ft", "SI");
        const pounds = converted("force", kilograms.mul(acceleration), "SI", "lbf-ft");
        expect(pounds.toFraction()).toBe(rational(`${mass * gravity}/77`).toFraction());
      }),
    );
  });
});

describe("conversion", () => {
  const numbers = fc
    .tuple(fc.integer({ min: -1_000_000, max: 1_000_000 }), fc.integer({ min: 1, max: 1000 }))
    .map(([n, d]) => rational(`${n}/${d}`));

  test("there and back gives the same number, exactly; within a system nothing changes", () => {
    fc.assert(
      fc.property(numbers, fc.constantFrom(...dimensions), (value, dimension) => {
        const there = converted(dimension, value, "lbf-ft", "SI");
        expect(converted(dimension, there, "SI", "lbf-ft")).toEqual(value);
        expect(converted(dimension, value, "SI", "SI")).toEqual(value);
        expect(converted(dimension, value, "lbf-ft", "lbf-ft")).toEqual(value);
      }),
    );
  });

  // mathjs knows no slug; a pound-force over a foot per second squared is what it means.
  const judged: Readonly<Record<Dimension, Readonly<Record<UnitSystem, string>>>> = {
    force: { SI: "N", "lbf-ft": "lbf" },
    mass: { SI: "kg", "lbf-ft": "lbf s^2 / ft" },
    acceleration: { SI: "m/s^2", "lbf-ft": "ft/s^2" },
    length: { SI: "m", "lbf-ft": "ft" },
  };

  test("agrees with mathjs to the last digits of a double", () => {
    fc.assert(
      fc.property(numbers, fc.constantFrom(...dimensions), fc.boolean(), (value, dimension, back) => {
        const [from, to]: readonly [UnitSystem, UnitSystem] = back ? ["SI", "lbf-ft"] : ["lbf-ft", "SI"];
        const judge = unit(rationalToNumber(value), judged[dimension][from]).toNumber(judged[dimension][to]);
        const tolerance = Math.abs(judge) * 1e-14;
        expect(Math.abs(rationalToNumber(converted(dimension, value, from, to)) - judge)).toBeLessThanOrEqual(
          tolerance,
        );
        const decimal = convertedDecimal(dimension, rationalToNumber(value), from, to);
        expect(Math.abs(decimal - judge)).toBeLessThanOrEqual(tolerance);
      }),
    );
  });
});

test("the limits of a problem's numbers name the same units", () => {
  for (const system of ["SI", "lbf-ft"] as const) {
    const names = unitNames[system];
    const told = [
      LIMITS.push,
      LIMITS.weight,
      LIMITS.mass,
      LIMITS.gravity,
      LIMITS.accelerationX,
      LIMITS.length,
      LIMITS.placeX,
    ];
    const { force, mass, acceleration, length } = names;
    expect(told.map((limit) => limit.unit[system])).toEqual([
      force,
      force,
      mass,
      acceleration,
      acceleration,
      length,
      length,
    ]);
  }
});
