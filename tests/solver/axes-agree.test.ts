// Axes along a slope and axes level and upright are two derivations of one problem: each body's laws read otherwise, and the answers are the same.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readProblem } from "../../shared/problem/schema.ts";
import { defaultSettings, derive } from "../../solver/index.ts";
import { crateKinds, frameKinds, ropeKinds } from "../arbitraries/set-up-problems.ts";

describe("axes along a slope and level axes", () => {
  it.each([...crateKinds, ...frameKinds, ...ropeKinds])("agree for %s", (_, documents) => {
    fc.assert(
      fc.property(documents, (document) => {
        const reading = readProblem(JSON.stringify(document));
        if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
        const along = derive(reading.problem, { ...defaultSettings, axes: "along" });
        const level = derive(reading.problem, { ...defaultSettings, axes: "level" });
        expect(level.kind).toBe(along.kind);
        const largest = (unit: string): number =>
          Math.max(0, ...along.answers.filter((a) => a.unit === unit).map((a) => Math.abs(a.decimal ?? 0)));
        for (const answer of along.answers) {
          const other = level.answers.find((a) => a.id === answer.id);
          if (answer.decimal === null) expect(other?.decimal ?? null).toBeNull();
          else
            expect(Math.abs((other?.decimal ?? Number.NaN) - answer.decimal)).toBeLessThanOrEqual(
              1e-7 * largest(answer.unit),
            );
        }
      }),
      { seed: 1125, numRuns: 25 },
    );
  });

  it("differ in their lines: on level axes the normal force and the friction are taken apart", () => {
    const text = JSON.stringify({
      format: 1,
      gravity: 9.8,
      bodies: [{ id: "crate", mass: 12 }],
      surfaces: [{ id: "N", on: "crate", slope: { angle: 20 }, friction: { static: 0.5, kinetic: 0.4 } }],
    });
    const reading = readProblem(text);
    if (!reading.ok) throw new Error("the document is right");
    const parts = (axes: "along" | "level"): string[] =>
      derive(reading.problem, { ...defaultSettings, axes }).paragraphs.flatMap((p) =>
        p.lines.filter((l) => l.id.startsWith("part.")).map((l) => l.id),
      );
    expect(parts("along").sort()).toEqual(["part.Wx", "part.Wy"]);
    expect(parts("level").sort()).toEqual(["part.Nx", "part.Ny", "part.fx", "part.fy"]);
  });
});
