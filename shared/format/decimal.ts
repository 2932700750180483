/**
 * A positive decimal as its digits d₁d₂d₃… and a power of ten: 0.d₁d₂d₃… · 10^point, so that "41.16" is digits "4116" with point 2. The
 * first digit is not 0. Rounding works on these digits alone.
 */
export type Decimal = { readonly digits: string; readonly point: number };

/**
 * The decimal of a double: the shortest one that reads back as that double, which is the one a reader sees elsewhere.
 * Null for zero. Throws RangeError for NaN and infinities.
 */
export function decimalOf(value: number): Decimal | null {
  if (!Number.isFinite(value)) throw new RangeError(`${value} has no digits to print`);
  // toExponential without an argument gives as many digits as needed: "9.995e+0".
  const [mantissa = "", power = "0"] = Math.abs(value).toExponential().split("e");
  const digits = mantissa.replace(".", "");
  return value === 0 ? null : { digits, point: Number(power) + 1 };
}

/** The decimal cut after so many digits (0 or more), the rest rounded half away from zero; null where nothing is left. */
export function roundedTo(decimal: Decimal, count: number): Decimal | null {
  if (count < 0) return null;
  if (count >= decimal.digits.length) return decimal;
  const up = decimal.digits.charCodeAt(count) >= "5".charCodeAt(0);
  const kept = decimal.digits.slice(0, count);
  if (!up) return count === 0 ? null : { digits: kept, point: decimal.point };
  const raised = (BigInt(kept === "" ? "0" : kept) + 1n).toString();
  // 99.96 to three figures: 999 + 1 has one digit more, and the point moves with it.
  return { digits: raised, point: decimal.point + raised.length - count };
}

/** The decimal written out with so many decimals, which it must not exceed; no sign, a full stop as the mark. */
export function writtenOut(decimal: Decimal | null, decimals: number): string {
  if (decimal === null) return decimals > 0 ? `0.${"0".repeat(decimals)}` : "0";
  const whole = decimal.point > 0 ? decimal.digits.slice(0, decimal.point).padEnd(decimal.point, "0") : "0";
  if (decimals === 0) return whole;
  const part = decimal.point > 0 ? decimal.digits.slice(decimal.point) : "0".repeat(-decimal.point) + decimal.digits;
  return `${whole}.${part.padEnd(decimals, "0")}`;
}
