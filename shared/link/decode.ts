import { choose, decodeUpTo, readParameters } from "./choose.ts";
import { decodeProblem } from "./decode-problem.ts";
import { whole } from "./faults.ts";
import { FIGURES, FIRST_AXES, LONGEST_QUERY, MOST_FAULTS, parametersOf } from "./parameters.ts";
import type { LinkFault, PageState } from "./types.ts";

/** A state, and what could not be taken from the address. */
export type Decoded = { readonly state: PageState; readonly faults: readonly LinkFault[] };

/**
 * The state that a query (with or without "?") asks for, beginning from the lesson's start. A parameter that is
 * malformed, out of range, unknown or given twice becomes a fault and leaves its start value; nothing else is lost.
 * Takes any text; never throws.
 */
export function decodeState(query: string, start: PageState): Decoded {
  if (query.length > LONGEST_QUERY) return { state: start, faults: [whole(query.length)] };
  const { values, faults: strange } = readParameters(query, parametersOf(start.problem));
  const problem = decodeProblem(values, start.problem);
  const figures = choose("figures", values, FIGURES);
  const first = choose("first", values, FIRST_AXES);
  const upTo = decodeUpTo(values.get("upto"));
  return {
    state: {
      problem: problem.problem,
      settings: {
        figures: figures.value ?? start.settings.figures,
        firstAxis: first.value ?? start.settings.firstAxis,
      },
      upTo: upTo.value === undefined ? start.upTo : upTo.value,
    },
    faults: [...problem.faults, ...figures.faults, ...first.faults, ...upTo.faults, ...strange].slice(0, MOST_FAULTS),
  };
}
