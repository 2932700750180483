// One load on one or two ropes is derived by a model of its own, because its place changes when a rope goes slack. Derived as a set-up like any other,
// with its place as given, it must come to the same wherever both ropes are straight, and cannot be where one would have to push.
import { describe, expect, it } from "vitest";
import { deriveHanging, deriveSystem } from "../../solver/index.ts";
import { seeded, setUp } from "../arbitraries/set-ups.ts";
import { problemOf } from "./set-ups.ts";

const COUNT = 1500;

describe("one load on ropes, by both models", () => {
  it(`comes to the same at ${COUNT} random settings`, () => {
    const random = seeded(20261125);
    const seen = new Map<string, number>();
    for (let i = 0; i < COUNT; i++) {
      const problem = problemOf(setUp(random));
      const hanging = deriveHanging(problem);
      const system = deriveSystem(problem);
      seen.set(hanging.kind, (seen.get(hanging.kind) ?? 0) + 1);
      const told = JSON.stringify(problem, (_, v: unknown) => (typeof v === "bigint" ? String(v) : v));
      if (hanging.kind === "taut") {
        expect(system.kind, told).toBe("determined");
        const largest = Math.max(...hanging.answers.map((a) => Math.abs(a.decimal ?? 0)));
        for (const answer of hanging.answers) {
          const other = system.answers.find((a) => a.id === answer.id)?.decimal ?? Number.NaN;
          expect(Math.abs(other - (answer.decimal ?? 0)), told).toBeLessThanOrEqual(1e-9 * largest);
        }
      } else if (hanging.kind === "slack" && hanging.answers.every((a) => a.decimal === 0))
        expect(system.kind, told).not.toBe("impossible");
      else if (hanging.kind === "slack" || hanging.kind === "impossible") expect(system.kind, told).toBe("impossible");
      else expect(system.kind, told).toBe("under-determined");
    }
    expect([...seen.keys()].sort()).toEqual(["impossible", "slack", "taut", "under-determined"]);
  });
});
