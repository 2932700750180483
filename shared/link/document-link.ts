/**
 * The state of a page that shows any problem, as the query of its address and back: the whole document and the
 * settings. A face of its own, so that a lesson's page goes without it.
 */
import { choose, decodeUpTo, readParameters } from "./choose.ts";
import { documentOfParameter, parameterOfDocument } from "./document-text.ts";
import { fault, whole } from "./faults.ts";
import { AXES, FIGURES, FIRST_AXES, MARKS, MOST_FAULTS } from "./parameters.ts";
import type { Figures, FirstAxis, LinkFault } from "./types.ts";

/** How long a query with a document may be: servers usually bear a first line of 8 kB. */
export const LONGEST_DOCUMENT_QUERY = 7500;
/** How a derivation of any problem is written. */
export type DocumentSettings = {
  readonly figures: Figures;
  readonly firstAxis: FirstAxis;
  readonly axes: (typeof AXES)[number];
  readonly mark: (typeof MARKS)[number];
};

/** All of such a page that its address keeps; the document is JSON data, not checked. */
export type DocumentState = {
  readonly document: object;
  readonly settings: DocumentSettings;
  /** Show lines up to the one with this id; null shows all. */
  readonly upTo: string | null;
};

const NAMES = ["doc", "figures", "first", "axes", "mark", "upto"];

/**
 * The query (without "?") that leads from the page's start to this state: only what differs, in a fixed order; "" where
 * nothing does; null where the document is too long for an address.
 */
export function encodeDocumentState(state: DocumentState, start: DocumentState): string | null {
  const { settings } = state;
  const entries = [
    differing("doc", parameterOfDocument(state.document), parameterOfDocument(start.document)),
    differing("figures", String(settings.figures), String(start.settings.figures)),
    differing("first", settings.firstAxis, start.settings.firstAxis),
    differing("axes", settings.axes, start.settings.axes),
    differing("mark", settings.mark, start.settings.mark),
    differing("upto", state.upTo ?? "", start.upTo ?? ""),
  ];
  const query = entries.filter((entry) => entry !== null).join("&");
  return query.length > LONGEST_DOCUMENT_QUERY ? null : query;
}

const differing = (name: string, text: string, start: string): string | null =>
  text === start ? null : `${name}=${text}`;

/**
 * The state that a query (with or without "?") asks for. A parameter that is malformed, unknown or given twice becomes
 * a fault and leaves its start value. Takes any text; never throws.
 */
export function decodeDocumentState(
  query: string,
  start: DocumentState,
): { readonly state: DocumentState; readonly faults: readonly LinkFault[] } {
  // Another program may write a link less tersely than this one.
  const most = 2 * LONGEST_DOCUMENT_QUERY;
  if (query.length > most) return { state: start, faults: [whole(query.length, most)] };
  const { values, faults: strange } = readParameters(query, NAMES);
  const text = values.get("doc");
  const read = text === undefined ? null : documentOfParameter(text);
  const figures = choose("figures", values, FIGURES);
  const first = choose("first", values, FIRST_AXES);
  const axes = choose("axes", values, AXES);
  const mark = choose("mark", values, MARKS);
  const upTo = decodeUpTo(values.get("upto"));
  const broken = read === null || read.ok ? [] : [fault("doc", text ?? "", read.accepted)];
  return {
    state: {
      document: read?.ok === true ? read.document : start.document,
      settings: {
        figures: figures.value ?? start.settings.figures,
        firstAxis: first.value ?? start.settings.firstAxis,
        axes: axes.value ?? start.settings.axes,
        mark: mark.value ?? start.settings.mark,
      },
      upTo: upTo.value === undefined ? start.upTo : upTo.value,
    },
    faults: [broken, figures.faults, first.faults, axes.faults, mark.faults, upTo.faults, strange]
      .flat()
      .slice(0, MOST_FAULTS),
  };
}
