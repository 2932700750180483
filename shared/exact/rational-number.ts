import { bitLength } from "./integer.ts";
import { signedNumerator } from "./rational.ts";
import type { Rational } from "./rational.ts";

/** The double nearest to an exact value: rounded once, also where numerator and denominator overflow a double. */
export function rationalToNumber(value: Rational): number {
  return quotientToNumber(signedNumerator(value), value.d);
}

/** The double nearest to `numerator / denominator`, denominator > 0. */
export function quotientToNumber(numerator: bigint, denominator: bigint): number {
  const top = Number(numerator);
  const bottom = Number(denominator);
  // Both exact: IEEE division then rounds once.
  if (Number.isSafeInteger(top) && Number.isSafeInteger(bottom)) return top / bottom;
  const size = numerator < 0n ? -numerator : numerator;
  // Keep 66 to 68 digits of the quotient and let a sticky last bit stand for the rest, so that Number() rounds once.
  const shift = 67 - (bitLength(size) - bitLength(denominator));
  const scaled = shift >= 0 ? size << BigInt(shift) : size;
  const divisor = shift >= 0 ? denominator : denominator << BigInt(-shift);
  const sticky = scaled % divisor === 0n ? 0n : 1n;
  const rounded = timesPowerOfTwo(Number((scaled / divisor) | sticky), -shift);
  return numerator < 0n ? -rounded : rounded;
}

// Two steps, because one power of two could overflow or vanish although the product does not.
function timesPowerOfTwo(value: number, power: number): number {
  const half = Math.trunc(power / 2);
  return value * 2 ** half * 2 ** (power - half);
}
