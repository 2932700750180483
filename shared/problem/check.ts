import { checkDirections } from "./check-directions.ts";
import { checkHanging, checkWeights } from "./check-hanging.ts";
import { checkIds } from "./check-ids.ts";
import { checkReferences } from "./check-references.ts";
import { checkRopes } from "./check-ropes.ts";
import { checkSurfaces } from "./check-surfaces.ts";
import type { Fault } from "./fault.ts";
import { unitInWords } from "./limits.ts";
import type { Problem } from "./types.ts";

/** The rules that tie parts of a problem together; what a single value may be is the schema's and the limits' affair. */
export function checkProblem(problem: Problem): readonly Fault[] {
  return [
    ...checkIds(problem),
    ...checkReferences(problem),
    ...checkWeights(problem, unitInWords("mass", problem.units)),
    ...checkDirections(problem),
    ...checkRopes(problem),
    ...checkHanging(problem),
    ...checkSurfaces(problem),
  ];
}
