// Published values: knots and loads at rest that need more than one body, a push, or pounds.
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import {
  BUECHE,
  DOWN,
  HARTOG,
  HIBBELER,
  LEFT,
  OPENSTAX,
  RIGHT,
  UP,
  companion,
  follows,
  openstax,
  over,
  prints,
} from "./case.ts";
import type { SetUpCase } from "./case.ts";

const POUNDS = { format: 1, units: "lbf-ft", gravity: 32.2 } as const;

/** Drawn aside by a level pull of unknown size. */
const drawnAside = (weight: number, angle: number): ProblemDocument => ({
  ...POUNDS,
  bodies: [{ id: "load", weight }],
  ropes: [{ id: "T", on: "load", direction: { angle, from: "vertical", side: "left" } }],
  pushes: [{ id: "P", on: "load", direction: RIGHT }],
});

/** Knots and loads at rest. */
export const KNOTS: readonly SetUpCase[] = [
  {
    id: "hang-04",
    source: `${OPENSTAX}, Ch. 5 problem 65; a load of 55 N below a scale of 0.5 kg`,
    grade: "A",
    locator: openstax("m58300", "fs-id1165036900436"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [
          { id: "load", weight: 55 },
          { id: "scale", mass: 0.5 },
        ],
        ropes: [
          { id: "T1", on: "load", direction: UP, to: "scale" },
          { id: "T2", on: "scale", direction: UP },
        ],
      },
    ],
    found: [prints("T1", 55, 2), prints("T2", 60, 2)],
  },
  {
    id: "two-15 (from one end)",
    source: `${HARTOG}, Problem 3; the weight over the left pulley is given, the middle one stands as a pull of unknown size`,
    grade: "B",
    locator: "drdrang/mechanics @400dd56 src/problem003.md",
    documents: [
      {
        ...POUNDS,
        bodies: [
          { id: "bucket", weight: 10 },
          { id: "knot", kind: "knot" },
        ],
        ropes: [
          over("T1", ["bucket", UP], ["knot", { angle: 150 }]),
          { id: "T2", on: "knot", direction: { angle: 60 } },
        ],
        pushes: [{ id: "P", on: "knot", direction: DOWN }],
      },
    ],
    found: [prints("P", 20, 2), prints("T2", 17.32, 4)],
  },
  {
    id: "two-17 (in pounds)",
    source: `${HIBBELER}, Example 3.3, p. 76, knot E with what hangs from it; one rope leads down`,
    grade: "B",
    locator: companion(
      "Engineering_Mechanics_Statics_and_Dynamics_by_Hibbeler_and_Gupta/Chapter_3_Equilibrium_of_a_Particle.ipynb",
    ),
    documents: [
      {
        format: 1,
        gravity: 9.81,
        bodies: [
          { id: "load", weight: 20 },
          { id: "knot", kind: "knot" },
        ],
        ropes: [
          { id: "T1", on: "load", direction: UP, to: "knot" },
          { id: "EC", on: "knot", direction: { angle: 225 } },
          { id: "EG", on: "knot", direction: { angle: 30, from: "vertical", side: "right" } },
        ],
      },
    ],
    found: [prints("EC", 38.6, 3), prints("EG", 54.6, 3)],
  },
  {
    id: "sym-11 (forwards)",
    source: `${OPENSTAX}, Ch. 6 problem 29; what balances the two known pulls`,
    grade: "A",
    locator: openstax("m58303", "fs-id1165036901084"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [{ id: "knot", kind: "knot" }],
        pushes: [
          { id: "F1", on: "knot", direction: { angle: 20, from: "vertical", side: "left" }, size: 200 },
          { id: "F2", on: "knot", direction: { angle: 20, from: "vertical", side: "right" }, size: 200 },
          { id: "R", on: "knot", direction: DOWN },
        ],
      },
    ],
    found: [prints("R", 376, 3)],
  },
  {
    id: "sym-08 (forwards)",
    source: `${HARTOG}, Problem 5; the sideways pull of a string drawn aside at its middle, from the tension of 14.4`,
    grade: "B",
    locator: "drdrang/mechanics @400dd56 src/problem005.md",
    documents: [
      {
        ...POUNDS,
        bodies: [{ id: "knot", kind: "knot" }],
        pushes: [
          { id: "F1", on: "knot", direction: { run: -6.25, rise: 0.25 }, size: 14.4 },
          { id: "F2", on: "knot", direction: { run: 6.25, rise: 0.25 }, size: 14.4 },
          { id: "P", on: "knot", direction: DOWN },
        ],
      },
    ],
    found: [prints("P", 1.15, 3)],
  },
  {
    id: "hor-04 (forwards)",
    source: `${BUECHE}, Example 2.1, p. 41; the oblique pull is given`,
    grade: "B",
    locator: companion("Principles_of_Physics_by_F.J.Bueche/Chapter2_2.ipynb"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [{ id: "knot", kind: "knot" }],
        pushes: [
          { id: "F1", on: "knot", direction: LEFT },
          { id: "F2", on: "knot", direction: DOWN },
          { id: "F3", on: "knot", direction: { angle: 37, from: "vertical", side: "right" }, size: 80 },
        ],
      },
    ],
    found: [prints("F1", 48, 2), prints("F2", 64, 2)],
  },
  {
    id: "hor-08 (in pounds)",
    source:
      "APEX Calculus 4.0 (Hartman et al.), sect. 10.2 exercise, run from the printed angle to the level force of 1",
    grade: "A",
    locator: "APEXCalculus/APEXCalculusV4 @6120781 exercises/10_02_ex_33.tex",
    documents: [drawnAside(10, 5.71)],
    found: [prints("P", 1, 3), follows("1 ft·(1 − W/T), by which it is lifted", (a) => 1 - 10 / a("T"), 0.005, 1)],
  },
  {
    id: "hor-09 (in pounds)",
    source:
      "APEX Calculus 4.0 (Hartman et al.), sect. 10.2 exercise, run from the printed angle to the level force of 10",
    grade: "A",
    locator: "APEXCalculus/APEXCalculusV4 @6120781 exercises/10_02_ex_35.tex",
    documents: [drawnAside(1, 84.29)],
    found: [prints("P", 10, 4), follows("10 ft·(1 − W/T), by which it is lifted", (a) => 10 * (1 - 1 / a("T")), 9, 1)],
  },
  {
    id: "knot-01",
    source: `${HARTOG}, Problem 9, both knots at once`,
    grade: "B",
    locator: "drdrang/mechanics @400dd56 src/problem009.md",
    documents: [
      {
        ...POUNDS,
        bodies: [
          { id: "load", weight: 100 },
          { id: "k1", kind: "knot" },
          { id: "k2", kind: "knot" },
        ],
        ropes: [
          { id: "T0", on: "load", direction: UP, to: "k1" },
          { id: "T1", on: "k1", direction: LEFT },
          { id: "T2", on: "k1", direction: { angle: 45 }, to: "k2" },
          { id: "T3", on: "k2", direction: RIGHT },
          { id: "T4", on: "k2", direction: { angle: 120 } },
        ],
      },
    ],
    found: [prints("T1", 100, 3), prints("T2", 141.4, 4), prints("T3", 157.7, 4), prints("T4", 115.5, 4)],
  },
  {
    id: "knot-06",
    source: `${OPENSTAX}, Ch. 5 challenge problem 105(c); two loads with the string between them as one body, then tan φ = mg/T3 for the inner one of them`,
    grade: "A",
    locator: openstax("m58301", "fs-id1165039483578"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [{ id: "half", mass: 2 }],
        ropes: [
          { id: "T1", on: "half", direction: { angle: 174.9 } },
          { id: "T3", on: "half", direction: RIGHT },
        ],
      },
    ],
    found: [follows("arctan(m g/T3)", (a) => (Math.atan(9.8 / a("T3")) * 180) / Math.PI, 2.56, 3)],
  },
];
