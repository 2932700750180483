import type { Problem } from "./types.ts";
import { isZeroVector } from "./vector.ts";

/**
 * Whether a problem is one load on one or two ropes, each given by its direction to a support, in SI units, with at most
 * a given acceleration: all that format 1 had at first.
 */
export function isPlainHanging({ units, frame, bodies, ropes, surfaces, pushes }: Problem): boolean {
  const [body, ...others] = bodies;
  if (body === undefined || others.length > 0 || ropes.length < 1 || ropes.length > 2) return false;
  const still = body.motion.kind === "unstated" || body.motion.kind === "given";
  return (
    units === "SI" &&
    isZeroVector(frame) &&
    surfaces.length === 0 &&
    pushes.length === 0 &&
    body.kind === "load" &&
    body.at === null &&
    still &&
    ropes.every((rope) => rope.further.length === 0 && rope.anchor === null)
  );
}
