// What a hypothesis assumes of a set-up, and the forces on its bodies under it.
import type { Expr } from "../algebra/expr.ts";
import type { Turned } from "../algebra/turned.ts";

/**
 * What a contact is assumed to do. "smooth": no friction, and free to slide. "held": no friction, and at rest all the
 * same. "sticks": at rest by static friction. "slides": kinetic friction.
 */
export type Grip = "smooth" | "held" | "sticks" | "slides";

/** An assumption about one contact. */
export interface ContactState {
  readonly touch: "touching" | "lifted";
  readonly grip: Grip;
  /** Whether friction acts on the body along the contact's tangent (1) or against it (-1). */
  readonly sense: 1 | -1;
}

/** An assumption about every rope and contact, by id. */
export interface SetUpHypothesis {
  readonly id: string;
  readonly ropes: Readonly<Record<string, "taut" | "slack">>;
  readonly contacts: Readonly<Record<string, ContactState>>;
}

/** A force on one body. */
export interface SetUpForce {
  /** What points at it: the id of its rope, contact, friction or push; "weight" with the body's number. */
  readonly ref: string;
  readonly kind: "weight" | "tension" | "normal" | "friction" | "push";
  /** The body it acts on. */
  readonly on: string;
  readonly toward: Turned;
  /** The letter of its size where that is to be found; null where it is given. */
  readonly unknown: string | null;
  /** Its size in letters. */
  readonly size: Expr;
  /** The rope, contact or push it comes from; "" for the weight. */
  readonly from: string;
  /** The body that exerts it, where it is one of the set-up. */
  readonly by: string | null;
}
