// The cosine of the angle between two directions, as sines and cosines of sums of acute angles: checked against plain degrees.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decimal } from "../../solver/algebra/evaluate.ts";
import type { AngleValue } from "../../solver/algebra/evaluate.ts";
import { axisDirection, cosineBetween, degreesOfTurned, quarterTurn } from "../../solver/algebra/turned.ts";
import type { Turned } from "../../solver/algebra/turned.ts";
import { rational } from "../../shared/exact/index.ts";
import { cosineOf, exactCosine, exactSine, sineOf } from "../../shared/exact/index.ts";

const angleOf = (degrees: string): AngleValue => {
  const exact = rational(degrees);
  return {
    degrees: exact,
    radians: (exact.valueOf() * Math.PI) / 180,
    sine: { decimal: sineOf(exact), exact: exactSine(exact) },
    cosine: { decimal: cosineOf(exact), exact: exactCosine(exact) },
  };
};

/** A direction at so many whole degrees anticlockwise from the right, its acute angle under a letter. */
function direction(degrees: number, letter: string): { turned: Turned; acute: AngleValue } {
  const whole = ((degrees % 360) + 360) % 360;
  const side = whole % 180 === 90 ? 0 : whole < 90 || whole > 270 ? 1 : -1;
  const rise = whole % 180 === 0 ? 0 : whole < 180 ? 1 : -1;
  const acute = Math.min(whole % 180, 180 - (whole % 180));
  const turned: Turned = {
    heading: {
      degrees: whole > 180 ? whole - 360 : whole,
      side,
      rise,
      angle: side !== 0 && rise !== 0 ? letter : "",
    },
    quarters: 0,
  };
  return { turned, acute: angleOf(String(acute)) };
}

const HALF = ["straight", angleOf("180")] as const;

describe("the cosine between two directions", () => {
  const rows: readonly [string, number, number, string][] = [
    ["the weight along a slope of 25°", 25, -90, "-sin alpha"],
    ["the weight across it", 115, -90, "-sin alpha"],
    ["a pull up the slope along the slope", 25, 25, "+1"],
    ["the normal along the slope", 25, 115, "0"],
    ["a pull at 65° along a slope of 25°", 25, 65, "+cos beta-alpha"],
    ["a push to the right along a slope that rises to the left", 155, 0, "-cos alpha"],
    ["a pull at 100° from a slope at 20°", 20, 120, "-cos alpha+beta"],
    ["two directions that are at right angles by their sum", 30, 120, "0"],
  ];
  it.each(rows)("%s", (_, from, to, expected) => {
    const a = direction(from, "alpha");
    const b = direction(to, "beta");
    const angles = new Map([HALF, ["alpha", a.acute] as const, ["beta", b.acute] as const]);
    const { sign, trig } = cosineBetween(a.turned, b.turned, angles);
    const letters = trig?.angle.map((p, i) => (p.sign < 0 ? "-" : i > 0 ? "+" : "") + p.id).join("") ?? "1";
    const shown = sign === 0 ? "0" : `${sign > 0 ? "+" : "-"}${trig === null ? "1" : `${trig.fn} ${letters}`}`;
    expect(shown).toBe(expected);
  });

  it("is the cosine of the difference of their degrees, with a positive factor, for any two and any quarter turns", () => {
    const whole = fc.integer({ min: -720, max: 720 });
    const quarters = fc.constantFrom(0 as const, 1 as const, 2 as const, 3 as const);
    fc.assert(
      fc.property(whole, whole, quarters, (from, to, turns) => {
        const a = direction(from, "alpha");
        const b = direction(to, "beta");
        const toward = turns === 0 ? b.turned : quarterTurn(b.turned, turns);
        const angles = new Map([HALF, ["alpha", a.acute] as const, ["beta", b.acute] as const]);
        const cosine = cosineBetween(a.turned, toward, angles);
        const expected = Math.cos(((degreesOfTurned(toward) - degreesOfTurned(a.turned)) * Math.PI) / 180);
        const factor =
          cosine.trig === null
            ? Math.abs(cosine.sign)
            : decimal({ kind: "trig", ...cosine.trig }, { symbols: new Map(), angles });
        expect(factor).toBeGreaterThanOrEqual(0);
        expect(cosine.sign * factor).toBeCloseTo(expected, 12);
        expect(cosine.decimal).toBeCloseTo(expected, 12);
      }),
      { numRuns: 3000 },
    );
  });

  it("knows the ground's own axes", () => {
    expect([0, 1].map((axis) => degreesOfTurned(axisDirection(axis === 0 ? 0 : 1)))).toEqual([0, 90]);
  });
});
