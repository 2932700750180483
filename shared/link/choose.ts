import { fault } from "./faults.ts";
import { LINE_ID } from "./parameters.ts";
import type { LinkFault } from "./types.ts";

/** What a parameter asks for; no value where it is absent or not accepted. */
export type Choice<Value> = { readonly value?: Value; readonly faults: readonly LinkFault[] };

/** The one of the accepted values whose text a parameter holds. */
export function choose<Value extends string | number>(
  name: string,
  values: ReadonlyMap<string, string>,
  accepted: readonly Value[],
): Choice<Value> {
  const text = values.get(name);
  if (text === undefined) return { faults: [] };
  const value = accepted.find((one) => String(one) === text);
  return value === undefined ? { faults: [fault(name, text, accepted.join(", "))] } : { value, faults: [] };
}

/** The line that a page stops at; an empty text is no line: it shows all where the page would start with fewer. */
export function decodeUpTo(text: string | undefined): Choice<string | null> {
  if (text === undefined) return { faults: [] };
  if (text === "") return { value: null, faults: [] };
  if (LINE_ID.test(text)) return { value: text, faults: [] };
  return { faults: [fault("upto", text, 'the id of a line, such as "eliminate.divide"')] };
}

/** Each known parameter that a query gives exactly once, and what is wrong with the others. */
export function readParameters(
  query: string,
  known: readonly string[],
): { readonly values: ReadonlyMap<string, string>; readonly faults: readonly LinkFault[] } {
  // Maps, because a name may be one that every object has.
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
