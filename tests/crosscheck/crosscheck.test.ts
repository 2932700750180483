// Our solver against the oracle's answers in the fixture, which `npm run crosscheck` writes anew.
import { describe, expect, it } from "vitest";
import { readProblem } from "../../shared/problem/schema.ts";
import { derive } from "../../solver/index.ts";
import { agrees } from "../outside/set-ups/case.ts";
import type { Answered } from "../outside/set-ups/case.ts";
import { SET_UP_CASES } from "../outside/set-ups/index.ts";
import { exported } from "../solver/exported.ts";
import { beyondExport, differences } from "./compare.ts";
import { negated, rootsOfTerms, rootsOfText } from "./exact-text.ts";
import { readFixture } from "./fixture.ts";
import type { FixtureCase, OracleAnswer } from "./fixture.ts";
import { generate } from "./generate.ts";

const fixture = readFixture();
const kinds = [...new Set(fixture.cases.map((c) => c.kind.split(" ")[0] ?? ""))];
const ofKind = (kind: string): readonly FixtureCase[] => fixture.cases.filter((c) => c.kind.split(" ")[0] === kind);

describe(`the solver and ${fixture.oracle}`, () => {
  it.each(kinds)("agree on every document of the kind %s", (kind) => {
    const wrong = ofKind(kind).flatMap((c): { document: string; found: unknown }[] => {
      const document = JSON.stringify(c.document);
      const reading = readProblem(document);
      if (!reading.ok) return [{ document, found: reading.faults }];
      const derivation = derive(reading.problem);
      const found = differences(c, exported(derivation), beyondExport(derivation));
      return found.length === 0 ? [] : [{ document, found }];
    });
    expect(wrong).toEqual([]);
  });
});

describe("the fixture", () => {
  it("holds the documents that are drawn now", () => {
    const text = (kind: string, document: unknown): string => JSON.stringify([kind, document]);
    expect(fixture.cases.map((c) => text(c.kind, c.document))).toEqual(generate().map((d) => text(d.kind, d.document)));
  });

  it("has enough of every case and state", () => {
    const count = (test: (answer: OracleAnswer) => boolean): number =>
      fixture.cases.filter((c) => test(c.answer)).length;
    expect(fixture.cases.length).toBeGreaterThan(500);
    for (const kind of ["determined", "under-determined", "impossible"])
      expect(count((a) => a.case === kind)).toBeGreaterThan(25);
    for (const state of ["taut", "slack", "touching", "lifted", "stuck", "slides forwards", "slides backwards"])
      expect(
        count((a) => Object.values(a.states).includes(state)),
        state,
      ).toBeGreaterThan(15);
    expect(
      count((a) => Object.values(a.answers).some((v) => "exact" in v && v.exact.includes("sqrt"))),
    ).toBeGreaterThan(200);
  });

  it("has limits, ranges and rivals that the solver gives too, so that there is something to compare", () => {
    const found = { limits: 0, ranges: 0, rivals: 0 };
    for (const { document, answer } of fixture.cases) {
      if (answer.limits === undefined && answer.rivals === undefined && answer.case !== "under-determined") continue;
      const reading = readProblem(JSON.stringify(document));
      if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
      const { limits, ranges, rival } = beyondExport(derive(reading.problem));
      found.limits += limits.length;
      found.ranges += ranges.length;
      found.rivals += rival ? 1 : 0;
    }
    expect(found.limits).toBeGreaterThan(60);
    expect(found.ranges).toBeGreaterThan(60);
    expect(found.rivals).toBeGreaterThan(3);
  });

  it("has answers that agree with the printed figures of the published cases", () => {
    for (const { id, documents, found } of SET_UP_CASES) {
      if (documents.some((d) => typeof d === "function")) continue;
      const own = fixture.cases.filter((c) => c.kind === `published ${id}`);
      expect(own).toHaveLength(documents.length);
      const of: Answered = (name, document = 0) => {
        const answer = own[document]?.answer;
        const push = /^largest (\w+)$/.exec(name)?.[1];
        const value = push === undefined ? answer?.answers[name] : answer?.limits?.[push];
        if (value === undefined) return NaN;
        return Number("decimal" in value ? value.decimal : value.most);
      };
      for (const f of found) expect(agrees(f.of(of), f), `${id}: ${f.what}`).toBe(true);
    }
  });
});

describe("the comparison", () => {
  const NOTHING = { ranges: [], limits: [], rival: false } as const;
  const [first] = ofKind("cascade").filter((c) => c.answer.case === "determined");
  if (first === undefined) throw new Error("no case to try the comparison on");
  const right = (): { id: string; decimal: number; exact: null | { terms: [string, number][] } }[] =>
    Object.entries(first.answer.answers).map(([id, v]) => ({
      id,
      decimal: "decimal" in v ? Number(v.decimal) : NaN,
      exact:
        "exact" in v ? { terms: Object.entries(rootsOfText(v.exact)).map(([root, by]) => [by, Number(root)]) } : null,
    }));
  const found = (answers: ReturnType<typeof right>, kind: string = first.answer.case): string[] =>
    differences(first, { case: kind, answers }, NOTHING);

  it("finds a wrong decimal, a wrong exact value, a missing answer, a wrong case and a wrong state", () => {
    expect(found(right())).toEqual([]);
    const [one, ...others] = right();
    if (one === undefined) throw new Error("no answer");
    expect(found([{ ...one, decimal: one.decimal * (1 + 1e-9) }, ...others])).toHaveLength(1);
    expect(found([{ ...one, exact: { terms: [["1", 17]] } }, ...others])).toHaveLength(1);
    expect(found(others)).toHaveLength(1);
    expect(found(right(), "impossible")).toHaveLength(1);
    expect(
      differences(
        first,
        { case: first.answer.case, answers: right(), states: [{ id: "T1", state: "slack" }] },
        NOTHING,
      ),
    ).toHaveLength(1);
  });

  it("reads exact values of both sides alike", () => {
    expect(rootsOfText("-49/5 + 10*sqrt(6)/3 - sqrt(2)")).toEqual({ 1: "-49/5", 2: "-1/1", 6: "10/3" });
    expect(
      rootsOfTerms([
        ["-49/5", 1],
        ["20/6", 6],
        ["-1", 2],
      ]),
    ).toEqual({ 1: "-49/5", 2: "-1/1", 6: "10/3" });
    expect(rootsOfText("0")).toEqual({});
    expect(negated(rootsOfText("sqrt(3)/2 - 1"))).toEqual(rootsOfText("1 - sqrt(3)/2"));
    expect(() => rootsOfText("sqrt(1 + sqrt(2))")).toThrow();
  });
});
