import { compareRationals } from "../exact/index.ts";
import { isUpright } from "./direction.ts";
import type { Fault } from "./fault.ts";
import type { Problem } from "./types.ts";
import { numberText } from "./written-number.ts";

/** A slope has an upper side, and what slides is not held back more than what sticks. */
export function checkSurfaces(problem: Problem): Fault[] {
  return problem.surfaces.flatMap(({ lies, friction }, index): Fault[] => {
    const path = `/surfaces/${index}`;
    const faults: Fault[] = [];
    if (lies.kind === "slope" && isUpright(lies.direction)) {
      const accepted = '"normal", the direction away from the surface: an upright slope has no upper side';
      faults.push({ path: `${path}/slope`, found: "a slope straight up or down", accepted });
    }
    const { static: sticking, kinetic } = friction;
    if (sticking !== null && kinetic !== null && compareRationals(kinetic, sticking) > 0) {
      const accepted = `a number from 0 to ${numberText(sticking)}, the coefficient of static friction`;
      faults.push({ path: `${path}/friction/kinetic`, found: numberText(kinetic), accepted });
    }
    return faults;
  });
}
