// The answers of a result: a tension a rope with its three faces.
import { divide, isZero } from "../../shared/exact/index.ts";
import type { Surd } from "../../shared/exact/index.ts";
import { exactly } from "../algebra/evaluate.ts";
import { product, symbol } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import type { CaseResult } from "../cases/index.ts";
import { valueOfExpr } from "../4-steps/index.ts";
import type { Attempt } from "../4-steps/index.ts";

/** The exact face of an answer: in newtons, and as a multiple of the weight where there is one. */
export interface ExactFace {
  readonly newtons: Surd;
  readonly perWeight: Surd | null;
}

/** One answer. A slack rope is an answer of 0; a size that forces alone do not fix has no decimal. */
export interface Answer {
  readonly id: string;
  /** N, m/s², or lbf, ft/s². */
  readonly unit: string;
  readonly decimal: number | null;
  readonly exact: ExactFace | null;
  readonly letters: Expr | null;
}

/** The answers in the order of the ropes; then the combination that is fixed, if sizes are not. */
export function answersOf(result: CaseResult): readonly Answer[] {
  const last = result.attempts[result.attempts.length - 1];
  if (last === undefined) return [];
  const open = result.kind === "impossible" || result.kind === "under-determined";
  const answers = result.world.ropes.map((rope): Answer => {
    if (open) return { id: rope.id, unit: "N", decimal: null, exact: null, letters: null };
    const slack = result.slack.includes(rope.id);
    return slack
      ? answerOf(result, last, rope.id, { kind: "integer", value: 0 }, null)
      : answerOf(result, last, rope.id, symbol(rope.id), last.letters.get(rope.id) ?? null);
  });
  const { combination } = last;
  return combination === null
    ? answers
    : [...answers, answerOf(result, last, combination.id, combination.expr, combination.expr)];
}

function answerOf(result: CaseResult, attempt: Attempt, id: string, size: Expr, letters: Expr | null): Answer {
  const newtons = exactly(size, attempt.values);
  const weight = result.world.body.weight.exact;
  const { push } = result.world.body;
  const perWeight =
    newtons === null || weight === null || isZero(weight) || push !== 0 ? null : divide(newtons, weight);
  return {
    id,
    unit: "N",
    decimal: valueOfExpr(size, attempt.values).decimal,
    exact: newtons === null ? null : { newtons, perWeight },
    letters,
  };
}

/** The weight in letters, for printing a multiple of it. */
export const weightLetters = (result: CaseResult): Expr =>
  result.world.body.givenBy === "mass" ? product([symbol("m"), symbol("g")]) : symbol("W");

/** Pairs of a rational and a square-free integer, as text and number: [["21/2", 3]]. */
export const termsOf = (x: Surd): [string, number][] =>
  x.terms.map((t) => [
    (t.coefficient.s < 0n ? "-" : "") +
      (t.coefficient.d === 1n ? String(t.coefficient.n) : `${t.coefficient.n}/${t.coefficient.d}`),
    Number(t.radicand),
  ]);

export { setUpAnswers } from "./set-up.ts";
export { unitOfLetter } from "../4-steps/index.ts";
