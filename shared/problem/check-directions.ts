import { isZeroRational } from "../exact/index.ts";
import type { Fault } from "./fault.ts";
import { isPlaced, joinedBody, pullsOf } from "./rope.ts";
import type { Direction, Problem, Rope } from "./types.ts";

type Written = { readonly path: string; readonly direction: Direction };

/** Every direction that a document gives goes somewhere. */
export function checkDirections(problem: Problem): Fault[] {
  const written: readonly Written[] = [
    ...problem.bodies.flatMap(({ motion }, index) =>
      motion.kind === "line" ? [{ path: `/bodies/${index}/motion/along`, direction: motion.along }] : [],
    ),
    ...problem.ropes.flatMap((rope, index) => writtenOf(problem, rope, `/ropes/${index}`)),
    ...problem.surfaces.map(({ lies }, index) => ({
      path: `/surfaces/${index}/${lies.kind}`,
      direction: lies.direction,
    })),
    ...problem.pushes.map(({ direction }, index) => ({ path: `/pushes/${index}/direction`, direction })),
  ];
  return written.flatMap(({ path, direction }) => {
    if (direction.kind !== "slope" || !isZeroRational(direction.run) || !isZeroRational(direction.rise)) return [];
    return [{ path, found: "a run of 0 with a rise of 0", accepted: "a run and a rise that are not both 0" }];
  });
}

/** The directions of a rope that places do not give. */
function writtenOf({ bodies }: Problem, rope: Rope, path: string): readonly Written[] {
  if (isPlaced(rope, bodies)) return [];
  if (rope.further.length === 0 || joinedBody(rope) !== null)
    return [{ path: `${path}/direction`, direction: rope.direction }];
  return pullsOf(rope).map(({ direction }, index) => ({ path: `${path}/pulls/${index}/direction`, direction }));
}
