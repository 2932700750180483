import { writeBody } from "./body-document.ts";
import type { ProblemDocument } from "./document.ts";
import { writeRope } from "./rope-document.ts";
import { writePush, writeSurface } from "./surface-document.ts";
import type { Problem } from "./types.ts";
import { isZeroVector, writeVector } from "./vector.ts";
import { writeNumber } from "./written-number.ts";

/**
 * The canonical document of a problem, ready for JSON.stringify: keys in the order of the format's description, numbers
 * as JSON numbers where those are exact and as text otherwise. A body's name is always written; units, a frame, lists
 * and parts that are at their default are left out. Throws TypeError for a problem that `checkProblem` refuses.
 */
export function writeProblem(problem: Problem): WrittenProblem {
  const { units, frame, bodies, surfaces, pushes } = problem;
  return {
    format: 1,
    ...(units === "SI" ? {} : { units }),
    gravity: writeNumber(problem.gravity),
    ...(isZeroVector(frame) ? {} : { frame: writeVector(frame) }),
    bodies: bodies.map(writeBody),
    ropes: problem.ropes.map((rope) => writeRope(rope, bodies)),
    ...(surfaces.length === 0 ? {} : { surfaces: surfaces.map(writeSurface) }),
    ...(pushes.length === 0 ? {} : { pushes: pushes.map(writePush) }),
  };
}

/** A document that names its ropes, if only by an empty list. */
export type WrittenProblem = ProblemDocument & { readonly ropes: NonNullable<ProblemDocument["ropes"]> };
