// The exact face of the solver's answers against a general-purpose algebra library: @cortex-js/compute-engine 0.140, at 50 digits.
import { ComputeEngine } from "@cortex-js/compute-engine";
import { describe, expect, it } from "vitest";
import { solve } from "../../solver/index.ts";
import { opposite, problemOf } from "../solver/set-ups.ts";

const engine = new ComputeEngine();
engine.precision = 50;
const STEPS = [0, 15, 30, 45, 60, 75, 90];
const PAIRS = STEPS.flatMap((a) => STEPS.map((b): [number, number] => [a, b])).filter(([a, b]) => (a + b) % 180 !== 0);

/** mg cos(other) / sin(α + β) by the library, in multiples of the weight, as a double. */
function theirs(other: number, a: number, b: number): number {
  return Number(
    engine
      .expr(["Divide", ["Cos", ["Degrees", other]], ["Sin", ["Degrees", a + b]]])
      .N()
      .toString(),
  );
}

/** The exact terms added up as doubles. */
function total(terms: readonly { readonly coefficient: { valueOf(): number }; readonly radicand: bigint }[]): number {
  return terms.reduce((sum, t) => sum + t.coefficient.valueOf() * Math.sqrt(Number(t.radicand)), 0);
}

describe("all pairs of multiples of 15° on opposite sides", () => {
  it.each(PAIRS)("%i° and %i°: both answers have an exact multiple of the weight, and it is the library's", (a, b) => {
    const { kind, answers } = solve(problemOf({ ropes: opposite(a, b) }));
    expect(kind).toBe("taut");
    [b, a].forEach((other, i) => {
      const perWeight = answers[i]?.exact?.perWeight;
      expect(perWeight).not.toBeNull();
      expect(perWeight).toBeDefined();
      expect(total(perWeight?.terms ?? [])).toBeCloseTo(theirs(other, a, b), 13);
      // The decimal face is the same number times the weight.
      expect(answers[i]?.decimal).toBeCloseTo(theirs(other, a, b) * 4.2 * 9.8, 11);
    });
  });
});
