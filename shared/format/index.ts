/** Printing of numbers: rounded once, here, and never in powers-of-ten notation of a programming language. */
export { exactDecimal, toDecimals, toFigures } from "./number.ts";
export { groupDigits } from "./group.ts";
export { MINUS, NO_BREAK_SPACE, plainText, withUnit } from "./text.ts";
export type { Printed, PrintOptions } from "./types.ts";
export { unitNames } from "./unit-names.ts";
export type { Dimension, UnitSystem } from "./unit-names.ts";
