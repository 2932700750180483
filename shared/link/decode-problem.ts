import type { Rational } from "../exact/index.ts";
import { checkProblem, editProblem, rangeInWords, readNumberText } from "../problem/index.ts";
import type { Problem, ProblemChange, Quantity } from "../problem/index.ts";
import { fault } from "./faults.ts";
import { turnable } from "./parameters.ts";
import type { LinkFault } from "./types.ts";

type Values = ReadonlyMap<string, string>;
type Result = { readonly problem: Problem; readonly faults: readonly LinkFault[] };

/** One parameter of the problem: what it accepts, and the edit that its text asks for (null: it is no such text). */
type Parameter = {
  readonly name: string;
  readonly accepted: string;
  readonly change: (text: string) => ProblemChange | null;
};

/** The start problem with every edit made that the parameters ask for and that the format accepts. */
export function decodeProblem(values: Values, start: Problem): Result {
  const loads = oneLoad(values);
  const edits = editsOf(loads.values, start);
  const faults = [...loads.faults, ...edits.faults];
  let kept = edits.changes;
  // Weight and gravity can each be right and yet not go together: then gravity keeps its start value, or else the load.
  for (const name of ["g", "weight"]) {
    if (checkProblem(withChanges(start, kept)).length === 0) break;
    if (!kept.has(name)) continue;
    kept = new Map([...kept].filter(([other]) => other !== name));
    const accepted = name === "g" ? "a number larger than 0 with a weight" : "a mass where g is 0";
    faults.push(fault(name, values.get(name) ?? "", accepted));
  }
  return { problem: withChanges(start, kept), faults };
}

function oneLoad(values: Values): { readonly values: Values; readonly faults: readonly LinkFault[] } {
  const mass = values.get("mass");
  const weight = values.get("weight");
  if (mass === undefined || weight === undefined) return { values, faults: [] };
  const rest = new Map([...values].filter(([name]) => name !== "mass" && name !== "weight"));
  const accepted = "a mass or a weight, not both";
  return { values: rest, faults: [fault("mass", mass, accepted), fault("weight", weight, accepted)] };
}

type Edits = { readonly changes: ReadonlyMap<string, ProblemChange>; readonly faults: readonly LinkFault[] };

function editsOf(values: Values, start: Problem): Edits {
  const changes = new Map<string, ProblemChange>();
  const faults: LinkFault[] = [];
  for (const { name, accepted, change } of parameters(start)) {
    const text = values.get(name);
    if (text === undefined) continue;
    const edit = change(text);
    if (edit !== null && editProblem(start, edit).ok) changes.set(name, edit);
    else faults.push(fault(name, text, accepted));
  }
  return { changes, faults };
}

function withChanges(start: Problem, changes: ReadonlyMap<string, ProblemChange>): Problem {
  let problem = start;
  for (const change of changes.values()) {
    const edited = editProblem(problem, change);
    if (edited.ok) problem = edited.problem;
  }
  return problem;
}

function parameters(problem: Problem): readonly Parameter[] {
  const body = problem.bodies[0]?.id ?? "";
  const number = (name: string, quantity: Quantity, change: (value: Rational) => ProblemChange): Parameter => ({
    name,
    accepted: rangeInWords(quantity, problem.units),
    change: (text) => {
      const value = readNumberText(text);
      return value === null ? null : change(value);
    },
  });
  return [
    number("mass", "loadMass", (value) => ({ kind: "mass", body, value })),
    number("weight", "weight", (value) => ({ kind: "weight", body, value })),
    number("g", "gravity", (value) => ({ kind: "gravity", value })),
    ...turnable(problem).map(({ id }) => direction(id)),
    number("ax", "accelerationX", (value) => ({ kind: "acceleration", body, axis: "x", value })),
    number("ay", "accelerationY", (value) => ({ kind: "acceleration", body, axis: "y", value })),
  ];
}

/** A rope's direction: an angle, or run and rise with a colon between. */
function direction(rope: string): Parameter {
  const accepted = `${rangeInWords("angle")}, anticlockwise from the level line to the right; or run:rise, such as -3:4`;
  return { name: rope, accepted, change: (text) => readDirection(rope, text) };
}

function readDirection(rope: string, text: string): ProblemChange | null {
  const parts = text.split(":", 3).map(readNumberText);
  const [first, second] = parts;
  if (first === undefined || first === null) return null;
  if (parts.length === 1) return { kind: "angle", rope, value: first };
  if (second === undefined || second === null || parts.length > 2) return null;
  return first.n === 0n && second.n === 0n ? null : { kind: "slope", rope, run: first, rise: second };
}
