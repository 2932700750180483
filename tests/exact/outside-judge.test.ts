/**
 * The outside judge of the exact field: @cortex-js/compute-engine 0.140, a general-purpose algebra library, on the
 * two-rope answer T1/(m g) = cos β / sin(α + β) at all pairs of multiples of 15°. Its sums of roots are read from its
 * own form, and its decimals are asked for at 50 digits.
 */
import { ComputeEngine } from "@cortex-js/compute-engine";
import { describe, expect, test } from "vitest";
import {
  add,
  divide,
  equal,
  exactCosine,
  exactSine,
  isZero,
  multiply,
  negate,
  rational,
  squareRoot,
  surd,
} from "../../shared/exact/index.ts";
import type { Surd } from "../../shared/exact/index.ts";
import { timesTenToSixty } from "./sixty-digits.ts";

const engine = new ComputeEngine();
engine.precision = 50;

const angles = Array.from({ length: 24 }, (_, step) => 15 * step);

function ours(alpha: number, beta: number): Surd | null {
  const above = exactCosine(rational(BigInt(beta)));
  const below = exactSine(rational(BigInt(alpha + beta)));
  if (above === null || below === null) throw new Error("a multiple of 15° without exact sine");
  return isZero(below) ? null : divide(above, below);
}

function theirs(alpha: number, beta: number): ReturnType<typeof engine.expr> {
  return engine.expr(["Divide", ["Cos", ["Degrees", beta]], ["Sin", ["Degrees", alpha + beta]]]);
}

/** A library's expression in arithmetic and square roots, in our field; null for any other operator. */
function read(json: unknown): Surd | null {
  if (typeof json === "number") return Number.isSafeInteger(json) ? surd(rational(BigInt(json))) : null;
  if (!Array.isArray(json)) return null;
  const [operator, ...operands] = json as readonly unknown[];
  const values = operands.map(read);
  const [first, second] = values;
  if (first === null || first === undefined || values.includes(null)) return null;
  const all = values.filter((value) => value !== null);
  if (operator === "Add") return all.reduce(add);
  if (operator === "Multiply") return all.reduce(multiply);
  if (operator === "Negate") return negate(first);
  if ((operator === "Divide" || operator === "Rational") && second) return divide(first, second);
  if (operator === "Sqrt") {
    const radicand = first.terms[0]?.coefficient;
    return radicand === undefined ? null : squareRoot(radicand);
  }
  return null;
}

describe("T1 = cos β / sin(α + β) in weights, against a general-purpose algebra library", () => {
  test("its decimals at 50 digits agree to 45 at every pair", () => {
    let compared = 0;
    for (const alpha of angles) {
      for (const beta of angles) {
        const exact = ours(alpha, beta);
        if (exact === null) continue;
        const difference = timesTenToSixty(exact) - decimalTimesTenToSixty(theirs(alpha, beta).N().toString());
        expect(difference < 10n ** 15n && difference > -(10n ** 15n), `${alpha}°, ${beta}°`).toBe(true);
        compared += 1;
      }
    }
    expect(compared).toBe(24 * 24 - 48);
  }, 60_000);

  test("its exact form is the same number at every pair", () => {
    let compared = 0;
    for (const alpha of angles) {
      for (const beta of angles) {
        const exact = ours(alpha, beta);
        if (exact === null) continue;
        const form = read(theirs(alpha, beta).evaluate().json);
        if (form === null) continue;
        expect(equal(exact, form), `${alpha}°, ${beta}°`).toBe(true);
        compared += 1;
      }
    }
    expect(compared).toBe(24 * 24 - 48);
  }, 60_000);
});

/** Decimal text ("-0.5", "1.2e-50") times 10^60, cut. */
function decimalTimesTenToSixty(text: string): bigint {
  const match = /^(-?)(\d+)\.?(\d*)(?:e([+-]?\d+))?$/.exec(text);
  if (match === null) throw new Error(`not a decimal: ${text}`);
  const [, sign, whole = "", decimals = "", power = "0"] = match;
  const shift = 60 + Number(power) - decimals.length;
  const digits = BigInt(whole + decimals);
  const value = shift >= 0 ? digits * 10n ** BigInt(shift) : digits / 10n ** BigInt(-shift);
  return sign === "-" ? -value : value;
}
