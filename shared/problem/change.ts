import type { Rational } from "../exact/index.ts";
import { checkProblem } from "./check.ts";
import { turnedTo } from "./direction.ts";
import { whyFixed } from "./fixed.ts";
import type { Fault, Reading } from "./fault.ts";
import { isPlainHanging } from "./kinds.ts";
import { isWithinLimits, rangeInWords } from "./limits.ts";
import type { Quantity } from "./limits.ts";
import { joinedBody, straightTo } from "./rope.ts";
import type { Body, Direction, Problem, Rope } from "./types.ts";
import { numberText } from "./written-number.ts";

/** One edit that a page or a link makes. Units as in `Problem`; `body` and `rope` are ids. */
export type ProblemChange =
  | { readonly kind: "mass" | "weight"; readonly body: string; readonly value: Rational }
  | { readonly kind: "gravity"; readonly value: Rational }
  | { readonly kind: "acceleration"; readonly body: string; readonly axis: "x" | "y"; readonly value: Rational }
  | { readonly kind: "angle"; readonly rope: string; readonly value: Rational }
  | { readonly kind: "slope"; readonly rope: string; readonly run: Rational; readonly rise: Rational };

/**
 * The problem with one edit made; the given one stays as it is. A mass replaces a weight and the other way round; an
 * angle (degrees from the positive x axis) keeps the manner of writing from the vertical. A direction is that of the
 * rope's first pull. Refused, with faults, where the value is out of its limits, where no body or rope has the id, where
 * something else fixes what would be changed, or where the whole breaks a rule afterwards.
 */
export function changeProblem(problem: Problem, change: ProblemChange): Reading {
  const edited = editProblem(problem, change);
  if (!edited.ok) return edited;
  const faults = checkProblem(edited.problem);
  return faults.length === 0 ? edited : { ok: false, faults };
}

/** As `changeProblem` without the rules that tie values together, for several edits that only fit when all are made. */
export function editProblem(problem: Problem, change: ProblemChange): Reading {
  const path = pathOf(problem, change);
  if (path === null) {
    const found = "rope" in change ? change.rope : "body" in change ? change.body : "nothing";
    return { ok: false, faults: [{ path: "", found: `the id ${found}`, accepted: "an id of the problem" }] };
  }
  const fixed = whyFixed(problem, change);
  if (fixed !== null) return { ok: false, faults: [{ path, ...fixed }] };
  const faults = limitsOf(problem, change).flatMap(([quantity, value]): Fault[] => {
    if (isWithinLimits(quantity, value)) return [];
    return [{ path, found: numberText(value), accepted: rangeInWords(quantity, problem.units) }];
  });
  return faults.length > 0 ? { ok: false, faults } : { ok: true, problem: applied(problem, change) };
}

function pathOf(problem: Problem, change: ProblemChange): string | null {
  if (change.kind === "gravity") return "/gravity";
  if (change.kind === "angle" || change.kind === "slope") {
    const index = problem.ropes.findIndex((rope) => rope.id === change.rope);
    return index < 0 ? null : `/ropes/${index}/direction`;
  }
  const index = problem.bodies.findIndex((body) => body.id === change.body);
  if (index < 0) return null;
  return change.kind === "acceleration"
    ? `/bodies/${index}/acceleration/${change.axis}`
    : `/bodies/${index}/${change.kind}`;
}

/** The page of one load on ropes is about a load, so an edit does not take its mass away. */
function limitsOf(problem: Problem, change: ProblemChange): readonly (readonly [Quantity, Rational])[] {
  switch (change.kind) {
    case "slope":
      return [
        ["run", change.run],
        ["rise", change.rise],
      ];
    case "acceleration":
      return [[change.axis === "x" ? "accelerationX" : "accelerationY", change.value]];
    case "mass":
      return [[isPlainHanging(problem) ? "loadMass" : "mass", change.value]];
    case "weight":
    case "gravity":
    case "angle":
      return [[change.kind, change.value]];
  }
}

function applied(problem: Problem, change: ProblemChange): Problem {
  switch (change.kind) {
    case "gravity":
      return { ...problem, gravity: change.value };
    case "mass":
      return withBody(problem, change.body, (body) => ({ ...body, load: { kind: "mass", mass: change.value } }));
    case "weight":
      return withBody(problem, change.body, (body) => ({ ...body, load: { kind: "weight", weight: change.value } }));
    case "acceleration":
      return withBody(problem, change.body, (body) => ({
        ...body,
        motion: { kind: "given" },
        acceleration: { ...body.acceleration, [change.axis]: change.value },
      }));
    case "angle":
      return withRope(problem, change.rope, (rope) => pointed(rope, turnedTo(rope.direction, change.value)));
    case "slope":
      return withRope(problem, change.rope, (rope) =>
        pointed(rope, { kind: "slope", run: change.run, rise: change.rise }),
      );
  }
}

/** The rope in another direction from its first body; one that goes straight to another body pulls that the opposite way. */
function pointed(rope: Rope, direction: Direction): Rope {
  const to = joinedBody(rope);
  return to === null ? { ...rope, direction } : { ...rope, direction, further: [straightTo(to, direction)] };
}

function withBody(problem: Problem, id: string, edit: (body: Body) => Body): Problem {
  return { ...problem, bodies: problem.bodies.map((body) => (body.id === id ? edit(body) : body)) };
}

function withRope(problem: Problem, id: string, edit: (rope: Rope) => Rope): Problem {
  return { ...problem, ropes: problem.ropes.map((rope) => (rope.id === id ? edit(rope) : rope)) };
}
