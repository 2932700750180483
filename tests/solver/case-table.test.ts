// Every row of the table of cases: what the situation is called, which ropes are slack, what the answers are.
import { describe, expect, it } from "vitest";
import { exportDerivation } from "../../solver/exports/index.ts";
import { defaultSettings, derive } from "../../solver/index.ts";
import type { Row } from "./case-row.ts";
import { HOLDING } from "./holding-rows.ts";
import { OPEN } from "./open-rows.ts";
import { opposite, problemFrom, problemOf } from "./set-ups.ts";
import type { SetUp } from "./set-ups.ts";

interface Data {
  readonly case: string;
  readonly slack: readonly string[];
  readonly answers: readonly { readonly id: string; readonly decimal: number | null }[];
  readonly attempts: readonly { readonly id: string; readonly holds: boolean }[];
}

const dataOf = (setUp: SetUp): Data => JSON.parse(JSON.stringify(exportDerivation(derive(problemOf(setUp))))) as Data;
const ROWS: readonly Row[] = [...HOLDING, ...OPEN];

/** The answers by id, in order; a rope that carries nothing has exactly 0, an open answer is null. */
function expectAnswers(data: Data, answers: Row["answers"]): void {
  expect(data.answers.map((a) => a.id)).toEqual(Object.keys(answers));
  for (const { id, decimal } of data.answers) {
    const expected = answers[id];
    if (expected === null || expected === undefined) expect(decimal).toBeNull();
    else expect(Math.abs((decimal ?? NaN) - expected)).toBeLessThan(1e-6);
    if (expected === 0) expect(decimal).toBe(0);
  }
}

describe("the table of cases", () => {
  it.each(ROWS)("$title: $kind", ({ setUp, kind, slack = [], answers }) => {
    const data = dataOf(setUp);
    expect(data.case).toBe(kind);
    expect(data.slack).toEqual(slack);
    expectAnswers(data, answers);
  });

  it.each(ROWS)(
    "$title, mirrored: the same pulls, with left and right exchanged",
    ({ setUp, kind, slack = [], answers }) => {
      const mirrored = setUp.ropes.map((r) => (typeof r === "number" ? 180 - r : { run: -r.run, rise: r.rise }));
      const data = dataOf({ ...setUp, ropes: mirrored, ax: setUp.ax === undefined ? 0 : -setUp.ax });
      expect(data.case).toBe(kind);
      expect(data.slack).toEqual(slack);
      expectAnswers(data, answers);
    },
  );

  it.each(ROWS.filter(({ setUp }) => setUp.ropes.length === 2))(
    "$title, the ropes named the other way round: each has the same pull",
    ({ setUp, kind, slack = [], answers }) => {
      const data = dataOf({ ...setUp, ropes: [...setUp.ropes].reverse() });
      const other = (id: string): string => (id === "T1" ? "T2" : "T1");
      const { T1 = null, T2 = null, ...combined } = answers;
      const difference = combined["T1-T2"];
      expect(data.case).toBe(kind);
      expect(data.slack).toEqual(slack.length === 1 ? slack.map(other) : slack);
      expectAnswers(data, {
        T1: T2,
        T2: T1,
        ...combined,
        ...(difference === undefined || difference === null ? {} : { "T1-T2": -difference }),
      });
    },
  );

  it.each(ROWS.filter(({ setUp }) => setUp.weight === undefined && setUp.gravity !== 0))(
    "$title, given by its weight: the same",
    ({ setUp, kind, slack = [], answers }) => {
      const data = dataOf({ ...setUp, weight: 41.16 });
      expect(data.case).toBe(kind);
      expect(data.slack).toEqual(slack);
      expectAnswers(data, answers);
    },
  );

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
