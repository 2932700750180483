import { isZeroRational } from "../exact/index.ts";
import { quote } from "./fault.ts";
import type { Fault } from "./fault.ts";
import type { Problem } from "./types.ts";
import { isZeroVector } from "./vector.ts";

/** Lengths say where a body hangs only if it is one load at rest on one or two ropes that all have a length. */
export function checkHanging(problem: Problem): Fault[] {
  const index = problem.ropes.findIndex((rope) => rope.length !== null);
  const rope = problem.ropes[index];
  if (rope === undefined) return [];
  const found = whatElse(problem);
  if (found === null) return [];
  const accepted = `a length only where one load at rest hangs on one or two ropes that all have an anchor and a length`;
  return [{ path: `/ropes/${index}/length`, found: `a length together with ${found}`, accepted }];
}

function whatElse({ bodies, ropes, surfaces, pushes, frame }: Problem): string | null {
  const [body, ...others] = bodies;
  if (body === undefined || others.length > 0) return "several bodies";
  if (ropes.length > 2) return `${ropes.length} ropes`;
  const bare = ropes.find((rope) => rope.length === null);
  if (bare !== undefined) return `the rope ${quote(bare.id)}, which has none`;
  if (surfaces.length > 0) return "a surface";
  if (pushes.length > 0) return "a push";
  if (!isZeroVector(frame)) return "supports that speed up";
  if (body.kind !== "load") return `a ${body.kind}`;
  const { kind } = body.motion;
  if (kind === "line" || kind === "free" || !isZeroVector(body.acceleration)) return "a body that moves";
  return null;
}

/** Without gravity nothing has a weight, so a mass could not be found from it. */
export function checkWeights(problem: Problem, unitOfMass: string): Fault[] {
  if (!isZeroRational(problem.gravity)) return [];
  return problem.bodies.flatMap((body, index) => {
    if (body.load.kind === "mass") return [];
    const accepted = `a mass (${unitOfMass}), because nothing has a weight where gravity is 0; or a gravity larger than 0`;
    return [{ path: `/bodies/${index}/weight`, found: "a weight together with gravity 0", accepted }];
  });
}
