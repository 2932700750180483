// What the parts of any derivation are called on a page without an author.
import type { Part } from "../../solver/index.ts";

/** A part of the outline, in the order of the page. */
export interface OutlinePart {
  readonly part: Part;
  readonly title: string;
  /** Whether pictures belong to it. */
  readonly hasPicture: boolean;
}

const TITLES: Readonly<Record<Part, string>> = {
  problem: "The problem",
  picture: "The situation",
  motion: "How it moves",
  forces: "Forces",
  diagram: "The force diagram",
  axes: "Axes and signs",
  law: "The law along each axis",
  count: "Unknowns and equations",
  angles: "The angles",
  components: "Components",
  algebra: "From the equations to one unknown",
  case: "The other case",
  answer: "The answer",
  check: "Checks",
  letters: "The result in letters",
  scale: "The diagram, to scale",
  recap: "What was done",
};

const PICTURED: readonly Part[] = ["diagram", "angles", "components", "case", "answer", "check", "scale"];

/** All parts but the problem itself, which stands open above them. */
export const outlineParts: readonly OutlinePart[] = (Object.entries(TITLES) as [Part, string][])
  .filter(([part]) => part !== "problem")
  .map(([part, title]) => ({ part, title, hasPicture: PICTURED.includes(part) }));
