import { quotientToNumber } from "./rational-number.ts";
import { signedNumerator } from "./rational.ts";
import type { Rational } from "./rational.ts";
import { negate } from "./surd-arithmetic.ts";
import { one, Surd, zero } from "./surd.ts";
import { toNumber } from "./surd-value.ts";

/** sin 0°, 15°, … 90°. 15° and 75° follow from the sine of a difference and of a sum of 45° and 30°. */
const SINES: readonly Surd[] = [
  zero,
  new Surd([-1n, 1n], [2n, 6n], 4n),
  new Surd([1n], [1n], 2n),
  new Surd([1n], [2n], 2n),
  new Surd([1n], [3n], 2n),
  new Surd([1n, 1n], [2n, 6n], 4n),
  one,
];

/** sin 0°, 15°, … 345°, by symmetry about 90° and change of sign past 180°. */
const TURN: readonly Surd[] = Array.from({ length: 24 }, (_, step) => {
  const half = step % 12;
  const sine = SINES[half <= 6 ? half : 12 - half] ?? zero;
  return step < 12 ? sine : negate(sine);
});
const TURN_NUMBERS: readonly number[] = TURN.map(toNumber);

/** The exact sine of an angle in degrees that is a multiple of 15°; null for any other. */
export function exactSine(degrees: Rational): Surd | null {
  const step = stepOfFifteen(degrees);
  return step === null ? null : (TURN[step] ?? null);
}

/** The exact cosine of an angle in degrees that is a multiple of 15°; null for any other. */
export function exactCosine(degrees: Rational): Surd | null {
  const step = stepOfFifteen(degrees);
  return step === null ? null : (TURN[(step + 6) % 24] ?? null);
}

/** How many times 15°, within one turn (0 to 23), or null. */
function stepOfFifteen(degrees: Rational): number | null {
  if (degrees.d !== 1n || degrees.n % 15n !== 0n) return null;
  const steps = Number((degrees.n / 15n) % 24n);
  return degrees.s < 0n && steps !== 0 ? 24 - steps : steps;
}

/**
 * The sine of an exact angle in degrees as a double. Exact at 0°, 30°, 90° …; equal for equal sines (sin 40° = cos 50°)
 * because every angle is brought between 0° and 45° before the library's function is asked.
 */
export function sineOf(degrees: Rational): number {
  const step = stepOfFifteen(degrees);
  return step === null ? sineOfTurn(signedNumerator(degrees), degrees.d) : (TURN_NUMBERS[step] ?? 0);
}

/** The cosine of an exact angle in degrees as a double, with the care of `sineOf`. */
export function cosineOf(degrees: Rational): number {
  const step = stepOfFifteen(degrees);
  if (step !== null) return TURN_NUMBERS[(step + 6) % 24] ?? 0;
  return sineOfTurn(signedNumerator(degrees) + 90n * degrees.d, degrees.d);
}

/** sin of numerator/denominator degrees, reduced by whole numbers so that no rounding comes before the function. */
function sineOfTurn(numerator: bigint, denominator: bigint): number {
  const right = 90n * denominator;
  const turn = 4n * right;
  let angle = ((numerator % turn) + turn) % turn;
  const negative = angle >= 2n * right;
  if (negative) angle -= 2n * right;
  if (angle > right) angle = 2n * right - angle;
  const size =
    2n * angle > right ? Math.cos(radians(right - angle, denominator)) : Math.sin(radians(angle, denominator));
  return negative ? -size : size;
}

function radians(numerator: bigint, denominator: bigint): number {
  return quotientToNumber(numerator, denominator) * (Math.PI / 180);
}
