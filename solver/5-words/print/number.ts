// A quantity as digits: the one place where the words stage rounds, by the printer in shared/format.
import { asRational, toExactText } from "../../../shared/exact/index.ts";
import type { Rational } from "../../../shared/exact/index.ts";
import { exactDecimal, toDecimals, toFigures } from "../../../shared/format/index.ts";
import type { Printed } from "../../../shared/format/index.ts";
import { decimal, exactly } from "../../algebra/evaluate.ts";
import type { Values } from "../../algebra/evaluate.ts";
import type { Expr } from "../../algebra/expr.ts";

/** How numbers of one line are to be rounded. */
export interface Rounding {
  readonly figures: number;
  /** Guard figures of working decimals. */
  readonly guard: number;
  /** Decimals shared by every working number of a sum, or null. */
  readonly decimals: number | null;
  readonly mark: "." | ",";
}

/** A printed quantity: its digits, and whether nothing was lost. */
export interface PrintedQuantity extends Printed {
  readonly isExact: boolean;
}

type Quantity = Extract<Expr, { kind: "quantity" }>;

const LONGEST_EXACT = 6;

/** The value of a quantity in its own unit (degrees for °). */
export function quantityValue(q: Quantity, values: Values): number {
  const x = decimal(q.of, values);
  return q.unit === "°" ? (x * 180) / Math.PI : x;
}

/** Prints a quantity. Given numbers are printed as written; working numbers exactly where that is short, else with guard figures. */
export function printQuantity(q: Quantity, values: Values, rounding: Rounding): PrintedQuantity {
  const { mark } = rounding;
  const written = writtenExactly(q, values, mark);
  if (q.role === "given") {
    const given = written ?? inFull(q, values, mark);
    if (given !== null) return given;
  }
  const x = quantityValue(q, values);
  if (q.role === "answer") {
    const printed = toFigures(x, rounding.figures, { mark });
    return { ...printed, isExact: written !== null && q.unit !== "°" && printed.value === written.value };
  }
  if (rounding.decimals !== null) {
    const printed = toDecimals(x, rounding.decimals, { mark });
    return { ...printed, isExact: written !== null && printed.value === written.value };
  }
  if (written !== null && written.digits.replace(/\D/g, "").length <= LONGEST_EXACT) return written;
  return { ...toFigures(x, rounding.figures + rounding.guard, { mark }), isExact: false };
}

/** Whether a quantity is printed exactly, in few figures, as a working number. */
export function isShortlyExact(q: Quantity, values: Values): boolean {
  const written = writtenExactly(q, values, ".");
  return written !== null && written.digits.replace(/\D/g, "").length <= LONGEST_EXACT;
}

function writtenExactly(q: Quantity, values: Values, mark: "." | ","): PrintedQuantity | null {
  const ratio = ratioOf(q, values);
  const printed = ratio === null ? null : exactDecimal(ratio, { mark });
  return printed === null ? null : { ...printed, isExact: true };
}

/** A given number that has no short decimals, all of it: 10/3. Rounded, the line that states it would be false. */
function inFull(q: Quantity, values: Values, mark: "." | ","): PrintedQuantity | null {
  const ratio = ratioOf(q, values);
  if (ratio === null) return null;
  const text = toExactText(ratio.abs());
  return {
    digits: mark === "," ? text.replace(".", ",") : text,
    negative: ratio.compare(0) < 0,
    exponent: null,
    value: ratio.valueOf(),
    halfUnit: 0,
    isExact: true,
  };
}

/** The quantity as a rational in its own unit, null if it is none. */
function ratioOf(q: Quantity, values: Values): Rational | null {
  if (q.unit === "°") return q.of.kind === "symbol" ? (values.angles.get(q.of.id)?.degrees ?? null) : null;
  const exact = exactly(q.of, values);
  return exact === null ? null : asRational(exact);
}
