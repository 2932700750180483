// Lifts, carts and wedges: what bodies stand on or hang from speeds up.
import fc from "fast-check";
import { accelerations, amounts, direction, frictions, inclines, LEFT, RIGHT, rough, sizes, UP } from "./parts.ts";
import type { Plan, Shape } from "./parts.ts";

/** A crate on the floor of a lift, another one on top now and then. */
export const lift: fc.Arbitrary<Plan> = fc
  .record({ crate: amounts, bell: fc.option(amounts, { nil: null }), y: accelerations, own: fc.boolean() })
  .map(({ crate, bell, y, own }) => {
    const moved = own ? { acceleration: { y } } : {};
    return {
      ...(own ? {} : { frame: { y } }),
      bodies: [
        { id: "crate", amount: crate, ...moved },
        ...(bell === null ? [] : [{ id: "bell", amount: bell, ...moved }]),
      ],
      surfaces: [
        { id: "N1", on: "crate", slope: RIGHT },
        ...(bell === null ? [] : [{ id: "N2", on: "bell", of: "crate", slope: RIGHT }]),
      ],
    };
  });

/** A crate on the floor or on a slope of a cart. */
export const cart: fc.Arbitrary<Plan> = fc
  .record({
    crate: amounts,
    incline: fc.option(inclines, { nil: null }),
    side: fc.constantFrom("right" as const, "left" as const),
    friction: frictions,
    x: accelerations,
    y: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: accelerations }),
  })
  .map(({ crate, incline, side, friction, x, y }) => ({
    frame: { x, y },
    bodies: [{ id: "crate", amount: crate }],
    surfaces: [{ id: "N", on: "crate", slope: incline === null ? RIGHT : direction(incline, "up", side), ...friction }],
  }));

/** An awning's board pressed against the front of a cart by the cart's own speeding up. */
export const front: fc.Arbitrary<Plan> = fc
  .record({ board: amounts, friction: rough, x: fc.constantFrom(2, 5, 9.8, 12, 20, 30, "49/2") })
  .map(({ board, friction, x }) => ({
    frame: { x },
    bodies: [{ id: "board", amount: board, motion: { along: UP } }],
    surfaces: [{ id: "N", on: "board", normal: RIGHT, ...friction }],
  }));

/** A table with a bucket over its edge, on a cart or in a lift. */
export const tableInFrame: fc.Arbitrary<Plan> = fc
  .record({
    crate: amounts,
    bucket: amounts,
    friction: frictions,
    // The other way the table would leave the bucket behind.
    x: fc.constantFrom(0, 0.5, 2, 3.7, 9.8, "20/3"),
    y: accelerations,
  })
  .map(({ crate, bucket, friction, x, y }) => ({
    frame: { x, y },
    bodies: [
      { id: "crate", amount: crate },
      { id: "bucket", amount: bucket, motion: { along: UP } },
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "crate", direction: RIGHT },
          { on: "bucket", direction: UP },
        ],
      },
    ],
    surfaces: [
      { id: "N1", on: "crate", slope: RIGHT, ...friction },
      // The side of the table, along which the bucket slides.
      { id: "N2", on: "bucket", normal: RIGHT },
    ],
  }));

/** A crate on the face of a wedge that is pushed, or moved at a given acceleration, along smooth ground. */
export const wedge: fc.Arbitrary<Plan> = fc
  .record({
    wedge: amounts,
    crate: amounts,
    incline: inclines,
    side: fc.constantFrom("right" as const, "left" as const),
    friction: fc.oneof({ weight: 2, arbitrary: fc.constant({}) }, { weight: 1, arbitrary: frictions }),
    how: fc.constantFrom("free", "pushed", "given"),
    x: accelerations,
    size: sizes,
  })
  .map(({ wedge: heavy, crate, incline, side, friction, how, x, size }) => {
    const moved: Partial<Shape> =
      how === "given" ? { motion: { along: RIGHT, acceleration: x } } : { motion: { along: RIGHT } };
    return {
      bodies: [
        { id: "wedge", amount: heavy, ...moved },
        { id: "crate", amount: crate },
      ],
      surfaces: [
        { id: "N1", on: "wedge", slope: RIGHT },
        { id: "N2", on: "crate", of: "wedge", slope: direction(incline, "up", side), ...friction },
      ],
      pushes: how === "free" ? [] : [{ id: "P", on: "wedge", direction: RIGHT, ...(how === "given" ? {} : { size }) }],
    };
  });

/** A crate that slides along a long cart, as seen from it, while the cart moves at a given acceleration. */
export const alongTheCart: fc.Arbitrary<Plan> = fc
  .record({
    cart: amounts,
    crate: amounts,
    friction: frictions,
    x: accelerations,
    going: fc.constantFrom("forwards" as const, "backwards" as const),
    cartGoing: fc.constantFrom("forwards" as const, "backwards" as const),
  })
  .map(({ cart: heavy, crate, friction, x, going, cartGoing }) => ({
    bodies: [
      { id: "cart", amount: heavy, motion: { along: RIGHT, acceleration: x, going: cartGoing } },
      { id: "crate", amount: crate, motion: { along: RIGHT, going, seenFrom: "cart" } },
    ],
    surfaces: [
      { id: "N1", on: "cart", slope: RIGHT },
      { id: "N2", on: "crate", of: "cart", slope: RIGHT, ...friction },
    ],
    pushes: [{ id: "P", on: "cart", direction: LEFT }],
  }));
