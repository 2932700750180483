// mg + m·ay is m(g + ay): the one common factor that these laws bring in.
import { product, quotient, sum, symbol, ONE } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import type { Term } from "../algebra/linear.ts";

const isFactorList = (e: Expr, ids: readonly string[]): boolean =>
  e.kind === "product" &&
  e.factors.length === ids.length &&
  e.factors.every((f, i) => f.kind === "symbol" && f.id === ids[i]);
const isWeight = (t: Term): boolean =>
  t.sign > 0 && (isFactorList(t.factor, ["m", "g"]) || (t.factor.kind === "symbol" && t.factor.id === "W"));
const isInertia = (t: Term): boolean => {
  if (t.sign < 0 || t.unknown !== null || t.factor.kind !== "product") return false;
  const last = t.factor.factors[t.factor.factors.length - 1];
  return last?.kind === "symbol" && last.id === "ay";
};

/** m(g + ay), or W(1 + ay/g), when the terms are exactly the weight and m·ay; null otherwise. */
export function decomposeMass(terms: readonly Term[]): Expr | null {
  const weight = terms.find(isWeight);
  if (terms.length !== 2 || weight === undefined || !terms.some(isInertia)) return null;
  return weight.factor.kind === "symbol"
    ? product([symbol("W"), sum([ONE, quotient(symbol("ay"), symbol("g"))])])
    : product([symbol("m"), sum([symbol("g"), symbol("ay")])]);
}
