import { onOneLine } from "./fault.ts";
import type { Fault } from "./fault.ts";
import { DIGITS_OF_A_JSON_NUMBER, readNumberText, significantDigits } from "./written-number.ts";

/** How long the text of a document may be. */
export const LONGEST_DOCUMENT = 100_000;
const LONGEST_REASON = 120;
// The engine's only other complaint: it runs out of stack.
const TOO_DEEP = "brackets nested deeper than any document needs";

/** What a text holds, or why it is not JSON. */
export type ParsedJson =
  { readonly ok: true; readonly document: unknown } | { readonly ok: false; readonly fault: Fault };

/**
 * A JSON text as data, in which every number is still the decimal that was written: one of more than 15 significant
 * digits, or with a power of ten beyond the limits, comes as a symbol with its text, which no schema takes for a number.
 * Never throws.
 */
export function parseJson(text: string): ParsedJson {
  if (text.length > LONGEST_DOCUMENT) {
    const accepted = `a JSON document of at most ${LONGEST_DOCUMENT} characters`;
    return { ok: false, fault: { path: "", found: `a text of ${text.length} characters`, accepted } };
  }
  try {
    return { ok: true, document: JSON.parse(text, keepWrittenNumber) };
  } catch (error) {
    const found =
      error instanceof SyntaxError
        ? `a text that is not JSON (${onOneLine(error.message.slice(0, LONGEST_REASON))})`
        : TOO_DEEP;
    return { ok: false, fault: { path: "", found, accepted: "a JSON document" } };
  }
}

// `context.source` is there from Node 21 and in current browsers; elsewhere the double has to speak for itself.
function keepWrittenNumber(_key: string, value: unknown, context?: { readonly source?: string }): unknown {
  const source = context?.source;
  if (typeof value !== "number" || source === undefined) return value;
  const faithful = significantDigits(source) <= DIGITS_OF_A_JSON_NUMBER && readNumberText(source) !== null;
  return faithful ? value : Symbol(source);
}
