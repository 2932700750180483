// Movable pulleys: two or three strands to one load, and a pulley that hangs over a pulley.
import type { BodyDocument, ProblemDocument } from "../../../shared/problem/index.ts";
import { DOWN, LEFT, RIGHT, UP, problem } from "../draw.ts";
import type { Draw } from "../draw.ts";

const block = (draw: Draw): BodyDocument => ({
  id: "block",
  kind: "pulley",
  ...(draw.chance(0.75) ? draw.load() : {}),
  motion: { along: draw.chance(0.6) ? DOWN : UP },
});

const times = (on: string, count: number) => Array.from({ length: count }, () => ({ on, direction: UP }));

/** A load on a movable pulley, two or three strands; the free end holds a bucket, or a push of given or unknown size. */
export function strands(draw: Draw): ProblemDocument {
  const count = draw.chance(0.6) ? 2 : 3;
  const ground = draw.chance(0.2);
  return problem(draw, {
    bodies: [block(draw), { id: "bucket", ...draw.load(), motion: { along: draw.chance(0.5) ? DOWN : UP } }],
    ropes: [{ id: "T", pulls: [...times("block", count), { on: "bucket", direction: UP }] }],
    ...(ground ? { surfaces: [{ id: "N", on: "bucket", slope: RIGHT }] } : {}),
  });
}

/** A load on a rope below the movable pulley. */
export function loadBelow(draw: Draw): ProblemDocument {
  return problem(draw, {
    bodies: [
      { id: "block", kind: "pulley", motion: { along: UP } },
      { id: "crate", ...draw.load(), motion: { along: UP } },
      { id: "bucket", ...draw.load(), motion: { along: DOWN } },
    ],
    ropes: [
      { id: "T1", pulls: [...times("block", 2), { on: "bucket", direction: UP }] },
      { id: "T2", on: "crate", direction: UP, to: "block" },
    ],
  });
}

/** A crate on a table pulls a movable pulley with a load. */
export function tableAndPulley(draw: Draw): ProblemDocument {
  return problem(draw, {
    bodies: [{ id: "crate", ...draw.load() }, block(draw)],
    surfaces: [{ id: "N", on: "crate", slope: RIGHT, ...draw.friction(0.6) }],
    ropes: [{ id: "T", pulls: [{ on: "crate", direction: RIGHT }, ...times("block", 2)] }],
  });
}

/** Over a fixed pulley a load and a movable pulley, over which two more loads. */
export function pulleyOnPulley(draw: Draw): ProblemDocument {
  const along = draw.chance(0.5) ? UP : DOWN;
  const heavy = draw.chance(0.3);
  return problem(draw, {
    bodies: [
      { id: "crate", ...draw.load(), motion: { along } },
      { id: "block", kind: "pulley", ...(heavy ? draw.load() : {}), motion: { along } },
      { id: "bucket", ...draw.load(), motion: { along } },
      { id: "lamp", ...draw.load(), motion: { along } },
    ],
    ropes: [
      {
        id: "T1",
        pulls: [
          { on: "crate", direction: UP },
          { on: "block", direction: UP },
        ],
      },
      {
        id: "T2",
        pulls: [
          { on: "bucket", direction: UP },
          { on: "block", direction: DOWN },
          { on: "block", direction: DOWN },
          { on: "lamp", direction: UP },
        ],
      },
    ],
  });
}

/** Two crates on the ground, their rope round a pulley that is hauled; a pulley with a mass lies on the ground too. */
export function hauledPulley(draw: Draw): ProblemDocument {
  const heavy = draw.chance(0.5);
  return problem(draw, {
    bodies: [
      { id: "near", ...draw.load() },
      { id: "far", ...draw.load() },
      { id: "block", kind: "pulley", ...(heavy ? draw.load() : {}), motion: { along: RIGHT } },
    ],
    surfaces: [
      { id: "N1", on: "near", slope: RIGHT, ...draw.friction(0.5) },
      { id: "N2", on: "far", slope: RIGHT, ...draw.friction(0.5) },
      ...(heavy ? [{ id: "N3", on: "block", slope: RIGHT }] : []),
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "near", direction: RIGHT },
          { on: "block", direction: LEFT },
          { on: "block", direction: LEFT },
          { on: "far", direction: RIGHT },
        ],
      },
    ],
    pushes: [{ id: "P", on: "block", direction: RIGHT, size: draw.pick([20, 60, 150]) }],
  });
}
