// Pushes of unknown size: what keeps a body at rest, at a steady speed or at a given acceleration.
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { DOWN, LEFT, RIGHT, UP, mirrored, problem, turned } from "../draw.ts";
import type { Draw } from "../draw.ts";

/** Keeps a crate at rest on a smooth slope: along it, level, or aslant. */
export function holds(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  const degrees = "degrees" in slant ? slant.degrees : 40;
  // Down the slope the push comes out negative: it has to be a pull.
  const direction = draw.pick([
    turned(slant),
    turned(slant),
    RIGHT,
    { angle: Math.round(degrees / 2) },
    turned(slant, 2),
  ]);
  return problem(draw, {
    bodies: [{ id: "crate", ...draw.load() }],
    surfaces: [{ id: "N", on: "crate", slope: turned(slant) }],
    pushes: [{ id: "P", on: "crate", direction }],
  });
}

/** Keeps a crate sliding at a given acceleration on a rough surface. */
export function keepsSliding(draw: Draw): ProblemDocument {
  const slant = draw.chance(0.5) ? ({ degrees: 0 } as const) : draw.slant();
  const direction = draw.pick([turned(slant), turned(slant), { angle: draw.pick([-25, 20, 30]) }]);
  return problem(draw, {
    bodies: [
      {
        id: "crate",
        ...draw.load(),
        motion: { along: turned(slant), acceleration: draw.pick([0, 0, 0.5, 2, -0.4]), going: "forwards" },
      },
    ],
    surfaces: [{ id: "N", on: "crate", slope: turned(slant), ...draw.friction() }],
    pushes: [{ id: "P", on: "crate", direction }],
  });
}

/** Holds a load aside on one rope. */
export function holdsAside(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  const left = draw.chance(0.5);
  return problem(draw, {
    bodies: [{ id: "lantern", ...draw.load() }],
    ropes: [{ id: "T", on: "lantern", direction: turned(left ? mirrored(slant) : slant) }],
    pushes: [{ id: "P", on: "lantern", direction: draw.chance(0.7) === left ? RIGHT : LEFT }],
  });
}

/** Holds a hoist or a movable pulley in balance by pulling down on its load. */
export function holdsHoist(draw: Draw): ProblemDocument {
  const count = draw.whole(1, 3);
  return problem(draw, {
    bodies: [
      { id: "block", kind: "pulley", ...draw.load() },
      { id: "bucket", ...draw.load() },
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          ...Array.from({ length: count }, () => ({ on: "block", direction: UP })),
          { on: "bucket", direction: UP },
        ],
      },
    ],
    pushes: [{ id: "P", on: draw.chance(0.8) ? "bucket" : "block", direction: DOWN }],
  });
}

/** Pushes a wedge so that the crate on it does not slide; or a row of crates at a given acceleration. */
export function keepsOnWedge(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  return problem(draw, {
    bodies: [
      { id: "wedge", ...draw.load(), motion: { along: RIGHT } },
      { id: "crate", ...draw.load(), motion: { along: turned(slant), acceleration: 0, seenFrom: "wedge" } },
    ],
    surfaces: [
      { id: "N1", on: "wedge", slope: RIGHT },
      { id: "N2", on: "crate", of: "wedge", slope: turned(slant) },
    ],
    pushes: [{ id: "P", on: "wedge", direction: RIGHT }],
  });
}
