// A sentence with its truth condition: it is said where the condition holds, and dropped, never bent, where it does not.
import { decimal } from "../algebra/evaluate.ts";
import type { Values } from "../algebra/evaluate.ts";
import type { Expr } from "../algebra/expr.ts";
import type { Sentence } from "./types.ts";

/** One comparison of two expressions. */
export interface Condition {
  readonly left: Expr;
  readonly relation: ">" | "<" | "=";
  readonly right: Expr;
}

/** A sentence that holds only under conditions. */
export interface Claim {
  readonly id: string;
  readonly when: readonly Condition[];
  readonly sentence: () => Sentence;
}

const MARGIN = 1e-9;

/** Whether a condition holds; values nearer than the margin count as equal, so that no sentence hangs on rounding. */
export function holds(condition: Condition, values: Values): boolean {
  const left = decimal(condition.left, values);
  const right = decimal(condition.right, values);
  const close = Math.abs(left - right) <= MARGIN * Math.max(Math.abs(left), Math.abs(right), Number.MIN_VALUE);
  if (condition.relation === "=") return close;
  return !close && (condition.relation === ">" ? left > right : left < right);
}

/** The sentences whose conditions hold. */
export const spoken = (claims: readonly Claim[], values: Values): Sentence[] =>
  claims.filter((c) => c.when.every((w) => holds(w, values))).map((c) => c.sentence());
