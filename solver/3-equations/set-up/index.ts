// Stage 3 for any number of bodies: forces to equations. No order of solving is chosen here.
import type { SetUp } from "../../1-bodies/types.ts";
import type { SetUpForce, SetUpHypothesis } from "../../2-forces/types.ts";
import { same } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Equations, FrictionLaw } from "../set-up-types.ts";
import { axesOf } from "./axes.ts";
import type { AxesChoice } from "./axes.ts";
import { lawsOfBody } from "./law.ts";
import { motionsOf } from "./motion.ts";
import { tiesOf } from "./ties.ts";

export type { AxesChoice } from "./axes.ts";
export { apart, takenIn } from "./ties.ts";

/** Everything that holds of the unknowns under a hypothesis. */
export function writeEquations(
  setUp: SetUp,
  hypothesis: SetUpHypothesis,
  forces: readonly SetUpForce[],
  choice: AxesChoice,
): Equations {
  const axes = axesOf(setUp, hypothesis, choice);
  const motions = motionsOf(setUp, hypothesis);
  const input = { setUp, forces, motions, nameOf: componentNames(setUp) };
  const laws = setUp.bodies.flatMap((body) => {
    const own = axes.find((a) => a.body === body.id);
    return own === undefined ? [] : lawsOfBody(input, body, own);
  });
  // An axis along which nothing acts and nothing moves has nothing to say.
  const speaking = laws.filter((law) => law.parts.length > 0 || (law.motion.length > 0 && law.mass !== null));
  return {
    axes,
    motions,
    equations: [...speaking, ...tiesOf(setUp, hypothesis, motions), ...frictionLaws(setUp, hypothesis)],
  };
}

/** T1x for T1 along x; if on another body the same letter stands for another size, the body's number behind it. */
function componentNames(setUp: SetUp): (force: SetUpForce, axis: 0 | 1, factor: Expr) => string {
  const known = new Map<string, Expr>();
  return (force, axis, factor) => {
    const body = setUp.bodies.find((b) => b.id === force.on);
    const whole = force.kind === "weight" ? (body?.letters.weightId ?? "W") : force.ref;
    const plain = `${whole}${axis === 0 ? "x" : "y"}`;
    const before = known.get(plain);
    if (before === undefined || same(before, factor)) {
      known.set(plain, factor);
      return plain;
    }
    const own = `${plain}${body?.number ?? 0}`;
    known.set(own, factor);
    return own;
  };
}

function frictionLaws(setUp: SetUp, hypothesis: SetUpHypothesis): FrictionLaw[] {
  return setUp.contacts
    .filter((c) => hypothesis.contacts[c.id]?.touch === "touching" && hypothesis.contacts[c.id]?.grip === "slides")
    .map((c) => ({
      kind: "friction",
      id: `friction.${c.id}`,
      contact: c.id,
      friction: c.friction,
      normal: c.id,
      coefficient: c.coefficients.kinetic,
    }));
}
