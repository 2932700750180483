// A set-up of any number of bodies once its directions are read: bodies, ropes, surfaces, pushes, and what is known of the motion.
import type { Expr } from "../algebra/expr.ts";
import type { Turned } from "../algebra/turned.ts";
import type { AngleValue, Value } from "../algebra/evaluate.ts";
import type { Side, WrittenDirection } from "./types.ts";

/** A direction that was given: where it points, and the letter of its acute angle with the level line. */
export interface Heading {
  /** Degrees anticlockwise from the x axis, in (-180, 180]. */
  readonly degrees: number;
  readonly side: Side;
  readonly rise: Side;
  /** The letter of its acute angle from the level line, shared by equal angles; used only where it is neither level nor upright. */
  readonly angle: string;
  readonly acute: AngleValue;
  readonly written: WrittenDirection;
}

/** A length pair. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** How a body may move, as seen from the supports or from another body. */
export type Freedom =
  /** Its acceleration is known, seen from the ground. */
  | { readonly kind: "given" }
  /** At rest as seen from the supports. */
  | { readonly kind: "rest" }
  /** Along a line; `value` null: to be found. */
  | {
      readonly kind: "line";
      readonly along: Turned;
      readonly value: Value | null;
      readonly going: -1 | 0 | 1;
      readonly seenFrom: string | null;
      /** Whether the document said so; otherwise it touches a surface and may have to slide on it. */
      readonly stated: boolean;
    }
  | { readonly kind: "free" };

/** A body, knot or movable pulley. */
export interface SetUpBody {
  readonly id: string;
  readonly name: string;
  /** 1 for the first body of the problem. */
  readonly number: number;
  readonly kind: "load" | "knot" | "pulley";
  readonly givenBy: "mass" | "weight";
  /** Null where a weight is given and there is no gravity to find it by: cannot come from a checked problem. */
  readonly mass: Value;
  readonly weight: Value;
  /** Whether it has any mass. */
  readonly massless: boolean;
  readonly freedom: Freedom;
  /** Given acceleration seen from the ground (also of a body at rest in an accelerating frame). */
  readonly acceleration: { readonly x: Value; readonly y: Value };
  readonly at: Place | null;
  readonly letters: BodyLetters;
}

/** How the quantities of a body are written. */
export interface BodyLetters {
  /** m, m1, or W/g. */
  readonly mass: Expr;
  /** mg, m1 g, or W. */
  readonly weight: Expr;
  /** What its weight's parts are called before their axis: W, W1. */
  readonly weightId: string;
  /** Its acceleration along a line: a, a1; its parts are called by this and their axis. */
  readonly acceleration: string;
}

/** A place where a rope pulls a body. */
export interface SetUpPull {
  readonly on: string;
  readonly toward: Turned;
}

/** A rope. Its ends and what it runs over follow from the order of its pulls. */
export interface SetUpRope {
  readonly id: string;
  /** 1 for the first rope of the problem. */
  readonly number: number;
  readonly pulls: readonly SetUpPull[];
  readonly anchor: Place | null;
  readonly length: Value | null;
}

/** A body on a surface. */
export interface Contact {
  readonly id: string;
  /** The letter of its friction. */
  readonly friction: string;
  readonly on: string;
  readonly of: string | null;
  readonly normal: Turned;
  /** Along the surface, the way a slope was given. */
  readonly tangent: Turned;
  /** The letters of its coefficients: mus and muk, numbered where several surfaces are rough. */
  readonly coefficients: { readonly static: string; readonly kinetic: string };
  readonly staticFriction: Value | null;
  readonly kineticFriction: Value | null;
}

/** A push or pull by hand. */
export interface SetUpPush {
  readonly id: string;
  readonly on: string;
  readonly toward: Turned;
  readonly size: Value | null;
}

/** Where a body hangs that is given by the anchors and lengths of its ropes. */
export type Hanging =
  | {
      readonly kind: "placed";
      readonly at: Place;
      /** For each slack rope how far the body is from its anchor, and how long the rope is. */
      readonly bridges: readonly { readonly rope: string; readonly distance: number; readonly length: number }[];
    }
  /** No rope is straight. */
  | { readonly kind: "nowhere"; readonly bridges: readonly never[] }
  /** The ropes do not meet. */
  | { readonly kind: "too-short"; readonly distance: number; readonly reach: number }
  /** One rope is too long to be straight while the other is. */
  | { readonly kind: "one-too-long"; readonly rope: string; readonly distance: number };

/** The whole set-up. */
export interface SetUp {
  readonly units: "SI" | "lbf-ft";
  readonly gravity: Value;
  readonly frame: { readonly x: Value; readonly y: Value };
  readonly bodies: readonly SetUpBody[];
  readonly ropes: readonly SetUpRope[];
  readonly contacts: readonly Contact[];
  readonly pushes: readonly SetUpPush[];
  /** Every angle letter with its value. */
  readonly angles: ReadonlyMap<string, AngleValue>;
  /** Where the body hangs, if lengths of ropes decide. */
  readonly hanging: Hanging | null;
}
