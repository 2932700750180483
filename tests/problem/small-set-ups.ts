// Small documents of several bodies, surfaces and pushes for tables of what is accepted and what is refused.

type Json = Readonly<Record<string, unknown>>;

/** A lantern and a bell of a few kilograms, each with more keys if given. */
export const lantern = (more: Json = {}): Json => ({ id: "lantern", mass: 4, ...more });
/** See `lantern`. */
export const bell = (more: Json = {}): Json => ({ id: "bell", mass: 6, ...more });
/** A knot. */
export const knot = (more: Json = {}): Json => ({ id: "k1", kind: "knot", ...more });
/** A movable pulley without mass. */
export const block = (more: Json = {}): Json => ({ id: "block", kind: "pulley", ...more });
/** A direction by its angle. */
export const angle = (degrees: number): Json => ({ angle: degrees });
/** Straight up. */
export const up: Json = angle(90);
/** A place. */
export const at = (x: number, y: number): Json => ({ x, y });

/** A document: a lantern unless there are other bodies, with what else is given. */
export function document(rest: Json = {}): Json {
  return { format: 1, gravity: 9.8, bodies: [lantern()], ...rest };
}

/** A document with ropes. */
export const roped = (bodies: readonly Json[], ...ropes: Json[]): Json => document({ bodies, ropes });
/** A document of a lantern on a surface. */
export const surfaced = (surface: Json, rest: Json = {}): Json =>
  document({ surfaces: [{ id: "N", on: "lantern", slope: angle(25), ...surface }], ...rest });
