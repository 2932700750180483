// The forces on a body: each with its direction, whether its size is known, and why it is there; and those that are absent, with the reason.
import type { Side } from "../1-bodies/types.ts";
import type { Expr } from "../algebra/expr.ts";

/** Axis 0 is horizontal (x, to the right), axis 1 vertical (y, upwards). */
export type AxisIndex = 0 | 1;

/** One cosine of a direction: the side the force points to along an axis (0: no component) and the positive factor, sin or cos of its acute angle. */
export interface DirectionCosine {
  readonly sign: Side;
  readonly factor: Expr;
}

/** What a hypothesis assumes of a rope: straight along its given direction, hanging loose, or straight with a direction still to be found. */
export type RopeState = "taut" | "slack" | "free";

/** An assumption about every rope, by rope id. */
export interface Hypothesis {
  readonly id: string;
  readonly ropes: Readonly<Record<string, RopeState>>;
}

/** A force on the body. */
export type Force =
  | {
      readonly kind: "weight";
      readonly id: "weight";
      readonly on: string;
      readonly cosines: readonly DirectionCosine[];
      readonly size: Expr;
    }
  | {
      readonly kind: "tension";
      readonly id: string;
      readonly on: string;
      readonly rope: string;
      readonly cosines: readonly DirectionCosine[];
    }
  | {
      readonly kind: "free-tension";
      readonly id: string;
      readonly on: string;
      readonly rope: string;
      readonly sides: readonly Side[];
    };

/** A force one might expect and that does not act. */
export type AbsentForce =
  | { readonly kind: "normal" }
  | { readonly kind: "friction" }
  | { readonly kind: "push" }
  | { readonly kind: "weight" }
  | { readonly kind: "slack-tension"; readonly rope: string };

/** All that acts, and all that does not. */
export interface ForceList {
  readonly acting: readonly Force[];
  readonly absent: readonly AbsentForce[];
}

export type * from "./set-up-types.ts";
