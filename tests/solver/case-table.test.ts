// Every row of the table of cases: what the situation is called, which ropes are slack, what the answers are.
import { describe, expect, it } from "vitest";
import { exportDerivation } from "../../solver/exports/index.ts";
import { defaultSettings, derive } from "../../solver/index.ts";
import { opposite, problemFrom, problemOf } from "./set-ups.ts";
import type { SetUp } from "./set-ups.ts";

interface Data {
  readonly case: string;
  readonly slack: readonly string[];
  readonly answers: readonly { readonly id: string; readonly decimal: number | null }[];
  readonly attempts: readonly { readonly id: string; readonly holds: boolean }[];
}

const dataOf = (setUp: SetUp): Data => JSON.parse(JSON.stringify(exportDerivation(derive(problemOf(setUp))))) as Data;
const W = 4.2 * 9.8;

interface Row {
  readonly title: string;
  readonly setUp: SetUp;
  readonly kind: string;
  readonly slack?: readonly string[];
  readonly answers: Readonly<Record<string, number | null>>;
}

const ROWS: readonly Row[] = [
  { title: "both pull", setUp: { ropes: opposite(65, 40) }, kind: "taut", answers: { T1: 32.64266, T2: 18.0085957 } },
  {
    title: "a tension of exactly 0 beside a vertical rope",
    setUp: { ropes: [90, 40] },
    kind: "taut",
    answers: { T1: W, T2: 0 },
  },
  {
    title: "a tension of exactly 0 in a cart at g / tan 45°",
    setUp: { ropes: opposite(65, 45), ax: 9.8 },
    kind: "taut",
    answers: { T1: 0, T2: W * Math.SQRT2 },
  },
  {
    title: "a tension of exactly 0 with no exact angle beside it",
    setUp: { ropes: opposite(45, 40), ax: -9.8 },
    kind: "taut",
    answers: { T1: W * Math.SQRT2, T2: 0 },
  },
  {
    title: "one would push, both to the left",
    setUp: { ropes: [160, 140] },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: W },
  },
  {
    title: "one would push, both to the right",
    setUp: { ropes: [20, 40] },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: W },
  },
  {
    title: "one would push, cart to the right",
    setUp: { ropes: opposite(65, 40), ax: 12 },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: 4.2 * Math.hypot(12, 9.8) },
  },
  {
    title: "one would push, cart to the left",
    setUp: { ropes: opposite(65, 40), ax: -12 },
    kind: "slack",
    slack: ["T2"],
    answers: { T1: 4.2 * Math.hypot(12, 9.8), T2: 0 },
  },
  {
    title: "one would push, the other carrying nothing",
    setUp: { ropes: [-90, 40] },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: W },
  },
  {
    title: "free fall",
    setUp: { ropes: opposite(65, 40), ay: -9.8 },
    kind: "slack",
    slack: ["T1", "T2"],
    answers: { T1: 0, T2: 0 },
  },
  {
    title: "no gravity and no acceleration",
    setUp: { ropes: opposite(65, 40), gravity: 0 },
    kind: "slack",
    slack: ["T1", "T2"],
    answers: { T1: 0, T2: 0 },
  },
  {
    title: "free fall and a cart to the right",
    setUp: { ropes: opposite(65, 40), ax: 3, ay: -9.8 },
    kind: "slack",
    slack: ["T1"],
    answers: { T1: 0, T2: 12.6 },
  },
  {
    title: "free fall and a cart to the left",
    setUp: { ropes: opposite(65, 40), ax: -3, ay: -9.8 },
    kind: "slack",
    slack: ["T2"],
    answers: { T1: 12.6, T2: 0 },
  },
  {
    title: "the support outruns free fall",
    setUp: { ropes: opposite(65, 40), ay: -12 },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "the support outruns free fall, one rope level",
    setUp: { ropes: opposite(65, 0), ay: -12 },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "both would push, ropes leading down",
    setUp: { ropes: [-60, -120] },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "both level: nothing pulls up",
    setUp: { ropes: [180, 0] },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "both along one oblique line, at rest",
    setUp: { ropes: [40, -140] },
    kind: "impossible",
    answers: { T1: null, T2: null },
  },
  {
    title: "both straight up",
    setUp: { ropes: [90, 90] },
    kind: "under-determined",
    answers: { T1: null, T2: null, "T1+T2": W },
  },
  {
    title: "one straight up, one straight down",
    setUp: { ropes: [90, -90] },
    kind: "under-determined",
    answers: { T1: null, T2: null, "T1-T2": W },
  },
  {
    title: "both along one oblique line, the cart just so",
    setUp: { ropes: [45, 45], ax: 9.8 },
    kind: "under-determined",
    answers: { T1: null, T2: null, "T1+T2": W * Math.SQRT2 },
  },
  {
    title: "both level, falling, pulled to the right",
    setUp: { ropes: [180, 0], ax: 2, ay: -9.8 },
    kind: "under-determined",
    answers: { T1: null, T2: null, "T1-T2": -8.4 },
  },
  { title: "one rope straight up", setUp: { ropes: [90] }, kind: "taut", answers: { T1: W } },
  { title: "one rope straight up in a lift", setUp: { ropes: [90], ay: 2 }, kind: "taut", answers: { T1: 4.2 * 11.8 } },
  { title: "one oblique rope at rest", setUp: { ropes: [40] }, kind: "impossible", answers: { T1: null } },
  { title: "one rope below", setUp: { ropes: [-90] }, kind: "impossible", answers: { T1: null } },
  {
    title: "given by its weight",
    setUp: { ropes: opposite(30, 60), weight: 50 },
    kind: "taut",
    answers: { T1: 25, T2: 50 * Math.cos(Math.PI / 6) },
  },
  {
    title: "directions by run and rise",
    setUp: {
      ropes: [
        { run: -3, rise: 4 },
        { run: 4, rise: 3 },
      ],
      weight: 50,
    },
    kind: "taut",
    answers: { T1: 40, T2: 30 },
  },
];

describe("the table of cases", () => {
  it.each(ROWS)("$title: $kind", ({ setUp, kind, slack = [], answers }) => {
    const data = dataOf(setUp);
    expect(data.case).toBe(kind);
    expect(data.slack).toEqual(slack);
    expect(data.answers.map((a) => a.id)).toEqual(Object.keys(answers));
    for (const { id, decimal } of data.answers) {
      const expected = answers[id];
      if (expected === null || expected === undefined) expect(decimal).toBeNull();
      else expect(Math.abs((decimal ?? NaN) - expected)).toBeLessThan(1e-6);
      if (expected === 0) expect(decimal).toBe(0);
    }
  });

  it.each(ROWS)("$title, mirrored: the same with the sides exchanged", ({ setUp, kind, slack = [] }) => {
    const mirrored = setUp.ropes.map((r) => (typeof r === "number" ? 180 - r : { run: -r.run, rise: r.rise }));
    const data = dataOf({ ...setUp, ropes: mirrored, ax: setUp.ax === undefined ? 0 : -setUp.ax });
    expect(data.case).toBe(kind);
    expect(data.slack).toEqual(slack);
  });

  it.each(ROWS)("$title: the same case and answers whichever axis comes first", ({ setUp, kind }) => {
    const d = derive(problemOf(setUp), { ...defaultSettings, firstAxis: "horizontal" });
    expect(d.kind).toBe(kind);
    expect(d.answers.map((a) => a.decimal)).toEqual(derive(problemOf(setUp)).answers.map((a) => a.decimal));
  });
});

describe("a failed attempt", () => {
  it("is named, and followed by the one that holds", () => {
    expect(dataOf({ ropes: [160, 140] }).attempts).toMatchObject([
      { id: "both-taut", holds: false },
      { id: "T1-slack", holds: true },
    ]);
  });
});

describe("an angle from the vertical", () => {
  it("is converted in one line", () => {
    const document = {
      format: 1,
      gravity: 9.8,
      bodies: [{ id: "bell", mass: 2 }],
      ropes: [
        { id: "T1", on: "bell", direction: { angle: 25, from: "vertical", side: "left" } },
        { id: "T2", on: "bell", direction: { angle: 50, from: "vertical", side: "right" } },
      ],
    };
    const usual = problemOf({ ropes: opposite(65, 40), mass: 2 });
    const problem = problemFrom(document);
    expect(derive(problem).answers.map((a) => a.decimal)).toEqual(derive(usual).answers.map((a) => a.decimal));
    const line = derive(problem)
      .paragraphs.flatMap((p) => p.lines)
      .find((l) => l.id === "angle.T1");
    expect(line?.text()).toBe("α = 90° − 25° = 65°");
    expect(line?.plain().sides).toEqual(["alpha", "(90*pi/180) - (25*pi/180)", "(65*pi/180)"]);
  });
});
