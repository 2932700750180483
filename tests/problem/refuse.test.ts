import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readProblem, readProblemDocument } from "../../shared/problem/schema.ts";
import { faultsOf, faultsOfData, lantern, LANTERN } from "./lantern.ts";

describe("what breaks the format is refused with path, found and accepted", () => {
  test.each([
    ["an angle beyond a turn", "115", "400", "/ropes/0/direction/angle", "400", "a number from -360 to 360 (degrees)"],
    ["a little less than no mass", "4.2", "-1e-9", "/bodies/0/mass", "-1e-9", "0, or a number from 0.000000001 to"],
    ["a mass below nothing", "4.2", "-4.2", "/bodies/0/mass", "-4.2", "(kg, or slug)"],
    ["a mass beyond the limit as text", "4.2", '"1000000000.01"', "/bodies/0/mass", '"1000000000.01"', "1000000000"],
    ["a mass a little too small", "4.2", '"0.99e-9"', "/bodies/0/mass", '"0.99e-9"', "0.000000001"],
    ["a mass in words", "4.2", '"four"', "/bodies/0/mass", '"four"', "(kg, or slug)"],
    ["a decimal comma", "4.2", '"4,2"', "/bodies/0/mass", '"4,2"', "(kg, or slug)"],
    ["a division by zero", "4.2", '"1/0"', "/bodies/0/mass", '"1/0"', "(kg, or slug)"],
    ["gravity upwards", "9.8", "-9.8", "/gravity", "-9.8", "a number from 0 to 1000000000 (m/s², or ft/s²)"],
    ["more digits than a double keeps", "9.8", "9.80000000000000001", "/gravity", "9.80000000000000001", "as text"],
    ["a number beyond doubles", "9.8", "1e400", "/gravity", "1e400", "1000000000"],
    ["a number far below doubles", "9.8", "1e-400", "/gravity", "1e-400", "1000000000"],
    [
      "a text too long when written out",
      "9.8",
      `"9.${"8".repeat(40)}"`,
      "/gravity",
      `"9.${"8".repeat(38)}…"`,
      "40 characters",
    ],
    ["another version", '"format": 1', '"format": 2', "/format", "2", "1, the version of the format"],
    ["a name of nothing", '"brass lantern"', '""', "/bodies/0/name", '""', "a name of 1 to 60 characters"],
    ["a blank name", "brass lantern", "  ", "/bodies/0/name", '"  "', "not all spaces"],
    ["a name with a line separator", "brass lantern", "a\u2028b", "/bodies/0/name", "a\\u2028b", "control character"],
    ["a name with a line break", "brass lantern", "a\\nb", "/bodies/0/name", '"a\\nb"', "control character"],
    ["an id with a sign", '"id": "T1"', '"id": "T-1"', "/ropes/0/id", '"T-1"', "an id: a letter"],
    ["an id too long", '"id": "T1"', '"id": "abcdefghijklmnopq"', "/ropes/0/id", '"abcdefghijklmnopq"', "15 more"],
    [
      "an id used twice",
      '"id": "T1"',
      '"id": "T2"',
      "/ropes/1/id",
      '"T2", which /ropes/0/id is already',
      "an id of its own",
    ],
    ["a rope with the body's id", '"id": "T1"', '"id": "lantern"', "/ropes/0/id", "/bodies/0/id", "an id of its own"],
    ["an id that means a component", '"id": "T1"', '"id": "T2x"', "/ropes/0/id", '"T2x"', "x or y behind it"],
    ["a rope on nothing", '"on": "lantern"', '"on": "bell"', "/ropes/0/on", '"bell"', 'the id of a body: "lantern"'],
    [
      "a direction of nowhere",
      '{ "angle": 115 }',
      '{ "run": 0, "rise": 0 }',
      "/ropes/0/direction",
      "a run of 0",
      "not both 0",
    ],
    ["half a direction", '{ "angle": 115 }', '{ "run": 3 }', "/ropes/0/direction/rise", "nothing", "a number"],
    ["a direction in words", '{ "angle": 115 }', '"up"', "/ropes/0/direction", '"up"', "a direction: {"],
    [
      "a direction of two kinds",
      '"angle": 115',
      '"angle": 115, "run": 1, "rise": 2',
      "/ropes/0/direction/angle",
      "angle",
      "run, rise",
    ],
    [
      "no side",
      '"angle": 115',
      '"angle": 15, "from": "vertical"',
      "/ropes/0/direction/side",
      "nothing",
      '"left" or "right"',
    ],
    [
      "a third side",
      '"angle": 115',
      '"angle": 1, "from": "vertical", "side": "up"',
      "/ropes/0/direction/side",
      '"up"',
      "right",
    ],
    [
      "past straight down",
      '"angle": 115',
      '"angle": 181, "from": "vertical", "side": "left"',
      "/ropes/0/direction/angle",
      "181",
      "0 to 180",
    ],
    [
      "a key too many",
      '"format": 1,',
      '"format": 1, "colour": "red",',
      "/colour",
      'the unknown key "colour"',
      "gravity",
    ],
    ["a key too many inside", '"mass": 4.2', '"mass": 4.2, "Mass": 1', "/bodies/0/Mass", "Mass", "only the keys id"],
    ["a prototype", '"format": 1,', '"format": 1, "__proto__": {},', "/__proto__", "__proto__", "only the keys"],
    ["mass and weight", '"mass": 4.2', '"mass": 4.2, "weight": 41.16', "/bodies/0", '"weight"', "exactly one of mass"],
    [
      "neither",
      '"mass": 4.2, ',
      "",
      "/bodies/0",
      "an object",
      "exactly one of mass (kg, or slug) and weight (N, or lbf)",
    ],
    ["no bodies", '"bodies": [', '"bodies": [], "x": [', "/bodies", "an empty list", "a list of 1 to 12 bodies"],
    ["true", "9.8", "true", "/gravity", "true", "a number"],
    ["null", "9.8", "null", "/gravity", "null", "a number"],
  ])("%s", (_, piece, replacement, path, found, acceptedText) => {
    const fault = faultsOf(lantern(piece, replacement)).find((one) => one.path === path);
    expect(fault?.found).toContain(found);
    expect(fault?.accepted).toContain(acceptedText);
  });

  test("more ropes than a lesson needs", () => {
    const document = JSON.parse(LANTERN) as { ropes: { id: string }[] };
    const ropes = Array.from({ length: 13 }, (_, n) => ({ ...document.ropes[0], id: `T${n}` }));
    const fault = { path: "/ropes", found: "a list of 13", accepted: "a list of 0 to 12 ropes" };
    expect(faultsOfData({ ...document, ropes })).toEqual([fault]);
    expect(readProblemDocument({ ...document, ropes: ropes.slice(1) }).ok).toBe(true);
  });

  test("a weight where gravity is 0, with the reason", () => {
    const text = lantern('"mass": 4.2', '"weight": 41.16').replace("9.8", "0");
    expect(faultsOf(text)).toEqual([
      {
        path: "/bodies/0/weight",
        found: "a weight together with gravity 0",
        accepted: "a mass (kg), because nothing has a weight where gravity is 0; or a gravity larger than 0",
      },
    ]);
  });

  test.each([
    "sin",
    "pi",
    "e",
    "i",
    "deg",
    "N",
    "kg",
    "m",
    "g",
    "s",
    "W",
    "ax",
    "theta",
    "alpha",
    "L1",
    "L22",
    "mod",
    "mass",
    "upto",
    "constructor",
  ])("the id %s, which means something else", (id) => {
    const [fault] = faultsOf(lantern('"id": "T1"', `"id": "${id}"`));
    expect(fault?.path).toBe("/ropes/0/id");
    expect(fault?.accepted).toContain("not the name of a function, unit, constant or symbol");
  });

  test("every fault is told, not only the first", () => {
    const text = lantern("115", "400").replace("9.8", '"?"').replace("4.2", "-1");
    expect(faultsOf(text).map((fault) => fault.path)).toEqual([
      "/gravity",
      "/bodies/0/mass",
      "/ropes/0/direction/angle",
    ]);
  });

  test("data that holds a rounded double", () => {
    const document = JSON.parse(LANTERN) as object;
    expect(faultsOfData({ ...document, gravity: 0.1 + 0.2 })[0]?.found).toBe("0.30000000000000004");
    expect(faultsOfData({ ...document, gravity: Number.NaN })[0]?.found).toBe("NaN");
    expect(faultsOfData({ ...document, gravity: 10n })[0]?.found).toContain("bigint");
  });
});

describe("a text that is no document at all", () => {
  test.each(["", "{", "[1,2", "nul", "'x'", "{}x", "\u0000", LANTERN + ","])("%j is refused as a whole", (text) => {
    expect(faultsOf(text)).toEqual([
      { path: "", found: expect.stringContaining("not JSON") as string, accepted: "a JSON document" },
    ]);
  });

  test("brackets without end, and a text beyond the limit", () => {
    const deep = "[".repeat(49_000) + "]".repeat(49_000);
    expect(faultsOf(deep)[0]?.path).toBe("");
    expect(faultsOf(" ".repeat(100_001))[0]?.found).toBe("a text of 100001 characters");
    expect(faultsOf(`{${'"a":{'.repeat(10_000)}`)[0]?.found).toContain("not JSON");
  });

  test("a flood of unknown keys gives a bounded answer", () => {
    const keys = Array.from({ length: 5000 }, (_, n) => `"key${n}":1`).join(",");
    expect(faultsOf(`{${keys}}`).length).toBeLessThanOrEqual(20);
  });

  test.each(["null", "[]", "1", '"x"', "true", "1e999", "{}"])("%s gives faults", (text) => {
    expect(faultsOf(text).length).toBeGreaterThan(0);
  });

  const strangeKeys = fc
    .dictionary(fc.string({ unit: "binary", maxLength: 50 }), fc.constant(1), { minKeys: 1 })
    .map((data) => JSON.stringify({ ropes: [{ direction: data }], ...data }));

  test("faults never hold a line break or another control character, whatever the text", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 300 }), fc.json(), strangeKeys), (text) => {
        const reading = readProblem(text);
        expect(reading.ok).toBe(false);
        const told = reading.ok ? [] : reading.faults.map(({ path, found, accepted }) => `${path}${found}${accepted}`);
        expect(told.join("")).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
      }),
      { numRuns: 2000 },
    );
  });

  test("no spoiled example makes the reader throw", () => {
    const spoiled = fc
      .tuple(fc.nat(LANTERN.length), fc.nat(12), fc.string({ unit: "binary", maxLength: 6 }))
      .map(([at, cut, put]) => LANTERN.slice(0, at) + put + LANTERN.slice(at + cut));
    fc.assert(
      fc.property(spoiled, (text) => {
        expect(() => readProblem(text)).not.toThrow();
      }),
      { numRuns: 3000 },
    );
  });

  test("no data makes the reader throw", () => {
    fc.assert(
      fc.property(fc.anything(), (data) => {
        expect(() => readProblemDocument(data)).not.toThrow();
        expect(() =>
          readProblemDocument({ ...(JSON.parse(LANTERN) as object), ropes: data, bodies: [data] }),
        ).not.toThrow();
      }),
      { numRuns: 1000 },
    );
  });
});
