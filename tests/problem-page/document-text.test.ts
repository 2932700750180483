// The document as text: what the form writes and what it can show.
import fc from "fast-check";
import { globSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readEntry, readObject, writeDocument } from "../../src/problem/index.ts";
import type { Json } from "../../src/problem/index.ts";

describe("a typed number", () => {
  it.each<[string, number | string | null]>([
    ["4.2", 4.2],
    [" 4,20 ", 4.2],
    ["−3", -3],
    ["+5", 5],
    [".5", 0.5],
    ["3/4", "3/4"],
    ["1e-3", "1e-3"],
    ["9.80665000000000000001", "9.80665000000000000001"],
    ["0.30000000000000004", "0.30000000000000004"],
    ["heavy", null],
    ["", null],
    ["1.000,5", null],
    ["Infinity", null],
    ["1e999", null],
  ])("“%s” is %o", (text, entry) => {
    expect(readEntry(text)).toBe(entry);
  });
});

describe("the written document", () => {
  it("says the same as the data, and gives the same text again", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (data) => {
        const plain = JSON.parse(JSON.stringify(data)) as Json;
        const text = writeDocument(plain);
        expect(JSON.parse(text)).toEqual(plain);
        expect(writeDocument(JSON.parse(text) as Json)).toBe(text);
      }),
    );
  });

  it.each(globSync("shared/problem/examples/*.json").filter((file) => !file.endsWith("index.json")))(
    "of %s comes back unchanged",
    (file) => {
      const text = readFileSync(file, "utf8");
      expect(JSON.parse(writeDocument(readObject(text) ?? {}))).toEqual(JSON.parse(text));
    },
  );

  it("keeps a thing on a line, and a list whose things do not fit on one apart", () => {
    const names = ["a".repeat(40), "b".repeat(40)];
    const document = { format: 1, bodies: names.map((name) => ({ name })), ropes: [{ id: "T1" }], pushes: [] };
    expect(writeDocument(document).split("\n")).toEqual([
      "{",
      '  "format": 1,',
      '  "bodies": [',
      `    { "name": "${"a".repeat(40)}" },`,
      `    { "name": "${"b".repeat(40)}" }`,
      "  ],",
      '  "ropes": [{ "id": "T1" }],',
      '  "pushes": []',
      "}",
    ]);
  });
});

describe("a text that the form is to show", () => {
  it.each(["", "{", "[1]", "4", '"a"', "null", "[".repeat(200_000)])("holds no object: %.20s", (text) => {
    expect(readObject(text)).toBeNull();
  });

  it("keeps every digit of a long number", () => {
    expect(readObject('{ "gravity": 9.80665000000000000001, "x": 0.10 }')).toEqual({
      gravity: "9.80665000000000000001",
      x: 0.1,
    });
  });
});
