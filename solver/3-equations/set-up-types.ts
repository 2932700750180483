// The equations of a set-up: Newton's second law for each body and axis, what ropes and surfaces ask of the motion, and the law of kinetic friction.
import type { SetUpForce } from "../2-forces/types.ts";
import type { Expr } from "../algebra/expr.ts";
import type { Turned } from "../algebra/turned.ts";

/** One part of an acceleration: a letter along a direction. */
export interface MotionPart {
  readonly letter: string;
  readonly unknown: boolean;
  readonly toward: Turned;
}

/** How a body moves under a hypothesis. Its acceleration is the sum of its own parts and, if the supports carry it, of theirs. */
export interface BodyMotion {
  readonly body: string;
  /** Seen from the supports. */
  readonly own: readonly MotionPart[];
  /** Of the supports; empty where `own` is already seen from the ground. */
  readonly carried: readonly MotionPart[];
}

/** The two axes of a body. */
export interface BodyAxes {
  readonly body: string;
  /**
   * "level": right and up. "counted": the same, but one of them turned round to the way in which the motion is counted.
   * "slope": along a surface and away from it. "line": along a line of motion and across it.
   */
  readonly kind: "level" | "counted" | "slope" | "line";
  readonly x: Turned;
  readonly y: Turned;
}

/** A force's part along an axis. */
export interface ForcePart {
  readonly force: SetUpForce;
  /** T1x, W1y; the force's own letter where the whole force lies along the axis. */
  readonly id: string;
  readonly sign: 1 | -1;
  /** sin or cos; 1 where the whole force lies along the axis. */
  readonly factor: Expr;
}

/** A letter of a motion times a cosine. */
export interface MotionTerm {
  readonly letter: string;
  readonly unknown: boolean;
  readonly sign: 1 | -1;
  readonly factor: Expr;
}

/** Newton's second law for one body along one of its axes. */
export interface BodyLaw {
  readonly kind: "law";
  /** "crate.x" */
  readonly id: string;
  readonly body: string;
  readonly axis: 0 | 1;
  readonly parts: readonly ForcePart[];
  /** Forces without a part along the axis, by reference. */
  readonly without: readonly string[];
  /** The acceleration along the axis; empty where it is zero. */
  readonly motion: readonly MotionTerm[];
  /** The letter of the acceleration along the axis: ax, a1y. */
  readonly letter: string;
  /** The mass in letters, null for what has none. */
  readonly mass: Expr | null;
}

/** What ties accelerations together: a rope keeps its length, a surface is not left, what sticks does not slide. The terms add up to zero. */
export interface Tie {
  readonly kind: "rope" | "touch" | "stick";
  readonly id: string;
  /** The rope or contact. */
  readonly of: string;
  readonly terms: readonly MotionTerm[];
}

/** Kinetic friction is the coefficient times the normal force. */
export interface FrictionLaw {
  readonly kind: "friction";
  readonly id: string;
  readonly contact: string;
  readonly friction: string;
  readonly normal: string;
  /** The letter of the coefficient. */
  readonly coefficient: string;
}

/** An equation of a set-up. */
export type SetUpEquation = BodyLaw | Tie | FrictionLaw;

/** All that stage 3 makes. */
export interface Equations {
  readonly axes: readonly BodyAxes[];
  readonly motions: readonly BodyMotion[];
  readonly equations: readonly SetUpEquation[];
}
