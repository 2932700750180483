// Published values: bodies side by side, in a row or on a carrier, pushed or hauled together.
import type { SurfaceDocument } from "../../../shared/problem/index.ts";
import { COLLEGE, LEFT, OPENSTAX, RIGHT, SCHAUM, college, companion, follows, openstax, prints } from "./case.ts";
import type { SetUpCase } from "./case.ts";

const smooth = (on: string, number: number): SurfaceDocument => ({ id: `N${number}`, on, slope: RIGHT });

/** Bodies pushed or hauled together. */
export const TOGETHER: readonly SetUpCase[] = [
  {
    id: "psh-01",
    source: `${OPENSTAX}, Check Your Understanding 5.7; the push between the blocks is a normal force`,
    grade: "A",
    locator: openstax("m58299", "fs-id1165038202036"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [
          { id: "near", mass: 2 },
          { id: "far", mass: 6 },
        ],
        surfaces: [smooth("near", 1), smooth("far", 2), { id: "C", on: "far", of: "near", normal: RIGHT }],
        pushes: [{ id: "P", on: "near", direction: RIGHT, size: 24 }],
      },
    ],
    found: [prints("a1", 3, 2), prints("a2", 3, 2), prints("C", 18, 2)],
  },
  {
    id: "psh-03",
    source: `${OPENSTAX}, Ch. 6 additional problem 99; the given resistances stand as pushes`,
    grade: "A",
    locator: openstax("m58306", "fs-id1165039234785"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [
          { id: "front", mass: 2000 },
          { id: "rear", mass: 3000 },
        ],
        ropes: [{ id: "T", on: "rear", direction: RIGHT, to: "front" }],
        surfaces: [smooth("front", 1), smooth("rear", 2)],
        pushes: [
          { id: "P", on: "front", direction: RIGHT, size: 20000 },
          { id: "R1", on: "front", direction: LEFT, size: 8000 },
          { id: "R2", on: "rear", direction: LEFT, size: 10000 },
        ],
      },
    ],
    found: [prints("a1", 0.4, 2), prints("T", 11200, 3)],
  },
  {
    id: "psh-04",
    source: `${OPENSTAX}, Ch. 6 additional problem 123`,
    grade: "A",
    locator: openstax("m58306", "fs-id1165039504554"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [
          { id: "left", mass: 1, motion: { along: RIGHT, acceleration: 2, going: "forwards" } },
          { id: "right", mass: 3, motion: { along: RIGHT, acceleration: 2, going: "forwards" } },
        ],
        ropes: [{ id: "T", on: "left", direction: RIGHT, to: "right" }],
        surfaces: [
          { ...smooth("left", 1), friction: { kinetic: 0.25 } },
          { ...smooth("right", 2), friction: { kinetic: 0.25 } },
        ],
        pushes: [{ id: "F", on: "right", direction: { angle: 60 } }],
      },
    ],
    found: [prints("F", 25, 2)],
  },
  {
    id: "psh-06",
    source: `${COLLEGE}, Ch. 4 problem 27; two engines and 37 cars in front, 8 cars behind, the resistance spread evenly over 47`,
    grade: "A",
    locator: college("m42076", "fs-id666647"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [
          { id: "front", mass: 2 * 80000 + 37 * 55000, motion: { along: RIGHT, acceleration: 0.05 } },
          { id: "rear", mass: 8 * 55000, motion: { along: RIGHT, acceleration: 0.05 } },
        ],
        ropes: [{ id: "T", on: "rear", direction: RIGHT, to: "front" }],
        surfaces: [smooth("front", 1), smooth("rear", 2)],
        pushes: [
          { id: "F", on: "front", direction: RIGHT },
          { id: "R1", on: "front", direction: LEFT, size: "29250000/47" },
          { id: "R2", on: "rear", direction: LEFT, size: "6000000/47" },
        ],
      },
    ],
    found: [follows("F/2", (a) => a("F") / 2, 441000, 3), prints("T", 150000, 3)],
  },
  {
    id: "psh-08",
    source: `${SCHAUM}, Problem 13.12, p. 238; the smallest μ that keeps B on top is f/N while it sticks`,
    grade: "B",
    locator: companion("Engineering_Mechancis,_Schaum_Series_by_McLean/chapter13.ipynb"),
    documents: [
      {
        format: 1,
        gravity: 9.8,
        bodies: [
          { id: "carrier", mass: 40, motion: { along: { angle: 30 } } },
          { id: "top", mass: 15 },
        ],
        surfaces: [
          { id: "N1", on: "carrier", slope: { angle: 30 } },
          { id: "N2", on: "top", of: "carrier", slope: RIGHT, friction: { static: 0.5 } },
        ],
        pushes: [{ id: "P", on: "carrier", direction: { angle: 30 }, size: 500 }],
      },
    ],
    found: [follows("|f2|/N2", (a) => Math.abs(a("f2")) / a("N2"), 0.31, 2)],
    states: { N2: "stuck" },
  },
];
