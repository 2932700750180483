import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rational } from "../../shared/exact/index.ts";
import { changeProblem, writeProblem } from "../../shared/problem/index.ts";
import type { Problem, ProblemChange } from "../../shared/problem/index.ts";
import { degrees, problems } from "../arbitraries/problem.ts";
import { accepted, lantern, LANTERN } from "./lantern.ts";

function changed(problem: Problem, change: ProblemChange): Problem {
  const reading = changeProblem(problem, change);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.problem;
}

const start = accepted(LANTERN);
const one = (text: string): ReturnType<typeof rational> => rational(text);

describe("one edit of a problem", () => {
  test("sets the mass, the weight, gravity, an acceleration or an angle, and nothing else", () => {
    const before = JSON.stringify(writeProblem(start));
    expect(writeProblem(changed(start, { kind: "mass", body: "lantern", value: one("5") })).bodies[0]?.mass).toBe(5);
    const weighed = writeProblem(changed(start, { kind: "weight", body: "lantern", value: one("50") }));
    expect([weighed.bodies[0]?.weight, weighed.bodies[0]?.mass]).toEqual([50, undefined]);
    expect(writeProblem(changed(start, { kind: "gravity", value: one("1.62") })).gravity).toBe(1.62);
    const lifted = changed(start, { kind: "acceleration", body: "lantern", axis: "y", value: one("-2.5") });
    expect(writeProblem(lifted).bodies[0]?.acceleration).toEqual({ x: 0, y: -2.5 });
    const turned = writeProblem(changed(start, { kind: "angle", rope: "T2", value: one("300") }));
    expect(turned.ropes).toMatchObject([{ direction: { angle: 115 } }, { direction: { angle: -60 } }]);
    const sloped = writeProblem(changed(start, { kind: "slope", rope: "T1", run: one("-3"), rise: one("4") }));
    expect(sloped.ropes[0]).toMatchObject({ direction: { run: -3, rise: 4 } });
    expect(JSON.stringify(writeProblem(start))).toBe(before);
  });

  test.each([
    ["an angle beyond a turn", { kind: "angle", rope: "T1", value: one("361") }, "/ropes/0/direction", "-360 to 360"],
    ["a mass below nothing", { kind: "mass", body: "lantern", value: one("-1") }, "/bodies/0/mass", "(kg)"],
    ["gravity upwards", { kind: "gravity", value: one("-1") }, "/gravity", "(m/s²)"],
    [
      "a far too large acceleration",
      { kind: "acceleration", body: "lantern", axis: "x", value: one("1e10") },
      "/bodies/0/acceleration/x",
      "(m/s²)",
    ],
    ["a rope that is not there", { kind: "angle", rope: "T3", value: one("1") }, "", "an id of the problem"],
    ["a body that is not there", { kind: "mass", body: "bell", value: one("1") }, "", "an id of the problem"],
    [
      "a slope of nothing",
      { kind: "slope", rope: "T1", run: one("0"), rise: one("0") },
      "/ropes/0/direction",
      "not both 0",
    ],
  ] as const satisfies readonly (readonly [string, ProblemChange, string, string])[])(
    "refuses %s",
    (_, change, path, text) => {
      const reading = changeProblem(start, change);
      expect(reading.ok ? [] : reading.faults.map((fault) => fault.path)).toEqual([path]);
      expect(reading.ok ? "" : reading.faults[0]?.accepted).toContain(text);
    },
  );

  test("refuses to take gravity away from a body given by its weight", () => {
    const weighed = changed(start, { kind: "weight", body: "lantern", value: one("50") });
    expect(changeProblem(weighed, { kind: "gravity", value: one("0") }).ok).toBe(false);
    const weightless = changed(start, { kind: "gravity", value: one("0") });
    expect(changeProblem(weightless, { kind: "weight", body: "lantern", value: one("50") }).ok).toBe(false);
  });
});

describe("an angle that the document gives from the vertical", () => {
  const vertical = accepted(lantern('"angle": 115', '"angle": 25, "from": "vertical", "side": "left"'));
  test.each([
    ["100", "10", "left"],
    ["65", "25", "right"],
    ["90", "0", "left"],
    ["-90", "180", "left"],
    ["-120", "150", "left"],
    ["-60", "150", "right"],
    ["180", "90", "left"],
    ["0", "90", "right"],
  ])("turned to %s degrees is still given from the vertical: %s to the %s", (value, angle, side) => {
    const { ropes } = writeProblem(changed(vertical, { kind: "angle", rope: "T1", value: one(value) }));
    expect(ropes[0]).toMatchObject({ direction: { angle: Number(angle), from: "vertical", side } });
  });

  test("any edit leaves a problem that the format accepts", () => {
    fc.assert(
      fc.property(problems, degrees, (problem, value) => {
        const result = changed(problem, { kind: "angle", rope: "T1", value });
        const [rope] = result.ropes;
        if (rope?.direction.kind !== "angle") throw new Error("not an angle");
        const difference = rope.direction.degrees.sub(value);
        expect(difference.d === 1n && difference.n % 360n === 0n).toBe(true);
        expect(accepted(JSON.stringify(writeProblem(result)))).toEqual(result);
      }),
    );
  });
});
