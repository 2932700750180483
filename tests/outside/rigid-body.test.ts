// Set-ups against a general-purpose rigid-body engine, planck (doubles, contacts and joints by impulses): it is given bodies, boards, joints and
// forces, takes steps of a sixtieth of a second, and knows nothing of laws, cases or states.
import { describe, expect, it } from "vitest";
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { deriveSystem, isHanging, solve } from "../../solver/index.ts";
import { problemFrom } from "../solver/set-ups.ts";
import { crateCases } from "./rigid/crates.ts";
import { ropeCases } from "./rigid/ropes.ts";

/** g and a push of the size of a weight of these set-ups, beside which a difference is small or large. */
const GENERAL = { acceleration: 9.8, force: 49 };

/** The answers, frictions with the sign that they have along their surface; what is not said to speed up does not. */
function answersTo(document: ProblemDocument): ReadonlyMap<string, number> {
  const problem = problemFrom(document);
  const answers = new Map(solve(problem).answers.map((a) => [a.id, a.decimal ?? NaN]));
  if (!isHanging(problem)) {
    const { inForce, setUp } = deriveSystem(problem).system;
    for (const { id, friction } of setUp.contacts)
      answers.set(friction, (answers.get(friction) ?? 0) * (inForce.hypothesis.contacts[id]?.sense ?? NaN));
  }
  problem.bodies.forEach((_, i) => {
    for (const id of ["a", `a${i + 1}`]) if (!answers.has(id)) answers.set(id, 0);
  });
  return answers;
}

const cases = [...crateCases, ...ropeCases];

describe("a rigid-body engine", () => {
  it.each(cases.map((c) => [c.name, c] as const))("agrees: %s", (_, { document, run, within }) => {
    const ours = answersTo(document);
    const wrong = Object.entries(run()).flatMap(([id, engine]) => {
      const scale = id.startsWith("a") ? GENERAL.acceleration : GENERAL.force;
      const own = ours.get(id) ?? NaN;
      return Math.abs(own - engine) <= within * scale ? [] : [`${id}: ${own} and ${engine}`];
    });
    expect(wrong).toEqual([]);
  });

  it("moves, pulls and pushes: the set-ups are not all at rest", () => {
    const moving = cases.filter(({ run }) =>
      Object.entries(run()).some(([id, v]) => id.startsWith("a") && Math.abs(v) > 0.1),
    );
    expect(moving.length).toBeGreaterThanOrEqual(12);
  });
});
