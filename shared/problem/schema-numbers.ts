import * as z from "zod/mini";
import { rationalToNumber, rational } from "../exact/index.ts";
import { isWithinLimits, LIMITS, rangeInWords, unitInWords } from "./limits.ts";
import type { Quantity } from "./limits.ts";
import { readWrittenNumber, WRITTEN_NUMBER_RULE } from "./written-number.ts";

// The same texts as the exact core reads; JSON Schema can only say the form, the range is in the description.
const NUMBER_TEXT = /^([+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d{1,3})?|[+-]?\d+\/\d+)$/;
const LONGEST_TEXT = 60;

/** A number in a document: JSON number or text, checked exactly against the limits of its kind. */
export function numberSchema(
  quantity: Quantity,
): z.ZodMiniUnion<readonly [z.ZodMiniNumber<number>, z.ZodMiniString<string>]> {
  const { minimum, maximum, orZero, meaning } = LIMITS[quantity];
  const unit = unitInWords(quantity);
  const error = `${rangeInWords(quantity)}, ${WRITTEN_NUMBER_RULE}`;
  const number = z
    .number({ error })
    .check(z.gte(orZero ? 0 : asNumber(minimum), { error }), z.lte(asNumber(maximum), { error }));
  const text = z.string({ error }).check(z.regex(NUMBER_TEXT, { error }), z.maxLength(LONGEST_TEXT, { error }));
  return z.union([number, text], { error }).check(
    z.refine((written) => isAccepted(quantity, written), { error }),
    z.meta({ description: `${unit === "" ? meaning : `${meaning}, ${unit}`}; ${error}` }),
  );
}

function isAccepted(quantity: Quantity, written: number | string): boolean {
  const value = readWrittenNumber(written);
  return value !== null && isWithinLimits(quantity, value);
}

function asNumber(text: string): number {
  return rationalToNumber(rational(text));
}
