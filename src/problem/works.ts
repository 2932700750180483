// What the page needs once it is touched or its address holds a problem: the solver, the reader of documents and the codec of links.
export { readProblem } from "../../shared/problem/schema.ts";
export { decodeDocumentState, encodeDocumentState } from "../../shared/link/document-link.ts";
export { outcomeText } from "../lesson/outcome.ts";
export { revealUpTo } from "../lesson/reveal.ts";
export { derivationWith } from "./derivation-with.ts";
export { pictureOf } from "./picture-of.ts";
