// Set-ups just on the edge between two states, where the first of the two counts: taut, touching, stuck; and free bodies.
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { DOWN, LEFT, RIGHT, UP, problem, turned } from "../draw.ts";
import type { Draw } from "../draw.ts";

/** A lantern that nothing holds, in the wind. */
export function free(draw: Draw): ProblemDocument {
  return problem(draw, {
    bodies: [{ id: "lantern", mass: draw.mass(), motion: "free" }],
    pushes: [{ id: "P", on: "lantern", direction: turned(draw.slant()), size: draw.whole(1, 60) }],
  });
}

/** An upright rope carries all, so that the others pull with nothing. */
export function ropeWithoutPull(draw: Draw): ProblemDocument {
  return problem(draw, {
    frame: { y: draw.pick([1, 2, -3]) },
    bodies: [{ id: "bell", ...draw.load() }],
    ropes: [
      { id: "T1", on: "bell", direction: UP },
      { id: "T2", on: "bell", direction: turned(draw.slant()) },
    ],
  });
}

/** A slope whose steepness is the coefficient of static friction. */
export function justSticks(draw: Draw): ProblemDocument {
  const { run, rise } = draw.pick<{ run: number; rise: number }>([
    { run: 4, rise: 3 },
    { run: 2, rise: 1 },
    { run: 10, rise: 3 },
    { run: 1, rise: 1 },
  ]);
  const most = rise / run;
  return problem(draw, {
    bodies: [{ id: "crate", ...draw.load() }],
    surfaces: [
      {
        id: "N",
        on: "crate",
        slope: { run: draw.chance(0.5) ? run : -run, rise },
        friction: { static: most, kinetic: 0.2 },
      },
    ],
  });
}

/** A push, or a bucket, that static friction just holds. */
export function justHolds(draw: Draw): ProblemDocument {
  const mass = draw.pick([2, 4, 10]);
  const crate = { id: "crate", mass };
  const surface = { id: "N", on: "crate", slope: RIGHT, friction: { static: 0.5, kinetic: 0.3 } };
  if (draw.chance(0.5))
    return problem(draw, {
      bodies: [crate, { id: "bucket", mass: mass / 2, motion: { along: DOWN } }],
      surfaces: [surface],
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
  return {
    ...problem(draw, { bodies: [crate], surfaces: [surface] }),
    gravity: 10,
    pushes: [{ id: "P", on: "crate", direction: draw.pick([LEFT, RIGHT]), size: mass * 5 }],
  };
}

/** A stack whose friction gets much smaller once it slides: pushed at the top so that one of two places has to give way, either of them. */
export function eitherSlides(draw: Draw): ProblemDocument {
  const mass = draw.pick([1, 2, 5]);
  const push = draw.pick([10.5, 11, 12, 14]) * mass;
  return {
    ...problem(draw, {
      bodies: [
        { id: "low", mass },
        { id: "high", mass },
      ],
      surfaces: [
        { id: "N1", on: "low", slope: RIGHT, friction: { static: 0.5, kinetic: 0.1 } },
        { id: "N2", on: "high", of: "low", slope: RIGHT, friction: { static: draw.pick([0.9, 1]), kinetic: 0.1 } },
      ],
      pushes: [{ id: "P", on: "high", direction: draw.pick([LEFT, RIGHT]), size: push }],
    }),
    gravity: 10,
  };
}

/** A push that just takes the whole weight. */
export function justTouches(draw: Draw): ProblemDocument {
  const weight = draw.whole(10, 90);
  return problem(draw, {
    bodies: [{ id: "crate", weight }],
    surfaces: [{ id: "N", on: "crate", slope: RIGHT, ...draw.friction(0.5) }],
    pushes: [{ id: "P", on: "crate", direction: UP, size: weight }],
  });
}

/** A hoist in balance, or a movable pulley with twice the load. */
export function balanced(draw: Draw): ProblemDocument {
  const count = draw.whole(1, 3);
  const mass = draw.pick([1.5, 4, 7]);
  return problem(draw, {
    bodies: [
      { id: "block", kind: "pulley", mass: mass * count, motion: { along: UP } },
      { id: "bucket", mass, motion: { along: UP } },
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
  });
}

/** In a lift that falls freely, or without gravity, nothing presses and nothing pulls. */
export function weightless(draw: Draw): ProblemDocument {
  const falls = draw.chance(0.5);
  const document = problem(draw, {
    bodies: [
      { id: "crate", mass: draw.mass() },
      { id: "bell", mass: draw.mass() },
    ],
    surfaces: [{ id: "N", on: "crate", slope: RIGHT, ...draw.friction(0.5) }],
    ropes: [{ id: "T", on: "bell", direction: UP }],
  });
  return falls ? { ...document, gravity: 9.8, frame: { y: -9.8 } } : { ...document, gravity: 0, frame: { x: 2 } };
}
