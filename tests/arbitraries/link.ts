import fc from "fast-check";
import { FIGURES, FIRST_AXES } from "../../shared/link/index.ts";
import type { PageState } from "../../shared/link/index.ts";
import { changeProblem } from "../../shared/problem/index.ts";
import type { Problem, ProblemChange } from "../../shared/problem/index.ts";
import { degrees, loads, problems } from "./problem.ts";

/** A lesson's start and a state that a reader can reach from it by edits. */
export const visits: fc.Arbitrary<{ readonly start: PageState; readonly state: PageState }> = fc
  .tuple(problems, settingsAndLine(), settingsAndLine(), fc.array(edits(), { maxLength: 6 }))
  .map(([problem, before, after, changes]) => ({
    start: { problem, ...before },
    state: { problem: changes.reduce(edited, problem), ...after },
  }));

function settingsAndLine(): fc.Arbitrary<Omit<PageState, "problem">> {
  return fc.record({
    settings: fc.record({ figures: fc.constantFrom(...FIGURES), firstAxis: fc.constantFrom(...FIRST_AXES) }),
    upTo: fc.constantFrom(null, null, "eliminate.divide", "vertical.law", "check-2"),
  });
}

type Edit = (problem: Problem) => ProblemChange;

function edits(): fc.Arbitrary<Edit> {
  const body = (problem: Problem): string => problem.bodies[0]?.id ?? "";
  return fc.oneof(
    loads.map((value): Edit => (problem) => ({ kind: "mass", body: body(problem), value })),
    loads.map((value): Edit => (problem) => ({ kind: "weight", body: body(problem), value })),
    loads.map((value): Edit => () => ({ kind: "gravity", value })),
    degrees.map((value): Edit => () => ({ kind: "angle", rope: "T1", value })),
    fc.tuple(degrees, loads).map(([run, rise]): Edit => () => ({ kind: "slope", rope: "T1", run, rise })),
    fc
      .tuple(degrees, fc.constantFrom("x" as const, "y" as const))
      .map(([value, axis]): Edit => (problem) => ({ kind: "acceleration", body: body(problem), axis, value })),
  );
}

/** An edit that the format refuses leaves the problem as it is, as the page does. */
function edited(problem: Problem, edit: Edit): Problem {
  const reading = changeProblem(problem, edit(problem));
  return reading.ok ? reading.problem : problem;
}
