// What a problem turns out to be.
import type { Point, World } from "../1-bodies/types.ts";
import type { Attempt } from "../4-steps/types.ts";

/** The case that a problem turns out to be. */
export type CaseKind = "taut" | "slack" | "impossible" | "under-determined";

/** Why a problem is impossible. */
export type ImpossibleReason = "must-push" | "outrun" | "off-line";

/** The attempts in order, the last one in force, and what they make of the problem. */
export interface CaseResult {
  readonly world: World;
  readonly kind: CaseKind;
  readonly slack: readonly string[];
  readonly impossible: ImpossibleReason | null;
  readonly attempts: readonly Attempt[];
  /** Where the load is: its assumed place, or where it hangs on one rope. Multiples of h. */
  readonly position: Point;
}
export type * from "./set-up-types.ts";
