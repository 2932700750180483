// Text that holds a document a line, however it arrives.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linesOf } from "../../solver/batch/lines.ts";
import type { Line } from "../../solver/batch/lines.ts";

/** A stream that gives a text in the given pieces. */
async function* arriving(pieces: Iterable<string>): AsyncGenerator<string> {
  for (const piece of pieces) yield await Promise.resolve(piece);
}

async function read(pieces: Iterable<string>): Promise<readonly Line[]> {
  const lines: Line[] = [];
  for await (const some of linesOf(arriving(pieces))) lines.push(...some);
  return lines;
}

describe("lines", () => {
  it("are the same however the text is cut", async () => {
    const text = fc.array(fc.constantFrom("{}", "a", " ", "\n", "\r\n", "\u2028", "\r", "\uFEFF", "燈"), {
      maxLength: 30,
    });
    await fc.assert(
      fc.asyncProperty(text, async (parts) => {
        const whole = parts.join("");
        const expected = whole
          .replace(/^\uFEFF/, "")
          .split("\n")
          .map((line, i) => ({ number: i + 1, text: line.replace(/\r$/, ""), length: line.length }))
          .filter((l) => l.text.trim() !== "");
        expect(await read(parts)).toEqual(expected);
        expect(await read([whole])).toEqual(expected);
      }),
      { numRuns: 500 },
    );
  });

  it("are not broken where JSON allows a break inside a text", async () => {
    expect((await read(['{"name":"a\u2028b"}\n{"name":"c\rd"}'])).map((l) => l.text)).toEqual([
      '{"name":"a\u2028b"}',
      '{"name":"c\rd"}',
    ]);
  });

  it("are read past and not kept where they are far too long, and the next one is read", async () => {
    const piece = "x".repeat(100_000);
    const lines = await read([...Array.from({ length: 30 }, () => piece), "\n{}"]);
    expect(lines).toEqual([
      { number: 1, text: null, length: 3_000_000 },
      { number: 2, text: "{}", length: 2 },
    ]);
  });

  it("come as they arrive: none waits for more than its own end", async () => {
    let taken = 0;
    function* pieces(): Generator<string> {
      for (const text of readFileSync("package.json", "utf8").split(/(?<=\n)/)) {
        taken++;
        yield text;
      }
    }
    const lines = linesOf(arriving(pieces()));
    await lines.next();
    expect(taken).toBe(1);
  });
});
