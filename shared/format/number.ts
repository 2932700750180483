import { toDecimalText } from "../exact/index.ts";
import type { Rational } from "../exact/index.ts";
import { decimalOf, roundedTo, writtenOut } from "./decimal.ts";
import type { Decimal } from "./decimal.ts";
import { groupDigits } from "./group.ts";
import type { Printed, PrintOptions } from "./types.ts";

/** The most figures or decimals that can be asked for: a double holds no more than 17 figures. */
const MOST_FIGURES = 17;
/** The most figures of an input that is printed as it was written. */
const MOST_EXACT_FIGURES = 15;
// Plain digits from 10^-3 up to below 10^6: where the number 0.d₁d₂… · 10^point has a point from -2 to 6.
const SMALLEST_PLAIN_POINT = -2;
const LARGEST_PLAIN_POINT = 6;

/**
 * A number rounded to so many significant figures (1 to 17), half away from zero: 9.995 to three is "10.0". Sizes from
 * 10⁻³ to below 10⁶ are plain digits, others a number from 1 to below 10 and a power of ten. Zero is "0". Throws
 * RangeError for NaN, infinities and other counts of figures.
 */
export function toFigures(value: number, figures: number, options: PrintOptions = {}): Printed {
  if (!isCount(figures, 1)) throw new RangeError(`${figures} is no count of figures from 1 to ${MOST_FIGURES}`);
  const decimal = decimalOf(value);
  const rounded = decimal === null ? null : roundedTo(decimal, figures);
  if (rounded === null) return print(null, 0, false, null, options);
  const exponent = isPlain(rounded) ? null : rounded.point - 1;
  const shown = exponent === null ? rounded : { digits: rounded.digits, point: 1 };
  const decimals = Math.max(0, figures - shown.point);
  const digits = { digits: shown.digits.slice(0, figures), point: shown.point };
  return withHalfUnit(print(digits, decimals, value < 0, exponent, options), figures - rounded.point);
}

/**
 * A number rounded to so many decimals (0 to 17), half away from zero, always in plain digits: -0.001 to two is "0.00"
 * without a minus. Throws RangeError for NaN, infinities and other counts of decimals.
 */
export function toDecimals(value: number, decimals: number, options: PrintOptions = {}): Printed {
  if (!isCount(decimals, 0)) throw new RangeError(`${decimals} is no count of decimals from 0 to ${MOST_FIGURES}`);
  const decimal = decimalOf(value);
  const rounded = decimal === null ? null : roundedTo(decimal, decimal.point + decimals);
  const digits = rounded === null ? null : withoutZerosBehind(rounded);
  return withHalfUnit(print(digits, decimals, value < 0, null, options), decimals);
}

/**
 * An exact number as it was written, all its figures and no more: 21/5 is "4.2". Null where the decimals do not end, or
 * where more than 15 figures would be needed. Its half unit is 0, for nothing is rounded.
 */
export function exactDecimal(value: Rational, options: PrintOptions = {}): Printed | null {
  const text = toDecimalText(value);
  if (text === null) return null;
  const [whole = "", part = ""] = text.replace("-", "").split(".");
  const significant = (whole + part).replace(/^0+/, "");
  const zerosBefore = whole.length + part.length - significant.length;
  if (significant === "") return print(null, 0, false, null, options);
  const decimal = withoutZerosBehind({ digits: significant, point: whole.length - zerosBefore });
  if (decimal.digits.length > MOST_EXACT_FIGURES) return null;
  const exponent = isPlain(decimal) ? null : decimal.point - 1;
  const shown = exponent === null ? decimal : { digits: decimal.digits, point: 1 };
  return print(shown, Math.max(0, shown.digits.length - shown.point), text.startsWith("-"), exponent, options);
}

function isCount(count: number, least: number): boolean {
  return Number.isInteger(count) && count >= least && count <= MOST_FIGURES;
}

function isPlain(decimal: Decimal): boolean {
  return decimal.point >= SMALLEST_PLAIN_POINT && decimal.point <= LARGEST_PLAIN_POINT;
}

function withoutZerosBehind(decimal: Decimal): Decimal {
  return { digits: decimal.digits.replace(/0+$/, ""), point: decimal.point };
}

/** Puts the pieces together: `decimal` null is zero; the half unit is left at 0. */
function print(
  decimal: Decimal | null,
  decimals: number,
  negative: boolean,
  exponent: number | null,
  options: PrintOptions,
): Printed {
  const plain = writtenOut(decimal, decimals);
  const marked = options.mark === "," ? plain.replace(".", ",") : plain;
  const size = Number(exponent === null ? plain : `${plain}e${exponent}`);
  const minus = negative && decimal !== null;
  return {
    digits: options.group === true ? groupDigits(marked) : marked,
    negative: minus,
    exponent,
    value: minus ? -size : size,
    halfUnit: 0,
  };
}

/** The last figure stands `places` places behind the point of the whole number (negative: before it). */
function withHalfUnit(printed: Printed, places: number): Printed {
  return { ...printed, halfUnit: Number(`5e${-places - 1}`) };
}
