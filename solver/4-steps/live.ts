// An equation while the elimination works on it.
import type { AxisIndex } from "../2-forces/types.ts";
import { unknownsOf } from "../algebra/linear.ts";
import type { Term } from "../algebra/linear.ts";

/** An equation in whole forces, with the line that shows its present form. */
export interface Live {
  readonly name: string;
  readonly axis: AxisIndex;
  readonly left: readonly Term[];
  readonly right: readonly Term[];
  readonly line: string;
}

/** The unknowns of an equation that no line has given yet. */
export function openUnknowns(live: Live, solved: { has(unknown: string): boolean }): string[] {
  return unknownsOf([...live.left, ...live.right]).filter((u) => !solved.has(u));
}
