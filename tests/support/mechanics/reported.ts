// What the solver reports, as values of the unknowns of the independent formulation.
import type { SystemDerivation } from "../../../solver/index.ts";
import type { State } from "./equations.ts";
import type { Model, ModelBody, Pair } from "./read.ts";

/** A derivation's answers by the names of the formulation; null where a force or an acceleration is said to be open. */
export interface Reported {
  readonly states: ReadonlyMap<string, State>;
  readonly values: Readonly<Record<string, number | null>>;
}

/** The states and values of a derivation that is not impossible. */
export function reportedBy({ answers, system }: SystemDerivation, model: Model): Reported {
  const { hypothesis } = system.inForce;
  const decimals = new Map(answers.map((a) => [a.id, a.decimal]));
  const states = new Map<string, State>();
  const values: Record<string, number | null> = {};
  for (const { id } of model.ropes) {
    states.set(id, hypothesis.ropes[id] ?? "taut");
    values[`T:${id}`] = decimals.get(id) ?? null;
  }
  for (const c of model.contacts) {
    const state = hypothesis.contacts[c.id];
    if (state === undefined) throw new Error(`nothing is said of ${c.id}`);
    const slides = state.sense < 0 ? "slides forwards" : "slides backwards";
    const touching = c.rough === null ? "smooth" : state.grip === "slides" ? slides : "stuck";
    states.set(c.id, state.touch === "lifted" ? "lifted" : touching);
    values[`N:${c.id}`] = decimals.get(c.id) ?? null;
    const size = decimals.get(c.friction);
    if (c.rough !== null) values[`f:${c.id}`] = size == null ? null : size * state.sense;
  }
  for (const p of model.pushes) if (p.size === null) values[`P:${p.id}`] = decimals.get(p.id) ?? null;
  for (const body of model.bodies) {
    const [x, y] = accelerationOf(model, body, decimals);
    values[`x:${body.id}`] = x;
    values[`y:${body.id}`] = y;
  }
  return { states, values };
}

type Decimals = ReadonlyMap<string, number | null>;

/** A body's acceleration seen from the ground, from the letters that the derivation gives it and what the document says of its motion. */
function accelerationOf(model: Model, body: ModelBody, decimals: Decimals): readonly [number | null, number | null] {
  const letter = letterOf(model, body, decimals);
  if (body.kind === "given") return body.acceleration;
  // A body that may move freely, or that has lifted off.
  if (decimals.has(`${letter}x`) || decimals.has(`${letter}y`))
    return [decimals.get(`${letter}x`) ?? null, decimals.get(`${letter}y`) ?? null];
  const under = body.kind === "line" ? undefined : model.contacts.find((c) => c.on === body.id);
  const from = body.kind === "line" ? body.seenFrom : (under?.of ?? null);
  const base = model.bodies.find((b) => b.id === from);
  const [x, y] = base === undefined ? model.frame : accelerationOf(model, base, decimals);
  const size =
    body.kind === "line" && body.known !== null ? body.known : decimals.has(letter) ? decimals.get(letter) : 0;
  const way = body.kind === "line" ? body.along : positive(under?.tangent ?? [1, 0]);
  const part = (from: number | null, along: number): number | null => {
    if (along === 0) return from;
    return size == null || from === null ? null : from + size * along;
  };
  return [part(x, way[0]), part(y, way[1])];
}

/** "a" where only one body has an unknown acceleration, else with the body's number. */
const letterOf = (model: Model, body: ModelBody, decimals: Decimals): string =>
  [...decimals.keys()].some((id) => /^a[xy]?$/.test(id)) ? "a" : `a${model.bodies.indexOf(body) + 1}`;

/** Up the surface, or to the right where it is level. */
const positive = ([x, y]: Pair): Pair => (y > 0 || (y === 0 && x > 0) ? [x, y] : [-x, -y]);
