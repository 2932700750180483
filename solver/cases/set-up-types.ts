// The result of a set-up of any number of bodies.
import type { SetUp } from "../1-bodies/types.ts";
import type { SetUpHypothesis } from "../2-forces/types.ts";
import type { SetUpAttempt } from "../4-steps/types.ts";

/** What a set-up comes to. */
export type SetUpKind = "determined" | "under-determined" | "impossible";

/** The attempts in order, the last one in force, and what they make of the set-up. */
export interface SetUpResult {
  readonly setUp: SetUp;
  readonly kind: SetUpKind;
  readonly attempts: readonly SetUpAttempt[];
  readonly inForce: SetUpAttempt;
  /** For pushes of given size, what they may be while static friction still holds. */
  readonly limits: readonly SetUpAttempt[];
  /** Another case that fulfils every law as well, and in which other contacts stay at rest; null where there is none. */
  readonly rival: SetUpHypothesis | null;
  /** The numbers of all unknowns; one of many possibilities where they are not determined. */
  readonly point: ReadonlyMap<string, number>;
  /** Between which values an open unknown can lie. */
  readonly ranges: readonly { readonly id: string; readonly least: number; readonly most: number }[];
}
