// The parts of a derivation that a lesson can show, for checking what an author wrote.
import type { Part } from "../../solver/index.ts";

export type { Part } from "../../solver/index.ts";

const PARTS: Readonly<Record<Part, true>> = {
  problem: true,
  picture: true,
  motion: true,
  forces: true,
  diagram: true,
  axes: true,
  law: true,
  count: true,
  angles: true,
  components: true,
  algebra: true,
  case: true,
  answer: true,
  check: true,
  letters: true,
  scale: true,
  recap: true,
};

/** Whether a word names a part. */
export const isPart = (word: string): word is Part => Object.hasOwn(PARTS, word);
