import type { Rational } from "../exact/index.ts";

/**
 * A problem as the solver takes it: every default filled in, every number exact. Degrees; x points right, y points up.
 * Immutable; `changeProblem` makes a changed copy.
 */
export type Problem = {
  readonly format: 1;
  readonly units: Units;
  /** Acceleration of free fall, 0 or positive. */
  readonly gravity: Rational;
  /** How the supports (beams, ground, slopes, fixed pulleys) speed up, seen from the ground: a lift, a cart. */
  readonly frame: Vector;
  readonly bodies: readonly Body[];
  readonly ropes: readonly Rope[];
  readonly surfaces: readonly Surface[];
  readonly pushes: readonly Push[];
};

/** SI: kg, N, m, s. Pound-force and foot: slug, lbf, ft, s. Numbers are in these throughout a problem. */
export type Units = "SI" | "lbf-ft";

/** Two parts, to the right and up. */
export type Vector = { readonly x: Rational; readonly y: Rational };

/** Something that forces act on: a load; a knot, which has no mass; or a movable pulley, which may have one. */
export type Body = {
  readonly id: string;
  /** What a sentence calls it, without article: "brass lantern". */
  readonly name: string;
  readonly kind: "load" | "knot" | "pulley";
  /** A mass of 0 for a knot and for a pulley without mass. */
  readonly load: Load;
  /** The body's own acceleration seen from the ground; zero unless given. */
  readonly acceleration: Vector;
  /** What is known of its motion. */
  readonly motion: Motion;
  /** Where it is, a length; null where only directions are given. */
  readonly at: Vector | null;
};

/** A mass, 0 or more, or a weight, larger than 0. */
export type Load =
  { readonly kind: "mass"; readonly mass: Rational } | { readonly kind: "weight"; readonly weight: Rational };

/**
 * What is known of a body's motion. "unstated": it stays at rest as seen from the supports, unless it can slide on a
 * surface and has to. "given": `acceleration` was written. "line": it can only move along a line, with a known or an
 * unknown acceleration. "free": nothing is known.
 */
export type Motion =
  | { readonly kind: "unstated" | "given" | "free" }
  | {
      readonly kind: "line";
      /** The positive sense of the line. */
      readonly along: Direction;
      /** Along the line as seen from the supports (or from the body `seenFrom`); null: to be found. */
      readonly acceleration: Rational | null;
      /** Whether it already moves along the line (1), against it (-1), or starts from rest (0). */
      readonly going: -1 | 0 | 1;
      /** The id of the body from which the line and the acceleration are seen; null: from the supports. */
      readonly seenFrom: string | null;
    };

/**
 * A rope. It pulls the body `on` along `direction`, and each body in `further` likewise, in the order in which one meets
 * them along the rope; its pull is the same all along. Two pulls in a row on one body: it runs round that body. Where two
 * pulls in a row are on different bodies and not opposite, a fixed pulley stands between. A rope whose `further` is empty
 * ends at a support.
 */
export type Rope = {
  readonly id: string;
  readonly on: string;
  readonly direction: Direction;
  readonly further: readonly Pull[];
  /** Where it is tied to the support, a length; null where only its direction is given. */
  readonly anchor: Vector | null;
  /** How long it is; null unless given. */
  readonly length: Rational | null;
};

/** A place where a rope pulls. */
export type Pull = { readonly on: string; readonly direction: Direction };

/** A surface that a body touches. */
export type Surface = {
  /** The id of the normal force. */
  readonly id: string;
  /** The body that is pushed along the normal. */
  readonly on: string;
  /** The body whose surface it is; null: a support. */
  readonly of: string | null;
  /** Along the surface ("slope"), the normal then points to its upper side; or of the normal itself. */
  readonly lies: { readonly kind: "slope" | "normal"; readonly direction: Direction };
  /** Coefficients; both null: frictionless. */
  readonly friction: { readonly static: Rational | null; readonly kinetic: Rational | null };
};

/** A push or a pull by hand: of given size, or of a size to be found, which keeps the state that is given. */
export type Push = {
  readonly id: string;
  readonly on: string;
  readonly direction: Direction;
  readonly size: Rational | null;
};

/** Where a rope pulls: an angle, so far across and so far up, or wherever the rope turns out to lie. */
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
    }
  /** The rope has an anchor and a length: where its body comes to hang decides. */
  | { readonly kind: "hangs" };

/** From the level line, or from straight up towards one side by 0° to 180°. */
export type WrittenAngle =
  { readonly from: "horizontal" } | { readonly from: "vertical"; readonly side: Side; readonly angle: Rational };

/** Left is towards negative x. */
export type Side = "left" | "right";
