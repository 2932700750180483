import { quote } from "../problem/index.ts";
import { LONGEST_QUERY } from "./parameters.ts";
import type { LinkFault } from "./types.ts";

/** A fault of one parameter, whatever text came with it. */
export function fault(parameter: string, text: string, accepted: string): LinkFault {
  return { parameter: quote(parameter).slice(1, -1), found: quote(text), accepted };
}

/** The fault of a query that is too long to be looked at. */
export function whole(length: number, most: number = LONGEST_QUERY): LinkFault {
  return { parameter: "", found: `${length} characters`, accepted: `at most ${most} characters` };
}
