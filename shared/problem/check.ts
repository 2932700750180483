import { isZeroRational } from "../exact/index.ts";
import { quote } from "./fault.ts";
import type { Fault } from "./fault.ts";
import { isReservedId } from "./reserved-ids.ts";
import type { Problem } from "./types.ts";

/** The rules that tie parts of a problem together; what a single value may be is the schema's and the limits' affair. */
export function checkProblem(problem: Problem): readonly Fault[] {
  return [...checkIds(problem), ...checkOwners(problem), ...checkWeights(problem), ...checkSlopes(problem)];
}

function checkIds(problem: Problem): Fault[] {
  const entries = [
    ...problem.bodies.map((body, index) => ({ id: body.id, path: `/bodies/${index}/id` })),
    ...problem.ropes.map((rope, index) => ({ id: rope.id, path: `/ropes/${index}/id` })),
  ];
  const faults: Fault[] = [];
  entries.forEach(({ id, path }, index) => {
    const twin = entries.slice(0, index).find((other) => other.id === id);
    const stem = entries.find((other) => id === `${other.id}x` || id === `${other.id}y`);
    if (isReservedId(id)) {
      const accepted = "an id that is not the name of a function, unit, constant or symbol of a derivation";
      faults.push({ path, found: quote(id), accepted });
    } else if (twin !== undefined) {
      faults.push({ path, found: `${quote(id)}, which ${twin.path} is already`, accepted: "an id of its own" });
    } else if (stem !== undefined) {
      const found = `${quote(id)}, which means a component of ${quote(stem.id)}`;
      faults.push({ path, found, accepted: "an id that is not another id with x or y behind it" });
    }
  });
  return faults;
}

function checkOwners(problem: Problem): Fault[] {
  const ids = problem.bodies.map((body) => body.id);
  return problem.ropes.flatMap((rope, index) => {
    if (ids.includes(rope.on)) return [];
    const accepted = `the id of a body: ${ids.map(quote).join(", ")}`;
    return [{ path: `/ropes/${index}/on`, found: quote(rope.on), accepted }];
  });
}

// Without gravity nothing has a weight, so a mass could not be found from it.
function checkWeights(problem: Problem): Fault[] {
  if (!isZeroRational(problem.gravity)) return [];
  return problem.bodies.flatMap((body, index) => {
    if (body.load.kind === "mass") return [];
    const accepted = "a mass (kg), because nothing has a weight where gravity is 0; or a gravity larger than 0";
    return [{ path: `/bodies/${index}/weight`, found: "a weight together with gravity 0", accepted }];
  });
}

function checkSlopes(problem: Problem): Fault[] {
  return problem.ropes.flatMap(({ direction }, index) => {
    if (direction.kind !== "slope" || !isZeroRational(direction.run) || !isZeroRational(direction.rise)) return [];
    const accepted = "a run and a rise that are not both 0";
    return [{ path: `/ropes/${index}/direction`, found: "a run of 0 with a rise of 0", accepted }];
  });
}
