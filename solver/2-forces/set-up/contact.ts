// What a surface does to a body that touches it: the normal force, and friction along the surface. Each has a partner on the body whose surface it is.
import type { Contact, SetUp } from "../../1-bodies/types.ts";
import { symbol } from "../../algebra/expr.ts";
import { quarterTurn } from "../../algebra/turned.ts";
import type { ContactState, SetUpForce, SetUpHypothesis } from "../types.ts";

/** Normal forces and frictions on a body, from contacts that touch. */
export function contactForces(setUp: SetUp, hypothesis: SetUpHypothesis, body: string): SetUpForce[] {
  return setUp.contacts.flatMap((contact) => {
    const state = hypothesis.contacts[contact.id];
    if (state === undefined || state.touch === "lifted") return [];
    if (contact.on === body) return forcesAt(contact, state, body, false);
    return contact.of === body ? forcesAt(contact, state, body, true) : [];
  });
}

/** `back`: on the body whose surface it is, everything points the other way. */
function forcesAt(contact: Contact, state: ContactState, body: string, back: boolean): SetUpForce[] {
  const by = back ? contact.on : contact.of;
  const normal = back ? quarterTurn(contact.normal, 2) : contact.normal;
  const forces: SetUpForce[] = [
    {
      ref: contact.id,
      kind: "normal",
      on: body,
      toward: normal,
      unknown: contact.id,
      size: symbol(contact.id),
      from: contact.id,
      by,
    },
  ];
  if (state.grip === "sticks" || state.grip === "slides") {
    const along = state.sense > 0 === !back ? contact.tangent : quarterTurn(contact.tangent, 2);
    forces.push({
      ref: contact.friction,
      kind: "friction",
      on: body,
      toward: along,
      unknown: contact.friction,
      size: symbol(contact.friction),
      from: contact.id,
      by,
    });
  }
  return forces;
}
