import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rational } from "../../shared/exact/index.ts";
import { changeProblem, joinedBody, problemFromDocument, writeProblem } from "../../shared/problem/index.ts";
import type { Problem, ProblemChange } from "../../shared/problem/index.ts";
import { readProblemDocument } from "../../shared/problem/schema.ts";
import { degrees, loads } from "../arbitraries/problem.ts";
import { setUpProblems } from "../arbitraries/set-up-documents.ts";
import { angle, at, bell, block, document, knot, lantern, roped, up } from "./small-set-ups.ts";

function read(data: unknown): Problem {
  const reading = readProblemDocument(data);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.problem;
}

function changed(problem: Problem, change: ProblemChange): Problem {
  const reading = changeProblem(problem, change);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.problem;
}

const one = (text: string): ReturnType<typeof rational> => rational(text);
const turn = (rope: string, value: string): ProblemChange => ({ kind: "angle", rope, value: one(value) });

const joined = roped([lantern(), bell()], { id: "T", on: "lantern", direction: angle(30), to: "bell" });
const placed = roped([lantern({ at: at(0, 0) }), bell({ at: at(3, 4) })], { id: "T", on: "lantern", to: "bell" });
const tied = roped([lantern({ at: at(0, 0) })], { id: "T", on: "lantern", anchor: at(3, 4) });
const hung = roped([lantern()], { id: "T", on: "lantern", anchor: at(3, 4), length: 2 });
const hoist = roped([lantern(), bell()], {
  id: "T",
  pulls: [
    { on: "lantern", direction: up },
    { on: "bell", direction: up },
  ],
});
const moving = document({ bodies: [lantern({ motion: { along: up } })] });

describe("an edit of a problem of several bodies", () => {
  test("turns a rope between two bodies at both its ends", () => {
    const { ropes } = writeProblem(changed(read(joined), turn("T", "75")));
    expect(ropes).toEqual([{ id: "T", on: "lantern", direction: { angle: 75 }, to: "bell" }]);
    const sloped = changed(read(joined), { kind: "slope", rope: "T", run: one("-1"), rise: one("2") });
    expect(writeProblem(sloped).ropes).toMatchObject([{ direction: { run: -1, rise: 2 }, to: "bell" }]);
    expect(sloped.ropes[0]?.further[0]?.direction).toEqual({ kind: "slope", run: one("1"), rise: one("-2") });
  });

  test("turns the first end alone where a fixed pulley stands between", () => {
    const { ropes } = writeProblem(changed(read(hoist), turn("T", "30")));
    const pulls = [
      { on: "lantern", direction: { angle: 30 } },
      { on: "bell", direction: { angle: 90 } },
    ];
    expect(ropes).toEqual([{ id: "T", pulls }]);
  });

  test("sets the load and the acceleration of the body that it names", () => {
    const heavier = changed(read(joined), { kind: "mass", body: "bell", value: one("9") });
    expect(writeProblem(heavier).bodies.map(({ mass }) => mass)).toEqual([4, 9]);
    const lifted = changed(read(joined), { kind: "acceleration", body: "bell", axis: "y", value: one("2") });
    expect(writeProblem(lifted).bodies.map(({ acceleration }) => acceleration)).toEqual([undefined, { x: 0, y: 2 }]);
  });

  test.each([
    ["an anchor's direction", tied, turn("T", "10"), "/ropes/0/direction", 'a direction of "T", which places give'],
    ["a length's direction", hung, turn("T", "10"), "/ropes/0/direction", 'a direction of "T", which places give'],
    ["two places' direction", placed, turn("T", "10"), "/ropes/0/direction", 'a direction of "T", which places give'],
    [
      "a pulley away",
      hoist,
      turn("T", "-90"),
      "/ropes/0/direction",
      "the opposite of the rope's other end, as if there were no pulley",
    ],
    [
      "a knot's mass",
      roped([knot(), lantern()]),
      { kind: "mass", body: "k1", value: one("1") },
      "/bodies/0/mass",
      'a mass of the knot "k1"',
    ],
    [
      "a knot's weight",
      roped([knot(), lantern()]),
      { kind: "weight", body: "k1", value: one("1") },
      "/bodies/0/weight",
      'a weight of the knot "k1"',
    ],
    [
      "an acceleration beside a motion",
      moving,
      { kind: "acceleration", body: "lantern", axis: "y", value: one("1") },
      "/bodies/0/acceleration/y",
      'an acceleration beside the motion of "lantern"',
    ],
  ] as const satisfies readonly (readonly [string, unknown, ProblemChange, string, string])[])(
    "does not set %s",
    (_, data, change, path, found) => {
      const reading = changeProblem(read(data), change);
      expect(reading.ok ? [] : reading.faults).toMatchObject([{ path, found }]);
    },
  );

  test("names the unit of the problem's own system", () => {
    const faults = (units: string): unknown => {
      const reading = changeProblem(read(document({ units })), { kind: "mass", body: "lantern", value: one("-1") });
      return reading.ok ? [] : reading.faults.map(({ accepted }) => accepted);
    };
    expect(faults("lbf-ft")).toEqual(["0, or a number from 0.000000001 to 1000000000 (slug)"]);
    expect(faults("SI")).toEqual(["0, or a number from 0.000000001 to 1000000000 (kg)"]);
  });

  test("gives a pulley a mass and takes it away", () => {
    const heavy = changed(read(roped([block()])), { kind: "mass", body: "block", value: one("2") });
    expect(writeProblem(heavy).bodies[0]?.mass).toBe(2);
    expect(
      writeProblem(changed(heavy, { kind: "mass", body: "block", value: one("0") })).bodies[0]?.mass,
    ).toBeUndefined();
  });
});

describe("any edit of any problem", () => {
  const edit = fc.oneof(
    degrees.map((value) => (problem: Problem): ProblemChange => ({
      kind: "angle",
      rope: problem.ropes[0]?.id ?? "",
      value,
    })),
    loads.map((value) => (problem: Problem): ProblemChange => ({
      kind: "mass",
      body: problem.bodies[0]?.id ?? "",
      value,
    })),
    loads.map((value) => (): ProblemChange => ({ kind: "gravity", value })),
    degrees.map((value) => (problem: Problem): ProblemChange => {
      return { kind: "acceleration", body: problem.bodies[0]?.id ?? "", axis: "x", value };
    }),
  );

  test("is refused, or leaves a problem that is written and read back the same, each rope straight or not as before", () => {
    let made = 0;
    fc.assert(
      fc.property(setUpProblems, edit, (problem, change) => {
        const reading = changeProblem(problem, change(problem));
        if (!reading.ok) return;
        made += 1;
        const written = writeProblem(reading.problem);
        expect(problemFromDocument(written)).toEqual(reading.problem);
        expect(readProblemDocument(written)).toEqual(reading);
        expect(reading.problem.ropes.map(joinedBody)).toEqual(problem.ropes.map(joinedBody));
      }),
      { numRuns: 500 },
    );
    expect(made).toBeGreaterThan(250);
  });
});
