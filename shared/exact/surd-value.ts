import { absolute, bitLength, integerSquareRoot } from "./integer.ts";
import { quotientToNumber } from "./rational-number.ts";
import type { Surd } from "./surd.ts";

/** Terms may cancel down to this share of their sizes before a plain sum of doubles is not trusted any more. */
const SMALLEST_SHARE_FOR_VALUE = 0.2;
/** Below this share not even the sign of a plain sum is sure; its error is less than 10⁻¹⁴ for any count of terms met. */
const SMALLEST_SHARE_FOR_SIGN = 1e-9;

/** The exact sign: −1, 0 or 1. A difference too small for doubles is decided by integers. */
export function sign(x: Surd): -1 | 0 | 1 {
  if (x.numerators.length === 0) return 0;
  const positive = x.numerators.some((numerator) => numerator > 0n);
  const negative = x.numerators.some((numerator) => numerator < 0n);
  if (positive !== negative) return positive ? 1 : -1;
  const { sum, share } = plainSum(x);
  if (share > SMALLEST_SHARE_FOR_SIGN) return sum > 0 ? 1 : -1;
  return scaledSum(x).sum > 0n ? 1 : -1;
}

/**
 * The value as a double, right to within a few units of its last place, also where the terms cancel almost wholly.
 * A value that is a rational or a single root of small integers is as good as the double arithmetic on it.
 */
export function toNumber(x: Surd): number {
  if (x.numerators.length === 0) return 0;
  if (x.radicands.length === 1 && x.radicands[0] === 1n) return quotientToNumber(x.numerators[0] ?? 0n, x.denominator);
  const { sum, share } = plainSum(x);
  const bottom = Number(x.denominator);
  // Not for sums or denominators that have overflowed: `share` is then NaN, or the quotient would be 0 or infinite.
  if (share > SMALLEST_SHARE_FOR_VALUE && Number.isFinite(bottom)) return sum / bottom;
  const scaled = scaledSum(x);
  return quotientToNumber(scaled.sum, x.denominator << BigInt(scaled.bits));
}

/** The sum Σ nᵢ√dᵢ in doubles, and its size as a share of Σ |nᵢ√dᵢ| (1 without cancellation, NaN on overflow). */
function plainSum(x: Surd): { readonly sum: number; readonly share: number } {
  let sum = 0;
  let size = 0;
  for (let index = 0; index < x.numerators.length; index += 1) {
    const term = Number(x.numerators[index]) * Math.sqrt(Number(x.radicands[index]));
    sum += term;
    size += Math.abs(term);
  }
  return { sum, share: Math.abs(sum) / size };
}

/**
 * Σ nᵢ√dᵢ times 2^bits, each term cut to an integer, `bits` large enough that the cuts cannot matter: the sum keeps at
 * least 70 sure digits. It ends because a normal form with terms is never 0.
 */
function scaledSum(x: Surd): { readonly sum: bigint; readonly bits: number } {
  const margin = 70 + bitLength(BigInt(x.numerators.length));
  for (let bits = 128; ; bits *= 2) {
    let sum = 0n;
    for (let index = 0; index < x.numerators.length; index += 1) {
      const numerator = x.numerators[index] ?? 0n;
      const root = integerSquareRoot((numerator * numerator * (x.radicands[index] ?? 1n)) << BigInt(2 * bits));
      sum += numerator < 0n ? -root : root;
    }
    if (bitLength(absolute(sum)) > margin) return { sum, bits };
  }
}
