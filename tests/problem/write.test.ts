import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { problemFromDocument, writeProblem } from "../../shared/problem/index.ts";
import { problemJsonSchema, readProblem, readProblemDocument } from "../../shared/problem/schema.ts";
import { problems } from "../arbitraries/problem.ts";
import { accepted, lantern, LANTERN } from "./lantern.ts";

describe("writing a problem", () => {
  test("gives the canonical document back", () => {
    expect(writeProblem(accepted(LANTERN))).toEqual(JSON.parse(LANTERN));
  });

  test("writes defaults, text for what no JSON number holds, and the angle as it was given", () => {
    const text = lantern('"name": "brass lantern", ').replace("4.2", '"1/3"').replace("9.8", '"9.80665000000000001"');
    const vertical = text.replace('"angle": 115', '"angle": 25, "from": "vertical", "side": "left"');
    const document = writeProblem(accepted(vertical));
    expect(document.bodies[0]).toEqual({ id: "lantern", name: "lantern", mass: "1/3", acceleration: { x: 0, y: 0 } });
    expect(document.gravity).toBe("9.80665000000000001");
    expect(document.ropes[0]).toMatchObject({ direction: { angle: 25, from: "vertical", side: "left" } });
  });

  test("what is written is read back as the same problem, with and without the schema", () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const document = writeProblem(problem);
        expect(problemFromDocument(document)).toEqual(problem);
        expect(readProblemDocument(document)).toEqual({ ok: true, problem });
        expect(readProblem(JSON.stringify(document))).toEqual({ ok: true, problem });
        expect(writeProblem(problemFromDocument(document))).toEqual(document);
      }),
      { numRuns: 400 },
    );
  });

  test("a document that nobody checked is a programmer's error", () => {
    const document = { ...writeProblem(accepted(LANTERN)), gravity: "ten" };
    expect(() => problemFromDocument(document)).toThrow(TypeError);
  });
});

const file = new URL("../../shared/problem/problem.schema.json", import.meta.url);

describe("the JSON Schema", () => {
  const checkedIn: unknown = JSON.parse(readFileSync(file, "utf8"));

  test("that is checked in is the one the schema gives (node src/tools/write-schema.ts writes it)", () => {
    expect(checkedIn).toEqual(JSON.parse(JSON.stringify(problemJsonSchema())));
  });

  test("tells of every number what it is, with its unit and range", () => {
    const text = JSON.stringify(checkedIn);
    for (const word of ["m/s²", "kg", "degrees", "anticlockwise", "seen from the ground", "-360 to 360"]) {
      expect(text).toContain(word);
    }
  });
});
