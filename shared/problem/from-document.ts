import { readBody } from "./body-document.ts";
import type { ProblemDocument } from "./document.ts";
import { isPlainHanging } from "./kinds.ts";
import { readRope } from "./rope-document.ts";
import { readPush, readSurface } from "./surface-document.ts";
import type { Body, Problem } from "./types.ts";
import { readVector } from "./vector.ts";
import { readCheckedNumber } from "./written-number.ts";

/**
 * The problem of a document that `readProblemDocument` or the build has already passed; no schema library is needed.
 * Throws TypeError for what no checked document can hold.
 */
export function problemFromDocument(document: ProblemDocument): Problem {
  const bodies = document.bodies.map(readBody);
  const problem: Problem = {
    format: 1,
    units: document.units ?? "SI",
    gravity: readCheckedNumber(document.gravity),
    frame: readVector(document.frame),
    bodies,
    ropes: (document.ropes ?? []).map((rope) => readRope(rope, bodies)),
    surfaces: (document.surfaces ?? []).map(readSurface),
    pushes: (document.pushes ?? []).map(readPush),
  };
  return isPlainHanging(problem) ? { ...problem, bodies: bodies.map(withGivenMotion) } : problem;
}

/** What hangs on ropes alone, from supports at rest, has no acceleration unless one is given: 0 is then as good as written. */
function withGivenMotion(body: Body): Body {
  return body.motion.kind === "unstated" ? { ...body, motion: { kind: "given" } } : body;
}
