import type { Rational } from "../exact/index.ts";

/**
 * A problem as the solver takes it: every default filled in, every number exact. SI units and degrees; x points right,
 * y points up. Immutable; `changeProblem` makes a changed copy.
 */
export type Problem = {
  readonly format: 1;
  /** Acceleration of free fall, m/s², 0 or positive. */
  readonly gravity: Rational;
  readonly bodies: readonly Body[];
  readonly ropes: readonly Rope[];
};

/** Something that hangs, given by its mass or by its weight. */
export type Body = {
  readonly id: string;
  /** What a sentence calls it, without article: "brass lantern". */
  readonly name: string;
  readonly load: Load;
  /** The body's own acceleration seen from the ground, m/s². */
  readonly acceleration: { readonly x: Rational; readonly y: Rational };
};

/** A mass in kilograms or a weight in newtons, larger than 0. */
export type Load =
  { readonly kind: "mass"; readonly mass: Rational } | { readonly kind: "weight"; readonly weight: Rational };

/** A rope tied to the body named by `on`, pulling it along `direction`. */
export type Rope = {
  readonly id: string;
  readonly on: string;
  readonly direction: Direction;
};

/** Where a rope pulls: an angle, or so far across and so far up. */
export type Direction =
  | {
      readonly kind: "angle";
      /** Anticlockwise from the positive x axis, normalised to (−180, 180]. */
      readonly degrees: Rational;
      /** How the document gave it, so that a derivation can convert it in the reader's sight. */
      readonly written: WrittenAngle;
    }
  | {
      readonly kind: "slope";
      /** Lengths of any one unit, not both 0: `run` to the right, `rise` up. */
      readonly run: Rational;
      readonly rise: Rational;
    };

/** From the level line, or from straight up towards one side by 0° to 180°. */
export type WrittenAngle =
  { readonly from: "horizontal" } | { readonly from: "vertical"; readonly side: Side; readonly angle: Rational };

/** Left is towards negative x. */
export type Side = "left" | "right";
