// Walks an expression once for any dialect: signs, brackets and order are decided here, spelling in the dialect.
import type { Surd } from "../../../shared/exact/index.ts";
import type { Values } from "../../algebra/evaluate.ts";
import { same } from "../../algebra/expr.ts";
import type { AngleSum, Expr, TrigName } from "../../algebra/expr.ts";
import { printQuantity } from "./number.ts";
import type { PrintedQuantity, Rounding } from "./number.ts";

/** What kind of thing a rendered factor is, for what must stand between two of them. */
export type FactorKind = "number" | "symbol" | "trig" | "fraction" | "bracket" | "root" | "quantity";

/** A factor of a product as rendered. */
export interface Factor {
  readonly kind: FactorKind;
  readonly shown: string;
}

/** One way of spelling: TeX with slots, plain text, or the syntax of an evaluator. */
export interface Dialect {
  integer(value: number): string;
  surd(value: Surd): string;
  /** Whether a surd needs brackets as a factor. */
  surdIsSum(value: Surd): boolean;
  symbol(id: string): string;
  trig(fn: TrigName, angle: AngleSum): string;
  /** A power of a sine or cosine: sin² θ. */
  trigPower(fn: TrigName, angle: AngleSum, power: number): string;
  product(factors: readonly Factor[], ref: string | null): string;
  quotient(over: string, under: string): string;
  bracket(inner: string): string;
  root(inner: string): string;
  square(inner: string, simple: boolean): string;
  measured(inner: string, unit: string): string;
  quantity(printed: PrintedQuantity, unit: string): string;
  readonly minus: string;
  readonly plus: string;
  readonly lead: string;
}

/** What printing needs besides the dialect. */
export interface PrintContext {
  readonly values: Values;
  readonly rounding: Rounding;
}

/** Renders an expression. */
export function render(e: Expr, d: Dialect, c: PrintContext): string {
  const { negative, body } = signed(e, c);
  const shown = unsigned(body, d, c);
  // The opposite of a sum needs its brackets.
  if (negative) return d.lead + (body.kind === "sum" ? d.bracket(shown) : shown);
  return shown;
}

/** An expression with its sign taken off: a minus node, or a number that prints negative. */
function signed(e: Expr, c: PrintContext): { readonly negative: boolean; readonly body: Expr } {
  if (e.kind === "negative") {
    const inner = signed(e.of, c);
    return { negative: !inner.negative, body: inner.body };
  }
  return { negative: e.kind === "quantity" && printQuantity(e, c.values, c.rounding).negative, body: e };
}

function unsigned(e: Expr, d: Dialect, c: PrintContext): string {
  switch (e.kind) {
    case "integer":
      return d.integer(e.value);
    case "exact":
      return d.surd(e.value);
    case "symbol":
      return d.symbol(e.id);
    case "trig":
      return d.trig(e.fn, e.angle);
    case "negative":
      return d.bracket(render(e, d, c));
    case "sum":
      return sum(e.terms, d, c);
    case "product":
      return d.product(factorsShown(e.factors, d, c), e.ref ?? null);
    case "quotient":
      return d.quotient(render(e.over, d, c), render(e.under, d, c));
    case "root":
      return d.root(render(e.of, d, c));
    case "square":
      return e.of.kind === "symbol" ? d.square(d.symbol(e.of.id), true) : d.square(render(e.of, d, c), false);
    case "measured":
      return d.measured(
        e.of.kind === "exact" && d.surdIsSum(e.of.value) ? d.bracket(render(e.of, d, c)) : render(e.of, d, c),
        e.unit,
      );
    case "quantity":
      return d.quantity(printQuantity(e, c.values, c.rounding), e.unit);
  }
}

function sum(terms: readonly Expr[], d: Dialect, c: PrintContext): string {
  let shown = "";
  for (const t of terms) {
    const { negative, body } = signed(t, c);
    const inner = body.kind === "sum" ? d.bracket(unsigned(body, d, c)) : unsigned(body, d, c);
    if (shown === "") shown = negative ? d.lead + inner : inner;
    else shown += (negative ? d.minus : d.plus) + inner;
  }
  return shown === "" ? d.integer(0) : shown;
}

/** The factors of a product; one sine or cosine several times is a power of it. */
function factorsShown(factors: readonly Expr[], d: Dialect, c: PrintContext): Factor[] {
  return factors.flatMap((f, i): Factor[] => {
    if (f.kind !== "trig") return [factor(f, d, c)];
    if (factors.findIndex((o) => same(o, f)) < i) return [];
    const power = factors.filter((o) => same(o, f)).length;
    return [power === 1 ? factor(f, d, c) : { kind: "trig", shown: d.trigPower(f.fn, f.angle, power) }];
  });
}

function factor(e: Expr, d: Dialect, c: PrintContext): Factor {
  const { negative, body } = signed(e, c);
  if (negative) return { kind: "bracket", shown: d.bracket(render(e, d, c)) };
  switch (body.kind) {
    case "sum":
      return { kind: "bracket", shown: d.bracket(unsigned(body, d, c)) };
    case "exact":
      return d.surdIsSum(body.value)
        ? { kind: "bracket", shown: d.bracket(d.surd(body.value)) }
        : { kind: "number", shown: d.surd(body.value) };
    case "integer":
      return { kind: "number", shown: unsigned(body, d, c) };
    case "quotient":
      return { kind: "fraction", shown: unsigned(body, d, c) };
    case "root":
      return { kind: "root", shown: unsigned(body, d, c) };
    case "trig":
      return { kind: "trig", shown: unsigned(body, d, c) };
    case "quantity":
      return { kind: "quantity", shown: unsigned(body, d, c) };
    default:
      return { kind: "symbol", shown: unsigned(body, d, c) };
  }
}
