// Knots in the air: each holds what hangs below it by two more ropes; and lines of lanterns between two supports.
import type { BodyDocument, ProblemDocument, RopeDocument } from "../../../shared/problem/index.ts";
import { UP, mirrored, problem, turned } from "../draw.ts";
import type { Draw } from "../draw.ts";

/** A load under a row of knots: each knot is tied aside to a support and up to the next knot, the last to two supports. */
export function cascade(draw: Draw): ProblemDocument {
  const count = draw.whole(1, 4);
  const bodies: BodyDocument[] = [{ id: "lantern", ...draw.load() }];
  const ropes: RopeDocument[] = [{ id: "T1", on: "lantern", direction: UP, to: "k1" }];
  for (let k = 1; k <= count; k++) {
    bodies.push({ id: `k${k}`, kind: "knot" });
    const toRight = draw.chance(0.5);
    const [up, aside] = [draw.slant(), draw.slant()];
    const upward = turned(toRight ? up : mirrored(up));
    const sideways = draw.chance(0.5) ? { angle: toRight ? 180 : 0 } : turned(toRight ? mirrored(aside) : aside);
    ropes.push({ id: `T${2 * k}`, on: `k${k}`, direction: sideways });
    ropes.push({ id: `T${2 * k + 1}`, on: `k${k}`, direction: upward, ...(k < count ? { to: `k${k + 1}` } : {}) });
  }
  return problem(draw, { bodies, ropes });
}

/**
 * Lanterns on a line between two supports, tied to it at knots. With the same level pull H all along, the lantern between
 * two stretches has the weight H times the difference of their slopes, so whole slopes and H = g make whole masses.
 */
export function garland(draw: Draw): ProblemDocument {
  const count = draw.whole(2, 4);
  const slopes = [-draw.whole(2, 4)];
  for (let k = 1; k <= count; k++) slopes.push((slopes[k - 1] ?? 0) + draw.whole(1, 3));
  const unfit = draw.chance(0.25);
  const bodies: BodyDocument[] = [];
  const ropes: RopeDocument[] = [];
  for (let k = 1; k <= count; k++) {
    const steps = (slopes[k] ?? 0) - (slopes[k - 1] ?? 0);
    bodies.push({ id: `k${k}`, kind: "knot" }, { id: `lamp${k}`, mass: unfit && k === 1 ? steps + 1 : steps });
    ropes.push({ id: `D${k}`, on: `lamp${k}`, direction: UP, to: `k${k}` });
  }
  ropes.push({ id: "T1", on: "k1", direction: { run: -1, rise: -(slopes[0] ?? 0) } });
  for (let k = 1; k <= count; k++)
    ropes.push({
      id: `T${k + 1}`,
      on: `k${k}`,
      direction: { run: 1, rise: slopes[k] ?? 0 },
      ...(k < count ? { to: `k${k + 1}` } : {}),
    });
  return problem(draw, { bodies, ropes });
}

/** Two loads hung one below the other, and the lower from one or two ropes: a straight row. */
export function tower(draw: Draw): ProblemDocument {
  const count = draw.whole(2, 4);
  const ids = Array.from({ length: count }, (_, i) => `bell${i + 1}`);
  const lift = draw.pick([0, 0, 1.5, -2, -12]);
  return problem(draw, {
    ...(lift === 0 ? {} : { frame: { y: lift } }),
    bodies: ids.map((id) => ({ id, ...draw.load() })),
    ropes: ids.map((id, i) => {
      const above = ids[i + 1];
      return { id: `T${i + 1}`, on: id, direction: UP, ...(above === undefined ? {} : { to: above }) };
    }),
  });
}

/** A knot at a place with two ropes to places, and a load that hangs from it. */
export function placedKnot(draw: Draw): ProblemDocument {
  const drop = draw.whole(1, 4);
  return problem(draw, {
    bodies: [
      { id: "knot", kind: "knot", at: { x: 0, y: -drop } },
      { id: "lantern", ...draw.load(), at: { x: 0, y: -drop - draw.whole(1, 3) } },
    ],
    ropes: [
      { id: "T1", on: "knot", anchor: { x: -draw.whole(1, 4), y: 0 } },
      { id: "T2", on: "knot", anchor: { x: draw.whole(1, 4), y: draw.whole(0, 2) } },
      { id: "T3", on: "lantern", to: "knot" },
    ],
  });
}
