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
}

/** Inequalities may fail by so much, beside the forces or accelerations about them. */
const EDGE = 1e-9;

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

/** The combinations that hold. */
export function heldIn(model: Model): Held[] {
  const newton = newtonOf(model);
  return combinationsOf(model).flatMap((states) => {
    const held = holdsIn(model, newton, states);
    return held === null ? [] : [held];
  });
}

/** One combination, if it holds. */
export function holdsIn(model: Model, newton: readonly Linear[], states: ReadonlyMap<string, State>): Held | null {
  const made = caseOf(model, newton, states);
  const equations = [...made.newton, ...made.rest];
  const solved = solve(equations, unknownsOf(model));
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
    range: (e) => boundsOf(moved(e), by(EDGE)) ?? [NaN, NaN],
  };
}

/** What an inequality's margin is small or large beside: the forces on the bodies it is about, or the accelerations there are. */
function scaleOf(model: Model, made: Case, { what, kind }: Inequality, { point }: Solved): number {
  if (kind === "acceleration") {
    const parts = model.bodies.flatMap((b) => [point[`x:${b.id}`] ?? 0, point[`y:${b.id}`] ?? 0]).map(Math.abs);
    return Math.max(model.gravity, ...model.frame.map(Math.abs), ...parts) || 1;
  }
  const about = made.newton.filter((e) => `T:${what}` in e || `N:${what}` in e || `f:${what}` in e);
  return Math.min(...about.map((e) => sizeAt(e, point)).filter((s) => s > 0), Infinity) === Infinity
    ? 1
    : Math.max(...about.map((e) => sizeAt(e, point)));
}
