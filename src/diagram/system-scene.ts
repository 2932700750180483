// What the pictures of a set-up of any number of bodies are drawn from: plain numbers and prints, made of a derivation.
import type { Run } from "./label.ts";

/** The angle of a force, from a line of reference to the force. */
export interface ForceAngle {
  /** Degrees anticlockwise from the x axis of the line it is measured from; at most a right angle from the force. */
  readonly from: number;
  /** The letter and, where it is given, the print: α, α = 35°. */
  readonly label: readonly Run[];
  /** What its elements carry as their reference: "alpha". */
  readonly ref: string;
}

/** A force in the diagram of one body. */
export interface SystemForce {
  /** The id it has in the lines: "T1", "N", "f", "weight", "P"; elements that belong to it carry it as their reference. */
  readonly ref: string;
  readonly kind: "weight" | "tension" | "normal" | "friction" | "push";
  /** Its letter, such as T with a lowered 1. */
  readonly label: readonly Run[];
  /** Degrees anticlockwise from the x axis. */
  readonly degrees: number;
  /** In the unit of force; null while unknown, or where it is not determined. Below zero it acts the other way. */
  readonly size: number | null;
  /** The size as printed, with its unit. */
  readonly text: string | null;
  /** Whether the problem gives the size. */
  readonly given: boolean;
  readonly angle?: ForceAngle | null;
}

/** A body with all that acts on it. */
export interface SystemBody {
  readonly id: string;
  readonly name: string;
  readonly kind: "load" | "knot" | "pulley";
  /** "4.2 kg", "50 lbf"; null for what has no mass. */
  readonly loadText: string | null;
  readonly at: { readonly x: number; readonly y: number } | null;
  readonly forces: readonly SystemForce[];
  /** Degrees of the axes along which the law is written: to the right and up, or along a surface and away from it. */
  readonly axes: { readonly x: number; readonly y: number };
  /** Acceleration seen from the ground; null where it is not known yet or not determined. */
  readonly acceleration: { readonly x: number; readonly y: number } | null;
  /** Its letter: a, a with a lowered 1. */
  readonly accelerationLabel: readonly Run[];
  /** Whether the problem gives it; the situation shows only such. */
  readonly accelerationGiven: boolean;
  /** Degrees of the positive sense of an acceleration that is to be found along a line; null where there is none. */
  readonly along: number | null;
  /** Mass times acceleration in the unit of force, and its symbol; null where it is not known. */
  readonly net: { readonly x: number; readonly y: number; readonly label: readonly Run[] } | null;
}

/** A place where a rope pulls. */
export interface SystemPull {
  readonly on: string;
  /** Degrees anticlockwise from the x axis. */
  readonly degrees: number;
  /** The acute angle with the level line as printed; null for a level or upright one. */
  readonly degreesText: string | null;
  /** The letter of that angle, such as α; "" where it has none. */
  readonly angleLetter: string;
}

/** A rope by the places where it pulls, in order along the rope. */
export interface SystemRope {
  readonly id: string;
  readonly label: readonly Run[];
  readonly state: "taut" | "slack";
  /** Whether it is straight and pulls with nothing. */
  readonly idle?: boolean;
  readonly pulls: readonly SystemPull[];
  readonly anchor: { readonly x: number; readonly y: number } | null;
  readonly length: number | null;
}

/** A surface under a body. */
export interface SystemSurface {
  readonly id: string;
  readonly on: string;
  readonly of: string | null;
  /** Degrees along the surface, and of the normal that pushes the body. */
  readonly degrees: number;
  readonly normal: number;
  /** The acute angle with the level line as printed; null for a level or upright one. */
  readonly degreesText: string | null;
  readonly angleLetter: string;
  readonly rough: boolean;
  readonly touching: boolean;
}

/** A push by hand. */
export interface SystemPush {
  readonly id: string;
  readonly on: string;
  readonly label: readonly Run[];
  readonly degrees: number;
  /** The acute angle with the level line as printed, null for a level or upright one, and its letter. */
  readonly degreesText: string | null;
  readonly angleLetter: string;
  /** Its size as printed, where the problem gives it. */
  readonly text: string | null;
}

/** Everything that the pictures of a set-up show. */
export interface SystemScene {
  readonly bodies: readonly SystemBody[];
  readonly ropes: readonly SystemRope[];
  readonly surfaces: readonly SystemSurface[];
  readonly pushes: readonly SystemPush[];
  /** How the supports speed up. */
  readonly frame: { readonly x: number; readonly y: number };
  /** The unit of force, for the scale of the diagrams. */
  readonly forceUnit: "N" | "lbf";
  /** Whether every size is known. */
  readonly solved: boolean;
}
