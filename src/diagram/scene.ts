// What the pictures are drawn from. Plain numbers and texts: whoever has solved the problem fills this in, and no picture computes physics.
// Axes are the ground's: x to the right, y upwards. Lengths are multiples of h, the height of the beam above the load's assumed place.

/** -1 to the left or downwards, 1 to the right or upwards, 0 for neither. */
export type Sign = -1 | 0 | 1;

/** A point or an arrow of the scene: x to the right, y upwards. */
export interface ScenePoint {
  readonly x: number;
  readonly y: number;
}

/** The symbol of a quantity: an italic letter and an upright subscript, which may be empty. */
export interface QuantityLabel {
  readonly letter: string;
  readonly sub: string;
}

/** A rope as given and as found. */
export interface SceneRope {
  /** The answer's id, such as "T1"; elements that stand for its tension carry it as a reference. */
  readonly id: string;
  /** The symbol of its tension. */
  readonly label: QuantityLabel;
  /** 1 for the first rope; chooses colour and line pattern. */
  readonly number: number;
  /** The letter of the acute angle, such as "α". */
  readonly angleLetter: string;
  /** The given acute angle with the level line, in degrees, 0 to 90. */
  readonly degrees: number;
  /** The same as it is printed, such as "65°". */
  readonly degreesText: string;
  readonly side: Sign;
  readonly rise: Sign;
  readonly anchor: ScenePoint & { readonly kind: "beam" | "post" };
  readonly length: number;
  /** Straight as given; hanging loose; straight, with a direction found and not given. */
  readonly state: "taut" | "slack" | "free";
  /** In newtons; null where it is not determined. */
  readonly tension: number | null;
  /** The tension as it is printed, such as "32.6 N", to stand beside the symbol where arrows are to scale. */
  readonly tensionText?: string | null;
}

/** One body hanging on ropes, solved as far as it can be. */
export interface DiagramScene {
  readonly bodyName: string;
  /** In newtons, 0 or more. */
  readonly weight: number;
  readonly weightLabel: "mg" | "W";
  /** The weight as it is printed, such as "41.2 N". */
  readonly weightText?: string | null;
  /** Mass times acceleration, in newtons. */
  readonly netForce: ScenePoint;
  /** In m/s², seen from the ground. */
  readonly acceleration: ScenePoint;
  readonly ropes: readonly SceneRope[];
  /** Where the load hangs now: the origin unless a rope is slack. */
  readonly position: ScenePoint;
  /** The angle with the level line of the rope on which the load hangs alone. */
  readonly theta: { readonly degrees: number; readonly text: string } | null;
  /** Whether the tensions are determined. */
  readonly solved: boolean;
}

/** Which directions a force picture shows: the given ones, every rope taken as taut, or those found, without the slack ropes. */
export type Attempt = "assumed" | "found";
