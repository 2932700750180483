// Several crates: on top of each other, side by side, in a row on ropes, a crate on a wedge that slides.
import type { BodyDocument, ProblemDocument, RopeDocument, SurfaceDocument } from "../../../shared/problem/index.ts";
import { LEFT, RIGHT, UP, problem, turned } from "../draw.ts";
import type { Draw, Slant } from "../draw.ts";

/** Two or three crates on top of each other, the lowest on the ground; one is pushed. */
export function stacked(draw: Draw): ProblemDocument {
  const count = draw.chance(0.75) ? 2 : 3;
  const ids = ["low", "middle", "high"].slice(0, count);
  return problem(draw, {
    bodies: ids.map((id) => ({ id, ...draw.load() })),
    surfaces: ids.map((id, i): SurfaceDocument => {
      const below = ids[i - 1];
      const on = below === undefined ? { ...draw.friction(0.6) } : { of: below, ...draw.friction(0.9) };
      return { id: `N${i + 1}`, on: id, slope: RIGHT, ...on };
    }),
    pushes: [
      {
        id: "P",
        on: draw.chance(0.6) ? "low" : (ids[count - 1] ?? "low"),
        direction: draw.chance(0.8) ? RIGHT : LEFT,
        size: draw.pick([4, 10, 25, 60, 120, 250]),
      },
    ],
  });
}

/** A crate on another one on a slope. */
export function stackedOnSlope(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  return problem(draw, {
    bodies: [
      { id: "low", ...draw.load() },
      { id: "high", ...draw.load() },
    ],
    surfaces: [
      { id: "N1", on: "low", slope: turned(slant), ...draw.friction(0.7) },
      { id: "N2", on: "high", of: "low", slope: turned(slant), ...draw.friction(0.8) },
    ],
  });
}

/** A crate tied back to a wall lies on one that is pulled out from under it. */
export function pulledFromUnder(draw: Draw): ProblemDocument {
  const known = draw.chance(0.5);
  return problem(draw, {
    bodies: [
      { id: "high", ...draw.load() },
      known
        ? { id: "low", ...draw.load(), motion: { along: RIGHT, acceleration: draw.pick([0, 1, 2]), going: "forwards" } }
        : { id: "low", ...draw.load(), motion: { along: RIGHT, going: "forwards" } },
    ],
    surfaces: [
      { id: "N1", on: "high", of: "low", slope: RIGHT, ...draw.friction(0.95) },
      { id: "N2", on: "low", slope: RIGHT, ...draw.friction(0.6) },
    ],
    ropes: [{ id: "T", on: "high", direction: LEFT }],
    pushes: [{ id: "P", on: "low", direction: RIGHT, ...(known ? {} : { size: draw.pick([30, 80, 200]) }) }],
  });
}

/** Crates side by side on the ground or a slope, the first one pushed against the others. */
export function sideBySide(draw: Draw): ProblemDocument {
  const count = draw.whole(2, 4);
  const slant: Slant = draw.chance(0.7) ? { degrees: 0 } : draw.slant();
  const friction = draw.friction(0.5);
  const ids = Array.from({ length: count }, (_, i) => `crate${i + 1}`);
  const ground = ids.map((id, i): SurfaceDocument => ({ id: `N${i + 1}`, on: id, slope: turned(slant), ...friction }));
  const between = ids.slice(1).map((id, i): SurfaceDocument => ({
    id: `C${i + 1}`,
    on: id,
    of: `crate${i + 1}`,
    normal: turned(slant),
  }));
  return problem(draw, {
    bodies: ids.map((id) => ({ id, ...draw.load() })),
    surfaces: [...ground, ...between],
    pushes: [{ id: "P", on: "crate1", direction: turned(slant), size: draw.pick([15, 24, 60, 150, 300, 600]) }],
  });
}

/** Crates in a row on ropes, the last one hauled by a push of given size, or all at a given acceleration by an unknown one. */
export function row(draw: Draw): ProblemDocument {
  const count = draw.whole(2, 4);
  const known = draw.chance(0.35);
  const slant: Slant = draw.chance(0.75) ? { degrees: 0 } : draw.slant();
  const rough = draw.chance(0.5);
  const already = known || (rough && draw.chance(0.5));
  const ids = Array.from({ length: count }, (_, i) => `crate${i + 1}`);
  const motion: BodyDocument["motion"] = {
    along: turned(slant),
    ...(known ? { acceleration: draw.pick([0, 0.5, 2]) } : {}),
    going: "forwards",
  };
  const ropes = ids.slice(1).map((id, i): RopeDocument => ({
    id: `T${i + 1}`,
    on: `crate${i + 1}`,
    direction: turned(slant),
    to: id,
  }));
  return problem(draw, {
    bodies: ids.map((id) => ({ id, ...draw.load(), ...(already ? { motion } : {}) })),
    surfaces: ids.map((id, i) => ({
      id: `N${i + 1}`,
      on: id,
      slope: turned(slant),
      ...(rough ? draw.friction(0.9) : {}),
    })),
    ropes,
    pushes: [
      {
        id: "P",
        on: ids[count - 1] ?? "crate1",
        direction: turned(slant),
        ...(known ? {} : { size: draw.pick([20, 60, 150, 300]) }),
      },
    ],
  });
}

/** Two crates that already slide on a slope or the ground, a rope between them: taut or slack as their friction wants. */
export function coasting(draw: Draw): ProblemDocument {
  const slant: Slant = draw.chance(0.4) ? { degrees: 0 } : draw.slant();
  const going = draw.pick(["forwards", "backwards"] as const);
  const motion: BodyDocument["motion"] = { along: turned(slant), going };
  return problem(draw, {
    bodies: [
      { id: "low", ...draw.load(), motion },
      { id: "high", ...draw.load(), motion },
    ],
    surfaces: [
      { id: "N1", on: "low", slope: turned(slant), ...draw.friction(0.8) },
      { id: "N2", on: "high", slope: turned(slant), ...draw.friction(0.8) },
    ],
    ropes: [{ id: "T", on: "low", direction: turned(slant), to: "high" }],
  });
}

/** A crate on the smooth face of a wedge that slides on smooth ground; the wedge may be pushed. */
export function wedge(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  const pushed = draw.chance(0.4);
  return problem(draw, {
    bodies: [
      { id: "wedge", ...draw.load(), motion: { along: RIGHT } },
      { id: "crate", ...draw.load() },
    ],
    surfaces: [
      { id: "N1", on: "wedge", slope: RIGHT, ...draw.friction(0.2) },
      { id: "N2", on: "crate", of: "wedge", slope: turned(slant), ...draw.friction(0.3) },
    ],
    ...(pushed ? { pushes: [{ id: "P", on: "wedge", direction: RIGHT, size: draw.pick([10, 50, 150]) }] } : {}),
  });
}

/** A crate on the ground that a rope to a bucket above, or a pull, may lift. */
export function onTheGround(draw: Draw): ProblemDocument {
  return problem(draw, {
    bodies: [
      { id: "crate", ...draw.load(), motion: { along: UP } },
      { id: "bucket", ...draw.load(), motion: { along: UP } },
    ],
    surfaces: [
      { id: "N1", on: "crate", slope: RIGHT },
      { id: "N2", on: "bucket", of: "crate", normal: UP },
    ],
    pushes: [
      { id: "P", on: draw.chance(0.5) ? "crate" : "bucket", direction: UP, size: draw.pick([10, 60, 150, 400]) },
    ],
  });
}
