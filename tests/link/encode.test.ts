import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decodeState, encodeState } from "../../shared/link/index.ts";
import type { PageState } from "../../shared/link/index.ts";
import { changeProblem, writeProblem } from "../../shared/problem/index.ts";
import { visits } from "../arbitraries/link.ts";
import { degrees } from "../arbitraries/problem.ts";
import { DOCUMENT, start, startOf, stateOf } from "./lesson.ts";

describe("an address", () => {
  test("is empty at the lesson's start", () => {
    expect(encodeState(start, start)).toBe("");
    expect(stateOf("")).toEqual(start);
  });

  test.each([
    ["mass=5", "mass=5"],
    ["weight=41.16", "weight=41.16"],
    ["g=1.62", "g=1.62"],
    ["T1=90", "T1=90"],
    ["T2=-320", ""],
    ["T2=300", "T2=-60"],
    ["T1=100/3", "T1=100/3"],
    ["T1=-3:4", "T1=-3:4"],
    ["ay=-9.80", "ay=-9.8"],
    [
      "upto=eliminate.divide&ax=2&figures=4&mass=5.0&first=horizontal",
      "mass=5&ax=2&figures=4&first=horizontal&upto=eliminate.divide",
    ],
    ["T2=30&T1=120&g=10", "g=10&T1=120&T2=30"],
    ["mass=4.2&T1=115&figures=3&first=vertical&ax=0", ""],
    ["?mass=5", "mass=5"],
    ["mass=%35", "mass=5"],
    ["&&mass=5&", "mass=5"],
  ])("%j is written %j", (query, canonical) => {
    expect(encodeState(stateOf(query), start)).toBe(canonical);
  });

  test("says that all lines are shown where the lesson begins with a few", () => {
    const withLine: PageState = { ...start, upTo: "vertical.law" };
    expect(encodeState(start, withLine)).toBe("upto=");
    expect(stateOf("upto=", withLine).upTo).toBeNull();
    expect(encodeState(stateOf("upto=", start), start)).toBe("");
  });

  test("keeps the lesson's manner of giving an angle", () => {
    const vertical = startOf({
      ...DOCUMENT,
      ropes: [{ id: "T1", on: "lantern", direction: { angle: 25, from: "vertical", side: "left" } }],
    });
    expect(encodeState(stateOf("T1=115", vertical), vertical)).toBe("");
    const turned = writeProblem(stateOf("T1=60", vertical).problem);
    expect(turned.ropes[0]).toMatchObject({ direction: { angle: 30, from: "vertical", side: "right" } });
  });

  test("holds only characters that need no escape and stays short", () => {
    fc.assert(
      fc.property(visits, ({ start: from, state }) => {
        const query = encodeState(state, from);
        expect(query).toMatch(/^[A-Za-z0-9=&.:/-]*$/);
        expect(query.length).toBeLessThan(500);
      }),
    );
  });
});

describe("there and back", () => {
  test("a state becomes an address and the address that state", () => {
    fc.assert(
      fc.property(visits, ({ start: from, state }) => {
        const decoded = decodeState(encodeState(state, from), from);
        expect(decoded.faults).toEqual([]);
        expect(withoutManner(decoded.state)).toEqual(withoutManner(state));
      }),
      { numRuns: 1000 },
    );
  });

  test("with the manner in which the angle is given, where one angle is turned", () => {
    fc.assert(
      fc.property(visits, degrees, ({ start: from }, value) => {
        const turned = changeProblem(from.problem, { kind: "angle", rope: "T1", value });
        if (!turned.ok) throw new Error(JSON.stringify(turned.faults));
        const state = { ...from, problem: turned.problem };
        if (encodeState(state, from) === "") return;
        expect(decodeState(encodeState(state, from), from).state).toEqual(state);
      }),
    );
  });

  test("the address is one and the same however the state was asked for", () => {
    fc.assert(
      fc.property(visits, fc.gen(), ({ start: from, state }, gen) => {
        const query = encodeState(state, from);
        const parts = query.split("&");
        const shuffled = gen(fc.shuffledSubarray, parts, { minLength: parts.length }).join("&");
        expect(encodeState(decodeState(shuffled, from).state, from)).toBe(query);
      }),
      { numRuns: 500 },
    );
  });

  test("decoding any text and encoding gives an address that stays", () => {
    const names = fc.constantFrom("mass", "weight", "g", "T1", "T2", "ax", "ay", "figures", "first", "upto", "zoom");
    const values = fc.oneof(
      fc.constantFrom("5", "0", "-3:4", "a.b", "", "horizontal", "1e2"),
      fc.string({ maxLength: 8 }),
    );
    const queries = fc
      .array(fc.tuple(names, values), { maxLength: 8 })
      .map((pairs) => pairs.map(([name, value]) => `${name}=${value}`).join("&"));
    fc.assert(
      fc.property(queries, (query) => {
        const once = encodeState(decodeState(query, start).state, start);
        const again = decodeState(once, start);
        expect(again.faults).toEqual([]);
        expect(encodeState(again.state, start)).toBe(once);
      }),
      { numRuns: 2000 },
    );
  });
});

/**
 * Without the manner in which angles are given, which is the lesson's own: a reader who goes from an angle to run and
 * rise and back, or through straight up, may end with another one than a link gives.
 */
function withoutManner(state: PageState): unknown {
  const ropes = state.problem.ropes.map(({ id, on, direction }) =>
    direction.kind !== "angle" ? { id, on, direction } : { id, on, degrees: direction.degrees },
  );
  return { ...state, problem: { ...state.problem, ropes } };
}
