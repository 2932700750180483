// How the numbers of a passage are rounded, so that printed numbers put back do check.
import { decimal } from "../../algebra/evaluate.ts";
import { partsOf, some } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Step } from "../../4-steps/types.ts";
import type { LinePrinter, LineRounding, ReadyLine } from "./types.ts";
import { isShortlyExact, printQuantity, quantityValue } from "./number.ts";
import type { Rounding } from "./number.ts";

const LEAST_GUARD = 2;
const MOST_GUARD = 11;
const MOST_DECIMALS = 17;

/** Rounding with so many guard figures on every number. */
export const withGuard = (
  p: Pick<LinePrinter, "figures" | "mark">,
  guard: number,
  decimals: number | null = null,
): Rounding => ({ figures: p.figures, guard, decimals, mark: p.mark });

/** The same rounding for all sides. */
export const evenly = (rounding: Rounding): LineRounding => ({ inner: rounding, result: rounding });

/**
 * Settles the rounding of a passage's lines. A size worked out keeps two guard figures; what it is worked out from keeps as many as it takes for
 * the printed numbers to give it, and those same digits stand in the lines before it. Sums share their decimals.
 */
export function readyPassage(steps: readonly Step[], p: LinePrinter): ReadyLine[] {
  const results = steps.filter((step) => isResult(step, p));
  let shared = LEAST_GUARD;
  while (shared < MOST_GUARD && !results.every((step) => checks(step, p, resultRounding(p, shared)))) shared++;
  return steps.map((step) => readyLine(step, p, shared));
}

function readyLine(step: Step, p: LinePrinter, shared: number): ReadyLine {
  const base = { sides: step.sides, angles: step.angles };
  if (step.status !== "rounded")
    return { ...base, relation: step.relation, rounding: evenly(withGuard(p, LEAST_GUARD)) };
  const rounding = roundingFor(step, p, shared);
  return { ...base, relation: isPrintedExactly(step, p, rounding) ? "=" : step.relation, rounding };
}

function roundingFor(step: Step, p: LinePrinter, shared: number): LineRounding {
  if (isResult(step, p)) return resultRounding(p, shared);
  const aligned = isAligned(step) && !step.sides.flatMap(quantitiesOf).every((q) => isShortlyExact(q, p.values));
  const make = (guard: number): LineRounding =>
    evenly(withGuard(p, guard, aligned ? sharedDecimals(step, p, guard) : null));
  return make(leastGuard(step, p, aligned ? LEAST_GUARD : shared, make));
}

const resultRounding = (p: LinePrinter, guard: number): LineRounding => ({
  inner: withGuard(p, guard),
  result: withGuard(p, LEAST_GUARD),
});

function leastGuard(step: Step, p: LinePrinter, from: number, make: (guard: number) => LineRounding): number {
  for (let guard = from; guard < MOST_GUARD; guard++) if (checks(step, p, make(guard))) return guard;
  return MOST_GUARD;
}

/** A line that works out a size from other numbers. What comes to nothing has no figure to go by but those it is worked out from. */
const isResult = (step: Step, p: LinePrinter): boolean =>
  step.status === "rounded" &&
  step.reason.kind === "work-out" &&
  step.sides.length === 3 &&
  step.sides[0]?.kind === "symbol" &&
  decimal(step.sides[0], p.values) !== 0;

const isAligned = (step: Step): boolean => step.sides.some((s) => s.kind === "sum" && s.terms.some(isQuantity));
const isQuantity = (e: Expr): boolean => e.kind === "quantity" || (e.kind === "negative" && e.of.kind === "quantity");

/** Decimals for a sum: the largest number of the line gets its figures, the others the same decimals. */
function sharedDecimals(step: Step, p: LinePrinter, guard: number): number {
  let largest = 0;
  const visit = (e: Expr): void => {
    if (e.kind === "quantity") largest = Math.max(largest, Math.abs(quantityValue(e, p.values)));
    else partsOf(e).forEach(visit);
  };
  step.sides.forEach(visit);
  const magnitude = largest === 0 ? 0 : Math.floor(Math.log10(largest));
  return Math.min(MOST_DECIMALS, Math.max(0, p.figures + guard - 1 - magnitude));
}

/** Whether the numbers as printed make the line true, each side beside each other, within half a unit of its last printed figure. */
function checks(step: Step, p: LinePrinter, rounding: LineRounding): boolean {
  const end = step.sides.length - 1;
  const of = (i: number): Rounding => (i === end ? rounding.result : rounding.inner);
  const values = step.sides.map((s, i) => printedValue(s, p, of(i)));
  const half = halfUnit(step.sides, p, of);
  const spread = Math.max(...values) - Math.min(...values);
  return spread <= half * (1 + 1e-6) + Math.abs(values[end] ?? 0) * 1e-12;
}

function halfUnit(sides: readonly Expr[], p: LinePrinter, of: (side: number) => Rounding): number {
  for (let i = sides.length - 1; i >= 0; i--) {
    const side = sides[i];
    const quantities = side === undefined ? [] : quantitiesOf(side);
    const last = quantities.at(-1);
    if (last === undefined) continue;
    const printed = printQuantity(last, p.values, of(i));
    // Nothing has no last figure.
    if (printed.digits === "0") continue;
    const half = printed.isExact ? lastFigure(printed.digits, printed.exponent) / 2 : printed.halfUnit;
    return last.unit === "°" ? (half * Math.PI) / 180 : half;
  }
  return 0;
}

type Quantity = Extract<Expr, { kind: "quantity" }>;

const quantitiesOf = (e: Expr): Quantity[] => (e.kind === "quantity" ? [e] : partsOf(e).flatMap(quantitiesOf));

/** One unit of the last figure of some digits; a fraction has none. */
function lastFigure(digits: string, exponent: number | null): number {
  if (digits.includes("/")) return 0;
  const decimals = /[.,](\d*)$/.exec(digits)?.[1]?.length ?? 0;
  return 10 ** ((exponent ?? 0) - decimals);
}

/** The value of an expression with every quantity as printed. */
function printedValue(e: Expr, p: LinePrinter, rounding: Rounding): number {
  switch (e.kind) {
    case "quantity": {
      const { value } = printQuantity(e, p.values, rounding);
      return e.unit === "°" ? (value * Math.PI) / 180 : value;
    }
    case "sum":
      return e.terms.reduce((total, t) => total + printedValue(t, p, rounding), 0);
    case "product":
      return e.factors.reduce((total, f) => total * printedValue(f, p, rounding), 1);
    case "quotient":
      return printedValue(e.over, p, rounding) / printedValue(e.under, p, rounding);
    case "negative":
      return -printedValue(e.of, p, rounding);
    case "root":
      return Math.sqrt(printedValue(e.of, p, rounding));
    case "square":
      return printedValue(e.of, p, rounding) ** 2;
    default:
      return decimal(e, p.values);
  }
}

/** Whether no printed number of the line lost anything. */
function isPrintedExactly(step: Step, p: LinePrinter, rounding: LineRounding): boolean {
  const end = step.sides.length - 1;
  return !step.sides.some((s, i) =>
    some(
      s,
      (e) => e.kind === "quantity" && !printQuantity(e, p.values, i === end ? rounding.result : rounding.inner).isExact,
    ),
  );
}
