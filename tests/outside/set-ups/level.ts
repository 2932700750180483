// Published values: a crate on level ground, or two on top of each other.
import type { BodyDocument, ProblemDocument, PushDocument, SurfaceDocument } from "../../../shared/problem/index.ts";
import {
  COLLEGE,
  HIBBELER,
  LEFT,
  OPENSTAX,
  RIGHT,
  college,
  companion,
  follows,
  openstax,
  over,
  prints,
  written,
} from "./case.ts";
import type { SetUpCase } from "./case.ts";

type Friction = SurfaceDocument["friction"];

/** One crate on level ground, pushed. */
const crate = (
  body: Omit<BodyDocument, "id">,
  friction: Friction,
  push: Omit<PushDocument, "id" | "on">,
  gravity = 9.8,
): ProblemDocument => ({
  format: 1,
  gravity,
  bodies: [{ id: "crate", ...body }],
  surfaces: [{ id: "N", on: "crate", slope: RIGHT, friction }],
  pushes: [{ id: "P", on: "crate", ...push }],
});
const STEADY: BodyDocument["motion"] = { along: RIGHT, acceleration: 0, going: "forwards" };
const MOVING: BodyDocument["motion"] = { along: RIGHT, going: "forwards" };
const BELOW: PushDocument["direction"] = { angle: -25 };

/**
 * One crate, or two on top of each other. The push that just starts the motion is the one that keeps it up where sliding is no
 * easier, and the largest for which a smaller one of given size still leaves the crate at rest.
 */
export const LEVEL: readonly SetUpCase[] = [
  {
    id: "frl-02",
    source: `${OPENSTAX}, Check Your Understanding 6.7; then the same push, once it moves`,
    grade: "A",
    locator: openstax("m58304", "fs-id1165037178946"),
    documents: [
      crate({ mass: 1, motion: STEADY }, { static: 0.5 }, { direction: RIGHT }),
      crate({ mass: 1, motion: MOVING }, { static: 0.5, kinetic: 0.4 }, { direction: RIGHT, size: 4.9 }),
      crate({ mass: 1 }, { static: 0.5, kinetic: 0.4 }, { direction: RIGHT, size: 4.9 }),
      crate({ mass: 1 }, { static: 0.5, kinetic: 0.4 }, { direction: RIGHT, size: 3 }),
    ],
    found: [
      prints("P", 4.9, 2),
      prints("largest P", 4.9, 2, 3),
      prints("a1", 0.98, 2, 1),
      follows("|f|", (a) => Math.abs(a("f", 2)), 4.9, 2),
    ],
  },
  {
    id: "frl-04",
    source: `${COLLEGE}, Ch. 5 problem 18; pushed downwards at 25°`,
    grade: "A",
    locator: college("m42139", "fs-id1531145"),
    documents: [
      crate({ mass: 45, motion: STEADY }, { static: 0.1 }, { direction: BELOW }),
      (answer) =>
        crate(
          { mass: 45, motion: MOVING },
          { static: 0.1, kinetic: 0.03 },
          { direction: BELOW, size: written(answer("P")) },
        ),
      crate({ mass: 45 }, { static: 0.1, kinetic: 0.03 }, { direction: BELOW, size: 20 }),
    ],
    found: [prints("P", 51, 3), prints("largest P", 51, 3, 2), prints("a1", 0.72, 3, 1)],
  },
  {
    id: "frl-05",
    source: `${COLLEGE}, Ch. 5 problem 4; coefficients of the book's table`,
    grade: "A",
    locator: college("m42139", "fs-id1550746"),
    documents: [
      crate({ mass: 120, motion: STEADY }, { static: 0.5 }, { direction: RIGHT }),
      crate({ mass: 120, motion: MOVING }, { static: 0.5, kinetic: 0.3 }, { direction: RIGHT, size: 588 }),
      crate({ mass: 120 }, { static: 0.5, kinetic: 0.3 }, { direction: RIGHT, size: 100 }),
    ],
    found: [prints("P", 588, 3), prints("largest P", 588, 3, 2), prints("a1", 1.96, 3, 1)],
  },
  {
    id: "frl-07",
    source: `${OPENSTAX}, Example 6.12; the upper block is tied to the lower one round a pulley on the wall, at constant speed`,
    grade: "A",
    locator: openstax("m58304", "fs-id1165034574258"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [
          { id: "upper", mass: 2, motion: { along: LEFT, acceleration: 0, going: "forwards" } },
          { id: "lower", mass: 4, motion: { along: RIGHT, acceleration: 0, going: "forwards" } },
        ],
        ropes: [over("T", ["upper", LEFT], ["lower", LEFT])],
        surfaces: [
          { id: "N1", on: "upper", of: "lower", slope: RIGHT, friction: { kinetic: 0.4 } },
          { id: "N2", on: "lower", slope: RIGHT, friction: { kinetic: 0.4 } },
        ],
        pushes: [{ id: "P", on: "lower", direction: RIGHT }],
      },
    ],
    found: [prints("T", 7.84, 3), prints("N1", 19.6, 3), prints("N2", 58.8, 3), prints("P", 39.2, 3)],
    states: { N1: "slides backwards", N2: "slides forwards" },
  },
  {
    id: "frl-08",
    source: `${HIBBELER}, Example 13.1, p. 535; 3 s from rest`,
    grade: "B",
    locator: companion(
      "Engineering_Mechanics_Statics_and_Dynamics_by_Hibbeler_and_Gupta/Chapter_13_Kinetics_of_a_Particle_Force_and_Acceleration.ipynb",
    ),
    documents: [crate({ mass: 50 }, { kinetic: 0.3 }, { direction: { angle: 30 }, size: 400 }, 9.81)],
    found: [follows("3 a", (a) => 3 * a("a1"), 15.6, 3)],
  },
  {
    id: "frl-11",
    source:
      "H. C. Verma, Concepts of Physics Part 1, 2nd ed. (Bharati Bhawan, 2011), worked example 6 of Ch. 6, p. 93; μ as f/N: just before it starts, and from the resistance that leaves a = 2·10 m/(5 s)²",
    grade: "B",
    locator: companion("Concepts_Of_Physics_(Volume_-_1)_by_H._C._Verma/CHAPTER06.ipynb"),
    documents: [
      crate({ mass: 2.5 }, { static: 1 }, { direction: RIGHT, size: 15 }, 10),
      {
        format: 1,
        gravity: 10,
        bodies: [{ id: "crate", mass: 2.5, motion: { along: RIGHT, acceleration: 0.8 } }],
        surfaces: [{ id: "N", on: "crate", slope: RIGHT }],
        pushes: [
          { id: "P", on: "crate", direction: RIGHT, size: 15 },
          { id: "R", on: "crate", direction: LEFT },
        ],
      },
    ],
    found: [
      follows("|f|/N", (a) => Math.abs(a("f")) / a("N"), 0.6, 2),
      follows("R/N", (a) => a("R", 1) / a("N", 1), 0.52, 2),
    ],
  },
];
