// Lifts and carts: everything that supports speeds up.
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { DOWN, RIGHT, UP, mirrored, problem, turned } from "../draw.ts";
import type { Draw } from "../draw.ts";

/** A crate on the floor of a lift, with another on top now and then. */
export function liftFloor(draw: Draw): ProblemDocument {
  const two = draw.chance(0.4);
  return problem(draw, {
    frame: { y: draw.pick([1.2, -1.2, 3, -3.8, 2, -9, -12]) },
    bodies: [{ id: "crate", ...draw.load() }, ...(two ? [{ id: "bell", ...draw.load() }] : [])],
    surfaces: [
      { id: "N1", on: "crate", slope: RIGHT },
      ...(two ? [{ id: "N2", on: "bell", of: "crate", slope: RIGHT }] : []),
    ],
  });
}

/** A crate on the floor or a slope of a cart: it stays or slides back. */
export function cartFloor(draw: Draw): ProblemDocument {
  const slope = draw.chance(0.5) ? turned(draw.chance(0.6) ? draw.slant() : mirrored(draw.slant())) : RIGHT;
  return problem(draw, {
    frame: { x: draw.pick([1, 2, -2.5, 4, -6, 8]) },
    bodies: [{ id: "crate", ...draw.load() }],
    surfaces: [{ id: "N", on: "crate", slope, ...draw.friction(0.8) }],
  });
}

/** A table with a bucket over its edge, in a lift or on a cart. */
export function movingTable(draw: Draw): ProblemDocument {
  return problem(draw, {
    // Never to the left, where the table would leave the bucket behind.
    frame: { x: draw.pick([0, 1, 2.5]), y: draw.pick([0, 1.5, -3]) },
    bodies: [
      { id: "crate", ...draw.load() },
      { id: "bucket", ...draw.load(), motion: { along: DOWN } },
    ],
    surfaces: [
      { id: "N1", on: "crate", slope: RIGHT, ...draw.friction(0.5) },
      // The side of the table, along which the bucket slides.
      { id: "N2", on: "bucket", normal: RIGHT },
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
  });
}

/** Three ropes and a floor in a lift: a load partly held up by one rope of unknown pull. */
export function pressedAgainstCart(draw: Draw): ProblemDocument {
  return problem(draw, {
    frame: { x: draw.pick([5, 12, 20, 30]) },
    bodies: [{ id: "awning", ...draw.load(), motion: { along: UP } }],
    surfaces: [{ id: "N", on: "awning", normal: RIGHT, ...draw.friction() }],
  });
}
