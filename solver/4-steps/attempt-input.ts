// What the moves of one attempt are made from.
import type { World } from "../1-bodies/types.ts";
import type { ForceList, Hypothesis } from "../2-forces/types.ts";
import type { AxisLaw } from "../3-equations/types.ts";
import type { PullSign, Verdict } from "./verdict.ts";

/** Which axis the reader wants first. */
export type FirstAxis = "vertical" | "horizontal";

/** All that the moves of one attempt are made from. */
export interface AttemptInput {
  readonly world: World;
  readonly hypothesis: Hypothesis;
  readonly forces: ForceList;
  readonly laws: readonly [AxisLaw, AxisLaw];
  readonly verdict: Verdict;
  /** Signs of the pulls the laws ask for, exactly; empty where they do not fix each pull. */
  readonly pullSigns: readonly PullSign[];
  readonly firstAxis: FirstAxis;
  /** Keeps line ids of a second attempt apart. */
  readonly prefix: string;
  /** Where the load hangs once a rope is slack, as the distance from the slack rope's upper end; null in a first attempt. */
  readonly bridge: { readonly rope: string; readonly dx: number; readonly dy: number } | null;
}
