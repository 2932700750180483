// Every displayed line of random derivations of set-ups, evaluated by a program that is not ours.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defaultSettings, derive } from "../../solver/index.ts";
import { crateKinds, frameKinds, ropeKinds } from "../arbitraries/set-up-problems.ts";
import { exported, linesOf, scopeOf } from "./exported.ts";
import type { Exported, ExportedLine } from "./exported.ts";
import { holds } from "./judge-line.ts";
import { problemFrom } from "./set-ups.ts";

/** So many derivations of each kind. */
const A_KIND = 40;
const SEED = 11;

interface Case {
  readonly name: string;
  readonly document: unknown;
  readonly data: Exported;
}

const CASES: readonly Case[] = [...ropeKinds, ...crateKinds, ...frameKinds].flatMap(([name, documents]) =>
  fc.sample(documents, { numRuns: A_KIND, seed: SEED }).map((document, i) => {
    const settings = {
      ...defaultSettings,
      figures: 2 + (i % 5),
      firstAxis: i % 2 === 0 ? ("vertical" as const) : ("horizontal" as const),
      axes: i % 3 === 0 ? ("level" as const) : ("along" as const),
      mark: i % 7 === 0 ? ("," as const) : ("." as const),
    };
    return { name, document, data: exported(derive(problemFrom(document), settings)) };
  }),
);

/** What is wrong with any of the derivations, a line each; empty if nothing is. */
const faults = (check: (data: Exported) => readonly string[]): string[] =>
  CASES.flatMap(({ name, document, data }) =>
    check(data).map((f) => `${name}: ${f} at ${JSON.stringify(document)}`),
  ).slice(0, 6);

type Attempt = Exported["attempts"][number];

/** A check of every attempt with its lines and its values. */
const inAttempts = (
  check: (a: Attempt, lines: readonly ExportedLine[], scope: Record<string, number>) => readonly string[],
) => faults((data) => data.attempts.flatMap((a) => check(a, linesOf(data, a.id), scopeOf(data, a.id))));

const written = (l: ExportedLine): string => `${l.id} (${l.status}) ${l.plain.sides.join(` ${l.plain.relation} `)}`;

describe(`the lines of ${CASES.length} random derivations of set-ups`, () => {
  it("hold at their attempt's values, all but contradictions", () => {
    expect(
      inAttempts((_, lines, scope) =>
        lines.filter((l) => l.status !== "contradiction" && !holds(l, scope)).map(written),
      ),
    ).toEqual([]);
  });

  it("show by a contradiction why a failed attempt fails, and each contradiction is false there", () => {
    expect(
      inAttempts((a, lines, scope) => {
        const wrong = lines.filter((l) => l.status === "contradiction");
        if (a.holds !== (wrong.length === 0)) return [`${a.id} has ${wrong.length} contradictions`];
        return wrong.filter((l) => holds({ ...l, status: "solution" }, scope)).map(written);
      }),
    ).toEqual([]);
  });

  it("are trial lines only in failed attempts, and lines of the solution only in others", () => {
    expect(
      inAttempts((a, lines) => lines.filter((l) => l.status === (a.holds ? "trial" : "solution")).map(written)),
    ).toEqual([]);
  });

  it("come from lines that stand before them, and have an id each that no other line has", () => {
    expect(
      faults((data) => {
        const seen = new Set<string>();
        return data.paragraphs
          .flatMap((p) => p.lines)
          .flatMap((l) => {
            const strange = l.from.filter((id) => !seen.has(id)).map((id) => `${l.id} from ${id}`);
            const twice = seen.has(l.id) ? [`${l.id} twice`] : [];
            seen.add(l.id);
            return [...strange, ...twice];
          });
      }),
    ).toEqual([]);
  });

  it("name no letter without a value", () => {
    const functions = new Set(["sin", "cos", "tan", "sqrt", "deg", "pi"]);
    const names = (l: ExportedLine): string[] =>
      l.plain.sides.flatMap((side) => side.replace(/\de-?\d+/g, "").match(/[A-Za-z]\w*/g) ?? []);
    expect(
      inAttempts((_, lines, scope) =>
        lines.flatMap((l) =>
          names(l)
            .filter((n) => !functions.has(n) && !(n in scope))
            .map((n) => `${n} in ${l.id}`),
        ),
      ),
    ).toEqual([]);
  });

  it("never say the same thing twice in a row", () => {
    const said = (l: ExportedLine | undefined): string => l?.plain.sides.join(l.plain.relation) ?? "";
    expect(
      inAttempts((_, lines) => lines.filter((l, i) => i > 0 && said(l) === said(lines[i - 1])).map(written)),
    ).toEqual([]);
  });

  it("hold no NaN, Infinity or undefined, and their sentences no ugly algebra and no gap", () => {
    const ugly = /\+ -|\+ −|--|−−| {2}|undefined|NaN|Infinity|[{}]|\(–\)| \.|,,/;
    expect(
      faults((data) => [
        ...(/NaN|Infinity|undefined/.test(JSON.stringify(data)) ? ["bad text"] : []),
        ...data.paragraphs.flatMap((p) =>
          p.sentences.filter((s) => ugly.test(s) || s !== s.trim()).map((s) => `${p.id}: ${s}`),
        ),
      ]),
    ).toEqual([]);
  });

  it("fail, nine in ten of those of the solution that hold a force to be found, when that force is 1 % off", () => {
    const counts = { fail: 0, all: 0 };
    for (const { data } of CASES) {
      for (const a of data.attempts.filter((x) => x.holds)) {
        const scope = scopeOf(data, a.id);
        const found = Object.keys(scope).filter((id) => /^[TNf]\d*$/.test(id) && Math.abs(scope[id] ?? 0) > 1e-6);
        for (const id of found) {
          const off = { ...scope, [id]: (scope[id] ?? 0) * 1.01 };
          const about = linesOf(data, a.id).filter(
            (l) => l.status === "solution" && l.plain.sides.some((s) => new RegExp(`\\b${id}\\b`).test(s)),
          );
          counts.all += about.length;
          counts.fail += about.filter((l) => !holds(l, off)).length;
        }
      }
    }
    expect(counts.all).toBeGreaterThan(3000);
    expect(counts.fail / counts.all).toBeGreaterThanOrEqual(0.9);
  });
});
