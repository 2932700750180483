// Ropes over fixed and movable pulleys.
import fc from "fast-check";
import type { DirectionDocument, PushDocument } from "../../../shared/problem/index.ts";
import { accelerations, amounts, DOWN, goings, LEFT, RIGHT, sizes, UP } from "./parts.ts";
import type { Plan } from "./parts.ts";

const senses: fc.Arbitrary<DirectionDocument> = fc.constantFrom(UP, DOWN);
const times = (on: string, count: number, toward: DirectionDocument = UP) =>
  Array.from({ length: count }, () => ({ on, direction: toward }));

/** Two loads on a rope over one fixed pulley, in a lift now and then; one may have no mass. */
export const hoist: fc.Arbitrary<Plan> = fc
  .record({
    first: amounts,
    second: fc.oneof({ weight: 9, arbitrary: amounts }, { weight: 1, arbitrary: fc.constant(0) }),
    along: fc.tuple(senses, senses),
    going: goings,
    y: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: accelerations }),
  })
  .map(({ first, second, along, going, y }) => ({
    frame: { y },
    bodies: [
      { id: "bucket", amount: first, motion: { along: along[0], ...going } },
      { id: "crate", amount: second, motion: { along: along[1] } },
    ],
    ropes: [{ id: "T", pulls: [...times("bucket", 1), ...times("crate", 1)] }],
  }));

/** A load hauled up or let down at a given acceleration by a push of unknown size on the other load. */
export const hauled: fc.Arbitrary<Plan> = fc
  .record({ first: amounts, second: amounts, acceleration: accelerations, along: senses })
  .map(({ first, second, acceleration, along }) => ({
    bodies: [
      { id: "bucket", amount: first, motion: { along, acceleration } },
      { id: "crate", amount: second, motion: { along: along === UP ? DOWN : UP, acceleration } },
    ],
    ropes: [{ id: "T", pulls: [...times("bucket", 1), ...times("crate", 1)] }],
    pushes: [{ id: "P", on: "crate", direction: DOWN }],
  }));

/** A load on a movable pulley, which may be heavy, on two to four strands; a bucket or a push at the free end. */
export const strands: fc.Arbitrary<Plan> = fc
  .record({
    block: amounts,
    bucket: amounts,
    count: fc.integer({ min: 2, max: 4 }),
    along: fc.tuple(senses, senses),
    end: fc.constantFrom("bucket", "push", "hold"),
    size: sizes,
  })
  .map(({ block, bucket, count, along, end, size }): Plan => {
    const pulls = times("block", count);
    if (end === "bucket")
      return {
        bodies: [
          { id: "block", kind: "pulley", amount: block, motion: { along: along[0] } },
          { id: "bucket", amount: bucket, motion: { along: along[1] } },
        ],
        ropes: [{ id: "T", pulls: [...pulls, ...times("bucket", 1)] }],
      };
    // Somebody's hand at the end of the rope: a point without mass.
    const push: PushDocument = { id: "P", on: "hand", direction: DOWN, ...(end === "push" ? { size } : {}) };
    const still = end === "hold";
    return {
      bodies: [
        { id: "block", kind: "pulley", amount: block, ...(still ? {} : { motion: { along: along[0] } }) },
        { id: "hand", kind: "knot", ...(still ? {} : { motion: { along: along[1] } }) },
      ],
      ropes: [{ id: "T", pulls: [...pulls, ...times("hand", 1)] }],
      pushes: [push],
    };
  });

/** A load on a rope below a movable pulley without mass. */
export const belowThePulley: fc.Arbitrary<Plan> = fc
  .record({ crate: amounts, bucket: amounts, along: fc.tuple(senses, senses, senses) })
  .map(({ crate, bucket, along }) => ({
    bodies: [
      { id: "block", kind: "pulley", motion: { along: along[0] } },
      { id: "crate", amount: crate, motion: { along: along[1] } },
      { id: "bucket", amount: bucket, motion: { along: along[2] } },
    ],
    ropes: [
      { id: "T1", pulls: [...times("block", 2), ...times("bucket", 1)] },
      { id: "T2", on: "crate", direction: UP, to: "block" },
    ],
  }));

/** Over a fixed pulley a load and a movable pulley, over which two more loads. */
export const pulleyOnPulley: fc.Arbitrary<Plan> = fc
  .record({
    loads: fc.tuple(amounts, amounts, amounts),
    block: fc.oneof({ weight: 2, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: amounts }),
    along: senses,
  })
  .map(({ loads: [crate, bucket, lamp], block, along }) => ({
    bodies: [
      { id: "crate", amount: crate, motion: { along } },
      { id: "block", kind: "pulley", amount: block, motion: { along } },
      { id: "bucket", amount: bucket, motion: { along } },
      { id: "lamp", amount: lamp, motion: { along } },
    ],
    ropes: [
      { id: "T1", pulls: [...times("crate", 1), ...times("block", 1)] },
      { id: "T2", pulls: [...times("bucket", 1), ...times("block", 2, DOWN), ...times("lamp", 1)] },
    ],
  }));

/** Two crates on the ground, a rope round a pulley that is hauled between them. */
export const hauledPulley: fc.Arbitrary<Plan> = fc
  .record({ near: amounts, far: amounts, size: sizes })
  .map(({ near, far, size }) => ({
    bodies: [
      { id: "near", amount: near },
      { id: "far", amount: far },
      { id: "block", kind: "pulley", motion: { along: RIGHT } },
    ],
    surfaces: [
      { id: "N1", on: "near", slope: RIGHT },
      { id: "N2", on: "far", slope: RIGHT },
    ],
    ropes: [{ id: "T", pulls: [...times("near", 1, RIGHT), ...times("block", 2, LEFT), ...times("far", 1, RIGHT)] }],
    pushes: [{ id: "P", on: "block", direction: RIGHT, size }],
  }));
