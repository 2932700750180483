/**
 * The judge's own evaluation of an exact number, by decimal long-hand on integers and on nothing of `shared/exact` but
 * the terms it publishes: the value times 10^60, cut to an integer.
 */
import type { Surd } from "../../shared/exact/index.ts";

const PLACES = 60n;
const GUARD = 40n;

/** Σ (n/q)·√d · 10^60. Wrong by at most one unit for each term. */
export function timesTenToSixty(x: Surd): bigint {
  let sum = 0n;
  for (const { coefficient, radicand } of x.terms) {
    const root = squareRootByBisection(radicand * 10n ** (2n * (PLACES + GUARD)));
    const size = (coefficient.n * root) / coefficient.d;
    sum += coefficient.s < 0n ? -size : size;
  }
  return sum / 10n ** GUARD;
}

// Bisection instead of the Newton iteration of the code under test.
function squareRootByBisection(n: bigint): bigint {
  let low = 0n;
  let high = 1n;
  while (high * high <= n) high *= 2n;
  while (high - low > 1n) {
    const middle = (low + high) / 2n;
    if (middle * middle <= n) low = middle;
    else high = middle;
  }
  return low;
}

/** A double as an exact integer number of 10^-60, cut; the double must be smaller than 2^60 in size. */
export function doubleTimesTenToSixty(value: number): bigint {
  const scaled = BigInt(Math.trunc(value));
  let result = scaled * 10n ** PLACES;
  let rest = value - Number(scaled);
  // A double's binary fraction ends; each step doubles it exactly and takes one binary digit off.
  for (let half = 2n; rest !== 0 && half < 1n << 300n; half *= 2n) {
    rest *= 2;
    const digit = Math.trunc(rest);
    rest -= digit;
    result += (BigInt(digit) * 10n ** PLACES) / half;
  }
  return result;
}
