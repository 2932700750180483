// The address of a whole document: readable, lossless, never fatal.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodeDocumentState, encodeDocumentState, LONGEST_DOCUMENT_QUERY } from "../../shared/link/document-link.ts";
import type { DocumentState } from "../../shared/link/document-link.ts";

const start: DocumentState = {
  document: { format: 1, gravity: 9.8, bodies: [], ropes: [] },
  settings: { figures: 3, firstAxis: "vertical", axes: "along", mark: "point" },
  upTo: null,
};
const withDocument = (document: object): DocumentState => ({ ...start, document });

/** The query as a browser gives it back once it has stood in an address. */
const throughAddress = (query: string): string => new URL(`https://example.org/problem/?${query}`).search;

const name = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 12 }),
  fc.constantFrom(
    "-1",
    "1e-3",
    "true",
    "",
    "!",
    "it's",
    "a+b",
    "a%20b",
    "x=y&z#",
    "(crate)",
    "-3/4",
    "null",
    "brass lantern",
  ),
);
const number = fc.oneof(
  fc.integer({ min: -1e9, max: 1e9 }),
  fc.integer({ min: -999_999_999, max: 999_999_999 }).map((n) => n / 1000),
  fc.constantFrom(1e-7, 1e21, 0.000000001),
);
const { data } = fc.letrec((tie) => ({
  data: fc.oneof(
    { maxDepth: 4 },
    number,
    name,
    fc.boolean(),
    fc.constant(null),
    fc.array(tie("data"), { maxLength: 4 }),
    fc.dictionary(fc.oneof(fc.stringMatching(/^[A-Za-z][A-Za-z0-9]{0,8}$/), name), tie("data"), {
      maxKeys: 4,
      noNullPrototype: true,
    }),
  ),
}));

describe("a document in an address", () => {
  it("is readable", () => {
    const document = {
      format: 1,
      gravity: 9.8,
      bodies: [{ id: "sign", name: "shop sign", mass: 12 }],
      ropes: [
        { id: "T1", on: "sign", direction: { angle: 180 } },
        { id: "T2", on: "sign", direction: { run: 3, rise: "4/7" } },
      ],
    };
    expect(encodeDocumentState(withDocument(document), start)).toBe(
      "doc=(format:1,gravity:9.8,bodies:!((id:sign,name:'shop+sign',mass:12))," +
        "ropes:!((id:T1,on:sign,direction:(angle:180)),(id:T2,on:sign,direction:(run:3,rise:'4/7'))))",
    );
  });

  it("comes back as it was, whatever it holds", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.stringMatching(/^[a-z]{1,8}$/), data, { noNullPrototype: true }), (document) => {
        const query = encodeDocumentState(withDocument(document), start);
        if (query === null) return;
        const { state, faults } = decodeDocumentState(throughAddress(query), start);
        expect(faults).toEqual([]);
        expect(JSON.stringify(state.document)).toBe(JSON.stringify(document));
      }),
      { numRuns: 2000 },
    );
  });

  it("takes the settings along, and nothing that is as at the start", () => {
    expect(encodeDocumentState(start, start)).toBe("");
    const other: DocumentState = {
      ...start,
      settings: { figures: 5, firstAxis: "horizontal", axes: "level", mark: "comma" },
      upTo: "vertical.law",
    };
    const query = encodeDocumentState(other, start);
    expect(query).toBe("figures=5&first=horizontal&axes=level&mark=comma&upto=vertical.law");
    expect(decodeDocumentState(query ?? "", start)).toEqual({ state: other, faults: [] });
  });

  it("is left out where it is too long for an address", () => {
    const long = { format: 1, bodies: [{ name: "x".repeat(LONGEST_DOCUMENT_QUERY) }] };
    expect(encodeDocumentState(withDocument(long), start)).toBeNull();
  });

  it("does not change a number of many digits by the way: it has to stand in quotes", () => {
    const exact = decodeDocumentState("doc=(gravity:'9.80665000000000000001')", start);
    expect(exact).toEqual({ state: withDocument({ gravity: "9.80665000000000000001" }), faults: [] });
    const bare = decodeDocumentState("doc=(a:'1,9.80665000000000000001',gravity:9.80665000000000000001)", start);
    expect(bare.state).toEqual(start);
    expect(bare.faults).toEqual([
      { parameter: "doc", found: expect.any(String) as string, accepted: expect.stringMatching(/in quotes/) as string },
    ]);
  });
});

describe("an address that is not right", () => {
  it.each([
    "doc=",
    "doc=(",
    "doc=!(1,2)",
    "doc=12",
    "doc=(a:1",
    "doc=(a:1)(",
    `doc=${"!(".repeat(7000)}`,
    "doc=%E0%A4%A",
    "doc=(a:1)&doc=(a:2)",
    "figures=9",
    "axes=upright",
    "__proto__=1",
    "x".repeat(20_000),
  ])("leaves the start and names what it found: %s", (query) => {
    const { state, faults } = decodeDocumentState(query, start);
    expect(state).toEqual(start);
    expect(faults).toHaveLength(1);
    expect(faults[0]?.accepted).toMatch(/\S/);
    expect(faults[0]?.found.length).toBeLessThan(80);
  });

  it("changes no object of the program", () => {
    const { state } = decodeDocumentState("doc=(__proto__:(polluted:1),constructor:(prototype:(polluted:1)))", start);
    expect(Object.keys(state.document)).not.toContain("polluted");
    expect(Reflect.get({}, "polluted")).toBeUndefined();
  });

  it("never throws", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...Array.from("()!',:a1.-e%+&=")) }), (text) => {
        decodeDocumentState(`doc=${text}`, start);
      }),
      { numRuns: 3000 },
    );
  });
});
