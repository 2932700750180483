/**
 * The JSON Schema in an editor's hands: the language service that common editors use for JSON (vscode-json-languageservice)
 * judges documents by the schema alone and proposes what may be typed.
 */
import { readdirSync, readFileSync } from "node:fs";
import { getLanguageService, TextDocument } from "vscode-json-languageservice";
import { describe, expect, test } from "vitest";
import { readProblem } from "../../shared/problem/schema.ts";

const folder = new URL("../../shared/problem/", import.meta.url);
const examples = new URL("examples/", folder);
const names = readdirSync(examples).filter((name) => name !== "index.json");

const service = getLanguageService({});
service.configure({
  validate: true,
  schemas: [
    {
      uri: "tautline://problem.schema.json",
      fileMatch: ["*"],
      schema: JSON.parse(readFileSync(new URL("problem.schema.json", folder), "utf8")) as object,
    },
  ],
});

async function complaints(text: string): Promise<string[]> {
  const document = TextDocument.create("tautline://problem.json", "json", 1, text);
  const found = await service.doValidation(document, service.parseJSONDocument(document));
  return found.map(({ message }) => (typeof message === "string" ? message : message.value));
}

/** What is proposed where `|` stands. */
async function proposals(marked: string): Promise<string[]> {
  const offset = marked.indexOf("|");
  const document = TextDocument.create("tautline://problem.json", "json", 1, marked.replace("|", ""));
  const list = await service.doComplete(document, document.positionAt(offset), service.parseJSONDocument(document));
  return (list?.items ?? []).map(({ label }) => label);
}

const lantern = '"gravity": 9.8, "bodies": [{ "id": "lantern", "mass": 4.2 }]';
const document = (rest: string): string => `{ "format": 1, ${rest} }`;

describe("an editor with the schema", () => {
  test.each(names)("has nothing to say of %s", async (name) => {
    expect(await complaints(readFileSync(new URL(name, examples), "utf8"))).toEqual([]);
  });

  test.each([
    ["another system of units", document(`"units": "cgs", ${lantern}`)],
    ["a load without mass", document('"gravity": 9.8, "bodies": [{ "id": "lantern" }]')],
    ["a load with both", document('"gravity": 9.8, "bodies": [{ "id": "lantern", "mass": 1, "weight": 2 }]')],
    ["a knot with a weight", document('"gravity": 9.8, "bodies": [{ "id": "k1", "kind": "knot", "weight": 2 }]')],
    [
      "a pulley with both",
      document('"gravity": 1, "bodies": [{ "id": "p1", "kind": "pulley", "mass": 1, "weight": 2 }]'),
    ],
    [
      "an acceleration beside a motion",
      document('"gravity": 1, "bodies": [{ "id": "k1", "mass": 1, "acceleration": {}, "motion": "free" }]'),
    ],
    ["a motion without a line", document('"gravity": 1, "bodies": [{ "id": "k1", "mass": 1, "motion": {} }]')],
    ["a rope without a direction", document(`${lantern}, "ropes": [{ "id": "T", "on": "lantern" }]`)],
    [
      "an anchor beside a direction",
      document(
        `${lantern}, "ropes": [{ "id": "T", "on": "lantern", "direction": { "angle": 1 }, "anchor": { "x": 1, "y": 1 } }]`,
      ),
    ],
    ["a rope without pulls", document(`${lantern}, "ropes": [{ "id": "T", "pulls": [] }]`)],
    ["a surface that lies nowhere", document(`${lantern}, "surfaces": [{ "id": "N", "on": "lantern" }]`)],
    [
      "friction of nothing",
      document(`${lantern}, "surfaces": [{ "id": "N", "on": "lantern", "slope": { "angle": 0 }, "friction": {} }]`),
    ],
    [
      "a rope called N",
      document(`${lantern}, "ropes": [{ "id": "N", "on": "lantern", "direction": { "angle": 90 } }]`),
    ],
    ["a push without a direction", document(`${lantern}, "pushes": [{ "id": "P", "on": "lantern" }]`)],
    ["a key that there is not", document(`${lantern}, "springs": []`)],
  ])("complains of %s, as the reader does", async (_, text) => {
    expect((await complaints(text)).length).toBeGreaterThan(0);
    expect(readProblem(text).ok).toBe(false);
  });

  test.each([
    [
      "the parts of a document",
      '{ "format": 1, "|" }',
      ["units", "gravity", "frame", "bodies", "ropes", "surfaces", "pushes"],
    ],
    [
      "the parts of a body",
      '{ "bodies": [{ "|" }] }',
      ["id", "name", "kind", "mass", "weight", "at", "acceleration", "motion"],
    ],
    ["the kinds of body", '{ "bodies": [{ "kind": | }] }', ['"load"', '"knot"', '"pulley"']],
    ["the parts of a motion", '{ "bodies": [{ "motion": { "|" } }] }', ["along", "acceleration", "going", "seenFrom"]],
    ["all ways to give a rope", '{ "ropes": [{ "|" }] }', ["id", "on", "direction", "to", "anchor", "length", "pulls"]],
    ["the parts of a pull", '{ "ropes": [{ "pulls": [{ "|" }] }] }', ["on", "direction"]],
    [
      "all ways to give a direction",
      '{ "pushes": [{ "direction": { "|" } }] }',
      ["angle", "from", "side", "run", "rise"],
    ],
    ["the parts of a surface", '{ "surfaces": [{ "|" }] }', ["id", "on", "of", "slope", "normal", "friction"]],
    ["the coefficients", '{ "surfaces": [{ "friction": { "|" } }] }', ["static", "kinetic"]],
    ["the systems of units", '{ "units": | }', ['"SI"', '"lbf-ft"']],
  ])("proposes %s", async (_, marked, expected) => {
    expect(await proposals(marked)).toEqual(expect.arrayContaining([...expected]));
  });

  test("says beside each number what it is, in which unit", async () => {
    const text = '{ "pushes": [{ "size": 40 }] }';
    const written = TextDocument.create("tautline://problem.json", "json", 1, text);
    const hover = await service.doHover(
      written,
      written.positionAt(text.indexOf("size") + 1),
      service.parseJSONDocument(written),
    );
    expect(JSON.stringify(hover?.contents)).toContain("size of the push, N, or lbf");
  });
});
