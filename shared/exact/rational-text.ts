import { ExactError } from "./exact-error.ts";
import { ratio, signedNumerator } from "./rational.ts";
import type { Rational } from "./rational.ts";

/** How long the text of a number may be. */
export const LONGEST_NUMBER_TEXT = 60;
/** How large the power of ten behind `e` may be, either way. */
export const LARGEST_EXPONENT = 30;
/** What `rational` accepts, in words for a message. */
export const NUMBER_TEXT_ACCEPTED =
  `a number like 4.2, -3/4 or 1e-3 of at most ${LONGEST_NUMBER_TEXT} characters, ` +
  `the power of ten from -${LARGEST_EXPONENT} to ${LARGEST_EXPONENT}`;

// Anchored, and every character can be matched in one way only: reading takes time linear in the length.
const DECIMAL = /^([+-]?)(?:(\d+)(?:\.(\d*))?|\.(\d+))(?:[eE]([+-]?\d{1,3}))?$/;
const RATIO = /^([+-]?\d+)\/(\d+)$/;

/**
 * The exact value of a number written in digits ("4.2", "-3/4", "1e-3") or of an integer. Nothing is rounded: "4.2" is
 * 21/5. Throws ExactError on anything else, a JavaScript number included.
 */
export function rational(written: string | bigint): Rational {
  if (typeof written === "bigint") return ratio(written, 1n);
  const value = parseRational(written);
  if (value === null) throw new ExactError(shown(written), NUMBER_TEXT_ACCEPTED);
  return value;
}

/** As `rational`, for text that people type: null for what is not such a number. Takes any text, never throws. */
export function parseRational(text: string): Rational | null {
  if (typeof text !== "string" || text.length > LONGEST_NUMBER_TEXT) return null;
  const decimal = DECIMAL.exec(text);
  if (decimal !== null) return fromDecimal(decimal);
  const fraction = RATIO.exec(text);
  if (fraction === null) return null;
  const denominator = BigInt(fraction[2] ?? "0");
  return denominator === 0n ? null : ratio(BigInt(withoutPlus(fraction[1] ?? "0")), denominator);
}

function fromDecimal(match: RegExpExecArray): Rational | null {
  const [, sign, whole = "", decimals, bareDecimals, power] = match;
  const exponent = Number(power ?? "0");
  if (Math.abs(exponent) > LARGEST_EXPONENT) return null;
  const places = decimals ?? bareDecimals ?? "";
  const size = BigInt(whole + places);
  const shift = exponent - places.length;
  const numerator = sign === "-" ? -size : size;
  return shift >= 0 ? ratio(numerator * 10n ** BigInt(shift), 1n) : ratio(numerator, 10n ** BigInt(-shift));
}

// BigInt reads "-3" but not "+3".
function withoutPlus(digits: string): string {
  return digits.startsWith("+") ? digits.slice(1) : digits;
}

function shown(written: unknown): string {
  if (typeof written !== "string") return `a value of type ${typeof written}`;
  return JSON.stringify(written.length > 40 ? `${written.slice(0, 40)}…` : written);
}

/**
 * The shortest decimal text that is exactly the value ("4.2", "-0.375", "1000"), without a power of ten; null where
 * the decimals never end (1/3).
 */
export function toDecimalText(value: Rational): string | null {
  const places = decimalPlaces(value.d);
  if (places === null) return null;
  const digits = ((value.n * 10n ** BigInt(places)) / value.d).toString().padStart(places + 1, "0");
  const split = digits.length - places;
  const sign = value.s < 0n && value.n !== 0n ? "-" : "";
  return sign + digits.slice(0, split) + (places > 0 ? `.${digits.slice(split)}` : "");
}

// A reduced fraction ends exactly when its denominator is 2^a · 5^b, after max(a, b) decimals.
function decimalPlaces(denominator: bigint): number | null {
  let rest = denominator;
  let twos = 0;
  let fives = 0;
  for (; rest % 2n === 0n; rest /= 2n) twos += 1;
  for (; rest % 5n === 0n; rest /= 5n) fives += 1;
  return rest === 1n ? Math.max(twos, fives) : null;
}

/** Text that `rational` reads back to the same value: the decimals where they end, else numerator/denominator. */
export function toExactText(value: Rational): string {
  return toDecimalText(value) ?? `${signedNumerator(value)}/${value.d}`;
}
