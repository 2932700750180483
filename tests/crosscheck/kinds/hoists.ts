// Ropes over fixed pulleys: two buckets on a hoist, a crate on a table or a slope with a bucket that hangs, two slopes.
import type { ProblemDocument, SurfaceDocument } from "../../../shared/problem/index.ts";
import { DOWN, LEFT, RIGHT, UP, mirrored, problem, turned } from "../draw.ts";
import type { Draw, Slant } from "../draw.ts";

const falling = (draw: Draw) => ({ along: draw.chance(0.7) ? DOWN : UP });

/** Two buckets on one rope; one may start on the ground, and the whole may be in a lift. */
export function hoist(draw: Draw): ProblemDocument {
  const lift = draw.chance(0.2) ? draw.pick([1, -2, 3, -12]) : 0;
  const ground: SurfaceDocument[] = draw.chance(0.3) ? [{ id: "N", on: "left", slope: RIGHT }] : [];
  const twin = draw.chance(0.1) ? { mass: 6 } : null;
  return problem(draw, {
    ...(lift === 0 ? {} : { frame: { y: lift } }),
    bodies: [
      { id: "left", ...(twin ?? draw.load()), motion: falling(draw) },
      { id: "right", ...(twin ?? draw.load()), motion: falling(draw) },
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "left", direction: UP },
          { on: "right", direction: UP },
        ],
      },
    ],
    ...(ground.length === 0 ? {} : { surfaces: ground }),
  });
}

/** A crate on a table, tied over a pulley to a bucket. */
export function table(draw: Draw): ProblemDocument {
  const toRight = draw.chance(0.7);
  const already = draw.chance(0.2);
  const out = toRight ? RIGHT : LEFT;
  return problem(draw, {
    bodies: [
      { id: "crate", ...draw.load(), ...(already ? { motion: { along: out, going: "forwards" } } : {}) },
      {
        id: "bucket",
        ...draw.load(),
        motion: already ? { along: DOWN, going: "forwards" } : falling(draw),
      },
    ],
    surfaces: [{ id: "N", on: "crate", slope: RIGHT, ...draw.friction(0.65) }],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "crate", direction: out },
          { on: "bucket", direction: UP },
        ],
      },
    ],
  });
}

/** A crate on a table between two buckets. */
export function tableBetween(draw: Draw): ProblemDocument {
  const over = (id: string, bucket: string, direction: typeof LEFT) => ({
    id,
    pulls: [
      { on: "crate", direction },
      { on: bucket, direction: UP },
    ],
  });
  return problem(draw, {
    bodies: [
      { id: "left", ...draw.load(), motion: { along: DOWN } },
      { id: "crate", ...draw.load() },
      { id: "right", ...draw.load(), motion: { along: DOWN } },
    ],
    surfaces: [{ id: "N", on: "crate", slope: RIGHT, ...draw.friction(0.65) }],
    ropes: [over("T1", "left", LEFT), over("T2", "right", RIGHT)],
  });
}

/** A crate on a slope, tied to a bucket over a pulley at the top, or at the foot. */
export function slopeAndBucket(draw: Draw): ProblemDocument {
  const slant: Slant = draw.chance(0.7) ? draw.slant() : mirrored(draw.slant());
  const top = draw.chance(0.85);
  return problem(draw, {
    bodies: [
      { id: "crate", ...draw.load() },
      { id: "bucket", ...draw.load(), motion: falling(draw) },
    ],
    surfaces: [{ id: "N", on: "crate", slope: turned(slant), ...draw.friction(0.65) }],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "crate", direction: turned(slant, top ? 0 : 2) },
          { on: "bucket", direction: UP },
        ],
      },
    ],
  });
}

/** Two crates on two slopes with their ridge between them. */
export function twoSlopes(draw: Draw): ProblemDocument {
  const [left, right] = [draw.slant(), mirrored(draw.slant())];
  return problem(draw, {
    bodies: [
      { id: "near", ...draw.load() },
      { id: "far", ...draw.load() },
    ],
    surfaces: [
      { id: "N1", on: "near", slope: turned(left), ...draw.friction(0.55) },
      { id: "N2", on: "far", slope: turned(right), ...draw.friction(0.55) },
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "near", direction: turned(left) },
          { on: "far", direction: turned(right) },
        ],
      },
    ],
  });
}
