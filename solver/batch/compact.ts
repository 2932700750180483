// A solution on one line: the case, the states and the answers, without words. Every field is in the whole derivation's JSON too.
import { statesOf } from "../exports/index.ts";
import { termsOf } from "../results/index.ts";
import type { Solution } from "../index.ts";

/** The compact data of a solution. */
export function compactData({ kind, slack, answers, system }: Solution): Record<string, unknown> {
  return {
    case: kind,
    slack,
    ...(system === null ? {} : { states: statesOf({ system }) }),
    answers: answers.map(({ id, unit, decimal, exact }) => ({
      id,
      unit,
      decimal,
      exact: exact === null ? null : { terms: termsOf(exact.newtons) },
    })),
  };
}
