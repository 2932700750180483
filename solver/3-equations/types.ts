// Newton's second law along one axis, written with component sizes.
import type { Side } from "../1-bodies/types.ts";
import type { AxisIndex } from "../2-forces/types.ts";
import type { Expr } from "../algebra/expr.ts";
import type { Term } from "../algebra/linear.ts";

/** The size of one component, such as T1y, with what it belongs to. */
export interface Component {
  /** "T1y" */
  readonly id: string;
  readonly force: string;
  readonly axis: AxisIndex;
  readonly sign: Side;
  /** T1 sin α is T1y with factor sin α; null where the direction of the force is unknown. */
  readonly factor: Expr | null;
}

/** What the body's acceleration along the axis is: none, as given, or exactly that of free fall (then m·a is −mg). */
export type AxisMotion = { readonly kind: "none" } | { readonly kind: "given" } | { readonly kind: "free-fall" };

/** The law along one axis. */
export interface AxisLaw {
  readonly axis: AxisIndex;
  readonly name: "horizontal" | "vertical";
  /** Components that are there, in the order of the forces. */
  readonly components: readonly Component[];
  /** Forces that have no component along this axis, by id. */
  readonly without: readonly string[];
  /** Known forces along the axis, with their signs. */
  readonly known: readonly Term[];
  /** m·a in letters. */
  readonly massTimesAcceleration: Expr;
  readonly motion: AxisMotion;
  /** The sign of what the components must add up to: m·a less the known forces. */
  readonly needed: Side;
}

export type * from "./set-up-types.ts";
