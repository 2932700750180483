// One crate on one surface: let go, held by a rope, pushed, hauled, already sliding, against a wall.
import type { BodyDocument, ProblemDocument } from "../../../shared/problem/index.ts";
import { DOWN, LEFT, RIGHT, UP, mirrored, problem, turned } from "../draw.ts";
import type { Draw } from "../draw.ts";

const eitherSide = (draw: Draw) => (draw.chance(0.7) ? draw.slant() : mirrored(draw.slant()));

/** Let go on a slope, or already sliding on it. */
export function slope(draw: Draw): ProblemDocument {
  const slant = eitherSide(draw);
  const already = draw.chance(0.35);
  const motion = { along: turned(slant), going: draw.pick(["forwards", "backwards"] as const) };
  return problem(draw, {
    bodies: [{ id: "crate", ...draw.load(), ...(already ? { motion } : {}) }],
    surfaces: [{ id: "N", on: "crate", slope: turned(slant), ...draw.friction(0.75) }],
  });
}

/** Pushed with a given size: along the slope, level, or aslant; strong enough to lift it off now and then. */
export function pushed(draw: Draw): ProblemDocument {
  const slant = draw.chance(0.4) ? null : eitherSide(draw);
  const along = slant === null ? RIGHT : turned(slant);
  const direction = draw.pick([
    along,
    slant === null ? LEFT : turned(slant, 2),
    RIGHT,
    { angle: draw.degrees() },
    DOWN,
  ]);
  return problem(draw, {
    bodies: [{ id: "crate", ...draw.load() }],
    surfaces: [{ id: "N", on: "crate", slope: along, ...draw.friction(0.75) }],
    pushes: [{ id: "P", on: "crate", direction, size: draw.pick([5, 12, 20, 40, 75, 120, 240]) }],
  });
}

/** Pulled away from a surface, about as strongly as its weight presses it on. */
export function pulledOff(draw: Draw): ProblemDocument {
  const slant = draw.chance(0.5) ? ({ degrees: 0 } as const) : draw.slant();
  const mass = draw.mass();
  return problem(draw, {
    bodies: [{ id: "crate", mass }],
    surfaces: [{ id: "N", on: "crate", slope: turned(slant), ...draw.friction(0.5) }],
    pushes: [{ id: "P", on: "crate", direction: turned(slant, 1), size: Math.round(mass * draw.pick([4, 8, 12, 15])) }],
  });
}

/** Held on a slope by a rope, along it or at an angle to it. */
export function held(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  const up = "degrees" in slant ? slant.degrees : 45;
  const direction = draw.chance(0.6) ? turned(slant) : { angle: Math.min(88, up + draw.pick([5, 10, 15, 30])) };
  return problem(draw, {
    bodies: [{ id: "sledge", ...draw.load() }],
    surfaces: [{ id: "N", on: "sledge", slope: turned(slant), ...draw.friction(0.25) }],
    ropes: [{ id: "T", on: "sledge", direction }],
  });
}

/** Hauled up a slope by a rope with a known acceleration, or at a steady speed. */
export function hauled(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  const crate: BodyDocument = {
    id: "sledge",
    ...draw.load(),
    motion: { along: turned(slant), acceleration: draw.pick([0, 0.5, 1.2, -0.5]), going: "forwards" },
  };
  return problem(draw, {
    bodies: [crate],
    surfaces: [{ id: "N", on: "sledge", slope: turned(slant), ...draw.friction(0.7) }],
    ropes: [{ id: "T", on: "sledge", direction: turned(slant) }],
  });
}

/** Pressed against an upright wall by a push, with a rope above or without. */
export function wall(draw: Draw): ProblemDocument {
  const roped = draw.chance(0.4);
  return problem(draw, {
    bodies: [{ id: "awning", ...draw.load(), ...(roped ? {} : { motion: { along: UP } }) }],
    surfaces: [{ id: "N", on: "awning", normal: LEFT, ...(roped ? {} : draw.friction(0.9)) }],
    pushes: [{ id: "P", on: "awning", direction: RIGHT, size: draw.pick([10, 40, 90, 200]) }],
    ...(roped
      ? { ropes: [{ id: "T", on: "awning", direction: draw.chance(0.6) ? UP : { angle: 90 - draw.degrees() } }] }
      : {}),
  });
}

/** A smooth ball in a trough of two slopes. */
export function trough(draw: Draw): ProblemDocument {
  const [left, right] = [draw.slant(), draw.slant()];
  return problem(draw, {
    bodies: [{ id: "buoy", ...draw.load() }],
    surfaces: [
      { id: "N1", on: "buoy", slope: turned(mirrored(left)) },
      { id: "N2", on: "buoy", slope: turned(right) },
    ],
  });
}
