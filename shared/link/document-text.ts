/**
 * A whole document as one parameter of an address, readable there: Rison, which is JSON with brackets and quotes that
 * an address can bear ((format:1,bodies:!((id:bell,mass:3)))), a space written as +.
 */
import { RISON } from "rison2";

/** A JSON number of more digits may not come back from a double as it was written. */
const MOST_DIGITS = 15;
const QUOTED = /'(?:!.|[^'!])*'/gs;
const NUMBER = /(?<=^|[(,:])-?\d[\d.]*(?=$|[),e])/g;
/** What `encodeURIComponent` escapes although a query bears it, with the space as +. */
const BEARABLE: Readonly<Record<string, string>> = { "%20": "+", "%2C": ",", "%3A": ":", "%40": "@", "%2F": "/" };

/** JSON data as the text of a parameter, escaped. Data that JSON cannot hold is the caller's fault. */
export function parameterOfDocument(document: unknown): string {
  return encodeURIComponent(RISON.stringify(document)).replaceAll(
    /%(?:20|2C|3A|40|2F)/g,
    (escape) => BEARABLE[escape] ?? escape,
  );
}

/** What a parameter's text holds, or in words why it is no document. */
export type DocumentText =
  { readonly ok: true; readonly document: object } | { readonly ok: false; readonly accepted: string };

const accepted = "a whole document in parentheses, (format:1,gravity:9.8,bodies:!((…)))";

/** The JSON data in a parameter's text, escapes already undone. Whether it is a document of a problem the schema says. Never throws. */
export function documentOfParameter(text: string): DocumentText {
  const long = text
    .replaceAll(QUOTED, "''")
    .match(NUMBER)
    ?.find((number) => digitsOf(number) > MOST_DIGITS);
  if (long !== undefined)
    return { ok: false, accepted: `${long} in quotes, as every number of more than ${MOST_DIGITS} digits` };
  try {
    const document: unknown = RISON.parse(text);
    if (typeof document === "object" && document !== null && !Array.isArray(document)) return { ok: true, document };
  } catch (error) {
    // The parser's only complaints: the text is no Rison, or brackets are nested deeper than its stack.
    if (!(error instanceof SyntaxError) && !(error instanceof RangeError)) throw error;
  }
  return { ok: false, accepted };
}

const digitsOf = (number: string): number => number.replaceAll(/\D/g, "").replace(/^0+/, "").replace(/0+$/, "").length;
