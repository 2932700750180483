// What a thread of a batch does with a document that brings the program itself to fail.
import { describe, expect, it } from "vitest";
import deriveTask from "../../solver/batch/worker.ts";
import type { Settings } from "../../solver/index.ts";
import { LANTERN } from "../problem/lantern.ts";

describe("a thread of a batch", () => {
  it("says beside a document that the program failed on it, and goes on", () => {
    const document = { file: "a.json", line: null, text: LANTERN, unreadable: null };
    // Settings that nothing of ours can make.
    const settings = { figures: 3 } as Settings;
    const { text, documents, faulty } = deriveTask({
      documents: [document, { ...document, text: "{" }, document],
      settings: new Proxy(settings, {
        get() {
          throw new RangeError("a fault of the program");
        },
      }),
      whole: true,
    });
    expect([documents, faulty]).toEqual([3, 3]);
    expect(text.split("\n").map((l) => (l === "" ? [] : Object.keys(JSON.parse(l) as object)))).toEqual([
      ["file", "failed"],
      ["file", "faults"],
      ["file", "failed"],
      [],
    ]);
    expect(text).toContain('"failed":"RangeError: a fault of the program"');
  });
});
