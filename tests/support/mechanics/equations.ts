// Newton's laws and the constraints of a model in one combination of states, in plain Cartesian parts: unknown are the two parts of every
// body's acceleration seen from the ground (x:id, y:id), every tension (T:id), normal force (N:id), friction (f:id) and push of no given
// size (P:id). Every equation is "expression = 0", every inequality "expression is 0 or more".
import { combine, constant } from "./linear.ts";
import type { Linear } from "./linear.ts";
import type { Model, ModelBody, ModelContact, ModelRope, Pair } from "./read.ts";

/** What ropes and surfaces do; "smooth" is a surface without friction that is touched. */
export type State = "taut" | "slack" | "smooth" | "stuck" | "slides forwards" | "slides backwards" | "lifted";

/** An inequality; `of` says which of the model's forces or which contact it is about. */
export interface Inequality {
  readonly what: string;
  readonly kind: "force" | "acceleration";
  readonly margin: Linear;
}

/** The equations and inequalities of one combination of states. */
export interface Case {
  readonly newton: readonly Linear[];
  readonly rest: readonly Linear[];
  readonly inequalities: readonly Inequality[];
}

/** The names of all unknowns. */
export const unknownsOf = (model: Model): string[] => [
  ...model.bodies.flatMap((b) => [`x:${b.id}`, `y:${b.id}`]),
  ...model.ropes.map((r) => `T:${r.id}`),
  ...model.contacts.flatMap((c) => [`N:${c.id}`, ...(c.rough === null ? [] : [`f:${c.id}`])]),
  ...model.pushes.filter((p) => p.size === null).map((p) => `P:${p.id}`),
];

type Vector = readonly [Linear, Linear];

/** A body's acceleration seen from the ground; that of the supports for null. */
const accelerationOf = (model: Model, body: string | null): Vector =>
  body === null ? [constant(model.frame[0]), constant(model.frame[1])] : [{ [`x:${body}`]: 1 }, { [`y:${body}`]: 1 }];

/** A body's acceleration as seen from another one, or from the supports. */
export const seenFrom = (model: Model, body: string, from: string | null): Vector => {
  const [x, y] = accelerationOf(model, body);
  const [u, v] = accelerationOf(model, from);
  return [combine([1, x], [-1, u]), combine([1, y], [-1, v])];
};

/** The part of a vector along a direction. */
export const along = (v: Vector, d: Pair): Linear => combine([d[0], v[0]], [d[1], v[1]]);

const bodyOf = (model: Model, id: string): ModelBody | undefined => model.bodies.find((b) => b.id === id);
const contactsOn = (model: Model, id: string): readonly ModelContact[] => model.contacts.filter((c) => c.on === id);
/** Whether a body's whole acceleration is known before anything is solved; bodies kept still rest on what they lie on. */
export function isKnown(model: Model, id: string | null): boolean {
  const body = id === null ? undefined : bodyOf(model, id);
  if (body === undefined) return true;
  if (body.kind === "given") return true;
  if (body.kind === "line") return body.known !== null && isKnown(model, body.seenFrom);
  return body.kind === "rest" && (contactsOn(model, body.id).length === 0 || model.keptStill);
}

/** Newton's second law for every body, right and up. */
export function newtonOf(model: Model): Linear[] {
  return model.bodies.flatMap((body) => {
    const forces: (readonly [Pair, Linear])[] = [[[0, -1], constant(body.mass * model.gravity)]];
    for (const rope of model.ropes)
      for (const pull of rope.pulls) if (pull.on === body.id) forces.push([pull.toward, { [`T:${rope.id}`]: 1 }]);
    for (const c of model.contacts)
      for (const [who, sign] of [[c.on, 1] as const, [c.of, -1] as const]) {
        if (who !== body.id) continue;
        forces.push([c.normal, { [`N:${c.id}`]: sign }]);
        if (c.rough !== null) forces.push([c.tangent, { [`f:${c.id}`]: sign }]);
      }
    for (const p of model.pushes)
      if (p.on === body.id) forces.push([p.toward, p.size === null ? { [`P:${p.id}`]: 1 } : constant(p.size)]);
    return ([0, 1] as const).map((axis) =>
      combine(...forces.map(([d, f]): readonly [number, Linear] => [d[axis], f]), [
        -body.mass,
        accelerationOf(model, body.id)[axis],
      ]),
    );
  });
}

/** What the document says of the bodies' motion. */
function motionsOf(model: Model): Linear[] {
  return model.bodies.flatMap((body): Linear[] => {
    const { id } = body;
    if (body.kind === "given")
      return ([0, 1] as const).map((k) =>
        combine([1, accelerationOf(model, id)[k]], [-1, constant(body.acceleration[k])]),
      );
    if (body.kind === "line") {
      const seen = seenFrom(model, id, body.seenFrom);
      const [x, y] = body.along;
      const across = along(seen, [-y, x]);
      return body.known === null ? [across] : [across, combine([1, along(seen, [x, y])], [-1, constant(body.known)])];
    }
    if (body.kind === "free" || !isKnown(model, id)) return [];
    return [...seenFrom(model, id, contactsOn(model, id)[0]?.of ?? null)];
  });
}

/** How a body moves at first along a direction, by what the document says of it; `going` is taken as a speed of 1. */
function speedAlong(model: Model, id: string | null, d: Pair): number {
  const body = id === null ? undefined : bodyOf(model, id);
  if (body?.kind !== "line") return 0;
  return body.going * (body.along[0] * d[0] + body.along[1] * d[1]) + speedAlong(model, body.seenFrom, d);
}

/** Which way a contact already slides along its tangent. */
export function slidesAlready(model: Model, c: ModelContact): -1 | 0 | 1 {
  const speed = speedAlong(model, c.on, c.tangent) - speedAlong(model, c.of, c.tangent);
  return Math.abs(speed) < 1e-9 ? 0 : speed > 0 ? 1 : -1;
}

/** The states that a contact can be in. */
export function statesOfContact(model: Model, c: ModelContact): State[] {
  if (c.rough === null) return ["smooth", "lifted"];
  const sense = slidesAlready(model, c);
  if (sense !== 0) return [sense > 0 ? "slides forwards" : "slides backwards", "lifted"];
  return ["stuck", "slides forwards", "slides backwards", "lifted"];
}

/** All that has to be true in one combination of states. */
export function caseOf(model: Model, newton: readonly Linear[], states: ReadonlyMap<string, State>): Case {
  const rest: Linear[] = motionsOf(model);
  const inequalities: Inequality[] = [];
  for (const rope of model.ropes) ofRope(model, rope, states.get(rope.id) ?? "taut", rest, inequalities);
  for (const c of model.contacts) ofContact(model, c, states.get(c.id) ?? "smooth", rest, inequalities);
  return { newton, rest, inequalities };
}

/** Whether motion is given that ropes and surfaces are taken to go along with; a body that is only kept still has to fit them. */
const isGiven = (model: Model, id: string | null): boolean => isKnown({ ...model, keptStill: false }, id);

function ofRope(model: Model, rope: ModelRope, state: State, rest: Linear[], inequalities: Inequality[]): void {
  const tension = { [`T:${rope.id}`]: 1 };
  // Bodies that go the way they are pulled let the rope go slack. Where all of them are moved as given, its other end goes along.
  const known = rope.pulls.every((p) => isGiven(model, p.on));
  const slack = combine(
    ...rope.pulls.map((p): readonly [number, Linear] => [1, along(seenFrom(model, p.on, null), p.toward)]),
  );
  if (state === "taut") {
    if (!known) rest.push(slack);
    inequalities.push({ what: rope.id, kind: "force", margin: tension });
  } else {
    rest.push(tension);
    if (!known) inequalities.push({ what: rope.id, kind: "acceleration", margin: slack });
  }
}

function ofContact(model: Model, c: ModelContact, state: State, rest: Linear[], inequalities: Inequality[]): void {
  const normal = { [`N:${c.id}`]: 1 };
  const friction = { [`f:${c.id}`]: 1 };
  const seen = seenFrom(model, c.on, c.of);
  const known = isGiven(model, c.on) && isGiven(model, c.of);
  const apart = along(seen, c.normal);
  const sliding = along(seen, c.tangent);
  const asks = (kind: Inequality["kind"], margin: Linear): void => void inequalities.push({ what: c.id, kind, margin });
  if (state === "lifted") {
    rest.push(normal, ...(c.rough === null ? [] : [friction]));
    if (!known) asks("acceleration", apart);
    return;
  }
  if (!known) rest.push(apart);
  asks("force", normal);
  if (c.rough === null) return;
  if (state === "stuck") {
    if (!known) rest.push(sliding);
    // Moved as given, and sideways: it does not stick.
    else
      inequalities.push(
        ...[1, -1].map((s): Inequality => ({ what: c.id, kind: "acceleration", margin: combine([s, sliding]) })),
      );
    for (const sense of [1, -1]) asks("force", combine([c.rough.sticking, normal], [sense, friction]));
    return;
  }
  const sense = state === "slides forwards" ? 1 : -1;
  rest.push(combine([1, friction], [sense * c.rough.sliding, normal]));
  if (slidesAlready(model, c) === 0) asks("acceleration", combine([sense, sliding]));
}
