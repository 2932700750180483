import type { Problem } from "./types.ts";

/** One thing that a document or a change has wrong. */
export interface Fault {
  /** Where: a JSON pointer such as `/ropes/0/direction/angle`; "" is the whole document. */
  readonly path: string;
  /** What stands there, in words, cut short. */
  readonly found: string;
  /** What may stand there, with its unit and limits. */
  readonly accepted: string;
}

/** A problem, or everything that is wrong with it (at least one fault). */
export type Reading =
  | { readonly ok: true; readonly problem: Problem }
  | { readonly ok: false; readonly faults: readonly Fault[] };

const LONGEST_QUOTE = 40;

/** A value from a document in a few words, whatever it is: never long, never deep. */
export function describe(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return quote(value);
  if (Array.isArray(value)) return value.length === 1 ? "a list of one" : `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return "an object";
  return String(value);
}

/** Text in quotes, cut short and with control characters made visible. */
export function quote(text: string): string {
  return JSON.stringify(text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text);
}
