// The numbers of six settings, worked out beforehand with a calculator and line by line on a board: 4.2 kg, g = 9.8 m/s².
// Working lines keep two figures more than the answers.
import { describe, expect, it } from "vitest";
import { derive } from "../../solver/index.ts";
import { exported } from "./exported.ts";
import { opposite, problemOf } from "./set-ups.ts";
import type { SetUp } from "./set-ups.ts";

const A = { ropes: opposite(65, 40) };
const B = { ropes: opposite(45, 45) };
const C = { ropes: opposite(90, 40) };
const D = { ropes: [160, 140] };
const E = { ropes: opposite(65, 40), ax: 12 };
const F = { ropes: opposite(65, 40), ay: -9.8 };

const LINES: readonly (readonly [string, SetUp, string, string])[] = [
  ["65/40: the weight", A, "number.mg", "mg = 4.2 kg · 9.8 m/s² = 41.16 N"],
  ["65/40: the bracket", A, "number.T1.factor", "sin 65° + cos 65° tan 40° ≈ 1.26093"],
  ["65/40: T2 is 0.5517 of T1", A, "number.T2.factor", "cos 65°/cos 40° ≈ 0.55169"],
  ["65/40: T1", A, "answer.T1", "T1 ≈ 32.6 N"],
  ["65/40: T2", A, "answer.T2", "T2 ≈ 18.0 N"],
  ["65/40: upwards", A, "check.vertical", "T1 sin 65° + T2 sin 40° ≈ 29.584 N + 11.576 N ≈ 41.160 N"],
  ["65/40: sideways", A, "check.horizontal", "T2 cos 40° − T1 cos 65° ≈ 13.795 N − 13.795 N ≈ 0"],
  ["65/40: sine rule", A, "check.sine-rule", "T1/cos 40° = T2/cos 65° = mg/sin 105°"],
  ["45/45: what is divided by", B, "eliminate.divide", "T = mg/(2 sin 45°)"],
  ["45/45: the answer in letters", B, "letters.T.start", "T = mg/(2 sin α)"],
  ["45/45: the general form beside it", B, "letters.T1.general", "T1 = (mg cos β)/(sin(α + β))"],
  ["45/45: each holds half", B, "check.vertical", "T1 sin 45° + T2 sin 45° = 20.58 N + 20.58 N = 41.16 N"],
  ["90/40: no part of rope 1 sideways", C, "horizontal.given", "T2x = 0"],
  ["90/40: upwards", C, "vertical.substituted", "T1 + T2 sin 40° − mg = 0"],
  ["90/40: the zero goes", C, "settle.T1.zero", "T1 − mg = 0"],
  ["20/40 on one side: two pulls leftward", D, "horizontal.given", "−T1x − T2x = 0"],
  ["20/40 on one side: cannot be", D, "vertical.empty", "−mg = 0"],
  ["20/40 on one side: T1 would push", D, "number.T1", "T1 ≈ 41.16 N/(−0.446476) ≈ −92.189 N"],
  ["20/40 on one side: T2 with it", D, "number.T2", "T2 ≈ 92.1887 N · 1.22668 ≈ 113.09 N"],
  ["20/40 on one side: rope 2 alone", D, "alone.answer.T2", "T2 ≈ 41.2 N"],
  ["20/40 on one side: length of rope 1", D, "alone.length.T1", "L1 ≈ 2.9238 h"],
  ["20/40 on one side: what it bridges", D, "alone.length.distance", "d ≈ √((1.5557 h)² + (1.5557 h)²) ≈ 2.2001 h"],
  ["cart: sideways", E, "horizontal.given", "T2x − T1x = m · 12 m/s²"],
  ["cart: m ax", E, "number.max", "m ax = 4.2 kg · 12 m/s² = 50.4 N"],
  ["cart: T1 would push", E, "number.T1", "T1 ≈ (−1.1306 N)/1.2609 ≈ −0.89666 N"],
  ["cart: T2 with it", E, "number.T2", "T2 ≈ 50.021 N/0.76604 ≈ 65.298 N"],
  ["cart: rope 2 alone", E, "alone.number.T2", "T2 ≈ √((50.4 N)² + (41.16 N)²) ≈ 65.072 N"],
  ["cart: its direction", E, "alone.free.theta.number", "tan θ ≈ 0.81667"],
  ["cart: 39.2°, not 40°", E, "alone.free.theta.answer", "θ ≈ 39.2°"],
  ["cart: length of rope 1", E, "alone.length.T1", "L1 ≈ 1.1034 h"],
  ["cart: what it bridges", E, "alone.length.distance", "d ≈ √((0.45310 h)² + (0.98405 h)²) ≈ 1.0834 h"],
  ["free fall: −mg on the right", F, "vertical.given", "T1y + T2y − mg = −mg"],
  ["free fall: upward parts", F, "vertical.substituted", "T1 sin 65° + T2 sin 40° = 0"],
  ["free fall: each is zero", F, "zero.T1", "T1 = 0"],
];

describe("the numbers of the board", () => {
  it.each(LINES)("%s", (_, setUp, id, text) => {
    const lines = derive(problemOf(setUp)).paragraphs.flatMap((p) => p.lines);
    expect(lines.find((l) => l.id === id)?.text()).toBe(text);
  });
});

/** What the check of size says, with its hard spaces made plain. */
const sizeOf = (setUp: SetUp): string =>
  (exported(derive(problemOf(setUp))).paragraphs.find((p) => p.id === "check.size")?.sentences ?? [])
    .join(" ")
    .replaceAll("\u00a0", " ");

describe("what is said of size and share", () => {
  it("at 65/40: 71.9 % and 28.1 % of the weight, 50.7 N together against 41.2 N", () => {
    const said = sizeOf(A);
    expect(said).toContain("rope 1 holds 71.9 % and rope 2 28.1 %");
    expect(said).toContain("50.7 N, come to more than the weight, 41.2 N");
    expect(said).toContain("Rope 1 pulls harder than rope 2: it is the steeper one.");
  });

  it("at 45/45: equally hard, and nothing of a steeper one", () => {
    expect(sizeOf(B)).toContain("Both ropes pull equally hard.");
    expect(sizeOf(B)).not.toContain("steeper one");
  });

  it("at 90/40: together just the weight", () => {
    expect(sizeOf(C)).toContain("come to just the weight, 41.2 N");
  });

  it("in the cart: rope 1 is slack from g / tan 40° = 11.7 m/s² on", () => {
    expect(sizeOf(E)).toContain("Accelerate the support to the right: from 11.7 m/s² on, rope 1 is slack.");
  });
});

describe("the default derivation, line by line", () => {
  it("goes from the law to the result in letters in this order", () => {
    expect(derive(problemOf(A)).paragraphs.flatMap((p) => p.lines.map((l) => l.id))).toEqual([
      ...["vertical.law", "vertical.given", "horizontal.law", "horizontal.given"],
      ...["angle.T1", "angle.T2", "component.T1x", "component.T2x", "component.T1y", "component.T2y"],
      ...["vertical.substituted", "horizontal.substituted"],
      ...["isolate.gather", "isolate.divide", "eliminate.substitute", "eliminate.tangent"],
      ...["eliminate.gather", "eliminate.collect", "eliminate.divide"],
      ...["number.mg", "number.T1.factor", "number.T1", "number.T2.factor", "number.T2", "answer.T1", "answer.T2"],
      ...["check.vertical", "check.horizontal", "check.sine-rule", "check.across"],
      ...["letters.T1.start", "letters.T1.apart", "letters.T1.clear", "letters.T1.joined"],
      ...["letters.T2.start", "letters.T2.put", "letters.T2.cancel", "letters.sideways"],
    ]);
  });
});
