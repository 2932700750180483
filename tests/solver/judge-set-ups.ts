// Judges random documents of each kind of set-up by the independent formulation, as many as add up to a number for all kinds.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { derive } from "../../solver/index.ts";
import { complaints, hangsAt } from "../support/mechanics/index.ts";
import { problemFrom } from "./set-ups.ts";

/** So many documents a kind; there are 37 kinds. */
const A_KIND = 560;
const SEED = 20261125;

/** What is wrong with the derivation of a document; null where it is one load on ropes, which other tests judge. */
function judge(document: ProblemDocument): readonly string[] | null {
  const derivation = derive(problemFrom(document));
  if (derivation.model === "hanging") return null;
  const hangs = (document.ropes ?? []).some((rope) => "length" in rope && rope.length !== undefined);
  if (!hangs) return complaints(document, derivation);
  const place = hangsAt(document);
  if (place === null) return derivation.kind === "impossible" ? [] : [`is ${derivation.kind}, but it hangs nowhere`];
  if (place.tensions === null)
    return derivation.kind === "under-determined"
      ? []
      : [`is ${derivation.kind}, but its ropes share the weight anyhow`];
  const size = Math.max(...place.tensions.map(Math.abs));
  return place.tensions.flatMap((tension, i) => {
    const ours = derivation.answers[i]?.decimal ?? NaN;
    return Math.abs(ours - tension) <= 1e-9 * size ? [] : [`rope ${i + 1} carries ${ours}, but ${tension}`];
  });
}

/** A test a kind. */
export function judgeKinds(title: string, kinds: readonly (readonly [string, fc.Arbitrary<ProblemDocument>])[]): void {
  describe(`${title}: ${A_KIND} random documents a kind obey every law, and no other states do`, () => {
    it.each(kinds)("%s", (_, documents) => {
      const seen = { judged: 0 };
      fc.assert(
        fc.property(documents, (document) => {
          const wrong = judge(document);
          if (wrong === null) return;
          seen.judged++;
          if (wrong.length > 0) throw new Error(wrong.join("\n"));
        }),
        { numRuns: A_KIND, seed: SEED },
      );
      expect(seen.judged).toBeGreaterThan(0.6 * A_KIND);
    });
  });
}
