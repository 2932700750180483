import { parseRational, toDecimalText } from "../exact/index.ts";
import type { Rational } from "../exact/index.ts";
import type { WrittenNumber } from "./document.ts";

/** A decimal of so many significant digits always survives the way through a double and back. */
export const DIGITS_OF_A_JSON_NUMBER = 15;
/** How long a number may be once its power of ten is written out, so that every accepted number can be written. */
export const LONGEST_WRITTEN_OUT = 40;
/** The rule in words, for messages. */
export const WRITTEN_NUMBER_RULE =
  `as a JSON number of at most ${DIGITS_OF_A_JSON_NUMBER} significant digits ` +
  `or as text ("4.2", "-3/4", "1e-3") of at most ${LONGEST_WRITTEN_OUT} characters`;

/** The exact value of a number in a document; null for one that breaks `WRITTEN_NUMBER_RULE`. Never throws. */
export function readWrittenNumber(written: WrittenNumber): Rational | null {
  const text = String(written);
  if (typeof written === "number" && significantDigits(text) > DIGITS_OF_A_JSON_NUMBER) return null;
  return readNumberText(text);
}

/** The exact value of a number that somebody typed or linked; null for what is not a number or too long. Never throws. */
export function readNumberText(text: string): Rational | null {
  const value = parseRational(text);
  return value === null || numberText(value).length > LONGEST_WRITTEN_OUT ? null : value;
}

/**
 * The canonical text of a number: its decimals where they end within `LONGEST_WRITTEN_OUT` characters, else
 * numerator/denominator.
 */
export function numberText(value: Rational): string {
  const decimal = toDecimalText(value);
  return decimal !== null && decimal.length <= LONGEST_WRITTEN_OUT ? decimal : value.toFraction();
}

/** The number for a JSON document: a JSON number where that is exact, else text. */
export function writeNumber(value: Rational): WrittenNumber {
  const text = numberText(value);
  return text.includes("/") || significantDigits(text) > DIGITS_OF_A_JSON_NUMBER ? text : Number(text);
}

/** How many digits of a decimal text count, leading and closing zeros left out: 2 for "-0.0420e5". */
export function significantDigits(text: string): number {
  const digits = /^[+-]?([\d.]*)/.exec(text)?.[1] ?? "";
  return digits.replace(".", "").replace(/^0+/, "").replace(/0+$/, "").length;
}

/** The exact value of a number in a document that the schema has passed. Throws TypeError on any other. */
export function readCheckedNumber(written: WrittenNumber): Rational {
  const value = readWrittenNumber(written);
  if (value === null) throw new TypeError(`the document has not been checked: ${written} is not a number it may hold`);
  return value;
}
