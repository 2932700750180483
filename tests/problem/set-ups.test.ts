import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { problemFromDocument, writeProblem } from "../../shared/problem/index.ts";
import type { Problem } from "../../shared/problem/index.ts";
import { readProblem, readProblemDocument } from "../../shared/problem/schema.ts";
import { setUpProblems } from "../arbitraries/set-up-documents.ts";

describe("a problem with anything in it", () => {
  test("is written, and what is written is read back as the same problem, with and without the schema", () => {
    fc.assert(
      fc.property(setUpProblems, (problem) => {
        const document = writeProblem(problem);
        expect(problemFromDocument(document)).toEqual(problem);
        expect(readProblemDocument(document)).toEqual({ ok: true, problem });
        expect(readProblem(JSON.stringify(document))).toEqual({ ok: true, problem });
        expect(writeProblem(problemFromDocument(document))).toEqual(document);
      }),
      { numRuns: 600 },
    );
  });

  test("is of every kind among those that are drawn", () => {
    const drawn = fc.sample(setUpProblems, { numRuns: 400, seed: 7 });
    const shows = (has: (problem: Problem) => boolean): number => drawn.filter(has).length;
    expect(shows(({ bodies }) => bodies.length > 2)).toBeGreaterThan(50);
    expect(shows(({ ropes }) => ropes.some((rope) => rope.further.length > 1))).toBeGreaterThan(20);
    expect(shows(({ ropes }) => ropes.some((rope) => rope.further.some(({ on }) => on === rope.on)))).toBeGreaterThan(
      5,
    );
    expect(shows(({ ropes }) => ropes.some((rope) => rope.anchor !== null))).toBeGreaterThan(20);
    expect(shows(({ ropes }) => ropes.some((rope) => rope.length !== null))).toBeGreaterThan(10);
    expect(shows(({ surfaces }) => surfaces.some((one) => one.of !== null))).toBeGreaterThan(20);
    expect(
      shows(({ bodies }) => bodies.some((b) => b.motion.kind === "line" && b.motion.seenFrom !== null)),
    ).toBeGreaterThan(10);
    expect(shows(({ units }) => units === "lbf-ft")).toBeGreaterThan(100);
  });
});
