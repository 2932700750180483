import { ExactError } from "./exact-error.ts";
import { greatestCommonDivisor } from "./integer.ts";
import { isZero, one, reduced, rootTerm, Surd, zero } from "./surd.ts";

/** −x. */
export function negate(x: Surd): Surd {
  return new Surd(
    x.numerators.map((numerator) => -numerator),
    x.radicands,
    x.denominator,
  );
}

/** x + y. */
export function add(x: Surd, y: Surd): Surd {
  return combine(x, y, 1n);
}

/** x − y. */
export function subtract(x: Surd, y: Surd): Surd {
  return combine(x, y, -1n);
}

// x + sign·y: both brought over one denominator, then merged by radicand.
function combine(x: Surd, y: Surd, sign: 1n | -1n): Surd {
  if (isZero(y)) return x;
  if (isZero(x)) return sign === 1n ? y : negate(y);
  const same = x.denominator === y.denominator;
  const xFactor = same ? 1n : y.denominator;
  const yFactor = same ? sign : sign * x.denominator;
  const sum = new RootSum();
  let next = 0;
  for (let index = 0; index < x.radicands.length; index += 1) {
    const radicand = x.radicands[index] ?? 1n;
    for (; next < y.radicands.length && (y.radicands[next] ?? 1n) < radicand; next += 1) {
      sum.append((y.numerators[next] ?? 0n) * yFactor, y.radicands[next] ?? 1n);
    }
    let numerator = (x.numerators[index] ?? 0n) * xFactor;
    if (next < y.radicands.length && y.radicands[next] === radicand) {
      numerator += (y.numerators[next] ?? 0n) * yFactor;
      next += 1;
    }
    sum.append(numerator, radicand);
  }
  for (; next < y.radicands.length; next += 1) {
    sum.append((y.numerators[next] ?? 0n) * yFactor, y.radicands[next] ?? 1n);
  }
  return sum.over(same ? x.denominator : x.denominator * y.denominator);
}

/** x · y, term by term: √c·√d = g·√(c/g · d/g) with g the greatest common divisor of c and d. */
export function multiply(x: Surd, y: Surd): Surd {
  if (isZero(x) || isZero(y)) return zero;
  const sum = new RootSum();
  for (let i = 0; i < x.radicands.length; i += 1) {
    const c = x.radicands[i] ?? 1n;
    const left = x.numerators[i] ?? 0n;
    for (let j = 0; j < y.radicands.length; j += 1) {
      const d = y.radicands[j] ?? 1n;
      const product = left * (y.numerators[j] ?? 0n);
      if (c === 1n || d === 1n) sum.insert(product, c === 1n ? d : c);
      else if (c === d) sum.insert(product * c, 1n);
      else {
        const g = greatestCommonDivisor(c, d);
        sum.insert(product * g, (c / g) * (d / g));
      }
    }
  }
  return sum.withoutZeros().over(x.denominator * y.denominator);
}

/** x / y. Throws ExactError where y is 0. */
export function divide(x: Surd, y: Surd): Surd {
  return multiply(x, invert(y));
}

/**
 * 1/x. Throws ExactError where x is 0. Numerator and denominator are multiplied by conjugates until no root is left
 * below: each conjugate flips the sign of √b for one divisor b of the radicands and so clears b from the denominator.
 */
export function invert(x: Surd): Surd {
  if (isZero(x)) throw new ExactError("a division by 0", "a divisor other than 0");
  let above = one;
  let below = x;
  while (below.radicands.length > 1) {
    const flipped = conjugate(below, splitter(below.radicands));
    above = multiply(above, flipped);
    below = multiply(below, flipped);
  }
  // 1/(n√d/q) = q√d/(n·d)
  const numerator = below.numerators[0] ?? 0n;
  const radicand = below.radicands[0] ?? 1n;
  return multiply(above, rootTerm(below.denominator, radicand, numerator * radicand));
}

/**
 * A divisor b > 1 of the largest radicand that each other radicand either contains whole or shares nothing with.
 * Flipping √p for a prime p of b then flips exactly the terms that b divides, so no radicand has to be factorised.
 */
function splitter(radicands: readonly bigint[]): bigint {
  let b = radicands[radicands.length - 1] ?? 1n;
  for (const radicand of radicands) {
    const g = greatestCommonDivisor(b, radicand);
    if (g !== 1n) b = g;
  }
  return b;
}

function conjugate(x: Surd, b: bigint): Surd {
  const flipped = x.numerators.map((n, index) => ((x.radicands[index] ?? 1n) % b === 0n ? -n : n));
  return new Surd(flipped, x.radicands, x.denominator);
}

/** A sum of n√d under construction, radicands kept ascending. */
class RootSum {
  #numerators: bigint[] = [];
  #radicands: bigint[] = [];

  /** Adds a term whose radicand is larger than all before; a zero is dropped. */
  append(numerator: bigint, radicand: bigint): void {
    if (numerator === 0n) return;
    this.#numerators.push(numerator);
    this.#radicands.push(radicand);
  }

  /** Adds a term anywhere; terms may cancel to zero until `withoutZeros`. */
  insert(numerator: bigint, radicand: bigint): void {
    let at = this.#radicands.length;
    while (at > 0 && (this.#radicands[at - 1] ?? 1n) > radicand) at -= 1;
    if (at > 0 && this.#radicands[at - 1] === radicand) {
      this.#numerators[at - 1] = (this.#numerators[at - 1] ?? 0n) + numerator;
      return;
    }
    this.#numerators.splice(at, 0, numerator);
    this.#radicands.splice(at, 0, radicand);
  }

  /** Drops the terms that cancelled. */
  withoutZeros(): this {
    if (this.#numerators.includes(0n)) {
      const kept = this.#numerators.map((numerator) => numerator !== 0n);
      this.#numerators = this.#numerators.filter((_, index) => kept[index]);
      this.#radicands = this.#radicands.filter((_, index) => kept[index]);
    }
    return this;
  }

  /** The sum divided by a positive integer, in normal form. */
  over(denominator: bigint): Surd {
    return reduced(this.#numerators, this.#radicands, denominator);
  }
}
