// Published values: equal angles, level ropes, lifts and slings; and all cases together.
import { BUECHE, COLLEGE, STRAIGHT_UP, UNIVERSITY, both, up } from "./published-case.ts";
import type { PublishedCase } from "./published-case.ts";
import { UNEQUAL } from "./published-unequal.ts";

/** Equal angles, level ropes, lifts and slings. */
export const OTHERS: readonly PublishedCase[] = [
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

/** All cases that are run. */
export const CASES: readonly PublishedCase[] = [...UNEQUAL, ...OTHERS];
