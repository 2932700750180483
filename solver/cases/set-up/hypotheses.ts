// The first hypothesis about a set-up, and what to assume next when one fails: only what failed is assumed otherwise.
import type { Contact, SetUp } from "../../1-bodies/index.ts";
import type { ContactState, Grip, SetUpHypothesis } from "../../2-forces/index.ts";
import type { Failure } from "./types.ts";

/** Everything taut, everything touching, nothing sliding that is not said to move. */
export function firstHypothesis(setUp: SetUp): SetUpHypothesis {
  return named({
    ropes: Object.fromEntries(setUp.ropes.map((r) => [r.id, "taut"])),
    contacts: Object.fromEntries(setUp.contacts.map((c) => [c.id, firstState(setUp, c)])),
  });
}

/** The way a contact's body already goes along the tangent, as seen from the surface: 1, -1, or 0 from rest. */
export function goingAlong(setUp: SetUp, contact: Contact): -1 | 0 | 1 {
  const speed = goingOf(setUp, contact.on, contact) - goingOf(setUp, contact.of, contact);
  return speed > 0 ? 1 : speed < 0 ? -1 : 0;
}

/** How a body goes along a contact's tangent, as far as the problem says: by its motion, or by the acceleration it is given. */
function goingOf(setUp: SetUp, id: string | null, contact: Contact): number {
  const body = setUp.bodies.find((b) => b.id === id);
  if (body === undefined) return 0;
  const { freedom } = body;
  const radians = (degreesOf(contact.tangent) * Math.PI) / 180;
  if (freedom.kind === "given") {
    const x = body.acceleration.x.decimal - setUp.frame.x.decimal;
    const y = body.acceleration.y.decimal - setUp.frame.y.decimal;
    return settled(x * Math.cos(radians) + y * Math.sin(radians));
  }
  if (freedom.kind !== "line") return 0;
  const going = freedom.going === 0 ? Math.sign(freedom.value?.decimal ?? 0) : freedom.going;
  return settled(going * Math.cos((degreesOf(freedom.along) * Math.PI) / 180 - radians));
}

const settled = (x: number): number => (Math.abs(x) < 1e-9 ? 0 : x);

const degreesOf = (t: Contact["tangent"]): number => t.heading.degrees + 90 * t.quarters;

function firstState(setUp: SetUp, contact: Contact): ContactState {
  const rough = contact.staticFriction !== null;
  const going = goingAlong(setUp, contact);
  if (rough && going !== 0) return { touch: "touching", grip: "slides", sense: going > 0 ? -1 : 1 };
  return { touch: "touching", grip: firstGrip(setUp, contact, rough), sense: 1 };
}

/** A body said to move on a smooth surface moves; one of which nothing is said is tried at rest first. */
function firstGrip(setUp: SetUp, contact: Contact, rough: boolean): Grip {
  const body = setUp.bodies.find((b) => b.id === contact.on);
  if (rough) return "sticks";
  const freedom = body?.freedom;
  return freedom?.kind === "line" && !freedom.stated ? "held" : "smooth";
}

/** What to try after a failure, best first; nothing where the failure leaves no choice. */
export function nextHypotheses(setUp: SetUp, from: SetUpHypothesis, failure: Failure): SetUpHypothesis[] {
  switch (failure.kind) {
    case "pushing-rope":
      return [withRope(from, failure.id, "slack")];
    case "parting-rope":
      return [withRope(from, failure.id, "taut")];
    case "pulling-surface":
      return [withContact(from, failure.id, (c) => ({ ...c, touch: "lifted" }))];
    case "sinking":
      return [withContact(from, failure.id, (c) => ({ ...c, touch: "touching" }))];
    case "too-rough":
      return [withContact(from, failure.id, (c) => ({ ...c, grip: "slides", sense: failure.sense }))];
    case "wrong-way":
      return [
        withContact(from, failure.id, (c) => ({ ...c, sense: c.sense > 0 ? -1 : 1 })),
        withContact(from, failure.id, (c) => ({ ...c, grip: "sticks" })),
      ];
    case "no-solution":
      return released(setUp, from);
  }
}

/** Each thing let go that holds something still. */
function released(setUp: SetUp, from: SetUpHypothesis): SetUpHypothesis[] {
  const contacts = setUp.contacts.flatMap((c) => {
    const state = from.contacts[c.id];
    if (state?.touch !== "touching") return [];
    if (state.grip === "held") return [withContact(from, c.id, (s) => ({ ...s, grip: "smooth" }))];
    if (state.grip !== "sticks") return [];
    return ([1, -1] as const).map((sense) => withContact(from, c.id, (s) => ({ ...s, grip: "slides", sense })));
  });
  const ropes = setUp.ropes.filter((r) => from.ropes[r.id] === "taut").map((r) => withRope(from, r.id, "slack"));
  const lifted = setUp.contacts
    .filter((c) => from.contacts[c.id]?.touch === "touching")
    .map((c) => withContact(from, c.id, (s) => ({ ...s, touch: "lifted" })));
  return [...contacts, ...ropes, ...lifted];
}

const withRope = (from: SetUpHypothesis, id: string, state: "taut" | "slack"): SetUpHypothesis =>
  named({ ...from, ropes: { ...from.ropes, [id]: state } });

function withContact(
  from: SetUpHypothesis,
  id: string,
  change: (state: ContactState) => ContactState,
): SetUpHypothesis {
  const state = from.contacts[id];
  return state === undefined ? from : named({ ...from, contacts: { ...from.contacts, [id]: change(state) } });
}

/** A hypothesis with the name that its assumptions make: T1-slack.N-slides-back. */
function named(h: Omit<SetUpHypothesis, "id">): SetUpHypothesis {
  const slack = Object.entries(h.ropes).flatMap(([id, state]) => (state === "slack" ? [`${id}-slack`] : []));
  const contacts = Object.entries(h.contacts).flatMap(([id, s]) => {
    if (s.touch === "lifted") return [`${id}-lifted`];
    if (s.grip === "slides") return [`${id}-slides${s.sense > 0 ? "-back" : ""}`];
    return s.grip === "held" || s.grip === "sticks" ? [`${id}-${s.grip}`] : [];
  });
  return { ...h, id: [...slack, ...contacts].join(".") || "as-given" };
}
