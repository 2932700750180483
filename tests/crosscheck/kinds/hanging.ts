// One load: on ropes of given directions, at a given place, or on ropes of given lengths.
import type { DirectionDocument, ProblemDocument } from "../../../shared/problem/index.ts";
import { DOWN, UP, mirrored, problem, turned } from "../draw.ts";
import type { Draw } from "../draw.ts";

/** The direction of a rope: mostly up, to the left or right, now and then level, upright or down. */
function ropeDirection(draw: Draw, left: boolean): DirectionDocument {
  if (draw.chance(0.08)) return { angle: left ? 180 : 0 };
  if (draw.chance(0.05)) return UP;
  if (draw.chance(0.2)) return { angle: draw.degrees(), from: "vertical", side: left ? "left" : "right" };
  const slant = draw.slant();
  const up = left ? mirrored(slant) : slant;
  return turned(up, draw.chance(0.08) ? 2 : 0);
}

/** One load on two ropes, in a lift or a cart now and then; the kind of problem that came first. */
export function twoRopes(draw: Draw): ProblemDocument {
  const moving = draw.chance(0.35);
  const acceleration = { x: draw.pick([0, 2, -3, 12]), y: draw.pick([0, 2, -4, -12]) };
  return problem(draw, {
    bodies: [{ id: "lantern", mass: draw.mass(), ...(moving ? { acceleration } : {}) }],
    ropes: [
      { id: "T1", on: "lantern", direction: ropeDirection(draw, true) },
      { id: "T2", on: "lantern", direction: ropeDirection(draw, draw.chance(0.15)) },
    ],
  });
}

/** One load on one upright rope in a lift. */
export function oneRope(draw: Draw): ProblemDocument {
  return problem(draw, {
    bodies: [{ id: "bell", ...draw.load(), acceleration: { y: draw.pick([0, 1.5, -2, 3, -9, -12]) } }],
    ropes: [{ id: "T1", on: "bell", direction: UP }],
  });
}

/** One load on ropes whose supports speed up. */
export function inFrame(draw: Draw): ProblemDocument {
  return problem(draw, {
    frame: { x: draw.pick([0, 1, -2, 4]), y: draw.pick([0.5, 2, -3]) },
    bodies: [{ id: "awning", ...draw.load() }],
    ropes: [
      { id: "T1", on: "awning", direction: ropeDirection(draw, true) },
      { id: "T2", on: "awning", direction: ropeDirection(draw, false) },
    ],
  });
}

/** One load at a place, its ropes tied at places. */
export function placed(draw: Draw): ProblemDocument {
  const height = draw.whole(1, 6);
  return problem(draw, {
    bodies: [{ id: "awning", ...draw.load(), at: { x: draw.whole(-1, 1), y: -height } }],
    ropes: [
      { id: "T1", on: "awning", anchor: { x: draw.whole(-6, -1), y: draw.whole(-1, 2) } },
      { id: "T2", on: "awning", anchor: { x: draw.whole(0, 6), y: draw.whole(0, 3) } },
    ],
  });
}

/** One load that hangs where the lengths of its ropes let it: which is straight is part of the answer. */
export function lengths(draw: Draw): ProblemDocument {
  const tied = (id: string, x: number) => ({
    id,
    on: "bell",
    anchor: { x, y: draw.pick([3, 3, 4, 2.5]) },
    length: draw.pick([1.5, 2, 2.5, 3, 3.5, 5]),
  });
  const ropes = [tied("T1", -draw.whole(0, 2)), tied("T2", draw.whole(1, 3))];
  return problem(draw, {
    bodies: [{ id: "bell", ...draw.load() }],
    ropes: draw.chance(0.1) ? ropes.slice(0, 1) : ropes,
  });
}

/** A load drawn aside by a level push of given size, on one rope and a stay that leads down. */
export function pulledAside(draw: Draw): ProblemDocument {
  const slant = draw.slant();
  return problem(draw, {
    bodies: [{ id: "lantern", ...draw.load() }],
    ropes: [
      { id: "T1", on: "lantern", direction: turned(mirrored(slant)) },
      { id: "T2", on: "lantern", direction: draw.chance(0.5) ? DOWN : turned(draw.slant(), 3) },
    ],
    pushes: [{ id: "P", on: "lantern", direction: { angle: 0 }, size: draw.whole(5, 150) }],
  });
}
