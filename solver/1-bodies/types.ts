// What the problem describes once its directions are read: a body, its ropes, where everything hangs. No forces yet.
import type { Rational } from "../../shared/exact/index.ts";
import type { AngleValue, Value } from "../algebra/evaluate.ts";

/** -1 to the left or downwards, 1 to the right or upwards, 0 for neither. */
export type Side = -1 | 0 | 1;

/** A point of the picture, in multiples of h, the height of the beam above the load's assumed place; x to the right, y upwards. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where a rope is tied. */
export interface Anchor extends Point {
  /** A beam overhead, or a post where the rope does not rise. */
  readonly kind: "beam" | "post";
}

/** How a direction was written, where that needs a line of its own to convert. */
export type WrittenDirection =
  | { readonly from: "horizontal" }
  | { readonly from: "vertical"; readonly angle: Rational }
  | { readonly from: "slope"; readonly run: Rational; readonly rise: Rational };

/** A straight rope: the side it leads to, whether it rises, and the acute angle it makes with the level line. */
export interface WorldRope {
  readonly id: string;
  /** 1 for the first rope of the problem. */
  readonly number: number;
  /** The letter of its acute angle: alpha, beta, gamma; ropes with equal angles share the first one's letter. */
  readonly angle: string;
  /** The letter it would have if no other rope had its angle. */
  readonly ownAngle: string;
  readonly side: Side;
  readonly rise: Side;
  readonly acute: AngleValue;
  readonly written: WrittenDirection;
  readonly anchor: Anchor;
  /** Length in multiples of h. */
  readonly length: number;
}

/** The body the law is written for. */
export interface WorldBody {
  readonly id: string;
  readonly name: string;
  /** Given by its mass, or by its weight. */
  readonly givenBy: "mass" | "weight";
  readonly mass: Value | null;
  readonly weight: Value;
  readonly acceleration: { readonly x: Value; readonly y: Value };
  /** Sign of g + ay: whether the ropes together have to pull up (1), down (-1) or neither. */
  readonly lift: Side;
  /** Sign of ax. */
  readonly push: Side;
}

/** The whole set-up. */
export interface World {
  readonly gravity: Value;
  readonly body: WorldBody;
  readonly ropes: readonly WorldRope[];
  /** The ropes' lines as seen from the body: "spread" if two directions differ, "one-line" if all lie along one line. */
  readonly lines: "spread" | "one-line";
}

export type * from "./set-up-types.ts";
