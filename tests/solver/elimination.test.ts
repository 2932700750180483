// The elimination on linear systems of one body in general: known pushes, one to three unknown pulls, any directions.
import { lusolve } from "mathjs";
import { describe, expect, it } from "vitest";
import { decimal } from "../../solver/algebra/evaluate.ts";
import type { AngleValue, Value, Values } from "../../solver/algebra/evaluate.ts";
import { symbol, trig } from "../../solver/algebra/expr.ts";
import { known } from "../../solver/algebra/linear.ts";
import type { Term } from "../../solver/algebra/linear.ts";
import { Writer, eliminate } from "../../solver/4-steps/index.ts";
import type { Live, Outcome } from "../../solver/4-steps/index.ts";
import { seeded } from "../arbitraries/set-ups.ts";

interface Pull {
  readonly side: 1 | -1;
  readonly rise: 1 | -1;
  readonly degrees: number;
}

const LETTERS = ["alpha", "beta", "gamma"];
const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const sign = (x: number): 1 | -1 => (x < 0 ? -1 : 1);

/** Both axis equations: unknown pulls and a known push (px, py) with the weight in it. */
function system(pulls: readonly Pull[]): Live[] {
  const terms = (axis: 0 | 1): Term[] =>
    pulls.map((p, i) => ({
      sign: axis === 0 ? p.side : p.rise,
      unknown: `F${i + 1}`,
      factor: trig(axis === 0 ? "cos" : "sin", LETTERS[i] ?? "delta"),
    }));
  return [
    { name: "vertical", axis: 1, left: [...terms(1), known(1, symbol("py"))], right: [], line: "y" },
    { name: "horizontal", axis: 0, left: [...terms(0), known(1, symbol("px"))], right: [], line: "x" },
  ];
}

function valuesOf(
  pulls: readonly Pull[],
  push: readonly [number, number],
): Values & { readonly symbols: Map<string, Value> } {
  const angles = new Map(
    pulls.map((p, i): [string, AngleValue] => [
      LETTERS[i] ?? "",
      {
        degrees: null,
        radians: radians(p.degrees),
        sine: { decimal: Math.sin(radians(p.degrees)), exact: null },
        cosine: { decimal: Math.cos(radians(p.degrees)), exact: null },
      },
    ]),
  );
  return {
    symbols: new Map([
      ["px", { decimal: push[0], exact: null }],
      ["py", { decimal: push[1], exact: null }],
    ]),
    angles,
  };
}

const run = (pulls: readonly Pull[]): Outcome =>
  eliminate(new Writer("any", "", false), system(pulls), { commonLetter: "F", mirror: false });
const random = seeded(27182);
const randomPull = (): Pull => ({ side: sign(random() - 0.5), rise: sign(random() - 0.4), degrees: 3 + random() * 84 });

describe("two unknown pulls and a known push", () => {
  it("agree with mathjs lusolve on 500 random systems", () => {
    const wrong: string[] = [];
    for (let i = 0; i < 500; i++) {
      const pulls = [randomPull(), randomPull()];
      const push: [number, number] = [random() * 40 - 20, random() * 40 - 20];
      const matrix = [
        pulls.map((p) => p.side * Math.cos(radians(p.degrees))),
        pulls.map((p) => p.rise * Math.sin(radians(p.degrees))),
      ];
      const [[a = 0, b = 0] = [], [c = 0, d = 0] = []] = matrix;
      if (Math.abs(a * d - b * c) < 0.01) continue;
      const theirs = (lusolve(matrix, [[-push[0]], [-push[1]]]) as number[][]).map((r) => r[0] ?? NaN);
      const outcome = run(pulls);
      if (outcome.kind !== "solved") {
        wrong.push(`${outcome.kind} at ${JSON.stringify({ pulls, push })}`);
        continue;
      }
      const values = valuesOf(pulls, push);
      for (const s of outcome.solved) values.symbols.set(s.unknown, { decimal: decimal(s.expr, values), exact: null });
      theirs.forEach((x, k) => {
        const ours = values.symbols.get(`F${k + 1}`)?.decimal ?? NaN;
        if (!(Math.abs(ours - x) <= 1e-9 * (1 + Math.abs(x))))
          wrong.push(`${ours} and ${x} at ${JSON.stringify({ pulls, push })}`);
      });
    }
    expect(wrong.slice(0, 3)).toEqual([]);
  });
});

describe("other counts of unknowns", () => {
  it("one pull is settled by the first equation that holds it", () => {
    const outcome = run([{ side: 1, rise: 1, degrees: 50 }]);
    expect(outcome.kind).toBe("solved");
    expect(outcome.solved.map((s) => s.unknown)).toEqual(["F1"]);
  });

  it("three pulls in one plane are under-determined, never an error", () => {
    const outcome = run([randomPull(), randomPull(), randomPull()]);
    expect(outcome).toMatchObject({ kind: "under-determined" });
  });
});
