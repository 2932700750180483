// Published values: people and loads on the floor of a lift, a load drawn aside in a vehicle.
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { COLLEGE, KHURMI, OPENSTAX, RIGHT, TAYAL, UP, college, companion, follows, openstax, prints } from "./case.ts";
import type { SetUpCase } from "./case.ts";

const floor = (
  load: { readonly mass: number } | { readonly weight: number },
  y: number,
  gravity = 9.8,
): ProblemDocument => ({
  format: 1,
  gravity,
  frame: { y },
  bodies: [{ id: "rider", ...load }],
  surfaces: [{ id: "N", on: "rider", slope: RIGHT }],
});

/** Drawn aside by a pull of unknown size, which gives it its acceleration. */
const aside = (load: { mass: number } | { weight: number }, angle: number, gravity: number): ProblemDocument => ({
  format: 1,
  gravity,
  bodies: [{ id: "bob", ...load, motion: { along: RIGHT } }],
  pushes: [{ id: "P", on: "bob", direction: { angle, from: "vertical", side: "right" } }],
});

/** Lifts and vehicles. */
export const LIFTS: readonly SetUpCase[] = [
  {
    id: "lift-01",
    source: `${OPENSTAX}, Example 6.3 (same numbers in College Physics 2e, Example 4.9)`,
    grade: "A",
    locator: openstax("m58303", "fs-id1165038187326"),
    documents: [floor({ mass: 75 }, 1.2), floor({ mass: 75 }, 0)],
    found: [prints("N", 825, 3), prints("N", 735, 3, 1)],
    states: { N: "smooth" },
  },
  {
    id: "lift-03 (height)",
    source: `${OPENSTAX}, Ch. 6 problem 37(d), from the printed accelerations and times alone; the pulls are among the hanging cases`,
    grade: "A",
    locator: openstax("m58303", "fs-id1165036784614"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [{ id: "lift", mass: 1700, motion: { along: UP } }],
        pushes: [{ id: "P", on: "lift", direction: UP, size: 18700 }],
      },
      {
        format: 1,
        gravity: 9.8,
        bodies: [{ id: "lift", mass: 1700, motion: { along: UP } }],
        pushes: [{ id: "P", on: "lift", direction: UP, size: 15640 }],
      },
    ],
    found: [
      follows(
        "a₁t₁²/2 + a₁t₁t₂ + a₁t₁t₃ + a₃t₃²/2, with t₁ = 1.50 s, t₂ = 8.50 s, t₃ = 3.00 s",
        (a) => (a("a1") * 1.5 ** 2) / 2 + a("a1") * 1.5 * (8.5 + 3) + (a("a1", 1) * 3 ** 2) / 2,
        19.4,
        3,
      ),
    ],
  },
  {
    id: "lift-04",
    source: `${OPENSTAX}, Ch. 6 problem 39, run from the answer of part (a), 10 kg`,
    grade: "A",
    locator: openstax("m58303", "fs-id1165036887553"),
    documents: [floor({ mass: 10 }, 3.8), floor({ mass: 10 }, 0), floor({ mass: 10 }, -3.8)],
    found: [prints("N", 140, 2), prints("N", 98, 2, 1), prints("N", 60, 2, 2)],
  },
  {
    id: "lift-07",
    source: `${KHURMI}, Example 24.12, p. 490`,
    grade: "B",
    locator: companion("Engineering_Mechanics_by_Khurmi_R.S./chapter24.ipynb"),
    documents: [floor({ mass: 100 }, -0.8), floor({ mass: 100 }, 0.8)],
    found: [prints("N", 900, 3), prints("N", 1060, 4, 1)],
  },
  {
    id: "lift-09",
    source: `${TAYAL}, Example 14.16`,
    grade: "B",
    locator: companion("Engineering_Mechanics_by_A._K._Tayal/Chapter_14_RECTILINEAR_MOTION_OF_A.ipynb"),
    documents: [floor({ weight: 500 }, -1, 9.81), floor({ weight: 500 }, 1, 9.81)],
    found: [prints("N", 449, 4), prints("N", 551, 4, 1)],
  },
  {
    id: "lift-10",
    source: `${KHURMI}, Example 24.13, p. 490; the floor's push is given, so it stands as a push`,
    grade: "B",
    locator: companion("Engineering_Mechanics_by_Khurmi_R.S./chapter24.ipynb"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [{ id: "rider", mass: 65, motion: { along: UP } }],
        pushes: [{ id: "P", on: "rider", direction: UP, size: 800 }],
      },
    ],
    found: [prints("a1", 2.5, 2)],
  },
  {
    id: "pend-01 (forwards)",
    source: `${OPENSTAX}, Ch. 5 challenge problem 103; the string's pull is unknown, and so is the acceleration`,
    grade: "A",
    locator: openstax("m58301", "fs-id1165039472401"),
    documents: [aside({ mass: 0.0502 }, 3.2, 9.8)],
    found: [prints("a1", 0.548, 3)],
  },
  {
    id: "pend-04 (forwards)",
    source: `${TAYAL}, Example 15.21; v = √(a r) with r = 100 m, in km/h`,
    grade: "B",
    locator: companion("Engineering_Mechanics_by_A._K._Tayal/Chapter_15_CURVILINEAR_MOTION_OF_A.ipynb"),
    documents: [aside({ weight: 1 }, 8, 9.81)],
    found: [prints("P", 1.0098, 5), follows("3.6·√(100 a)", (a) => 3.6 * Math.sqrt(100 * a("a1")), 42.27, 4)],
  },
  {
    id: "lift-06 (hauled)",
    source: `${COLLEGE}, Ch. 4 test-prep item on a cable raising 120.0 kg`,
    grade: "A",
    locator: college("m42075", "fs-id1458737"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [{ id: "load", mass: 120, motion: { along: UP, acceleration: 1.3 } }],
        ropes: [{ id: "T", on: "load", direction: UP }],
      },
    ],
    found: [prints("T", 1332, 4)],
  },
];
