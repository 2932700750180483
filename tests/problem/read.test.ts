import { describe, expect, test } from "vitest";
import { rational } from "../../shared/exact/index.ts";
import { readProblemDocument } from "../../shared/problem/schema.ts";
import { accepted, lantern, LANTERN } from "./lantern.ts";

const exactly = rational;

describe("a document that keeps the format", () => {
  test("is read with every number exact", () => {
    const problem = accepted(LANTERN);
    expect(problem.gravity).toEqual(exactly("49/5"));
    expect(problem.bodies).toEqual([
      {
        id: "lantern",
        name: "brass lantern",
        kind: "load",
        load: { kind: "mass", mass: exactly("21/5") },
        acceleration: { x: exactly("0"), y: exactly("0") },
        motion: { kind: "given" },
        at: null,
      },
    ]);
    expect([problem.units, problem.surfaces, problem.pushes]).toEqual(["SI", [], []]);
    expect(problem.frame).toEqual({ x: exactly("0"), y: exactly("0") });
    expect(problem.ropes.map((rope) => rope.direction)).toEqual([
      { kind: "angle", degrees: exactly("115"), written: { from: "horizontal" } },
      { kind: "angle", degrees: exactly("40"), written: { from: "horizontal" } },
    ]);
  });

  test("may leave out the name and the acceleration, or one part of it", () => {
    expect(accepted(lantern('"name": "brass lantern", ')).bodies[0]?.name).toBe("lantern");
    expect(accepted(lantern(', "acceleration": { "x": 0, "y": 0 }')).bodies[0]?.acceleration.x.n).toBe(0n);
    const half = accepted(lantern('"x": 0, "y": 0', '"y": "-4.9"')).bodies[0]?.acceleration;
    expect([half?.x, half?.y]).toEqual([exactly("0"), exactly("-49/10")]);
  });

  test("may hang on one rope", () => {
    const one = JSON.parse(LANTERN) as { ropes: unknown[] };
    expect(readProblemDocument({ ...one, ropes: one.ropes.slice(0, 1) }).ok).toBe(true);
  });

  test("may give a weight instead of a mass", () => {
    expect(accepted(lantern('"mass": 4.2', '"weight": "41.16"')).bodies[0]?.load).toEqual({
      kind: "weight",
      weight: exactly("41.16"),
    });
  });

  test.each([
    ['"4.2"', "21/5"],
    ["4.20", "21/5"],
    ['"1/3"', "1/3"],
    ["42e-1", "21/5"],
    ["0.1", "1/10"],
    ["1e-9", "1e-9"],
    ["1E9", "1000000000"],
    ["123456789.123456", "123456789.123456"],
    ["4.2000000000000000000000000", "21/5"],
    ['"4.200000000000000000000000000000000001"', "4.200000000000000000000000000000000001"],
  ])("reads a mass of %s as the decimal that is written", (written, value) => {
    const load = accepted(lantern("4.2", written)).bodies[0]?.load;
    expect(load).toEqual({ kind: "mass", mass: exactly(value) });
  });

  test.each(["lantern", "T", "T1", "T2", "R1", "A", "B", "rope1", "Laterne", "abcdefghijklmnop"])(
    "may use the id %s",
    (id) => {
      const text = lantern('"id": "T1"', `"id": "${id === "lantern" ? "T1" : id === "T2" ? "T3" : id}"`);
      expect(accepted(text).ropes).toHaveLength(2);
    },
  );

  test("may have a name in any script", () => {
    expect(accepted(lantern("brass lantern", "Messinglaterne «Ö» 燈")).bodies[0]?.name).toBe("Messinglaterne «Ö» 燈");
  });
});

describe("directions", () => {
  const direction = (written: string): unknown => accepted(lantern('{ "angle": 115 }', written)).ropes[0]?.direction;
  const level = { from: "horizontal" };

  test.each([
    ["180", "180"],
    ["-180", "180"],
    ["360", "0"],
    ["-360", "0"],
    ["270", "-90"],
    ["-270", "90"],
    ["180.1", "-179.9"],
    ['"100/3"', "100/3"],
  ])("an angle of %s is kept as %s, between -180 and 180", (written, degrees) => {
    expect(direction(`{ "angle": ${written} }`)).toEqual({ kind: "angle", degrees: exactly(degrees), written: level });
  });

  test.each([
    ["25", "left", "115"],
    ["25", "right", "65"],
    ["0", "left", "90"],
    ["90", "left", "180"],
    ["90", "right", "0"],
    ["180", "right", "-90"],
    ["135.5", "left", "-134.5"],
  ] as const)("%s degrees from straight up to the %s are %s from the x axis", (angle, side, degrees) => {
    expect(direction(`{ "angle": ${angle}, "from": "vertical", "side": "${side}" }`)).toEqual({
      kind: "angle",
      degrees: exactly(degrees),
      written: { from: "vertical", side, angle: exactly(angle) },
    });
  });

  test("three across to the left, four up", () => {
    expect(direction('{ "run": -3, "rise": 4 }')).toEqual({ kind: "slope", run: exactly("-3"), rise: exactly("4") });
  });
});
