// A solution on one line: the case and the answers, without words. Every field is in the whole derivation's JSON too.
import { termsOf } from "../results/index.ts";
import type { solve } from "../index.ts";

/** The compact data of a solution. */
export function compactData({ kind, slack, answers }: ReturnType<typeof solve>): Record<string, unknown> {
  return {
    case: kind,
    slack,
    answers: answers.map(({ id, unit, decimal, exact }) => ({
      id,
      unit,
      decimal,
      exact: exact === null ? null : { terms: termsOf(exact.newtons) },
    })),
  };
}
