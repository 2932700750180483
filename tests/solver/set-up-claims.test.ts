// What the sentences about set-ups claim of static friction, of limits and of lines that still stand, on random problems. Where a claim is about what
// would happen otherwise, the problem is derived otherwise.
import { describe, expect, it } from "vitest";
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { plainSentence } from "../../solver/index.ts";
import type { Line, SystemDerivation } from "../../solver/index.ts";
import type { ExportedLine } from "./exported.ts";
import { holds } from "./judge-line.ts";
import {
  answerOf,
  casesOf,
  claims,
  derived,
  faults,
  numberOf,
  sentencesOf,
  short,
  statesText,
} from "./set-up-cases.ts";

const CASES = casesOf(60);

const symbolOf = (d: SystemDerivation, id: string): number => d.system.inForce.values.symbols.get(id)?.decimal ?? NaN;

/** How many of the cases claim a thing: a test of a claim that nobody makes would show nothing. */
const claiming = (pattern: RegExp): number =>
  CASES.filter(({ derivation }) => claims(derivation, pattern).length > 0).length;

describe("a line", () => {
  it("that is said to stand still in a further case, or at a limit, holds there too", () => {
    let standing = 0;
    expect(
      faults(CASES, ({ derivation: d }) => {
        const lines = new Map(d.paragraphs.flatMap((p) => p.lines.map((l): [string, Line] => [l.id, l])));
        const byNumber = new Map([...lines.values()].map((l) => [l.number, l]));
        const numberOf = (id: string): number => lines.get(id)?.number ?? 0;
        return d.paragraphs
          .filter((p) => p.kind === "assume" || p.kind === "limit")
          .flatMap((p) => {
            const attempt = [...d.system.attempts, ...d.system.limits].find((a) => a.id === p.attempt);
            const said = p.before
              .map((s) => plainSentence(s, numberOf))
              .find((s) => s.startsWith("What this does not"));
            if (said === undefined || attempt === undefined) return [];
            const scope = Object.fromEntries([
              ...[...attempt.values.symbols].map(([id, v]) => [id, v.decimal]),
              ...[...attempt.values.angles].map(([id, v]) => [id, v.radians]),
            ]) as Record<string, number>;
            return numbersIn(said).flatMap((n) => {
              const line = byNumber.get(n);
              if (line === undefined) return [`no line ${n}`];
              standing++;
              return holds(asExported(line), scope) ? [] : [`(${n}) ${line.text()} does not stand in ${p.attempt}`];
            });
          });
      }),
    ).toEqual([]);
    expect(standing).toBeGreaterThan(500);
  });
});

/** The numbers of "(1), (2) and (5) to (9)". */
function numbersIn(said: string): number[] {
  return [...said.matchAll(/\((\d+)\)(?: to \((\d+)\))?/g)].flatMap(([, from, to]) => {
    const first = Number(from);
    return Array.from({ length: Number(to ?? from) - first + 1 }, (_, i) => first + i);
  });
}

const asExported = (line: Line): ExportedLine => ({
  id: line.id,
  tex: "",
  plain: line.plain(),
  attempt: line.attempt,
  status: line.status === "rounded" ? "rounded" : "solution",
  from: [],
  reason: "",
});

describe("static friction", () => {
  const SHARE = /needs (\S+)\s%/;

  it("is the share of its largest size that is claimed", () => {
    expect(claiming(SHARE)).toBeGreaterThan(100);
    expect(
      faults(CASES, ({ derivation: d }) => {
        const sticking = d.system.setUp.contacts.filter(
          (c) => d.system.inForce.hypothesis.contacts[c.id]?.grip === "sticks",
        );
        const shares = sticking.map(
          (c) => (100 * answerOf(d, c.friction)) / (symbolOf(d, c.coefficients.static) * answerOf(d, c.id)),
        );
        return claims(d, SHARE).flatMap(([, text = ""]) => {
          const said = numberOf(text);
          const fits = shares.some((share) => Math.abs(share - said) <= 0.006 * Math.abs(share) && share <= 100);
          return fits ? [] : [`${text} %, but ${shares.join(", ")}`];
        });
      }),
    ).toEqual([]);
  });

  // A slope of rise over run on which friction of just that coefficient holds; a wall on which just that push does.
  const onTheEdge = (factor: number): ProblemDocument[] => [
    {
      format: 1,
      gravity: 9.8,
      bodies: [{ id: "crate", name: "tea crate", mass: 12 }],
      surfaces: [
        { id: "N", on: "crate", slope: { run: 4, rise: 3 }, friction: { static: short(0.75 * factor), kinetic: 0.4 } },
      ],
    },
    {
      format: 1,
      gravity: 9.8,
      bodies: [{ id: "crate", name: "tea crate", mass: 3 }],
      surfaces: [{ id: "N", on: "crate", normal: { angle: 180 }, friction: { static: 0.5, kinetic: 0.4 } }],
      pushes: [{ id: "P", on: "crate", direction: { angle: 0 }, size: short(58.8 * factor) }],
    },
  ];

  it.each([0, 1])("is on the very point of sliding just there, and neither before nor after (%i)", (i) => {
    const at = (factor: number): { states: string; said: boolean } => {
      const document = onTheEdge(factor)[i];
      if (document === undefined) throw new Error(`there is no set-up ${i}`);
      const d = derived(document);
      return {
        states: statesText(d),
        said: sentencesOf(d.paragraphs).some((s) => s.includes("very point of sliding")),
      };
    };
    expect(at(1)).toEqual({ states: "N stuck", said: true });
    expect(at(1.000001)).toEqual({ states: "N stuck", said: false });
    expect(at(0.999999)).toEqual({ states: "N slides backwards", said: false });
  });

  it("holds up to the steepest angle that is claimed, and no further", () => {
    for (const mu of [0.1, 0.45, 1, 2.5]) {
      const at = (degrees: number): SystemDerivation =>
        derived({
          format: 1,
          gravity: 9.8,
          bodies: [{ id: "crate", name: "tea crate", mass: 7 }],
          surfaces: [{ id: "N", on: "crate", slope: { angle: degrees }, friction: { static: mu, kinetic: mu } }],
        });
      const [claim] = claims(at(1), /whose tangent is μs, ([\d.]+)°/);
      const steepest = (Math.atan(mu) * 180) / Math.PI;
      expect(Number(claim?.[1])).toBeCloseTo(steepest, 1);
      expect(statesText(at(Number((steepest - 0.001).toFixed(4))))).toBe("N stuck");
      expect(statesText(at(Number((steepest + 0.001).toFixed(4))))).toBe("N slides backwards");
    }
  });
});

/** The document with a push or a weight of another size. */
function withSize(document: ProblemDocument, letter: string, d: SystemDerivation, size: number): ProblemDocument {
  const body = d.system.setUp.bodies.find((b) => b.letters.weightId === letter);
  if (body === undefined)
    return { ...document, pushes: (document.pushes ?? []).map((p) => (p.id === letter ? { ...p, size } : p)) };
  const load = body.givenBy === "mass" ? { mass: short(size / d.system.setUp.gravity.decimal) } : { weight: size };
  return { ...document, bodies: document.bodies.map((b) => (b.id === body.id ? { ...b, ...load } : b)) };
}

describe("a limit of a push or a load", () => {
  const LIMITED = CASES.filter(({ derivation }) => derivation.system.limits.length > 0);

  it("is where the case ends: just inside everything stays as it is, just outside it does not", () => {
    expect(LIMITED.length).toBeGreaterThan(40);
    expect(
      faults(LIMITED, ({ document, derivation: d }) =>
        d.system.limits.flatMap(({ limit, values }) => {
          if (limit === null) return [];
          const size = values.symbols.get(limit.letter)?.decimal ?? NaN;
          const given = symbolOf(d, limit.letter);
          const outward = limit.end === "largest" ? 1 : -1;
          if (size < 1e-6 || size > 1e8) return [];
          const at = (factor: number): string => {
            return statesText(derived(withSize(document, limit.letter, d, short(size * factor))));
          };
          const wrong = [];
          if ((size - given) * outward < -1e-9 * size) wrong.push(`${limit.letter} = ${size} is no ${limit.end}`);
          // Where another case holds as well, either may be told.
          const inside = derived(withSize(document, limit.letter, d, short(size * (1 - outward * 1e-6))));
          const isAsBefore = statesText(inside) === statesText(d) || inside.system.rival !== null;
          if (!isAsBefore && Math.abs(size - given) > 1e-5 * size)
            wrong.push(`${limit.letter} just inside ${size}: ${statesText(inside)}, not ${statesText(d)}`);
          if (at(1 + outward * 1e-6) === statesText(d))
            wrong.push(`${limit.letter} just outside ${size} changes nothing`);
          return wrong;
        }),
      ),
    ).toEqual([]);
  });

  it("is printed as it is", () => {
    expect(
      faults(LIMITED, ({ derivation: d }) =>
        d.system.limits.flatMap((attempt) => {
          const letter = attempt.limit?.letter ?? "";
          const last = d.paragraphs
            .flatMap((p) => p.lines)
            .find((l) => l.attempt === attempt.id && l.id.endsWith(`answer.${letter}`));
          const value = attempt.values.symbols.get(letter)?.decimal ?? NaN;
          const printed = Number(last?.plain().sides[1] ?? NaN);
          return Math.abs(printed - value) <= 0.006 * value ? [] : [`${letter} ${printed} for ${value}`];
        }),
      ),
    ).toEqual([]);
  });
});
