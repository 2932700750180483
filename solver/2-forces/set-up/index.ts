// Stage 2 for any number of bodies: set-up and hypothesis to forces. Long-range first, then whatever touches each body.
import type { SetUp, SetUpBody } from "../../1-bodies/types.ts";
import type { Rules } from "../rules.ts";
import type { SetUpForce, SetUpHypothesis } from "../types.ts";
import { contactForces } from "./contact.ts";
import { pushForces } from "./push.ts";
import { tensions } from "./tension.ts";
import { weightOf } from "./weight.ts";

/** Every force on every body, body by body in the problem's order. Rules other than the standard ones are learners' slips. */
export function listSetUpForces(setUp: SetUp, hypothesis: SetUpHypothesis, rules: Rules): readonly SetUpForce[] {
  return setUp.bodies.flatMap((body) => forcesOn(setUp, hypothesis, body)).map(rules.setUpForce);
}

function forcesOn(setUp: SetUp, hypothesis: SetUpHypothesis, body: SetUpBody): SetUpForce[] {
  return [
    ...weightOf(body),
    ...tensions(setUp, hypothesis, body.id),
    ...contactForces(setUp, hypothesis, body.id),
    ...pushForces(setUp, body.id),
  ];
}
