// Does a hypothesis keep its own inequalities? Ropes only pull, surfaces only push, static friction has a largest value, kinetic friction is against the sliding.
import type { Contact, SetUp } from "../../1-bodies/index.ts";
import type { SetUpHypothesis } from "../../2-forces/index.ts";
import { apart, takenIn } from "../../3-equations/index.ts";
import type { Equations, MotionTerm } from "../../3-equations/index.ts";
import { decimal } from "../../algebra/evaluate.ts";
import type { Values } from "../../algebra/evaluate.ts";
import { goingAlong } from "./hypotheses.ts";
import type { Failure } from "./types.ts";

/** One inequality: `margin` is how far it holds, negative where it does not. Linear in the unknowns. */
export interface Inequality {
  readonly failure: Failure;
  readonly of: "force" | "acceleration";
  /** The bodies it is about: a margin is measured beside the forces on them. */
  readonly bodies: readonly string[];
  readonly margin: (value: (letter: string) => number) => number;
}

/** Every inequality of a hypothesis, in the order in which a person would look: ropes, surfaces, friction, motion. */
export function inequalitiesOf(
  setUp: SetUp,
  hypothesis: SetUpHypothesis,
  equations: Equations,
  values: Values,
): Inequality[] {
  const list: Inequality[] = [];
  for (const rope of setUp.ropes) {
    if (hypothesis.ropes[rope.id] === "taut")
      list.push({
        failure: { kind: "pushing-rope", id: rope.id },
        of: "force",
        bodies: rope.pulls.map((p) => p.on),
        margin: (v) => v(rope.id),
      });
    else {
      const terms = takenIn(setUp, equations.motions, rope);
      if (setUp.hanging === null) list.push(along(terms, 1, { kind: "parting-rope", id: rope.id }, values));
    }
  }
  for (const contact of setUp.contacts) list.push(...ofContact(setUp, hypothesis, equations, contact, values));
  return list;
}

function along(terms: readonly MotionTerm[], sign: number, failure: Failure, values: Values): Inequality {
  const factors = terms.map((t) => ({ letter: t.letter, by: sign * t.sign * decimal(t.factor, values) }));
  return {
    failure,
    of: "acceleration",
    bodies: [],
    margin: (v) => factors.reduce((total, { letter, by }) => total + by * v(letter), 0),
  };
}

function ofContact(
  setUp: SetUp,
  hypothesis: SetUpHypothesis,
  equations: Equations,
  contact: Contact,
  values: Values,
): Inequality[] {
  const { id } = contact;
  const state = hypothesis.contacts[id];
  if (state === undefined) return [];
  if (state.touch === "lifted")
    return [along(apart(setUp, equations.motions, contact, contact.normal), 1, { kind: "sinking", id }, values)];
  const bodies = contact.of === null ? [contact.on] : [contact.on, contact.of];
  const list: Inequality[] = [{ failure: { kind: "pulling-surface", id }, of: "force", bodies, margin: (v) => v(id) }];
  if (state.grip === "sticks") {
    const most = contact.staticFriction?.decimal ?? 0;
    for (const sense of [1, -1] as const) {
      // The friction's letter counts along `state.sense`; what is asked for beyond the largest acts that way.
      const failure: Failure = { kind: "too-rough", id, sense: state.sense > 0 === sense > 0 ? 1 : -1 };
      list.push({ failure, of: "force", bodies, margin: (v) => most * v(id) - sense * v(contact.friction) });
    }
  }
  if (state.grip === "slides" && goingAlong(setUp, contact) === 0) {
    const terms = apart(setUp, equations.motions, contact, contact.tangent);
    list.push(along(terms, -state.sense, { kind: "wrong-way", id }, values));
  }
  return list;
}
