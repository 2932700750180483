import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decodeState, encodeState } from "../../shared/link/index.ts";
import { DOCUMENT, start, startOf } from "./lesson.ts";

describe("a parameter that cannot be taken is named, and only it is lost", () => {
  test.each([
    ["mass=-0.1", "mass", '"-0.1"', "a number from 0.000000001 to 1000000000 (kg)"],
    ["mass=0", "mass", '"0"', "a number from 0.000000001 to 1000000000 (kg)"],
    ["mass=1e-10", "mass", '"1e-10"', "a number from 0.000000001 to 1000000000 (kg)"],
    ["mass=heavy", "mass", '"heavy"', "a number from 0.000000001 to 1000000000 (kg)"],
    ["mass=4,2", "mass", '"4,2"', "(kg)"],
    ["mass=", "mass", '""', "(kg)"],
    ["mass", "mass", '""', "(kg)"],
    ["weight=-1", "weight", '"-1"', "(N)"],
    ["g=-9.8", "g", '"-9.8"', "a number from 0 to 1000000000 (m/s²)"],
    ["T1=361", "T1", '"361"', "a number from -360 to 360 (degrees), anticlockwise"],
    ["T1=0:0", "T1", '"0:0"', "run:rise, such as -3:4"],
    ["T1=1:2:3", "T1", '"1:2:3"', "run:rise"],
    ["T1=1:", "T1", '"1:"', "run:rise"],
    ["T1=NaN", "T1", '"NaN"', "degrees"],
    ["ax=1e999", "ax", '"1e999"', "(m/s²)"],
    ["ay=Infinity", "ay", '"Infinity"', "(m/s²)"],
    ["figures=7", "figures", '"7"', "2, 3, 4, 5, 6"],
    ["figures=3.0", "figures", '"3.0"', "2, 3, 4, 5, 6"],
    ["first=up", "first", '"up"', "vertical, horizontal"],
    ["upto=%3Cscript%3E", "upto", '"<script>"', 'the id of a line, such as "eliminate.divide"'],
    ["zoom=2", "zoom", '"2"', "only the parameters mass, weight, g, T1, T2, ax, ay, figures, first, upto"],
    ["t1=90", "t1", '"90"', "only the parameters"],
    ["__proto__=1", "__proto__", '"1"', "only the parameters"],
    ["constructor=1", "constructor", '"1"', "only the parameters"],
    ["a%0Ab=c%0Ad", "a\\nb", '"c\\nd"', "only the parameters"],
    ["T1=%E0%A4%A", "T1", '"\uFFFD%A"', "degrees"],
  ])("%s", (query, parameter, found, accepted) => {
    const { state, faults } = decodeState(
      `T2=30&${query}&ay=1`.replace(query.startsWith("ay") ? "&ay=1" : " ", ""),
      start,
    );
    expect(faults).toEqual([{ parameter, found, accepted: expect.stringContaining(accepted) as string }]);
    expect(encodeState(state, start)).toBe(query.startsWith("ay") ? "T2=30" : "T2=30&ay=1");
  });

  test("a parameter given twice counts not at all, even with one value", () => {
    const { state, faults } = decodeState("mass=5&mass=6&g=10", start);
    expect(faults).toEqual([{ parameter: "mass", found: '"5, 6"', accepted: "one value, given once" }]);
    expect(encodeState(state, start)).toBe("g=10");
    expect(decodeState("mass=5&mass=5", start).faults).toHaveLength(1);
  });

  test("mass and weight together count not at all", () => {
    const { state, faults } = decodeState("mass=5&weight=50&g=10", start);
    expect(faults.map((fault) => fault.parameter)).toEqual(["mass", "weight"]);
    expect(encodeState(state, start)).toBe("g=10");
  });

  test("every fault is told", () => {
    const { faults } = decodeState("mass=x&T1=y&first=z&figures=1&upto=%20&why=1", start);
    expect(faults.map((fault) => fault.parameter)).toEqual(["mass", "T1", "figures", "first", "upto", "why"]);
  });
});

describe("weight and gravity together", () => {
  const weightless = startOf({ ...DOCUMENT, gravity: 0 });
  const weighed = startOf({ ...DOCUMENT, bodies: [{ id: "lantern", weight: 41.16 }] });

  test("a weight where the link makes gravity 0 keeps the lesson's gravity", () => {
    const { state, faults } = decodeState("weight=50&g=0", start);
    expect(faults).toEqual([{ parameter: "g", found: '"0"', accepted: "a number larger than 0 with a weight" }]);
    expect(encodeState(state, start)).toBe("weight=50");
    expect(decodeState("g=0", weighed).faults).toHaveLength(1);
  });

  test("a weight where the lesson has no gravity keeps the lesson's mass", () => {
    const { state, faults } = decodeState("weight=50", weightless);
    expect(faults).toEqual([{ parameter: "weight", found: '"50"', accepted: "a mass where g is 0" }]);
    expect(state).toEqual(weightless);
  });

  test("a link may give both a weight and gravity, or a mass without gravity", () => {
    expect(decodeState("weight=50&g=9.8", weightless).faults).toEqual([]);
    expect(decodeState("mass=5&g=0", weighed).faults).toEqual([]);
  });
});

describe("any text at all", () => {
  test("of 100 kB is answered at once, as a whole", () => {
    const { state, faults } = decodeState("T1=" + "9".repeat(100_000), start);
    expect(faults).toEqual([{ parameter: "", found: "100003 characters", accepted: "at most 2000 characters" }]);
    expect(state).toEqual(start);
  });

  test("of a thousand parameters gives a bounded answer, what is known first", () => {
    const { state, faults } = decodeState(`${"a&b&".repeat(400)}T1=x&mass=5`, start);
    expect(faults.length).toBeLessThanOrEqual(12);
    expect(faults[0]?.parameter).toBe("T1");
    expect(encodeState(state, start)).toBe("mass=5");
  });

  test("never throws, and its faults fit on a line", () => {
    const names = fc.constantFrom("mass", "weight", "g", "T1", "ax", "figures", "first", "upto", "__proto__");
    const queries = fc.oneof(
      fc.string({ unit: "binary", maxLength: 200 }),
      fc.tuple(names, fc.string({ unit: "binary", maxLength: 100 })).map(([name, value]) => `${name}=${value}`),
    );
    fc.assert(
      fc.property(queries, (query) => {
        const { faults } = decodeState(query, start);
        for (const { parameter, found, accepted } of faults) {
          expect(parameter + found + accepted).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
          expect(found.length + parameter.length).toBeLessThan(600);
        }
      }),
      { numRuns: 3000 },
    );
  });
});
