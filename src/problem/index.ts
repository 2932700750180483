// The form as functions: from a document to rows, and from an edit of a row to another document. No page, no state.
export { ANGLE_RULE, directionOf, isOblique, oppositeOf, reworded, uphillOf, wordsOf } from "./directions.ts";
export type { DirectionWords, Heading } from "./directions.ts";
export { readEntry, readObject, writeDocument } from "./document-text.ts";
export * from "./form-bodies.ts";
export * from "./form-ropes.ts";
export * from "./form-surfaces.ts";
export * from "./form-world.ts";
export { bodyIdFor, idsOf, nextId } from "./ids.ts";
export * from "./json.ts";
export { fieldsFor, placeInWords } from "./place-in-words.ts";
export { withBodyId, withoutBody } from "./references.ts";
