// Every combination of states of a model, and those that hold.
import { boundsOf } from "./bounds.ts";
import type { Interval } from "./bounds.ts";
import { caseOf, newtonOf, statesOfContact, unknownsOf } from "./equations.ts";
import type { Case, Inequality, State } from "./equations.ts";
import { at, combine, constant, sizeAt, solve } from "./linear.ts";
import type { Linear, Solved } from "./linear.ts";
import type { Model } from "./read.ts";

/** A combination of states whose equations have a solution at which its inequalities hold. */
export interface Held {
  readonly states: ReadonlyMap<string, State>;
  readonly equations: readonly Linear[];
  readonly solved: Solved;
  /** Whether every inequality holds by more than rounding could take away. */
  readonly clearly: boolean;
  /** An unknown's, or an expression's, least and largest value. */
  readonly range: (e: Linear) => Interval;
  /** How far each inequality holds at given values of all unknowns, beside the forces or accelerations about it. */
  readonly slackAt: (
    point: Readonly<Record<string, number>>,
  ) => readonly { readonly what: string; readonly margin: number }[];
}

/** Inequalities may fail by so much, beside the forces or accelerations about them. */
const EDGE = 1e-9;
/** Where what is open ends: looked for to rounding alone, so that a corner stays a corner. */
const ROUNDING = 1e-13;
/** Rounding beside the edge. */
const LITTLE = ROUNDING / EDGE;

/** All combinations of states: for each rope and contact, one. */
export function combinationsOf(model: Model): ReadonlyMap<string, State>[] {
  let all: (readonly (readonly [string, State])[])[] = [[]];
  const choices = [
    ...model.ropes.map((r) => [r.id, ["taut", "slack"] as readonly State[]] as const),
    ...model.contacts.map((c) => [c.id, statesOfContact(model, c) as readonly State[]] as const),
  ];
  for (const [id, states] of choices) all = all.flatMap((made) => states.map((s) => [...made, [id, s] as const]));
  return all.map((made) => new Map(made));
}

/**
 * The combinations that hold. A push of no given size keeps what rests at rest; only where nothing can be kept at rest does what lies on a surface slide,
 * and only if that leaves no such push open.
 */
export function heldIn(model: Model): Held[] {
  const open = model.pushes.filter((p) => p.size === null);
  if (open.length === 0) return heldAsIs(model);
  const still = heldAsIs({ ...model, keptStill: true });
  if (still.length > 0) return still;
  return heldAsIs(model).filter((h) =>
    open.every(({ id }) => {
      const [least, largest] = h.range({ [`P:${id}`]: 1 });
      return Number.isFinite(largest) && largest - least <= EDGE * Math.abs(largest);
    }),
  );
}

function heldAsIs(model: Model): Held[] {
  const newton = newtonOf(model);
  return combinationsOf(model).flatMap((states) => {
    const held = holdsIn(model, newton, states);
    return held === null ? [] : [held];
  });
}

/** One combination, if it holds. */
export function holdsIn(model: Model, newton: readonly Linear[], states: ReadonlyMap<string, State>): Held | null {
  const made = caseOf(model, newton, states);
  // What ties motions together decides about them first.
  const equations = [...made.rest, ...made.newton];
  const solved = solve(equations, unknownsOf(model), Math.max(...model.bodies.map((b) => b.mass)) || 1);
  if (solved === null) return null;
  const moved = (e: Linear): Linear =>
    combine(
      [1, constant(at(e, solved.point))],
      ...solved.steps.map((s, k): readonly [number, Linear] => [1, { [`z${k}`]: at({ ...e, "": 0 }, s) }]),
    );
  const scaled = made.inequalities.map((q) => combine([1 / scaleOf(model, made, q, solved), moved(q.margin)]));
  const by = (slack: number): Linear[] => scaled.map((m) => combine([1, m], [1, constant(slack)]));
  if (boundsOf(constant(0), by(EDGE)) === null) return null;
  return {
    states,
    equations,
    solved,
    clearly: scaled.every((m) => Object.keys(m).some((k) => k !== "") || (m[""] ?? 0) > EDGE || (m[""] ?? 0) === 0),
    range: (e) => boundsOf(moved(e), by(ROUNDING)) ?? boundsOf(moved(e), by(EDGE)) ?? [NaN, NaN],
    slackAt: (point) =>
      made.inequalities.map((q) => ({ what: q.what, margin: at(q.margin, point) / scaleOf(model, made, q, solved) })),
  };
}

/**
 * What an inequality's margin is small or large beside: the smallest sum of forces that its force is part of, or the accelerations there are. A little
 * of the largest sum goes in too, for zeros are found only to its rounding.
 */
function scaleOf(model: Model, made: Case, { what, kind }: Inequality, { point }: Solved): number {
  return kind === "acceleration" ? accelerationScale(model, made.newton, point) : forceScale(made.newton, what, point);
}

/** The largest acceleration there is, or that the forces on a body would give it one by one. */
export function accelerationScale(
  model: Model,
  newton: readonly Linear[],
  point: Readonly<Record<string, number>>,
): number {
  const parts = model.bodies.flatMap(({ id, mass }, i) => [
    Math.abs(point[`x:${id}`] ?? 0),
    Math.abs(point[`y:${id}`] ?? 0),
    ...(mass === 0 ? [] : [0, 1].map((k) => (LITTLE * sizeAt(newton[2 * i + k] ?? {}, point)) / mass)),
  ]);
  return Math.max(model.gravity, ...model.frame.map(Math.abs), ...parts) || 1;
}

/** The smallest sum of forces in Newton's laws that the force of a rope, contact or push is part of, with a little of the largest sum there is. */
export function forceScale(newton: readonly Linear[], of: string, point: Readonly<Record<string, number>>): number {
  const largest = Math.max(...newton.map((e) => sizeAt(e, point)));
  const about = newton.filter((e) => ["T", "N", "f", "P"].some((k) => `${k}:${of}` in e));
  const smallest = Math.min(...about.map((e) => sizeAt(e, point)).filter((x) => x > 0), largest);
  return smallest + LITTLE * largest || 1;
}
