// Published values: movable pulleys. A pulley counts as having the load that hangs on it.
import type { BodyDocument, ProblemDocument } from "../../../shared/problem/index.ts";
import { BANSAL, DOWN, HIBBELER, TAYAL, UP, companion, follows, over, prints } from "./case.ts";
import type { SetUpCase } from "./case.ts";

const BANSAL_15 = companion("Engineering_Mechanics_by_R.K_Bansal/chapter_15.ipynb");

/** Over a fixed pulley a load and a movable pulley without mass, over which two more loads. */
const onPulley = (
  first: BodyDocument,
  second: BodyDocument,
  third: BodyDocument,
  along: typeof UP,
): ProblemDocument => ({
  format: 1,
  gravity: 9.8,
  bodies: [first, second, third, { id: "block", kind: "pulley", motion: { along } }],
  ropes: [
    over("T1", [first.id, UP], ["block", UP]),
    over("T2", [second.id, UP], ["block", DOWN], ["block", DOWN], [third.id, UP]),
  ],
});

/** Movable pulleys. */
export const PULLEYS: readonly SetUpCase[] = [
  {
    id: "pul-01",
    source: `${HIBBELER}, Example 13.5, p. 539; down is positive, 2 s from rest`,
    grade: "B",
    locator: companion(
      "Engineering_Mechanics_Statics_and_Dynamics_by_Hibbeler_and_Gupta/Chapter_13_Kinetics_of_a_Particle_Force_and_Acceleration.ipynb",
    ),
    documents: [
      {
        format: 1,
        gravity: 9.81,
        bodies: [
          { id: "block", kind: "pulley", mass: 100, motion: { along: DOWN } },
          { id: "bucket", mass: 20, motion: { along: DOWN } },
        ],
        ropes: [over("T", ["block", UP], ["block", UP], ["bucket", UP])],
      },
    ],
    found: [follows("2 a", (a) => 2 * a("a2"), -13.1, 3)],
  },
  {
    id: "pul-03",
    source: `${BANSAL}, Example 15.24, p. 560`,
    grade: "B",
    locator: BANSAL_15,
    documents: [
      {
        format: 1,
        gravity: 9.81,
        bodies: [
          { id: "block", kind: "pulley", weight: 150, motion: { along: DOWN } },
          { id: "bucket", weight: 50, motion: { along: UP } },
        ],
        ropes: [over("T", ["block", UP], ["block", UP], ["bucket", UP])],
      },
    ],
    found: [prints("T", 64.29, 4), prints("a2", 2.8, 3), prints("a1", 1.4, 3)],
  },
  {
    id: "pul-04",
    source: `${BANSAL}, Example 15.25, p. 561`,
    grade: "B",
    locator: BANSAL_15,
    documents: [
      onPulley(
        { id: "crate", weight: 15, motion: { along: DOWN } },
        { id: "bucket", weight: 6, motion: { along: DOWN } },
        { id: "lamp", weight: 4, motion: { along: UP } },
        UP,
      ),
    ],
    found: [prints("a1", 2.15, 3), prints("a2", 0.24, 2), prints("a3", 4.54, 3)],
  },
  {
    id: "pul-06",
    source: `${TAYAL}, Example 14.25; up is positive, accelerations as multiples of g`,
    grade: "B",
    locator: companion("Engineering_Mechanics_by_A._K._Tayal/Chapter_14_RECTILINEAR_MOTION_OF_A.ipynb"),
    documents: [
      onPulley(
        { id: "crate", weight: 30, motion: { along: UP } },
        { id: "bucket", weight: 20, motion: { along: UP } },
        { id: "lamp", weight: 10, motion: { along: UP } },
        UP,
      ),
    ],
    found: [
      follows("a1/g", (a) => a("a1") / 9.8, -0.058824, 5),
      follows("a2/g", (a) => a("a2") / 9.8, -0.294118, 5),
      follows("a3/g", (a) => a("a3") / 9.8, 0.411765, 5),
    ],
  },
];
