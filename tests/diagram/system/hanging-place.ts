/**
 * Where one load hangs that is given by the anchors and lengths of one or two ropes: below the anchor of the shorter rope if the other is
 * long enough, else where the two circles meet below.
 */
import type { Problem } from "../../../shared/problem/index.ts";

/** The place, or null where lengths do not decide it. */
export function hangingPlace(problem: Problem): { x: number; y: number } | null {
  const ropes = problem.ropes.flatMap(({ anchor, length }) =>
    anchor === null || length === null
      ? []
      : [{ x: anchor.x.valueOf(), y: anchor.y.valueOf(), length: length.valueOf() }],
  );
  const [first, second] = ropes;
  if (first === undefined) return null;
  if (second === undefined) return { x: first.x, y: first.y - first.length };
  for (const [held, loose] of [
    [first, second],
    [second, first],
  ] as const) {
    const below = { x: held.x, y: held.y - held.length };
    if (Math.hypot(loose.x - below.x, loose.y - below.y) <= loose.length) return below;
  }
  const across = { x: second.x - first.x, y: second.y - first.y };
  const apart = Math.hypot(across.x, across.y);
  const along = (apart ** 2 + first.length ** 2 - second.length ** 2) / (2 * apart);
  const down = Math.sqrt(Math.max(0, first.length ** 2 - along ** 2));
  const unit = { x: across.x / apart, y: across.y / apart };
  const side = unit.x >= 0 ? 1 : -1;
  return {
    x: first.x + unit.x * along + side * unit.y * down,
    y: first.y + unit.y * along - side * unit.x * down,
  };
}
