/**
 * Whole-number arithmetic under the exact core. Most integers met in a lesson are small, so each function leaves
 * BigInt for plain numbers as long as those are exact.
 */

const LARGEST_PLAIN = BigInt(Number.MAX_SAFE_INTEGER);

/** The size of an integer. */
export function absolute(n: bigint): bigint {
  return n < 0n ? -n : n;
}

/** Whether plain numbers hold this integer exactly. */
export function isPlain(n: bigint): boolean {
  return n <= LARGEST_PLAIN && n >= -LARGEST_PLAIN;
}

/** Greatest common divisor, never negative; `greatestCommonDivisor(0, n)` is |n|. */
export function greatestCommonDivisor(first: bigint, second: bigint): bigint {
  let a = absolute(first);
  let b = absolute(second);
  while (b !== 0n) {
    if (a <= LARGEST_PLAIN && b <= LARGEST_PLAIN) return BigInt(plainDivisor(Number(a), Number(b)));
    const rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

function plainDivisor(first: number, second: number): number {
  let a = first;
  let b = second;
  while (b !== 0) {
    const rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

/** How many binary digits a non-negative integer has; 0 has none. */
export function bitLength(n: bigint): number {
  if (n === 0n) return 0;
  const hex = n.toString(16);
  return (hex.length - 1) * 4 + (32 - Math.clz32(Number.parseInt(hex.charAt(0), 16)));
}

/** The whole part of the square root of a non-negative integer, by Newton's iteration from above. */
export function integerSquareRoot(n: bigint): bigint {
  if (n < 2n) return n;
  let root = 1n << BigInt((bitLength(n) + 1) >> 1);
  for (;;) {
    const next = (root + n / root) >> 1n;
    if (next >= root) return root;
    root = next;
  }
}
