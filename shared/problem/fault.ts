import type { Problem } from "./types.ts";

/** One thing that a document or a change has wrong. */
export type Fault = {
  /** Where: a JSON pointer such as `/ropes/0/direction/angle`; "" is the whole document. */
  readonly path: string;
  /** What stands there, in words, cut short. */
  readonly found: string;
  /** What may stand there, with its unit and limits. */
  readonly accepted: string;
};

/** A problem, or everything that is wrong with it (at least one fault). */
export type Reading =
  { readonly ok: true; readonly problem: Problem } | { readonly ok: false; readonly faults: readonly Fault[] };

const LONGEST_QUOTE = 40;
const MOST_KEYS = 6;

/** A value from a document in a few words, whatever it is: never long, never deep. */
export function describe(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return quote(value);
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return describeObject(value);
  // A number that a double would change comes as a symbol: see json-text.ts.
  if (typeof value === "symbol") return onOneLine(cut(value.description ?? "a symbol"));
  if (typeof value === "number" || typeof value === "boolean" || value === null) return String(value);
  return `a ${typeof value}`;
}

function describeObject(value: object): string {
  const keys = Object.keys(value);
  if (keys.length === 0) return "an object without keys";
  const shown = keys.slice(0, MOST_KEYS).map(quote).join(", ");
  return `an object with the keys ${shown}${keys.length > MOST_KEYS ? ", …" : ""}`;
}

/** Text in quotes, on one line and cut short. */
export function quote(text: string): string {
  return onOneLine(JSON.stringify(cut(text)));
}

/** The text with everything that is not a visible character or a space (line breaks, controls) written as \uXXXX. */
export function onOneLine(text: string): string {
  return text.replaceAll(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (character) => {
    const code = character.codePointAt(0) ?? 0;
    return `\\u${code.toString(16).toUpperCase().padStart(4, "0")}`;
  });
}

function cut(text: string): string {
  return text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text;
}
