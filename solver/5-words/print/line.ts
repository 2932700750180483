// One line printed: its form and slots, and on demand the same line for an evaluator or a terminal.
import { decimal } from "../../algebra/evaluate.ts";
import type { Values } from "../../algebra/evaluate.ts";
import { partsOf, some } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Relation, Step } from "../../4-steps/types.ts";
import { printQuantity, quantityValue } from "./number.ts";
import type { Rounding } from "./number.ts";
import { PlainDialect, TextDialect } from "./plain.ts";
import { render } from "./render.ts";
import { TexDialect } from "./tex.ts";

/** TeX with slots. */
export interface SlottedTex {
  readonly form: string;
  readonly slots: readonly string[];
}

/** A line for a general-purpose evaluator. */
export interface PlainLine {
  readonly relation: Relation;
  readonly sides: readonly string[];
}

/** What all lines of a derivation share. */
export interface LinePrinter {
  readonly values: Values;
  readonly components: ReadonlySet<string>;
  readonly figures: number;
  readonly mark: "." | ",";
}

const MOST_GUARD = 9;
const TEX_RELATION: Readonly<Record<Relation, string>> = { "=": " = ", "≈": " \\approx ", ">": " > ", "<": " < " };

/** A step with its rounding settled, ready to be printed. */
export interface ReadyLine {
  readonly relation: Relation;
  readonly sides: readonly Expr[];
  readonly rounding: Rounding;
  readonly angles: "degrees" | "letters";
}

/** Settles how a step's numbers are rounded: with two guard figures, or as many more as it takes for the printed numbers to check. */
export function ready(step: Step, p: LinePrinter): ReadyLine {
  const base = { sides: step.sides, angles: step.angles };
  if (step.status !== "rounded") return { ...base, relation: step.relation, rounding: { figures: p.figures, guard: 2, decimals: null, mark: p.mark } };
  const aligned = step.sides.some((s) => s.kind === "sum" && s.terms.some(isQuantity));
  let rounding: Rounding = { figures: p.figures, guard: 2, decimals: null, mark: p.mark };
  for (let guard = 2; guard <= MOST_GUARD; guard++) {
    rounding = { figures: p.figures, guard, decimals: aligned ? sharedDecimals(step, p, guard) : null, mark: p.mark };
    if (checks(step, p, rounding)) break;
  }
  return { ...base, relation: isPrintedExactly(step, p, rounding) ? "=" : step.relation, rounding };
}

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
  return Math.max(0, p.figures + guard - 1 - magnitude);
}

/** Whether the numbers as printed make the line true within half a unit of its last printed figure. */
function checks(step: Step, p: LinePrinter, rounding: Rounding): boolean {
  const last = step.sides[step.sides.length - 1];
  if (last === undefined) return true;
  const target = printedValue(last, p, rounding);
  const half = halfUnit(step.sides, p, rounding);
  const slack = Math.abs(target) * 1e-12 + half * 1e-6;
  return step.sides.every((s) => Math.abs(printedValue(s, p, rounding) - target) <= half + slack);
}

function halfUnit(sides: readonly Expr[], p: LinePrinter, rounding: Rounding): number {
  for (let i = sides.length - 1; i >= 0; i--) {
    let found: number | null = null;
    const visit = (e: Expr): void => {
      if (e.kind === "quantity") {
        const printed = printQuantity(e, p.values, rounding);
        if (!printed.isExact) found = e.unit === "°" ? (printed.halfUnit * Math.PI) / 180 : printed.halfUnit;
      } else partsOf(e).forEach(visit);
    };
    const side = sides[i];
    if (side !== undefined) visit(side);
    if (found !== null) return found;
  }
  return 0;
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
    case "symbol":
      return p.values.symbols.get(e.id)?.decimal ?? decimal(e, p.values);
    default:
      return decimal(e, p.values);
  }
}

/** Whether no printed number of the line lost anything. */
function isPrintedExactly(step: Step, p: LinePrinter, rounding: Rounding): boolean {
  return !step.sides.some((s) => some(s, (e) => e.kind === "quantity" && !printQuantity(e, p.values, rounding).isExact));
}

/** The line in TeX with slots. */
export function lineTex(line: ReadyLine, p: LinePrinter): SlottedTex {
  const dialect = new TexDialect({ values: p.values, components: p.components, angles: line.angles, mark: p.mark });
  const form = line.sides.map((s) => render(s, dialect, { values: p.values, rounding: line.rounding })).join(TEX_RELATION[line.relation]);
  return { form, slots: dialect.slots };
}

/** The line for an evaluator. */
export function linePlain(line: ReadyLine, p: LinePrinter): PlainLine {
  const dialect = new PlainDialect({ values: p.values, components: p.components, angles: line.angles, mark: "." });
  return { relation: line.relation, sides: line.sides.map((s) => render(s, dialect, { values: p.values, rounding: line.rounding })) };
}

/** The line for a terminal. */
export function lineText(line: ReadyLine, p: LinePrinter): string {
  const dialect = new TextDialect({ values: p.values, components: p.components, angles: line.angles, mark: p.mark });
  return line.sides.map((s) => render(s, dialect, { values: p.values, rounding: line.rounding })).join(` ${line.relation} `);
}
