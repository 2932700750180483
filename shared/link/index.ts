/** The state of a page as the query of its address, and back: text in, text out. */
export { decodeState } from "./decode.ts";
export type { Decoded } from "./decode.ts";
export { encodeState } from "./encode.ts";
export { AXES, FIGURES, FIRST_AXES, LINE_ID, LONGEST_QUERY, MARKS, parametersOf } from "./parameters.ts";
export type { Figures, FirstAxis, LinkFault, PageState } from "./types.ts";
