// The command line as a person and a program use it.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { modernNode } from "../../src/tools/modern-node.mjs";
import { seeded } from "../arbitraries/set-ups.ts";
import { LANTERN, lantern } from "../problem/lantern.ts";

const CLI = fileURLToPath(new URL("../../solver/cli.ts", import.meta.url));
interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function run(args: readonly string[], input: string | Buffer = LANTERN): Run {
  const { status, stdout, stderr } = spawnSync(modernNode(), [CLI, ...args], { input, encoding: "utf8" });
  return { code: status, out: stdout, err: stderr };
}

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "derive-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("derive", () => {
  it("reads a file", () => {
    const file = join(folder, "lantern.json");
    writeFileSync(file, LANTERN);
    const { code, out } = run([file]);
    expect(code).toBe(0);
    expect(out).toContain("T1 ≈ 32.6 N");
  });

  it("reads standard input and writes JSON of format 1", () => {
    const { code, out } = run(["-", "--as", "json"]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      format: 1,
      case: "taut",
      slack: [],
      answers: [
        { id: "T1", unit: "N" },
        { id: "T2", unit: "N" },
      ],
    });
  });

  it("writes TeX with every slot filled and no mark of ours", () => {
    const { code, out } = run(["-", "--as", "tex"]);
    expect(code).toBe(0);
    expect(out).toContain("\\sin {65^\\circ}");
    expect(out).not.toMatch(/htmlData|9000\d{5}/);
  });

  it("reads a file that begins with a byte-order mark, as some editors write it", () => {
    expect(run(["-"], `\uFEFF${LANTERN}`).code).toBe(0);
  });

  it("takes figures and the first axis", () => {
    expect(run(["-", "--figures", "5"]).out).toContain("T1 ≈ 32.643 N");
    const { out } = run(["-", "--axis", "horizontal"]);
    expect(out.indexOf("SIDEWAYS")).toBeLessThan(out.indexOf("VERTICALLY"));
  });

  it("takes axes along a slope or level ones", () => {
    const slope = JSON.stringify({
      format: 1,
      gravity: 9.8,
      bodies: [{ id: "crate", name: "tea crate", mass: 12 }],
      surfaces: [{ id: "N", on: "crate", slope: { angle: 30 } }],
    });
    expect(run(["-"], slope).out).toContain("Wx = mg sin 30°");
    expect(run(["-", "--axes", "along"], slope).out).toBe(run(["-"], slope).out);
    expect(run(["-", "--axes", "level"], slope).out).toContain("Nx = N sin 30°");
  });

  it.each([
    ["a mass that is not positive", ["-"], lantern('"mass": 4.2', '"mass": -1'), "/bodies/0/mass"],
    ["an unknown key", ["-"], lantern('"gravity"', '"heft": 1, "gravity"'), "/heft"],
    [
      "a rope on a body that is not there",
      ["-"],
      lantern("]\n}", ', { "id": "T3", "on": "bell", "direction": { "angle": 90 } }]\n}'),
      "/ropes/2/on",
    ],
    ["text that is no JSON", ["-"], "{", "/"],
    ["a file that is not there", ["no-such-file.json"], "", "no-such-file.json"],
    ["an unknown form", ["-", "--as", "song"], LANTERN, "--as"],
    ["too many figures", ["-", "--figures", "9"], LANTERN, "--figures"],
    ["an unknown option", ["-", "--loud"], LANTERN, "arguments"],
    ["figures that are no whole number", ["-", "--figures", "3.0"], LANTERN, "--figures"],
    ["an unknown axis", ["-", "--axis", "slanted"], LANTERN, "--axis"],
    ["unknown axes", ["-", "--axes", "slanted"], LANTERN, "--axes"],
    ["an unknown route", ["-", "--route", "guess"], LANTERN, "--route"],
    ["an option without its value", ["-", "--as"], LANTERN, "arguments"],
    ["standard input twice", ["-", "-"], LANTERN, "arguments"],
    ["no file", [], LANTERN, "arguments"],
    ["a folder without documents", ["tests"], "", "tests"],
    ["empty standard input", ["-"], "", "/"],
    ["a name with a line break in it", ["no\nfile"], "", "no\\u000Afile"],
    ["a key with a line break in it", ["-"], lantern('"gravity"', '"he\\nft": 1, "gravity"'), "/he"],
    ["an option with a line break in it", ["-", "--as", "so\nng"], LANTERN, "--as"],
  ])("refuses %s with code 2 and one line that says where, what and what is accepted", (_, args, input, where) => {
    const { code, out, err } = run(args, input);
    expect(code).toBe(2);
    expect(out).toBe("");
    const lines = err.trimEnd().split("\n");
    expect(lines).toHaveLength(1);
    expect(lines[0]?.startsWith(where)).toBe(true);
    expect(lines[0]).toContain("accepted");
    expect(err).not.toMatch(/\bat .*:\d+:\d+|Error:/);
  });

  it("names every fault, a line each", () => {
    const { err } = run(["-"], lantern('"mass": 4.2', '"mass": -1').replace('"angle": 40', '"angle": 400'));
    expect(
      err
        .trimEnd()
        .split("\n")
        .map((l) => l.split(":")[0]),
    ).toEqual(["/bodies/0/mass", "/ropes/1/direction/angle"]);
  });

  it("never fails in another way on random bytes", () => {
    const random = seeded(7);
    for (let i = 0; i < 12; i++) {
      const bytes = Buffer.from(Array.from({ length: Math.floor(random() * 300) }, () => Math.floor(random() * 256)));
      const mutated =
        random() < 0.5
          ? bytes
          : Buffer.from(
              LANTERN.replace(/./g, (c) => (random() < 0.03 ? String.fromCharCode(33 + Math.floor(random() * 90)) : c)),
            );
      const { code, err } = run(["-"], mutated);
      expect([0, 2]).toContain(code);
      if (code === 2) expect(err).toMatch(/accepted/);
      expect(err).not.toMatch(/\n\s+at /);
    }
  });
});
