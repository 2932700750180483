// A batch on the command line: folders, files with a document a line, several files, standard input.
import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { exportDerivation } from "../../solver/exports/index.ts";
import { defaultSettings, derive, solve } from "../../solver/index.ts";
import { modernNode } from "../../src/tools/modern-node.mjs";
import { seeded, setUp } from "../arbitraries/set-ups.ts";
import { LANTERN, lantern } from "../problem/lantern.ts";
import { documentOf, problemFrom } from "../solver/set-ups.ts";

const CLI = fileURLToPath(new URL("../../solver/cli.ts", import.meta.url));

interface Entry {
  readonly file: string;
  readonly line?: number;
  readonly case?: string;
  readonly slack?: readonly string[];
  readonly states?: readonly unknown[];
  readonly answers?: readonly { readonly id: string; readonly decimal: number | null }[];
  readonly faults?: readonly { readonly path: string; readonly found: string; readonly accepted: string }[];
}
interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
  readonly entries: readonly Entry[];
}

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "batch-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

function run(args: readonly string[], input: string | Buffer = ""): Run {
  const { status, stdout, stderr } = spawnSync(modernNode(), [CLI, ...args], {
    input,
    encoding: "utf8",
    cwd: folder,
    maxBuffer: 1e9,
  });
  const lines = stdout.split("\n");
  // The last line has its end too.
  expect(lines.pop()).toBe("");
  return { code: status, out: stdout, err: stderr, entries: lines.map((l) => JSON.parse(l) as Entry) };
}

/** So many random documents, from a seed. */
function documents(count: number, seed: number): Record<string, unknown>[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => documentOf(setUp(random)));
}

const ONE_LINE = JSON.stringify(JSON.parse(LANTERN));
const BAD = lantern('"mass": 4.2', '"mass": -1');
const BAD_LINE = JSON.stringify(JSON.parse(BAD));

describe("a batch", () => {
  it("gives a line a document, in order, with the same answers as the solver one by one, on one thread and on five", () => {
    const given = documents(700, 41);
    writeFileSync(join(folder, "variants.jsonl"), given.map((d) => JSON.stringify(d)).join("\n"));
    const { code, entries, err, out } = run(["variants.jsonl", "--workers", "5"]);
    expect([code, err]).toEqual([0, ""]);
    expect(entries).toEqual(
      given.map((d, i) => {
        const { kind, slack, answers } = solve(problemFrom(d));
        return {
          file: "variants.jsonl",
          line: i + 1,
          case: kind,
          slack,
          answers: answers.map((a) => ({
            id: a.id,
            unit: a.unit,
            decimal: a.decimal,
            exact: a.exact === null ? null : { terms: expect.any(Array) as unknown },
          })),
        };
      }),
    );
    expect(run(["variants.jsonl", "--workers", "1"]).out).toBe(out);
  });

  it("gives the states of ropes and surfaces where there are such, as the whole derivation does", () => {
    const crate = {
      format: 1,
      gravity: 9.8,
      bodies: [
        { id: "crate", mass: 5 },
        { id: "bucket", mass: 2, motion: { along: { angle: -90 } } },
      ],
      ropes: [
        {
          id: "T",
          pulls: [
            { on: "crate", direction: { angle: 0 } },
            { on: "bucket", direction: { angle: 90 } },
          ],
        },
      ],
      surfaces: [{ id: "N", on: "crate", slope: { angle: 0 }, friction: { static: 0.3, kinetic: 0.2 } }],
    };
    const input = `${JSON.stringify(crate)}\n${ONE_LINE}`;
    const [compact, hanging] = run(["-", "--lines"], input).entries;
    const [whole] = run(["-", "--lines", "--whole"], input).entries;
    expect(compact?.states).toEqual([
      { id: "T", state: "taut" },
      { id: "N", state: "slides forwards", friction: "backwards" },
    ]);
    expect(whole?.states).toEqual(compact?.states);
    expect(whole?.answers).toMatchObject(compact?.answers ?? []);
    expect(hanging).not.toHaveProperty("states");
  });

  it("takes the documents of a folder in the order of their names, and those alone", () => {
    const sub = join(folder, "stall");
    mkdirSync(join(sub, "deeper"), { recursive: true });
    for (const name of ["b.json", "a.json", "deeper/z.json"]) writeFileSync(join(sub, name), LANTERN);
    writeFileSync(join(sub, "c.jsonl"), `${ONE_LINE}\n${ONE_LINE}\n`);
    writeFileSync(join(sub, "notes.txt"), "no document");
    const { code, entries } = run(["stall"]);
    expect(code).toBe(0);
    expect(entries.map((e) => [e.file, e.line, e.case])).toEqual([
      [join("stall", "a.json"), undefined, "taut"],
      [join("stall", "b.json"), undefined, "taut"],
      [join("stall", "c.jsonl"), 1, "taut"],
      [join("stall", "c.jsonl"), 2, "taut"],
    ]);
  });

  it("takes several files in the order in which they are named, standard input among them", () => {
    writeFileSync(join(folder, "two.json"), LANTERN);
    writeFileSync(join(folder, "many.jsonl"), ONE_LINE);
    const { entries } = run(["many.jsonl", "-", "two.json"], LANTERN);
    expect(entries.map((e) => e.file)).toEqual(["many.jsonl", "-", "two.json"]);
    expect(run(["-", "two.json", "--lines"], `${ONE_LINE}\n${ONE_LINE}`).entries.map((e) => e.file)).toEqual([
      "-",
      "-",
      "two.json",
    ]);
  });

  it("tells the faults of a document on its line and goes on; its exit code is 1", () => {
    const { code, entries, err } = run(["-", "--lines"], [ONE_LINE, BAD_LINE, "{", ONE_LINE].join("\n"));
    expect([code, err]).toEqual([1, ""]);
    expect(entries.map((e) => [e.line, e.case ?? e.faults?.map((f) => f.path)])).toEqual([
      [1, "taut"],
      [2, ["/bodies/0/mass"]],
      [3, [""]],
      [4, "taut"],
    ]);
    const fault = entries[1]?.faults?.[0];
    expect(fault?.found).toBe("-1");
    expect(fault?.accepted).toMatch(/a number from/);
  });

  it("tells of a file that it cannot read, and goes on", () => {
    const sub = join(folder, "torn");
    mkdirSync(join(sub, "a.json"), { recursive: true });
    writeFileSync(join(sub, "b.json"), LANTERN);
    const { code, entries } = run(["torn"]);
    expect(code).toBe(1);
    expect(entries.map((e) => e.case ?? e.faults?.[0]?.found)).toEqual(["no file that can be read (EISDIR)", "taut"]);
  });

  it("numbers lines as an editor does: blank ones count, Windows' line ends and a byte-order mark are no part of them", () => {
    const { code, entries } = run(["-", "--lines"], `\uFEFF${ONE_LINE}\r\n\r\n  \n${BAD_LINE}\r\n${ONE_LINE}`);
    expect(code).toBe(1);
    expect(entries.map((e) => [e.line, e.case])).toEqual([
      [1, "taut"],
      [4, undefined],
      [5, "taut"],
    ]);
  });

  it("gives the whole derivation with --whole: what one document by itself gives, and where it stands", () => {
    const given = documents(40, 43);
    const input = given.map((d) => JSON.stringify(d)).join("\n");
    const { entries } = run(["-", "--lines", "--whole", "--figures", "5", "--axis", "horizontal"], input);
    const settings = { ...defaultSettings, figures: 5, firstAxis: "horizontal" as const };
    expect(entries).toEqual(
      given.map((d, i) => ({
        file: "-",
        line: i + 1,
        ...(JSON.parse(JSON.stringify(exportDerivation(derive(problemFrom(d), settings)))) as object),
      })),
    );
  });

  it("says how far it is on standard error when asked, and nothing otherwise", () => {
    writeFileSync(join(folder, "good.json"), LANTERN);
    writeFileSync(join(folder, "bad.json"), BAD);
    expect(run(["good.json", "bad.json"]).err).toBe("");
    expect(run(["good.json", "bad.json", "--progress"]).err).toBe("2 of 2 documents, 1 with faults\n");
    expect(run(["-", "--lines", "--progress"], ONE_LINE).err).toBe("1 documents, 0 with faults\n");
  });

  it("ends when nobody reads its output any more, however much input there is", async () => {
    const child = spawn(modernNode(), [CLI, "-", "--lines"], { stdio: ["pipe", "pipe", "pipe"] });
    let err = "";
    child.stderr.setEncoding("utf8").on("data", (text: string) => (err += text));
    // The child closes its end while we still write.
    child.stdin.on("error", () => undefined);
    const lines = `${ONE_LINE}\n`.repeat(200);
    const feed = (): void => {
      while (child.stdin.writable && child.stdin.write(lines));
    };
    child.stdin.on("drain", feed);
    feed();
    await once(child.stdout, "data");
    child.stdout.destroy();
    const [code] = (await once(child, "close")) as [number | null];
    expect([code, err]).toEqual([0, ""]);
  });

  it.each([
    ["a folder without documents", ["empty"], "empty"],
    ["a file that is not there among others", ["no-such.json", "stall"], "no-such.json"],
    ["a file of lines that is not there", ["no-such.jsonl"], "no-such.jsonl"],
    ["text for a batch", ["stall", "--as", "text"], "--as"],
    ["no thread", ["stall", "--workers", "0"], "--workers"],
    ["threads that are no whole number", ["stall", "--workers", "2.5"], "--workers"],
    ["too many threads", ["stall", "--workers", "257"], "--workers"],
    ["the whole of one document", ["-", "--whole"], "--whole"],
    ["threads for one document", ["-", "--workers", "2"], "--workers"],
    ["progress of one document", ["-", "--progress"], "--progress"],
  ])("refuses %s with code 2 and one line that says where, what and what is accepted", (_, args, where) => {
    mkdirSync(join(folder, "empty"), { recursive: true });
    const { code, out, err } = run(args, LANTERN);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(new RegExp(`^${where}: found .*accepted: .*\n$`));
  });
});
