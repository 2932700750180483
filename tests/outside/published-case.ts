// Published worked examples and table values that one body on one or two ropes can express. Numbers only, with their sources.
// Grade A: problem text and printed answer both read in the book's own source. Grade B: a worked companion or a copy of a table; the printed
// page was not seen, so agreement checks the arithmetic and not the reading of the problem. Pound-force is run as if it were newtons:
// the problems are linear in the weight, so the unit of force carries through.

/** Books named more than once. */
export const UNIVERSITY = "University Physics Volume 1, OpenStax (Ling, Sanny, Moebs), online edition as of 2026";
export const COLLEGE = "College Physics 2e, OpenStax, online edition as of 2026";
export const BUECHE = "F. J. Bueche, Principles of Physics (McGraw-Hill, ISBN 0070088179)";
export const HARTOG = "J. P. Den Hartog, Mechanics (McGraw-Hill 1948; Dover reprint)";

/** A direction as the problem document takes it. */
type Direction =
  | { readonly angle: number }
  | { readonly run: number; readonly rise: number }
  | { readonly angle: number; readonly from: "vertical"; readonly side: "left" | "right" };

/** One printed answer and how many of its figures are significant. */
export interface Printed {
  readonly rope: number;
  readonly value: number;
  readonly figures: number;
  /** How many equal ropes share the pull of this one. */
  readonly shared?: number;
}

/** A case as the source gives it. */
export interface PublishedCase {
  readonly id: string;
  readonly source: string;
  readonly grade: "A" | "B";
  /** Where the value was read: repository, commit, file and place in it. */
  readonly locator: string;
  readonly gravity: number;
  readonly mass?: number;
  readonly weight?: number;
  readonly ax?: number | string;
  readonly ay?: number;
  readonly ropes: readonly Direction[];
  readonly printed: readonly Printed[];
  /** For a load that hangs from one rope alone: the printed angle of that rope from the vertical, in degrees. */
  readonly fromVertical?: Pick<Printed, "value" | "figures">;
}

/** Directions to the left and to the right, degrees above the horizontal. */
export const up = (left: number, right: number): readonly Direction[] => [{ angle: 180 - left }, { angle: right }];
/** The same printed value for both ropes. */
export const both = (value: number, figures: number): readonly Printed[] => [
  { rope: 0, value, figures },
  { rope: 1, value, figures },
];
/** Printed values of the two ropes. */
export const two = (first: number, second: number, figures: number): readonly Printed[] => [
  { rope: 0, value: first, figures },
  { rope: 1, value: second, figures },
];
/** One rope, straight up. */
export const STRAIGHT_UP: readonly Direction[] = [{ angle: 90 }];
