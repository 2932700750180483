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
  const speed = settled(goingOf(setUp, contact.on, contact, []) - goingOf(setUp, contact.of, contact, []));
  return speed > 0 ? 1 : speed < 0 ? -1 : 0;
}

/** How a body goes along a contact's tangent, seen from the supports, as far as the problem says. Only the sign is meant. */
function goingOf(setUp: SetUp, id: string | null, contact: Contact, above: readonly string[]): number {
  const body = setUp.bodies.find((b) => b.id === id);
  if (body?.freedom.kind !== "line" || above.includes(body.id)) return 0;
  const { along, going, seenFrom, stated } = body.freedom;
  // A body of which nothing is said is at rest as seen from the supports, whatever it lies on.
  if (!stated) return 0;
  const own = going === 0 ? 0 : going * alignment(along, contact.tangent);
  return own + goingOf(setUp, seenFrom, contact, [...above, body.id]);
}

/** The way a body is bound to start sliding by the acceleration that the problem gives it; 0 where it gives none. */
function startAlong(setUp: SetUp, contact: Contact): -1 | 0 | 1 {
  const body = setUp.bodies.find((b) => b.id === contact.on);
  if (body === undefined || contact.of !== null) return 0;
  const { freedom } = body;
  const { x, y } = body.acceleration;
  const { frame } = setUp;
  const radians = (degreesOf(contact.tangent) * Math.PI) / 180;
  const start =
    freedom.kind === "given"
      ? (x.decimal - frame.x.decimal) * Math.cos(radians) + (y.decimal - frame.y.decimal) * Math.sin(radians)
      : freedom.kind === "line" && freedom.value !== null && freedom.seenFrom === null
        ? freedom.value.decimal * alignment(freedom.along, contact.tangent)
        : 0;
  const clear = settled(start);
  return clear > 0 ? 1 : clear < 0 ? -1 : 0;
}

const alignment = (a: Contact["tangent"], b: Contact["tangent"]): number =>
  Math.cos(((degreesOf(a) - degreesOf(b)) * Math.PI) / 180);

const settled = (x: number): number => (Math.abs(x) < 1e-9 ? 0 : x);

const degreesOf = (t: Contact["tangent"]): number => t.heading.degrees + 90 * t.quarters;

function firstState(setUp: SetUp, contact: Contact): ContactState {
  const rough = contact.staticFriction !== null;
  const going = goingAlong(setUp, contact) || startAlong(setUp, contact);
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
  if ((failure.kind === "too-rough" || failure.kind === "pulling-surface") && isKept(setUp, failure.id)) return [];
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

/** A push of unknown size is there to keep things as they are: what rests where nothing else is said stays at rest. */
function isKept(setUp: SetUp, id: string): boolean {
  const on = setUp.contacts.find((c) => c.id === id)?.on;
  if (!setUp.pushes.some((p) => p.size === null && p.on === on)) return false;
  const freedom = setUp.bodies.find((b) => b.id === on)?.freedom;
  return freedom?.kind === "line" && !freedom.stated;
}

/** All smooth contacts that were tried at rest let go at once, friction left as it is; nothing where there is none. */
export function releasedHeld(setUp: SetUp, from: SetUpHypothesis): SetUpHypothesis[] {
  const held = setUp.contacts.filter((c) => from.contacts[c.id]?.grip === "held" && !isKept(setUp, c.id));
  if (held.length === 0) return [];
  return [held.reduce((h, c) => withContact(h, c.id, (s) => ({ ...s, grip: "smooth" })), from)];
}

/** Contacts that slide from rest, with every way of letting some of them stick instead: most first. */
export function withMoreAtRest(setUp: SetUp, from: SetUpHypothesis): SetUpHypothesis[] {
  const sliding = setUp.contacts.filter(
    (c) =>
      from.contacts[c.id]?.grip === "slides" &&
      from.contacts[c.id]?.touch === "touching" &&
      goingAlong(setUp, c) === 0 &&
      startAlong(setUp, c) === 0,
  );
  const subsets = Array.from({ length: 2 ** Math.min(sliding.length, 6) }, (_, bits) =>
    sliding.filter((__, i) => (bits >> i) % 2 === 1),
  ).filter((chosen) => chosen.length > 0);
  subsets.sort((a, b) => b.length - a.length);
  return subsets.map((chosen) =>
    chosen.reduce((h, c) => withContact(h, c.id, (s) => ({ ...s, grip: "sticks" })), from),
  );
}

/** Every other way in which rough contacts at rest could stick or slide, with at least one that sticks now sliding and one that slides now sticking. */
export function otherWays(setUp: SetUp, from: SetUpHypothesis): SetUpHypothesis[] {
  const rough = setUp.contacts.filter((c) => {
    const state = from.contacts[c.id];
    const fromRest = goingAlong(setUp, c) === 0 && startAlong(setUp, c) === 0;
    return state?.touch === "touching" && (state.grip === "sticks" || state.grip === "slides") && fromRest;
  });
  if (rough.length < 2 || rough.length > 4) return [];
  let made: SetUpHypothesis[] = [from];
  for (const c of rough)
    made = made.flatMap((h) => [
      withContact(h, c.id, (s) => ({ ...s, grip: "sticks" })),
      withContact(h, c.id, (s) => ({ ...s, grip: "slides", sense: 1 })),
      withContact(h, c.id, (s) => ({ ...s, grip: "slides", sense: -1 })),
    ]);
  const gripIn = (h: SetUpHypothesis, c: Contact): string => h.contacts[c.id]?.grip ?? "";
  return made.filter(
    (h) =>
      rough.some((c) => gripIn(from, c) === "sticks" && gripIn(h, c) === "slides") &&
      rough.some((c) => gripIn(from, c) === "slides" && gripIn(h, c) === "sticks"),
  );
}

/** Each thing let go that holds something still, one by one. */
function released(setUp: SetUp, from: SetUpHypothesis): SetUpHypothesis[] {
  const loose = setUp.contacts.filter((c) => !isKept(setUp, c.id));
  const contacts = loose.flatMap((c) => {
    const state = from.contacts[c.id];
    if (state?.touch !== "touching") return [];
    if (state.grip === "held") return [withContact(from, c.id, (s) => ({ ...s, grip: "smooth" }))];
    if (state.grip !== "sticks") return [];
    return ([1, -1] as const).map((sense) => withContact(from, c.id, (s) => ({ ...s, grip: "slides", sense })));
  });
  const ropes = setUp.ropes.filter((r) => from.ropes[r.id] === "taut").map((r) => withRope(from, r.id, "slack"));
  const lifted = loose
    .filter((c) => from.contacts[c.id]?.touch === "touching")
    .map((c) => withContact(from, c.id, (s) => ({ ...s, touch: "lifted" })));
  return [...contacts, ...ropes, ...lifted];
}

/** Everything let go that friction or a smooth surface holds still: to see which way things would start without friction. */
export function withoutFriction(setUp: SetUp, from: SetUpHypothesis): SetUpHypothesis {
  return setUp.contacts
    .filter((c) => ["sticks", "held"].includes(from.contacts[c.id]?.grip ?? "") && !isKept(setUp, c.id))
    .reduce((h, c) => withContact(h, c.id, (s) => ({ ...s, grip: "smooth" })), from);
}

/** Every rough contact that stuck now slides against its friction, the way `speed` says (positive: along the tangent); at 0 it goes on sticking. */
export function allSliding(setUp: SetUp, from: SetUpHypothesis, speed: (contact: Contact) => number): SetUpHypothesis {
  return setUp.contacts.reduce((h, c) => {
    const state = from.contacts[c.id];
    if (isKept(setUp, c.id)) return h;
    if (state?.grip === "held") return withContact(h, c.id, (s) => ({ ...s, grip: "smooth" }));
    const way = settled(speed(c));
    if (state?.grip !== "sticks" || way === 0) return h;
    return withContact(h, c.id, (s) => ({ ...s, grip: "slides", sense: way > 0 ? -1 : 1 }));
  }, from);
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
