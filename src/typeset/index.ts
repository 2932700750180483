// Typesetting: forms, slots and the paragraphs on the page. Nothing here knows any physics.
export { FormCache } from "./form-cache.ts";
export { Follower } from "./follow.ts";
export { NotYetTypeset, mathMarkup, paragraphMarkup, sentenceMarkup } from "./markup.ts";
export type { Writing } from "./markup.ts";
export { RestQueue } from "./slot-nodes.ts";
export { escapeText } from "./slots.ts";
export type { MathPrinter } from "./slots.ts";
