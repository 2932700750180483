// @vitest-environment jsdom
// What a page fetches when it is touched: typed text and drags become edits of a scene.
import { describe, expect, it } from "vitest";
import { rational } from "../../shared/exact/index.ts";
import { writeProblem } from "../../shared/problem/index.ts";
import { outcomeText, sceneFor, takeText, turnsOf } from "../../src/widgets/awake.ts";
import { opposite, problemOf } from "../solver/set-ups.ts";

const document = writeProblem(problemOf({ ropes: opposite(65, 40) }));
let scenes = 0;
const scene = (): ReturnType<typeof sceneFor> => sceneFor(`scene ${++scenes}`, document);

describe("a scene of the page", () => {
  it("is one object for each id", () => {
    expect(sceneFor("one", document)).toBe(sceneFor("one", document));
    expect(sceneFor("one", document)).not.toBe(sceneFor("other", document));
  });

  it("says what it comes to", () => {
    const it = scene();
    expect(outcomeText(it.derivation)).toMatch(/32\.6\sN/);
    takeText(it, { kind: "ax" }, "12");
    it.keep();
    expect(outcomeText(it.derivation)).toMatch(/Rope 1 is slack/);
  });
});

describe("typed text", () => {
  it.each([
    ["27,5", "T1=152.5"],
    [" 27.50 ", "T1=152.5"],
    ["−20", "T1=-160"],
    ["0", "T1=180"],
    ["90", "T1=90"],
    ["120", "T1=60"],
  ])("“%s” for rope 1's own angle is %s", (text, query) => {
    const it = scene();
    expect(takeText(it, { kind: "rope", rope: "T1" }, text)).toBeNull();
    it.keep();
    expect(it.query).toBe(query);
  });

  it.each([
    [{ kind: "load" }, "-3", /not taken; accepted: a number from/],
    [{ kind: "load" }, "heavy", /not a number such as 4\.2/],
    [{ kind: "gravity" }, "1e999", /not/],
    [{ kind: "ax" }, "NaN", /not a number/],
    [{ kind: "latitude" }, "91", /90/],
    [{ kind: "rope", rope: "T1" }, "4..2", /not a number/],
  ] as const)("for %o “%s” is refused in words", (quantity, text, words) => {
    const it = scene();
    expect(takeText(it, quantity, text)).toMatch(words);
    it.keep();
    expect(it.query).toBe("");
  });

  it("for a weight is the weight", () => {
    const heavy = sceneFor("by weight", writeProblem(problemOf({ ropes: opposite(65, 40), weight: 50 })));
    expect(takeText(heavy, { kind: "load" }, "60")).toBeNull();
    heavy.keep();
    expect(heavy.query).toBe("weight=60");
  });
});

describe("turns of a drag", () => {
  it("are exact tenths, whole turns taken off", () => {
    expect(turnsOf([{ rope: "T1", degrees: 115.04999 }])).toEqual([
      { kind: "angle", rope: "T1", value: rational("115") },
    ]);
    expect(turnsOf([{ rope: "T2", degrees: 380.1 }])).toEqual([{ kind: "angle", rope: "T2", value: rational("20.1") }]);
  });
});
