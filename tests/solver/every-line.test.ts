// Every line of every derivation, checked by a program that is not ours on random problems.
import { describe, expect, it } from "vitest";
import { defaultSettings, derive } from "../../solver/index.ts";
import { seeded, setUp } from "../arbitraries/set-ups.ts";
import { exported, linesOf, scopeOf } from "./exported.ts";
import type { Exported } from "./exported.ts";
import { holds } from "./judge-line.ts";
import { problemOf } from "./set-ups.ts";
import type { SetUp } from "./set-ups.ts";

const PROBLEMS = 1500;
const random = seeded(20261125);
const CASES: readonly { readonly set: SetUp; readonly data: Exported }[] = Array.from({ length: PROBLEMS }, () => {
  const set = setUp(random);
  const firstAxis = random() < 0.5 ? "vertical" : "horizontal";
  const figures = 2 + Math.floor(random() * 5);
  return { set, data: exported(derive(problemOf(set), { ...defaultSettings, firstAxis, figures })) };
});

/** What is wrong with any of the problems, a line each; empty if nothing is. */
function faults(check: (data: Exported) => string[]): string[] {
  return CASES.flatMap(({ set, data }) => check(data).map((fault) => `${fault} at ${JSON.stringify(set)}`)).slice(0, 8);
}

const attemptsOf = (data: Exported): readonly { readonly id: string; readonly holds: boolean }[] => data.attempts;

describe(`the lines of ${PROBLEMS} random derivations`, () => {
  it("hold at their attempt's values, all but the contradiction", () => {
    expect(
      faults((data) =>
        attemptsOf(data).flatMap((a) => {
          const scope = scopeOf(data, a.id);
          return linesOf(data, a.id).flatMap((l) =>
            l.status !== "contradiction" && !holds(l, scope)
              ? [`${l.id} (${l.status}): ${l.plain.sides.join(` ${l.plain.relation} `)}`]
              : [],
          );
        }),
      ),
    ).toEqual([]);
  });

  it("hold one contradiction in each failed attempt, which is false there, and none in an attempt that holds", () => {
    expect(
      faults((data) =>
        attemptsOf(data).flatMap((a) => {
          const wrong = linesOf(data, a.id).filter((l) => l.status === "contradiction");
          if (wrong.length !== (a.holds ? 0 : 1)) return [`${wrong.length} contradictions in ${a.id}`];
          return wrong.flatMap((l) =>
            holds({ ...l, status: "solution" }, scopeOf(data, a.id)) ? [`${l.id} is true`] : [],
          );
        }),
      ),
    ).toEqual([]);
  });

  it("are trial lines only in failed attempts", () => {
    expect(
      faults((data) =>
        attemptsOf(data).flatMap((a) =>
          linesOf(data, a.id).flatMap((l) =>
            (l.status === "trial") === a.holds && (l.status === "trial" || l.status === "solution")
              ? [`${l.id} is ${l.status}`]
              : [],
          ),
        ),
      ),
    ).toEqual([]);
  });

  it("never say the same thing twice in a row", () => {
    const said = (l: { readonly plain: { readonly relation: string; readonly sides: readonly string[] } }): string =>
      l.plain.sides.join(l.plain.relation);
    expect(
      faults((data) =>
        attemptsOf(data).flatMap((a) => {
          const lines = linesOf(data, a.id);
          return lines
            .slice(1)
            .flatMap((l, i) => (said(l) === said(lines[i] ?? l) && lines[i] !== l ? [`${l.id}: ${said(l)}`] : []));
        }),
      ),
    ).toEqual([]);
  });

  it("come from lines of the same derivation that stand before them", () => {
    expect(
      faults((data) => {
        const seen = new Set<string>();
        return data.paragraphs
          .flatMap((p) => p.lines)
          .flatMap((l) => {
            const strange = l.from.filter((id) => !seen.has(id));
            seen.add(l.id);
            return strange.map((id) => `${l.id} from ${id}`);
          });
      }),
    ).toEqual([]);
  });

  it("name no symbol without a value, and hold no NaN, Infinity or undefined", () => {
    expect(
      faults((data) => (/NaN|Infinity|undefined|null N/.test(JSON.stringify(data.paragraphs)) ? ["bad text"] : [])),
    ).toEqual([]);
  });

  it("fail, nine in ten of the solution lines that hold an unknown, when that unknown is 1 % off", () => {
    const counts = { fail: 0, all: 0 };
    for (const { data } of CASES) {
      for (const a of data.attempts.filter((x) => x.holds)) {
        const scope = scopeOf(data, a.id);
        for (const unknown of Object.keys(scope).filter(
          (id) => id.startsWith("T") && Math.abs(scope[id] ?? 0) > 1e-9,
        )) {
          const off = { ...scope, [unknown]: (scope[unknown] ?? 0) * 1.01 };
          for (const l of linesOf(data, a.id)) {
            if (l.status !== "solution" || !l.plain.sides.some((s) => new RegExp(`\\b${unknown}\\b`).test(s))) continue;
            counts.all++;
            if (!holds(l, off)) counts.fail++;
          }
        }
      }
    }
    expect(counts.all).toBeGreaterThan(5000);
    expect(counts.fail / counts.all).toBeGreaterThanOrEqual(0.9);
  });
});

describe("the faces of an answer", () => {
  it("agree: the exact terms add up to the decimal, and the multiple of the weight too", () => {
    const rational = (text: string): number => {
      const [over = "0", under = "1"] = text.split("/");
      return Number(over) / Number(under);
    };
    const total = (terms: readonly (readonly [string, number])[]): number =>
      terms.reduce((sum, [k, d]) => sum + rational(k) * Math.sqrt(d), 0);
    expect(
      faults((data) =>
        data.answers.flatMap((a) => {
          if (a.exact === null || a.decimal === null) return [];
          const scale = a.exact.terms.reduce((s, [k, d]) => s + Math.abs(rational(k)) * Math.sqrt(d), 0);
          return Math.abs(total(a.exact.terms) - a.decimal) > 1e-12 * scale
            ? [`${a.id}: ${total(a.exact.terms)} and ${a.decimal}`]
            : [];
        }),
      ),
    ).toEqual([]);
  });
});

describe("the sentences", () => {
  it("hold no ugly algebra and no gap", () => {
    expect(
      faults((data) =>
        data.paragraphs.flatMap((p) =>
          p.sentences
            .filter((s) => /1·|\+ -|\+ −|--|−−| {2}|undefined|[{}]|\(–\)| \.|,,/.test(s) || s !== s.trim())
            .map((s) => `${p.id}: ${s}`),
        ),
      ),
    ).toEqual([]);
  });
});
