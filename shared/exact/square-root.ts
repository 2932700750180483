import { ExactError } from "./exact-error.ts";
import { integerSquareRoot, isPlain } from "./integer.ts";
import type { Rational } from "./rational.ts";
import { rootTerm, zero } from "./surd.ts";
import type { Surd } from "./surd.ts";

/**
 * Largest divisor tried. Once all primes up to it are taken out, a rest below its cube is a prime, a product of two
 * primes or the square of one, and a perfect square is told at once: so every integer up to 3.5·10¹³ is settled.
 */
const LARGEST_TRIAL = 32_768;
const LARGEST_REST = BigInt(LARGEST_TRIAL) ** 3n;

/**
 * The exact square root of a rational ≥ 0, its square part taken out: √(8/9) = (2/3)√2. Null where a square part could
 * hide behind a prime above 32768, that is where finding it would take too long for a lesson that follows a finger.
 * Throws ExactError for a negative value.
 */
export function squareRoot(value: Rational): Surd | null {
  if (value.n === 0n) return zero;
  if (value.s < 0n) throw new ExactError("the square root of a negative number", "a number that is 0 or positive");
  const above = squareParts(value.n);
  const below = above === null ? null : squareParts(value.d);
  if (above === null || below === null) return null;
  // √(a²r / b²s) = a√(rs) / (bs); r and s have no common divisor, so rs is square-free.
  return rootTerm(above.root, above.free * below.free, below.root * below.free);
}

type SquareParts = {
  readonly root: bigint;
  readonly free: bigint;
};

/** n = root² · free with free square-free, for n ≥ 1; null where that is not settled within the bound. */
function squareParts(n: bigint): SquareParts | null {
  const whole = integerSquareRoot(n);
  if (whole * whole === n) return { root: whole, free: 1n };
  const taken = isPlain(n) ? plainTrial(Number(n)) : bigTrial(n);
  const rest = taken.rest;
  const restRoot = integerSquareRoot(rest);
  if (restRoot * restRoot === rest) return { root: taken.root * restRoot, free: taken.free };
  if (rest >= LARGEST_REST) return null;
  return { root: taken.root, free: taken.free * rest };
}

type Trial = {
  readonly rest: bigint;
} & SquareParts;

function plainTrial(n: number): Trial {
  let rest = n;
  let root = 1;
  let free = 1;
  for (
    let divisor = 2;
    divisor <= LARGEST_TRIAL && divisor * divisor * divisor <= rest;
    divisor += divisor > 2 ? 2 : 1
  ) {
    let odd = false;
    for (; rest % divisor === 0; rest /= divisor) {
      if (odd) root *= divisor;
      odd = !odd;
    }
    if (odd) free *= divisor;
  }
  return { root: BigInt(root), free: BigInt(free), rest: BigInt(rest) };
}

function bigTrial(n: bigint): Trial {
  let rest = n;
  let root = 1n;
  let free = 1n;
  for (let step = 2; step <= LARGEST_TRIAL; step += step > 2 ? 2 : 1) {
    const divisor = BigInt(step);
    let odd = false;
    for (; rest % divisor === 0n; rest /= divisor) {
      if (odd) root *= divisor;
      odd = !odd;
    }
    if (odd) free *= divisor;
  }
  return { root, free, rest };
}
