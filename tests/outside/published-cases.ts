// Published worked examples and table values that one body on one or two ropes can express. Numbers only, with their sources.
// Grade A: problem text and printed answer both read in the book's own source. Grade B: a worked companion or a copy of a table; the printed
// page was not seen, so agreement checks the arithmetic and not the reading of the problem. Pound-force is run as if it were newtons:
// the problems are linear in the weight, so the unit of force carries through.

const UNIVERSITY = "University Physics Volume 1, OpenStax (Ling, Sanny, Moebs), online edition as of 2026";
const COLLEGE = "College Physics 2e, OpenStax, online edition as of 2026";
const BUECHE = "F. J. Bueche, Principles of Physics (McGraw-Hill, ISBN 0070088179)";

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
  readonly gravity: number;
  readonly mass?: number;
  readonly weight?: number;
  readonly ay?: number;
  readonly ropes: readonly Direction[];
  readonly printed: readonly Printed[];
}

const up = (left: number, right: number): readonly Direction[] => [{ angle: 180 - left }, { angle: right }];
const both = (value: number, figures: number): readonly Printed[] => [
  { rope: 0, value, figures },
  { rope: 1, value, figures },
];
const two = (first: number, second: number, figures: number): readonly Printed[] => [
  { rope: 0, value: first, figures },
  { rope: 1, value: second, figures },
];
const STRAIGHT_UP: readonly Direction[] = [{ angle: 90 }];

/** The cases that are run. */
export const CASES: readonly PublishedCase[] = [
  {
    id: "hang-03",
    source: `${UNIVERSITY}, Ch. 5 problem 59(a)`,
    grade: "A",
    gravity: 9.8,
    mass: 2e-5,
    ropes: STRAIGHT_UP,
    printed: [{ rope: 0, value: 0.000196, figures: 3 }],
  },
  {
    id: "two-01",
    source: `${UNIVERSITY}, Example 6.1 (same numbers in College Physics 2e, Example 4.8)`,
    grade: "A",
    gravity: 9.8,
    mass: 15,
    ropes: up(30, 45),
    printed: two(108, 132, 3),
  },
  {
    id: "two-03",
    source: "Calculus Volume 3, OpenStax (Strang, Herman), online edition as of 2026, sect. 2.1 exercise 55",
    grade: "A",
    gravity: 9.8,
    weight: 50,
    ropes: up(40, 53),
    printed: two(30.13, 38.35, 4),
  },
  {
    id: "two-04",
    source: "APEX Calculus 4.0 (Hartman et al.), sect. 10.2, example on a weight hanging from two chains",
    grade: "A",
    gravity: 9.8,
    weight: 50,
    ropes: [
      { angle: 30, from: "vertical", side: "left" },
      { angle: 45, from: "vertical", side: "right" },
    ],
    printed: [
      { rope: 0, value: 36.6, figures: 3 },
      { rope: 1, value: 25.88, figures: 4 },
    ],
  },
  {
    id: "two-09",
    source: `${BUECHE}, Example 2.2, p. 41; 3-4-5 trigonometry as in the book`,
    grade: "B",
    gravity: 9.8,
    weight: 400,
    ropes: [
      { run: -4, rise: 3 },
      { run: 3, rise: 4 },
    ],
    printed: two(240, 320, 2),
  },
  {
    id: "two-12",
    source:
      "R. K. Bansal, A Textbook of Engineering Mechanics (Laxmi Publications), Example 1.9, p. 18 (rope labels of the companion exchanged)",
    grade: "B",
    gravity: 9.8,
    weight: 15,
    ropes: up(60, 45),
    printed: [
      { rope: 0, value: 10.98, figures: 4 },
      { rope: 1, value: 7.76, figures: 3 },
    ],
  },
  {
    id: "two-15",
    source:
      "J. P. Den Hartog, Mechanics (McGraw-Hill 1948; Dover reprint), Problem 3, run from the middle weight to the end weights",
    grade: "B",
    gravity: 9.8,
    weight: 20,
    ropes: up(30, 60),
    printed: [
      { rope: 0, value: 10, figures: 2 },
      { rope: 1, value: 17.32, figures: 4 },
    ],
  },
  {
    id: "two-17",
    source:
      "R. C. Hibbeler and A. Gupta, Engineering Mechanics: Statics and Dynamics (11th-ed. Indian adaptation, Pearson), Example 3.3, p. 76, knot E; one rope leads down",
    grade: "B",
    gravity: 9.8,
    weight: 20,
    ropes: [{ angle: 225 }, { angle: 30, from: "vertical", side: "right" }],
    printed: two(38.6, 54.6, 3),
  },
  {
    id: "sym-02",
    source: `${COLLEGE}, Example 4.6`,
    grade: "A",
    gravity: 9.8,
    mass: 70,
    ropes: up(5, 5),
    printed: both(3900, 2),
  },
  {
    id: "sym-04",
    source: `${UNIVERSITY}, Ch. 5 problem 59(b)`,
    grade: "A",
    gravity: 9.8,
    mass: 2e-5,
    ropes: up(12, 12),
    printed: both(0.000471, 3),
  },
  {
    id: "sym-06 (5°)",
    source: `${UNIVERSITY}, Ch. 5 problem 63`,
    grade: "A",
    gravity: 9.8,
    mass: 0.026,
    ropes: up(5, 5),
    printed: both(1.5, 2),
  },
  {
    id: "sym-06 (0.5°)",
    source: `${UNIVERSITY}, Ch. 5 problem 63`,
    grade: "A",
    gravity: 9.8,
    mass: 0.026,
    ropes: up(0.5, 0.5),
    printed: both(15, 2),
  },
  {
    id: "sym-09",
    source: "APEX Calculus 4.0 (Hartman et al.), sect. 10.2 exercise with both angles 30° from the vertical",
    grade: "A",
    gravity: 9.8,
    weight: 100,
    ropes: [
      { angle: 30, from: "vertical", side: "left" },
      { angle: 30, from: "vertical", side: "right" },
    ],
    printed: both(57.735, 5),
  },
  {
    id: "sym-11",
    source: `${UNIVERSITY}, Ch. 6 problem 29, run from the resultant to the two pulls`,
    grade: "A",
    gravity: 9.8,
    weight: 376,
    ropes: [
      { angle: 20, from: "vertical", side: "left" },
      { angle: 20, from: "vertical", side: "right" },
    ],
    printed: both(200, 3),
  },
  {
    id: "hor-01",
    source: `${UNIVERSITY}, Ch. 6 problem 25; two ropes share the oblique pull`,
    grade: "A",
    gravity: 9.8,
    mass: 30,
    ropes: [{ angle: 30, from: "vertical", side: "left" }, { angle: 0 }],
    printed: [
      { rope: 0, value: 170, figures: 2, shared: 2 },
      { rope: 1, value: 170, figures: 2 },
    ],
  },
  {
    id: "hor-04",
    source: `${BUECHE}, Example 2.1, p. 41, run from the vertical force to the two pulls; 3-4-5 trigonometry as in the book`,
    grade: "B",
    gravity: 9.8,
    weight: 64,
    ropes: [{ run: -3, rise: 4 }, { angle: 0 }],
    printed: [
      { rope: 0, value: 80, figures: 2 },
      { rope: 1, value: 48, figures: 2 },
    ],
  },
  {
    id: "knot-01 (knot 1)",
    source:
      "J. P. Den Hartog, Mechanics (McGraw-Hill 1948; Dover reprint), Problem 9, the knot that carries the weight",
    grade: "B",
    gravity: 9.8,
    weight: 100,
    ropes: [{ angle: 180 }, { angle: 45 }],
    printed: [
      { rope: 0, value: 100, figures: 3 },
      { rope: 1, value: 141.4, figures: 4 },
    ],
  },
  {
    id: "lift-03 (starting)",
    source: `${UNIVERSITY}, Ch. 6 problem 37(a)`,
    grade: "A",
    gravity: 9.8,
    mass: 1700,
    ay: 1.2,
    ropes: STRAIGHT_UP,
    printed: [{ rope: 0, value: 18700, figures: 3 }],
  },
  {
    id: "lift-03 (steady)",
    source: `${UNIVERSITY}, Ch. 6 problem 37(b)`,
    grade: "A",
    gravity: 9.8,
    mass: 1700,
    ropes: STRAIGHT_UP,
    printed: [{ rope: 0, value: 16700, figures: 3 }],
  },
  {
    id: "lift-03 (slowing)",
    source: `${UNIVERSITY}, Ch. 6 problem 37(c)`,
    grade: "A",
    gravity: 9.8,
    mass: 1700,
    ay: -0.6,
    ropes: STRAIGHT_UP,
    printed: [{ rope: 0, value: 15600, figures: 3 }],
  },
  {
    id: "lift-06",
    source: `${COLLEGE}, Ch. 4 test-prep item on a cable raising 120.0 kg`,
    grade: "A",
    gravity: 9.8,
    mass: 120,
    ay: 1.3,
    ropes: STRAIGHT_UP,
    printed: [{ rope: 0, value: 1332, figures: 4 }],
  },
  ...(
    [
      [60, 20800],
      [45, 17000],
      [30, 12000],
    ] as const
  ).map(([angle, load]): PublishedCase => ({
    id: `sling-01 (two legs at ${angle}°)`,
    source:
      "OSHA, Guidance on Safe Sling Use, Table 1 (Grade 80 alloy steel chain slings, 1/2 in row), run from the table's load to the leg's 12000 lbf",
    grade: "B",
    gravity: 9.8,
    weight: load,
    ropes: up(angle, angle),
    printed: both(12000, 3),
  })),
];

/** Cases of the same kinds that this model cannot express, with the reason. */
export const LEFT_OUT: Readonly<Record<string, string>> = {
  "hang-04": "the mass is wanted, and the second answer needs a second body (the scale)",
  "sym-03": "the sag angle follows from lengths that are given; angles cannot yet be given by lengths",
  "sym-08": "four strings over a bridge: the pull is given and a deflecting force wanted",
  "hor-03": "a spring: its length is wanted",
  "hor-08": "the angle is wanted",
  "hor-09": "the angle is wanted",
  "knot-01 (knot 2)": "a second knot, joined to the first by a rope",
  "knot-06": "several knots, and an angle is wanted",
  "lift-01": "a normal force, not a rope",
  "lift-04": "a normal force, and the mass is wanted",
  "lift-07": "a normal force, not a rope",
  "lift-09": "a normal force, not a rope",
  "lift-10": "the acceleration is wanted",
  "pend-01": "the acceleration is wanted",
  "pend-04": "circular motion",
  "sling-01 (three legs)": "three legs are not in one plane",
};
