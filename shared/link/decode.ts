import { decodeProblem } from "./decode-problem.ts";
import { fault, whole } from "./faults.ts";
import { FIGURES, FIRST_AXES, LINE_ID, LONGEST_QUERY, MOST_FAULTS, parametersOf } from "./parameters.ts";
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
  const { values, faults: strange } = readParameters(query, start);
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

type Parameters = { readonly values: ReadonlyMap<string, string>; readonly faults: readonly LinkFault[] };

/** Each known parameter that is given exactly once. A map, because a name may be one that every object has. */
function readParameters(query: string, start: PageState): Parameters {
  const known = parametersOf(start.problem);
  const given = new Map<string, string[]>();
  for (const [name, value] of new URLSearchParams(query)) given.set(name, [...(given.get(name) ?? []), value]);
  const values = new Map<string, string>();
  const faults: LinkFault[] = [];
  for (const [name, texts] of given) {
    const [text = ""] = texts;
    if (!known.includes(name)) faults.push(fault(name, text, `only the parameters ${known.join(", ")}`));
    else if (texts.length > 1) faults.push(fault(name, texts.join(", "), "one value, given once"));
    else values.set(name, text);
  }
  return { values, faults };
}

type Choice<Value> = { readonly value?: Value; readonly faults: readonly LinkFault[] };

function choose<Value extends string | number>(
  name: string,
  values: ReadonlyMap<string, string>,
  accepted: readonly Value[],
): Choice<Value> {
  const text = values.get(name);
  if (text === undefined) return { faults: [] };
  const value = accepted.find((one) => String(one) === text);
  return value === undefined ? { faults: [fault(name, text, accepted.join(", "))] } : { value, faults: [] };
}

/** An empty value is no line: it shows all where the lesson would start with fewer. */
function decodeUpTo(text: string | undefined): Choice<string | null> {
  if (text === undefined) return { faults: [] };
  if (text === "") return { value: null, faults: [] };
  if (LINE_ID.test(text)) return { value: text, faults: [] };
  return { faults: [fault("upto", text, 'the id of a line, such as "eliminate.divide"')] };
}
