// A form that is filled with what it says already means the same problem: nothing is lost between document, words and back.
import fc from "fast-check";
import { globSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { writeProblem } from "../../shared/problem/index.ts";
import { readProblem } from "../../shared/problem/schema.ts";
import * as form from "../../src/problem/index.ts";
import type { Json, JsonObject } from "../../src/problem/index.ts";
import { crateKinds, frameKinds, ropeKinds } from "../arbitraries/set-up-problems.ts";

const examples = globSync("shared/problem/examples/*.json")
  .filter((file) => !file.endsWith("index.json"))
  .map((file): [string, JsonObject] => [file.replace(/^.*\//, ""), form.readObject(readFileSync(file, "utf8")) ?? {}]);

/** Every row set to what it says already. */
function retyped(document: JsonObject): JsonObject {
  let result = document;
  const value = (holder: JsonObject | undefined, key: string): Json | undefined => holder?.[key];
  for (const row of form.bodyRows(document)) {
    const body = form.listAt(document, "bodies")[row.index];
    result = form.renameBody(result, row.index, row.name);
    result = form.setKind(result, row.index, row.kind);
    if (row.load !== "") {
      result = form.setLoad(result, row.index, row.by, value(body, row.by));
      result = form.setLoadBy(result, row.index, row.by);
    }
    if (row.motion.along !== null) {
      const slope = form.slopeUnder(document, row.id);
      const along = form.directionOf(form.wordsOf(row.motion.along, slope), slope);
      result = form.setMotion(result, row.index, "along", along ?? undefined);
    }
  }
  const turned = (direction: JsonObject | null, on: string): JsonObject => {
    const slope = form.slopeUnder(document, on);
    return form.directionOf(form.wordsOf(direction, slope), slope) ?? {};
  };
  for (const row of form.ropeRows(document)) {
    result = form.setTie(result, row.index, row.tie);
    if (row.direction !== null) result = form.setRope(result, row.index, "direction", turned(row.direction, row.on));
    row.pulls.forEach((pull, i) => {
      result = form.setPull(result, row.index, i, "direction", turned(pull.direction, pull.on));
    });
  }
  for (const row of form.surfaceRows(document)) {
    result = form.setSurface(result, row.index, "on", row.on);
    if (row.normal === null) result = form.setSlope(result, row.index, row.slope);
  }
  for (const row of form.pushRows(document))
    result = form.setPush(result, row.index, "direction", turned(row.direction, row.on));
  return form.setUnits(result, form.worldRow(result).units);
}

/** A direction straight along the level line or the vertical is the same from either; the form says it without an angle. */
const STRAIGHT: Readonly<Record<string, (side: unknown) => number>> = {
  "0": () => 90,
  "90": (side) => (side === "left" ? 180 : 0),
  "180": () => -90,
};

/** The problem that a document means. */
function meant(document: JsonObject): unknown {
  const reading = readProblem(form.writeDocument(document));
  if (!reading.ok) throw new Error(reading.faults.map((f) => `${f.path}: ${f.found}`).join());
  return JSON.parse(JSON.stringify(writeProblem(reading.problem)), (_, value: unknown) => {
    if (!form.isObject(value) || value.from !== "vertical") return value;
    const straight = STRAIGHT[form.textAt(value, "angle")];
    return straight === undefined ? value : { angle: straight(value.side) };
  });
}

describe("a form in which everything is set to what it says", () => {
  it.each(examples)("leaves the problem of %s as it is", (_, document) => {
    expect(meant(retyped(document))).toEqual(meant(document));
  });

  it.each([...ropeKinds, ...crateKinds, ...frameKinds])("leaves a problem of the kind %s as it is", (_, documents) => {
    fc.assert(
      fc.property(documents, (drawn) => {
        const document = JSON.parse(JSON.stringify(drawn)) as JsonObject;
        expect(meant(retyped(document))).toEqual(meant(document));
      }),
      { numRuns: 30 },
    );
  });
});
