/**
 * Normal gravity against published values. Source: H. Moritz, Geodetic Reference System 1980, Bulletin Géodésique
 * 62:3 (1988): 9.7803267715 m/s² at the equator and 9.8321863685 m/s² at the poles (the tables of the International
 * Association of Geodesy print the same).
 */
import { describe, expect, test } from "vitest";
import { rational, rationalToNumber, toDecimalText } from "../../shared/exact/index.ts";
import { gravityAtLatitude, gravityChoices } from "../../shared/problem/index.ts";

function at(latitude: string): string | null {
  return toDecimalText(gravityAtLatitude(rational(latitude)));
}

describe("gravity by latitude", () => {
  test("is the published value at the equator and at both poles, to its five decimals", () => {
    expect(at("0")).toBe("9.78033");
    expect(at("90")).toBe("9.83219");
    expect(at("-90")).toBe("9.83219");
  });

  test("agrees at every degree with the closed form in the axes of the ellipsoid", () => {
    // (a γe cos²φ + b γp sin²φ) / √(a² cos²φ + b² sin²φ): the same field from other constants of the same source, among
    // them the gravity at the pole, which the function does not use.
    const [a, b, equator, pole] = [6378137, 6356752.3141, 9.7803267715, 9.8321863685];
    for (let latitude = -90; latitude <= 90; latitude += 1) {
      const [c, s] = [Math.cos((latitude * Math.PI) / 180) ** 2, Math.sin((latitude * Math.PI) / 180) ** 2];
      const expected = (a * equator * c + b * pole * s) / Math.sqrt(a * a * c + b * b * s);
      const value = rationalToNumber(gravityAtLatitude(rational(BigInt(latitude))));
      expect(Math.abs(value - expected)).toBeLessThan(0.5e-5 + 1e-9);
    }
  });

  test("is the same north and south, and grows towards the pole", () => {
    expect(at("47.5")).toBe(at("-47.5"));
    let before = 0;
    for (let latitude = 0; latitude <= 90; latitude += 5) {
      const value = rationalToNumber(gravityAtLatitude(rational(BigInt(latitude))));
      expect(value).toBeGreaterThan(before);
      before = value;
    }
  });

  test.each(["90.1", "-91", "1000"])("there is no latitude of %s degrees", (latitude) => {
    expect(() => gravityAtLatitude(rational(latitude))).toThrow(RangeError);
  });
});

describe("the list of values of g", () => {
  test("holds the six values, the standard one exact, each with its source", () => {
    expect(gravityChoices.map((choice) => toDecimalText(choice.value))).toEqual([
      "10",
      "9.8",
      "9.81",
      "9.80665",
      "1.62",
      "3.73",
    ]);
    expect(gravityChoices.every((choice) => choice.source.length > 10 && choice.label.length > 3)).toBe(true);
    expect(new Set(gravityChoices.map((choice) => choice.id)).size).toBe(gravityChoices.length);
  });
});
