// Static friction holds wherever it can: a case that slides is given up for one in which more stays at rest; and where two cases hold of which
// neither rests where the other does, both are named.
import type { SetUpHypothesis } from "../../2-forces/index.ts";
import type { Rules } from "../../2-forces/index.ts";
import type { AxesChoice } from "../../3-equations/index.ts";
import { otherWays, withMoreAtRest } from "./hypotheses.ts";
import { judgeHypothesis } from "./judge.ts";
import type { Judged } from "./judge.ts";

/** A case in which more contacts stick than in the one found, if one holds. */
export function restored(found: Judged, choice: AxesChoice, rules: Rules): Judged | null {
  for (const hypothesis of withMoreAtRest(found.setUp, found.hypothesis)) {
    const judged = judgeHypothesis(found.setUp, hypothesis, choice, rules);
    if (judged.failures.length === 0) return judged;
  }
  return null;
}

/** A case that holds as well and rests elsewhere. */
export function rivalOf(found: Judged, choice: AxesChoice, rules: Rules): SetUpHypothesis | null {
  for (const hypothesis of otherWays(found.setUp, found.hypothesis)) {
    const judged = judgeHypothesis(found.setUp, hypothesis, choice, rules);
    if (judged.failures.length === 0) return judged.hypothesis;
  }
  return null;
}
