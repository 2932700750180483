import { groupDigits } from "./group.ts";
import type { Printed, PrintOptions } from "./types.ts";

/** A true minus, as long as a plus is wide. */
export const MINUS = "\u2212";
/** Between a number and its unit: no line break there. */
export const NO_BREAK_SPACE = "\u00A0";

const SUPERSCRIPTS: readonly string[] = ["⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"];
const SUPERSCRIPT_MINUS = "⁻";
// Signs that stand at the number without a space (SI Brochure 5.4.3: degree, minute and second of angle).
const WITHOUT_SPACE: ReadonlySet<string> = new Set(["°", "′", "″"]);

/** A printed number as plain text: "−32.6", "1.2×10⁻⁵". */
export function plainText(printed: Printed, options: Pick<PrintOptions, "group"> = {}): string {
  const digits = options.group === true ? groupDigits(printed.digits) : printed.digits;
  const power = printed.exponent === null ? "" : `×10${superscript(printed.exponent)}`;
  return (printed.negative ? MINUS : "") + digits + power;
}

/** A printed number with its unit: "32.6 N", the space not breaking; "65°" without one; the number alone for "". */
export function withUnit(printed: Printed, unit: string, options: Pick<PrintOptions, "group"> = {}): string {
  const space = unit === "" || WITHOUT_SPACE.has(unit) ? "" : NO_BREAK_SPACE;
  return plainText(printed, options) + space + unit;
}

function superscript(exponent: number): string {
  const digits = String(Math.abs(exponent)).replaceAll(/\d/gu, (digit) => SUPERSCRIPTS[Number(digit)] ?? "");
  return (exponent < 0 ? SUPERSCRIPT_MINUS : "") + digits;
}
