import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { writeProblem } from "../../shared/problem/index.ts";
import { readProblem, readProblemDocument } from "../../shared/problem/schema.ts";
import { setUpDocuments } from "../arbitraries/set-up-documents.ts";

const folder = new URL("../../shared/problem/examples/", import.meta.url);
const texts = readdirSync(folder).map((name) => readFileSync(new URL(name, folder), "utf8"));

/** Whatever was read can be written and read again; whatever was refused is told in lines, a bounded number of them. */
function judge(reading: ReturnType<typeof readProblem>): void {
  if (reading.ok) {
    expect(readProblemDocument(writeProblem(reading.problem))).toEqual(reading);
    return;
  }
  expect(reading.faults.length).toBeGreaterThan(0);
  for (const { path, found, accepted } of reading.faults) {
    expect(path + found + accepted).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
    expect(path).toMatch(/^(\/.*)?$/);
    expect(accepted).not.toBe("");
  }
}

test("no spoiled example makes the reader throw", () => {
  const spoiled = fc
    .tuple(fc.constantFrom(...texts), fc.nat(2000), fc.nat(12), fc.string({ unit: "binary", maxLength: 6 }))
    .map(([text, at, cut, put]) => text.slice(0, at % text.length) + put + text.slice((at % text.length) + cut));
  fc.assert(
    fc.property(spoiled, (text) => judge(readProblem(text))),
    { numRuns: 3000 },
  );
});

type Place = { holder: Record<string, unknown>; key: string };

function placesOf(value: unknown, found: Place[] = []): Place[] {
  if (typeof value !== "object" || value === null) return found;
  const holder = value as Record<string, unknown>;
  for (const key of Object.keys(holder)) {
    found.push({ holder, key });
    placesOf(holder[key], found);
  }
  return found;
}

test("no document with a value replaced, taken out or added makes the reader throw", () => {
  const values = fc.oneof(
    fc.constantFrom<unknown>(
      0,
      -1,
      "",
      "lantern",
      "k1",
      "N",
      "f",
      [],
      {},
      null,
      { angle: 90 },
      { x: 0, y: 0 },
      "free",
      1e9,
    ),
    fc.anything(),
  );
  fc.assert(
    fc.property(
      setUpDocuments,
      fc.nat(),
      values,
      fc.constantFrom("replace", "remove", "add"),
      (written, at, value, how) => {
        const document: unknown = JSON.parse(JSON.stringify(written));
        const places = placesOf(document);
        const place = places[at % places.length];
        if (place === undefined) throw new Error("an empty document");
        if (how === "remove") Reflect.deleteProperty(place.holder, place.key);
        else place.holder[how === "add" ? "anchor" : place.key] = value;
        judge(readProblemDocument(document));
      },
    ),
    { numRuns: 3000 },
  );
});
