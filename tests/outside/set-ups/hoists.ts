// Published values: ropes over fixed pulleys.
import type {
  BodyDocument,
  DirectionDocument,
  ProblemDocument,
  SurfaceDocument,
} from "../../../shared/problem/index.ts";
import { BANSAL, DOWN, NCERT, OPENSTAX, RIGHT, SCHAUM, TAYAL, UP, companion, openstax, over, prints } from "./case.ts";
import type { SetUpCase } from "./case.ts";

type Load = { readonly mass: number } | { readonly weight: number };
const BANSAL_15 = companion("Engineering_Mechanics_by_R.K_Bansal/chapter_15.ipynb");

/** The lighter load goes up, the heavier down. */
const hoist = (light: Load, heavy: Load, gravity = 9.8): ProblemDocument => ({
  format: 1,
  gravity,
  bodies: [
    { id: "light", ...light, motion: { along: UP } },
    { id: "heavy", ...heavy, motion: { along: DOWN } },
  ],
  ropes: [over("T", ["light", UP], ["heavy", UP])],
});

/** A body on a surface, from which a rope leads over a pulley to a load that hangs. */
const beside = (
  load: Load,
  slope: DirectionDocument,
  toward: DirectionDocument,
  hanging: Load,
  gravity = 9.8,
  friction?: SurfaceDocument["friction"],
  motion?: BodyDocument["motion"],
): ProblemDocument => ({
  format: 1,
  gravity,
  bodies: [
    { id: "crate", ...load, ...(motion === undefined ? {} : { motion }) },
    { id: "bucket", ...hanging, motion: { along: DOWN } },
  ],
  ropes: [over("T", ["crate", toward], ["bucket", UP])],
  surfaces: [{ id: "N", on: "crate", slope, ...(friction === undefined ? {} : { friction }) }],
});

/** Ropes over fixed pulleys. */
export const HOISTS: readonly SetUpCase[] = [
  {
    id: "atw-01",
    source: `${OPENSTAX}, Example 6.5`,
    grade: "A",
    locator: openstax("m58303", "fs-id1165037923338"),
    documents: [hoist({ mass: 2 }, { mass: 4 })],
    found: [prints("a1", 3.27, 3), prints("a2", 3.27, 3), prints("T", 26.1, 3)],
    states: { T: "taut" },
  },
  {
    id: "atw-03",
    source: `${BANSAL}, Example 15.21, p. 558`,
    grade: "B",
    locator: BANSAL_15,
    documents: [hoist({ weight: 30 }, { weight: 50 })],
    found: [prints("a1", 2.45, 3), prints("T", 37.5, 3)],
  },
  {
    id: "atw-04 (tension)",
    source: `${BANSAL}, Example 15.22, p. 558; the heavier load alone, at the given acceleration`,
    grade: "B",
    locator: BANSAL_15,
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [{ id: "heavy", weight: 60, motion: { along: DOWN, acceleration: 3 } }],
        ropes: [{ id: "T", on: "heavy", direction: UP }],
      },
    ],
    found: [prints("T", 41.63, 4)],
  },
  {
    id: "tab-01",
    source: `${OPENSTAX}, Check Your Understanding 6.2`,
    grade: "A",
    locator: openstax("m58303", "fs-id1165037057133"),
    documents: [beside({ mass: 5 }, RIGHT, RIGHT, { mass: 3 })],
    found: [prints("a1", 3.68, 3), prints("a2", 3.68, 3), prints("T", 18.4, 3)],
  },
  {
    id: "tab-03",
    source: `${NCERT}, Example 5.9, p. 102`,
    grade: "B",
    locator: companion("Physics_Textbook_Part-I_for_class_XI_by_NCERT_by_Chief_Editor_-_Naresh_Yadav/Chapter5_3.ipynb"),
    documents: [beside({ mass: 20 }, RIGHT, RIGHT, { mass: 3 }, 10, { kinetic: 0.04 })],
    found: [prints("a1", 0.96, 2), prints("T", 27.1, 3)],
    states: { N: "slides forwards" },
  },
  {
    id: "tab-04",
    source: `${BANSAL}, Example 15.27, p. 565 (loads as in the companion's equations)`,
    grade: "B",
    locator: BANSAL_15,
    documents: [beside({ weight: 20 }, RIGHT, RIGHT, { weight: 10 }, 9.81, { kinetic: 0.3 })],
    found: [prints("a1", 1.31, 3), prints("T", 8.67, 3)],
  },
  {
    id: "tab-06",
    source: `${SCHAUM}, Problem 16.30, p. 356`,
    grade: "B",
    locator: companion("Engineering_Mechancis,_Schaum_Series_by_McLean/chapter16.ipynb"),
    documents: [beside({ mass: 2 }, RIGHT, RIGHT, { mass: 1.2 }, 9.8, { kinetic: 0.2 })],
    found: [prints("a1", 2.45, 3)],
  },
  {
    id: "ich-01",
    source: `${OPENSTAX}, Ch. 6 problem 45`,
    grade: "A",
    locator: openstax("m58303", "fs-id1165037268006"),
    documents: [beside({ mass: 2 }, { angle: 40 }, { angle: 40 }, { mass: 4 })],
    found: [prints("a1", 4.43, 3), prints("T", 21.5, 3)],
  },
  {
    id: "ich-03",
    source: `${OPENSTAX}, Ch. 6 additional problem 95; the slope falls towards the pulley`,
    grade: "A",
    locator: openstax("m58306", "fs-id1165035615426"),
    documents: [beside({ mass: 6 }, { angle: 150 }, { angle: -30 }, { mass: 6 })],
    found: [prints("T", 15, 2)],
  },
  {
    id: "ich-04",
    source: `${BANSAL}, Example 15.31, p. 573`,
    grade: "B",
    locator: BANSAL_15,
    documents: [beside({ weight: 40 }, { angle: 15 }, { angle: 15 }, { weight: 15 })],
    found: [prints("a1", 0.83, 2), prints("T", 13.73, 4)],
  },
  {
    id: "ich-06",
    source: `${TAYAL}, Example 14.20; two slopes, the heavier body goes down`,
    grade: "B",
    locator: companion("Engineering_Mechanics_by_A._K._Tayal/Chapter_14_RECTILINEAR_MOTION_OF_A.ipynb"),
    documents: [
      {
        format: 1,
        gravity: 9.81,
        bodies: [
          { id: "light", mass: 5 },
          { id: "heavy", mass: 10, motion: { along: { angle: -60 } } },
        ],
        ropes: [over("T", ["light", { angle: 30 }], ["heavy", { angle: 120 }])],
        surfaces: [
          { id: "N1", on: "light", slope: { angle: 30 }, friction: { kinetic: 0.33 } },
          { id: "N2", on: "heavy", slope: { angle: 120 }, friction: { kinetic: 0.33 } },
        ],
      },
    ],
    found: [prints("a1", 2.015, 4), prints("a2", 2.015, 4)],
  },
];
