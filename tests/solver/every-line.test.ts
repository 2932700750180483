// Every line of every derivation, checked by a program that is not ours on random problems.
import { describe, expect, it } from "vitest";
import { defaultSettings, derive } from "../../solver/index.ts";
import { seeded, setUp } from "../arbitraries/set-ups.ts";
import { exported, linesOf, scopeOf } from "./exported.ts";
import type { Exported } from "./exported.ts";
import { holds } from "./judge-line.ts";
import { documentOf, problemFrom } from "./set-ups.ts";
import { wideDocument } from "./wide-documents.ts";

const SET_UPS = 3000;
const DOCUMENTS = 1500;
const PROBLEMS = SET_UPS + DOCUMENTS;
const random = seeded(20261125);

/** A problem with the exported data of its derivation at random settings. */
interface Case {
  readonly document: Record<string, unknown>;
  readonly data: Exported;
}

const CASES: readonly Case[] = Array.from({ length: PROBLEMS }, (_, i) => {
  const document = i < SET_UPS ? documentOf(setUp(random)) : wideDocument(random);
  const firstAxis = random() < 0.5 ? "vertical" : "horizontal";
  const figures = 2 + Math.floor(random() * 5);
  const mark = random() < 0.8 ? "." : ",";
  return { document, data: exported(derive(problemFrom(document), { ...defaultSettings, firstAxis, figures, mark })) };
});

/** What is wrong with any of the problems, a line each; empty if nothing is. */
function faults(check: (data: Exported) => string[]): string[] {
  return CASES.flatMap(({ document, data }) => check(data).map((f) => `${f} at ${JSON.stringify(document)}`)).slice(
    0,
    8,
  );
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

  it("have an id each that no other line has", () => {
    expect(
      faults((data) => {
        const ids = data.paragraphs.flatMap((p) => p.lines.map((l) => l.id));
        return ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `${id} twice`);
      }),
    ).toEqual([]);
  });

  it("name no letter without a value: each name of a line is among the symbols of its attempt", () => {
    const functions = new Set(["sin", "cos", "tan", "sqrt", "deg", "pi"]);
    expect(
      faults((data) =>
        data.attempts.flatMap((a) => {
          const scope = scopeOf(data, a.id);
          return linesOf(data, a.id).flatMap((l) =>
            l.plain.sides
              .flatMap((side) => side.replace(/\de-?\d+/g, "").match(/[A-Za-z]\w*/g) ?? [])
              .filter((name) => !functions.has(name) && !(name in scope))
              .map((name) => `${name} in ${l.id}`),
          );
        }),
      ),
    ).toEqual([]);
  });

  it("hold no NaN, Infinity or undefined, and no symbol that is no number", () => {
    expect(
      faults((data) => [
        ...(/NaN|Infinity|undefined|null N/.test(JSON.stringify(data)) ? ["bad text"] : []),
        ...data.symbols.filter((s) => typeof s.value !== "number").map((s) => `${s.id} is ${String(s.value)}`),
      ]),
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
  const rational = (text: string): number => {
    const [over = "0", under = "1"] = text.split("/");
    return Number(over) / Number(under);
  };
  type Terms = readonly (readonly [string, number])[];
  const total = (terms: Terms): number => terms.reduce((sum, [k, d]) => sum + rational(k) * Math.sqrt(d), 0);
  const size = (terms: Terms): number => terms.reduce((sum, [k, d]) => sum + Math.abs(rational(k)) * Math.sqrt(d), 0);

  it("agree: the exact terms add up to the decimal", () => {
    expect(
      faults((data) =>
        data.answers.flatMap(({ id, exact, decimal }) => {
          if (exact === null || decimal === null) return [];
          const off = Math.abs(total(exact.terms) - decimal);
          return off > 1e-12 * size(exact.terms) ? [`${id}: ${total(exact.terms)} and ${decimal}`] : [];
        }),
      ),
    ).toEqual([]);
  });

  it("agree: the multiple of the weight, times the weight, is the decimal too; there is none beside a sideways acceleration", () => {
    const seen = { given: 0 };
    expect(
      faults((data) => {
        const attempt = data.attempts.at(-1)?.id ?? "";
        const { m = NaN, g = NaN, W = m * g, ax = 0 } = scopeOf(data, attempt);
        return data.answers.flatMap(({ id, exact, decimal }) => {
          const terms = exact?.perWeight ?? null;
          if (terms === null || decimal === null || Number.isNaN(W)) return [];
          seen.given++;
          if (ax !== 0) return [`${id} has a multiple of the weight at ax = ${ax}`];
          return Math.abs(total(terms) * W - decimal) > 1e-12 * size(terms) * W
            ? [`${id}: ${total(terms) * W} and ${decimal}`]
            : [];
        });
      }),
    ).toEqual([]);
    expect(seen.given).toBeGreaterThan(300);
  });

  it("are exact with square-free whole numbers under the roots", () => {
    const squareFree = (n: number): boolean => {
      for (let k = 2; k * k <= n; k++) if (n % (k * k) === 0) return false;
      return Number.isInteger(n) && n > 0;
    };
    expect(
      faults((data) =>
        data.answers.flatMap(({ id, exact }) =>
          [...(exact?.terms ?? []), ...(exact?.perWeight ?? [])]
            .filter(([, radicand]) => !squareFree(radicand))
            .map(([, radicand]) => `${id} has a root of ${radicand}`),
        ),
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
