// A crate on the ground or a slope, alone or with something on a rope.
import fc from "fast-check";
import type { DirectionDocument } from "../../../shared/problem/index.ts";
import {
  accelerations,
  amounts,
  anyDirection,
  direction,
  DOWN,
  frictions,
  inclines,
  RIGHT,
  rough,
  sizes,
  UP,
} from "./parts.ts";
import type { Plan } from "./parts.ts";

const rises = fc.constantFrom("right" as const, "left" as const);
const ways = fc.constantFrom("forwards" as const, "backwards" as const);

/** A crate on a slope, smooth or rough, by itself: it stays or slides. */
export const slope: fc.Arbitrary<Plan> = fc
  .record({ amount: amounts, incline: inclines, side: rises, friction: frictions, down: fc.boolean() })
  .map(({ amount, incline, side, friction, down }) => ({
    bodies: [{ id: "crate", amount }],
    surfaces: [{ id: "N", on: "crate", slope: direction(incline, down ? "down" : "up", side), ...friction }],
  }));

/** A sledge that already slides up or down a slipway, or along the ground. */
export const coasting: fc.Arbitrary<Plan> = fc
  .record({ amount: amounts, incline: inclines, level: fc.boolean(), side: rises, friction: frictions, going: ways })
  .map(({ amount, incline, level, side, friction, going }) => {
    const along = level ? RIGHT : direction(incline, "up", side);
    return {
      bodies: [{ id: "sledge", amount, motion: { along, going } }],
      surfaces: [{ id: "N", on: "sledge", slope: along, ...friction }],
    };
  });

/** A crate on a slope held by a rope along it, or at an angle to it. */
export const held: fc.Arbitrary<Plan> = fc
  .record({
    amount: amounts,
    incline: inclines,
    side: rises,
    friction: frictions,
    rope: fc.oneof({ weight: 2, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: anyDirection }),
  })
  .map(({ amount, incline, side, friction, rope }) => ({
    bodies: [{ id: "crate", amount }],
    ropes: [{ id: "T", on: "crate", direction: rope ?? direction(incline, "up", side) }],
    surfaces: [{ id: "N", on: "crate", slope: direction(incline, "up", side), ...friction }],
  }));

/** A crate on a slope pushed by a given force: up or down it, level, or any way. */
export const pushed: fc.Arbitrary<Plan> = fc
  .record({
    amount: amounts,
    incline: inclines,
    side: rises,
    friction: frictions,
    push: fc.oneof(
      { weight: 2, arbitrary: fc.constantFrom("up" as const, "down" as const) },
      { weight: 1, arbitrary: fc.constant(RIGHT) },
      { weight: 1, arbitrary: anyDirection },
    ),
    size: sizes,
  })
  .map(({ amount, incline, side, friction, push, size }) => ({
    bodies: [{ id: "crate", amount }],
    surfaces: [{ id: "N", on: "crate", slope: direction(incline, "up", side), ...friction }],
    pushes: [
      { id: "P", on: "crate", direction: typeof push === "string" ? direction(incline, push, side) : push, size },
    ],
  }));

/** A push of unknown size that keeps a crate still on smooth ground or a smooth slope. */
export const keptStill: fc.Arbitrary<Plan> = fc
  .record({ amount: amounts, incline: inclines, side: rises, push: anyDirection, level: fc.boolean() })
  .map(({ amount, incline, side, push, level }) => ({
    bodies: [{ id: "crate", amount }],
    surfaces: [{ id: "N", on: "crate", slope: level ? RIGHT : direction(incline, "up", side) }],
    pushes: [{ id: "P", on: "crate", direction: push }],
  }));

/** A push of unknown size that moves a crate steadily, or at a given acceleration, along the ground or a slope. */
export const hauledAlong: fc.Arbitrary<Plan> = fc
  .record({
    amount: amounts,
    incline: inclines,
    level: fc.boolean(),
    friction: frictions,
    push: fc.oneof({ weight: 2, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: anyDirection }),
    acceleration: accelerations,
    going: ways,
  })
  .map(({ amount, incline, level, friction, push, acceleration, going }) => {
    const along = level ? RIGHT : direction(incline);
    return {
      bodies: [{ id: "sledge", amount, motion: { along, acceleration, going } }],
      surfaces: [{ id: "N", on: "sledge", slope: along, ...friction }],
      pushes: [{ id: "P", on: "sledge", direction: push ?? along }],
    };
  });

/** A crate on the ground pushed or pulled at any angle: it stays, slides or lifts off. */
export const onTheLevel: fc.Arbitrary<Plan> = fc
  .record({ amount: amounts, friction: frictions, push: anyDirection, size: sizes })
  .map(({ amount, friction, push, size }) => ({
    bodies: [{ id: "crate", amount }],
    surfaces: [{ id: "N", on: "crate", slope: RIGHT, ...friction }],
    pushes: [{ id: "P", on: "crate", direction: push, size }],
  }));

/** The board of a shop sign pressed against a wall. */
export const wall: fc.Arbitrary<Plan> = fc
  .record({ amount: amounts, friction: rough, incline: inclines, upward: fc.boolean(), size: sizes })
  .map(({ amount, friction, incline, upward, size }) => ({
    bodies: [{ id: "board", amount }],
    surfaces: [{ id: "N", on: "board", normal: { angle: 180 }, ...friction }],
    pushes: [
      { id: "P", on: "board", direction: upward ? direction(incline) : direction(incline, "down", "left"), size },
    ],
  }));

/** A crate on a table, a bucket over its edge. */
export const table: fc.Arbitrary<Plan> = fc
  .record({
    crate: amounts,
    bucket: amounts,
    friction: frictions,
    along: fc.constantFrom(UP, DOWN),
    going: fc.option(ways, { nil: undefined, freq: 5 }),
  })
  .map(({ crate, bucket, friction, along, going }) => ({
    bodies: [
      { id: "crate", amount: crate, ...(going === undefined ? {} : { motion: { along: RIGHT, going } }) },
      { id: "bucket", amount: bucket, motion: { along } },
    ],
    ropes: [overTheEdge("crate", RIGHT, "bucket")],
    surfaces: [{ id: "N", on: "crate", slope: RIGHT, ...friction }],
  }));

/** A crate on a slope, a bucket on the other end of its rope over the top. */
export const slopeAndBucket: fc.Arbitrary<Plan> = fc
  .record({
    crate: amounts,
    bucket: amounts,
    friction: frictions,
    incline: inclines,
    side: rises,
    along: fc.constantFrom(UP, DOWN),
  })
  .map(({ crate, bucket, friction, incline, side, along }) => ({
    bodies: [
      { id: "crate", amount: crate },
      { id: "bucket", amount: bucket, motion: { along } },
    ],
    ropes: [overTheEdge("crate", direction(incline, "up", side), "bucket")],
    surfaces: [{ id: "N", on: "crate", slope: direction(incline, "up", side), ...friction }],
  }));

/** Two slopes back to back, a crate on each, their rope over the top. */
export const twoSlopes: fc.Arbitrary<Plan> = fc
  .record({
    left: amounts,
    right: amounts,
    inclines: fc.tuple(inclines, inclines),
    frictions: fc.tuple(frictions, frictions),
  })
  .map(({ left, right, inclines: [a, b], frictions: [f, g] }) => ({
    bodies: [
      { id: "left", amount: left },
      { id: "right", amount: right },
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "left", direction: direction(a) },
          { on: "right", direction: direction(b, "up", "left") },
        ],
      },
    ],
    surfaces: [
      { id: "N1", on: "left", slope: direction(a), ...f },
      { id: "N2", on: "right", slope: direction(b, "up", "left"), ...g },
    ],
  }));

const overTheEdge = (crate: string, toward: DirectionDocument, bucket: string) => ({
  id: "T",
  pulls: [
    { on: crate, direction: toward },
    { on: bucket, direction: UP },
  ],
});
