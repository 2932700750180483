// Set-ups that have too many unknowns, and set-ups that cannot be.
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { DOWN, LEFT, RIGHT, UP, mirrored, problem, turned } from "../draw.ts";
import type { Draw } from "../draw.ts";

/** A load on three or four ropes in one plane. */
export function threeRopes(draw: Draw): ProblemDocument {
  const count = draw.chance(0.8) ? 3 : 4;
  return problem(draw, {
    bodies: [{ id: "lantern", ...draw.load() }],
    ropes: Array.from({ length: count }, (_, i) => {
      const slant = draw.slant();
      return { id: `T${i + 1}`, on: "lantern", direction: turned(i % 2 === 0 ? mirrored(slant) : slant) };
    }),
  });
}

/** Two upright ropes share a load. */
export function upright(draw: Draw): ProblemDocument {
  const count = draw.whole(2, 3);
  return problem(draw, {
    frame: { y: draw.pick([1, -2]) },
    bodies: [{ id: "bell", ...draw.load() }],
    ropes: Array.from({ length: count }, (_, i) => ({ id: `T${i + 1}`, on: "bell", direction: UP })),
  });
}

/** A rough slope and a rope both hold a crate, or a rough floor and a push of unknown size. */
export function twoHolds(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  const roped = draw.chance(0.5);
  return problem(draw, {
    bodies: [{ id: "crate", ...draw.load() }],
    surfaces: [{ id: "N", on: "crate", slope: turned(slant), ...draw.friction() }],
    ...(roped
      ? { ropes: [{ id: "T", on: "crate", direction: turned(slant) }] }
      : { pushes: [{ id: "P", on: "crate", direction: draw.chance(0.7) ? turned(slant) : RIGHT }] }),
  });
}

/** Two crates at rest on a rough floor with a rope between them. */
export function twoOnTheFloor(draw: Draw): ProblemDocument {
  return problem(draw, {
    bodies: [
      { id: "near", mass: draw.pick([10, 15, 20]) },
      { id: "far", mass: draw.pick([10, 15, 20]) },
    ],
    surfaces: [
      { id: "N1", on: "near", slope: RIGHT, friction: { static: 0.5, kinetic: 0.4 } },
      { id: "N2", on: "far", slope: RIGHT, friction: { static: 0.6, kinetic: 0.5 } },
    ],
    ropes: [{ id: "T", on: "near", direction: RIGHT, to: "far" }],
    pushes: [{ id: "P", on: "far", direction: RIGHT, size: draw.pick([10, 40, 80]) }],
  });
}

/** No ropes that could hold the load: level, all to one side, leading down, or none at all. */
export function cannotHold(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  const directions = draw.pick([
    [LEFT, RIGHT, RIGHT],
    [turned(slant), turned(draw.slant()), RIGHT],
    [DOWN, LEFT, turned(slant, 3)],
    [],
  ]);
  return problem(draw, {
    bodies: [{ id: "awning", ...draw.load() }],
    ropes: directions.map((direction, i) => ({ id: `T${i + 1}`, on: "awning", direction })),
  });
}

/** A bucket whose acceleration is given, although its rope over a pulley cannot make it. */
export function cannotSpeedUp(draw: Draw): ProblemDocument {
  return problem(draw, {
    bodies: [
      { id: "bucket", ...draw.load(), motion: { along: UP, acceleration: draw.pick([0, 1, 2, -1, -12, 30]) } },
      { id: "crate", ...draw.load(), motion: { along: DOWN } },
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "bucket", direction: UP },
          { on: "crate", direction: UP },
        ],
      },
    ],
  });
}
