// The document as text: how a changed document is written, and what a typed text holds.
import { numberText, readNumberText } from "../../shared/problem/index.ts";
import { isObject } from "./json.ts";
import type { Json, JsonObject } from "./json.ts";

const MOST_DIGITS = 15;
const WIDEST = 88;

/** What a field of the form takes: a number for the document, or nothing. */
export type Entry = number | string | undefined;

/** A number as somebody types it: decimal comma and true minus are understood. null for what is no number. */
export function readEntry(text: string): number | string | null {
  const plain = text.trim().replace(",", ".").replace("−", "-");
  const value = readNumberText(plain);
  if (value === null) return null;
  const isDecimal = /^[+-]?(?:\d+\.?\d*|\.\d+)$/.test(plain);
  const digits = plain.replaceAll(/\D/g, "").replace(/^0+/, "").length;
  // A fraction or a power of ten stays as it was typed; a plain decimal is a JSON number where that is exact.
  return isDecimal && digits <= MOST_DIGITS && numberText(value) === String(Number(plain)) ? Number(plain) : plain;
}

/** The document's JSON, an object that fits on one line kept on one. */
export function writeDocument(document: Json, indent = ""): string {
  const line = writeLine(document);
  const nested = Array.isArray(document)
    ? document.length > 0
    : isObject(document) && Object.values(document).some((value) => typeof value === "object" && value !== null);
  if (line.length + indent.length <= WIDEST && (indent !== "" || !nested)) return line;
  const inner = `${indent}  `;
  if (Array.isArray(document)) {
    const items = (document as readonly Json[]).map((item) => inner + writeDocument(item, inner));
    return `[\n${items.join(",\n")}\n${indent}]`;
  }
  if (!isObject(document)) return line;
  const entries = Object.entries(document).flatMap(([key, value]) =>
    value === undefined ? [] : [`${inner}${JSON.stringify(key)}: ${writeDocument(value, inner)}`],
  );
  return `{\n${entries.join(",\n")}\n${indent}}`;
}

function writeLine(value: Json): string {
  if (Array.isArray(value)) return `[${(value as readonly Json[]).map(writeLine).join(", ")}]`;
  if (!isObject(value)) return JSON.stringify(value);
  const entries = Object.entries(value).flatMap(([key, inner]) =>
    inner === undefined ? [] : [`${JSON.stringify(key)}: ${writeLine(inner)}`],
  );
  return entries.length === 0 ? "{}" : `{ ${entries.join(", ")} }`;
}

/**
 * The object that a JSON text holds, for the form to show; null where it is none. A number of more digits than a double
 * keeps becomes text, so that the form does not change it.
 */
export function readObject(text: string): JsonObject | null {
  try {
    const value: unknown = JSON.parse(text, keepLongNumbers);
    return isObject(value) ? value : null;
  } catch (error) {
    // Not JSON, or nested deeper than the engine goes: the form has nothing to show, and the reader of documents says why.
    if (error instanceof SyntaxError || error instanceof RangeError) return null;
    throw error;
  }
}

// `context` is there in current browsers; elsewhere the double has to do.
function keepLongNumbers(_key: string, value: unknown, context?: { readonly source?: string }): unknown {
  const source = context?.source;
  if (typeof value !== "number" || source === undefined) return value;
  return source.replace(/e.*$/i, "").replaceAll(/\D/g, "").replace(/^0+/, "").length > MOST_DIGITS ? source : value;
}
