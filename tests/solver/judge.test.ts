// The judge of random set-ups judged: it complains about every answer, state and case that is spoiled.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { zero } from "../../shared/exact/index.ts";
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { derive } from "../../solver/index.ts";
import type { SystemDerivation } from "../../solver/index.ts";
import { crateKinds, frameKinds, ropeKinds } from "../arbitraries/set-up-problems.ts";
import { complaints } from "../support/mechanics/index.ts";
import { problemFrom } from "./set-ups.ts";

interface Case {
  readonly document: ProblemDocument;
  readonly derivation: SystemDerivation;
}

/** Determined problems of every kind but those by lengths, about which there is nothing to complain. */
const CASES: readonly Case[] = [...ropeKinds, ...crateKinds, ...frameKinds]
  .filter(([name]) => name !== "byLengths")
  .flatMap(([, documents]) => fc.sample(documents, { numRuns: 12, seed: 3 }))
  .flatMap((document) => {
    const derivation = derive(problemFrom(document));
    const sound = derivation.model === "system" && derivation.kind === "determined" && derivation.system.rival === null;
    return sound && complaints(document, derivation).length === 0 ? [{ document, derivation }] : [];
  });

const missed = (spoil: (derivation: SystemDerivation) => readonly SystemDerivation[]): string[] =>
  CASES.flatMap(({ document, derivation }) =>
    spoil(derivation).flatMap((spoilt, i) =>
      complaints(document, spoilt).length > 0 ? [] : [`${i} of ${JSON.stringify(document)}`],
    ),
  ).slice(0, 4);

describe("the judge of random set-ups", () => {
  it("has determined problems of all kinds to be judged by", () => {
    expect(CASES.length).toBeGreaterThan(200);
  });

  it("complains about each answer that is a millionth off, or turned round", () => {
    expect(
      missed((derivation) =>
        derivation.answers.flatMap((a, i) => {
          // Beside large forces, a small one can be off by more than this and still be within rounding of them.
          if (a.decimal === null || Math.abs(a.decimal) < 1e-3) return [];
          return [1.000001, -1].map((by) => ({
            ...derivation,
            answers: derivation.answers.map((b, k) => (k === i ? { ...b, decimal: (b.decimal ?? 0) * by } : b)),
          }));
        }),
      ),
    ).toEqual([]);
  });

  it("complains about an answer that is left open, and about an exact face that is another number", () => {
    expect(
      missed((derivation) => {
        const [first, ...rest] = derivation.answers;
        if (first === undefined) return [];
        const open = { ...derivation, answers: [{ ...first, decimal: null, exact: null }, ...rest] };
        if (first.exact === null || first.decimal === 0) return [open];
        return [open, { ...derivation, answers: [{ ...first, exact: { ...first.exact, newtons: zero } }, ...rest] }];
      }),
    ).toEqual([]);
  });

  it("complains where a problem that has a solution is said to be impossible or open", () => {
    expect(
      missed((d) => [
        { ...d, kind: "impossible" },
        { ...d, kind: "under-determined" },
      ]),
    ).toEqual([]);
  });

  it("complains where a rope that pulls is said to be slack, or a crate to slide that stays", () => {
    const other = (d: SystemDerivation): SystemDerivation[] => {
      const { hypothesis } = d.system.inForce;
      const wanted = new Map(d.answers.map((a) => [a.id, Math.abs(a.decimal ?? 0)]));
      const slack = Object.keys(hypothesis.ropes)
        .filter((id) => hypothesis.ropes[id] === "taut" && (wanted.get(id) ?? 0) > 1e-3)
        .map((id) => ({ ...hypothesis, ropes: { ...hypothesis.ropes, [id]: "slack" as const } }));
      const sliding = Object.entries(hypothesis.contacts)
        .filter(([id, c]) => c.grip === "sticks" && c.touch === "touching" && (wanted.get(id) ?? 0) > 1e-3)
        .map(([id, c]) => ({
          ...hypothesis,
          contacts: { ...hypothesis.contacts, [id]: { ...c, grip: "slides" as const, sense: c.sense } },
        }));
      return [...slack, ...sliding].map((h) => ({
        ...d,
        system: { ...d.system, inForce: { ...d.system.inForce, hypothesis: h } },
      }));
    };
    expect(missed(other)).toEqual([]);
  });
});
