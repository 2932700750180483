// A slip is one row of the rules replaced: the pipeline then gives the slip's own wrong answer, with a derivation.
import { describe, expect, it } from "vitest";
import { standardRules, defaultSettings, derive, solve } from "../../solver/index.ts";
import { swapSineCosine } from "../../solver/slips/index.ts";
import { exported, linesOf, scopeOf } from "../solver/exported.ts";
import { holds } from "../solver/judge-line.ts";
import { opposite, problemOf } from "../solver/set-ups.ts";

const sin = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);
const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);
const W = 4.2 * 9.8;

// Wrong answers in closed form, worked out for the catalogue of slips by putting each back into its own wrong equations.
// The slip itself: University of Colorado PER group, list of observed student difficulties (course page, partly confirmed).
const SETTINGS = [
  [65, 40],
  [20, 40],
  [35, 50],
  [30, 60],
] as const;

/** Angles away from 45°, where the slip cannot be seen. */
const GRID = [10, 25, 35, 60, 80].flatMap((a) => [20, 40, 55, 75].map((b) => [a, b] as const));

describe("sine and cosine exchanged for the left rope", () => {
  it.each(SETTINGS)("at %i° and %i° gives mg cos β / cos(α − β) and mg sin α / cos(α − β)", (a, b) => {
    const { answers } = solve(problemOf({ ropes: opposite(a, b) }), swapSineCosine("T1"));
    expect(answers[0]?.decimal).toBeCloseTo((W * cos(b)) / cos(a - b), 9);
    expect(answers[1]?.decimal).toBeCloseTo((W * sin(a)) / cos(a - b), 9);
  });
});

describe("sine and cosine exchanged for the right rope", () => {
  it.each(SETTINGS)("at %i° and %i° gives mg sin β / cos(α − β) and mg cos α / cos(α − β)", (a, b) => {
    const { answers } = solve(problemOf({ ropes: opposite(a, b) }), swapSineCosine("T2"));
    expect(answers[0]?.decimal).toBeCloseTo((W * sin(b)) / cos(a - b), 9);
    expect(answers[1]?.decimal).toBeCloseTo((W * cos(a)) / cos(a - b), 9);
  });
});

describe("the derivation of a slip", () => {
  it("differs from the right one first at the component", () => {
    const problem = problemOf({ ropes: opposite(65, 40) });
    const lines = (rules = standardRules): string[] =>
      derive(problem, defaultSettings, rules).paragraphs.flatMap((p) => p.lines.map((l) => l.text()));
    const [right, wrong] = [lines(), lines(swapSineCosine("T1"))];
    const first = right.findIndex((text, i) => text !== wrong[i]);
    expect(right[first]).toBe("T1x = T1 cos 65°");
    expect(wrong[first]).toBe("T1x = T1 sin 65°");
  });

  it.each(["T1", "T2"])("is of one piece for %s: every line up to the answers follows from the slip", (rope) => {
    for (const [a, b] of GRID) {
      const data = exported(derive(problemOf({ ropes: opposite(a, b) }), defaultSettings, swapSineCosine(rope)));
      expect(data.case).toBe("taut");
      const lines = linesOf(data, "both-taut");
      const answered = lines.slice(0, lines.findIndex((l) => l.id === "check.vertical") + 1);
      const scope = scopeOf(data, "both-taut");
      expect(answered.length).toBeGreaterThan(15);
      expect(answered.filter((l) => !holds(l, scope)).map((l) => `${l.id} at ${a}° and ${b}°`)).toEqual([]);
    }
  });

  it("passes its own balances, and is given away by the triangle of forces, which knows no components", () => {
    for (const [a, b] of GRID) {
      const data = exported(derive(problemOf({ ropes: opposite(a, b) }), defaultSettings, swapSineCosine("T1")));
      const scope = scopeOf(data, "both-taut");
      const line = linesOf(data, "both-taut").find((l) => l.id === "check.sine-rule");
      expect(line && holds(line, scope), `${a}° and ${b}°`).toBe(false);
    }
  });

  it("is blind at 45°, where sine and cosine are equal", () => {
    const problem = problemOf({ ropes: opposite(45, 40) });
    expect(solve(problem, swapSineCosine("T1")).answers[0]?.decimal).toBeCloseTo(
      solve(problem).answers[0]?.decimal ?? NaN,
      9,
    );
  });
});
