import { existsSync, globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../src/tools/project.mjs";
import { undocumented } from "./support/undocumented.ts";

const longest = 250;

/** The project's own source files in a top folder, as paths from the top; a folder that is there must hold some. */
function sources(folder: string, endings: string[]): string[] {
  const patterns = endings.map((ending) => `${folder}/**/*.${ending}`);
  const found = globSync(patterns, { cwd: root }).map((path) => path.replaceAll("\\", "/"));
  expect(found.length > 0 || !existsSync(join(root, folder)), `${folder}/ holds sources`).toBe(true);
  return found;
}

const read = (path: string): string => readFileSync(join(root, path), "utf8");

describe("the sources", () => {
  it.each(["shared", "solver", "src", "tests"])("have no file over 250 lines in %s/", (folder) => {
    const long = sources(folder, ["ts", "mjs", "svelte", "astro", "css"])
      .map((path) => ({ path, lines: read(path).trimEnd().split("\n").length }))
      .filter(({ lines }) => lines > longest);
    expect(long).toEqual([]);
  });

  it.each(["shared", "solver"])("explain every exported name in %s/", (folder) => {
    const silent = sources(folder, ["ts"]).flatMap((path) =>
      undocumented(path, read(path)).map((name) => `${path}: ${name}`),
    );
    expect(silent).toEqual([]);
  });
});

describe("the search for names that are not explained", () => {
  it("finds functions, types, values and listed names, and leaves the explained and the private ones", () => {
    const text = [
      "/** Says what it is. */ export type Known = string;",
      "export type Silent = string;",
      "export function silent(): void {}",
      "export const mute = 1;",
      "// Not a doc comment.",
      "export const plain = 1;",
      "/** */ export const empty = 1;",
      "const own = 1;",
      "const given = 1;",
      "export { given };",
      'export { elsewhere } from "./elsewhere.ts";',
    ].join("\n");
    expect(undocumented("a.ts", text)).toEqual(["Silent", "silent", "mute", "plain", "empty", "given"]);
  });

  it("asks for one comment on an overloaded function", () => {
    const text = [
      "/** Doubles. */ export function double(a: string): string;",
      "export function double(a: number): number;",
      "export function double(a: string | number): string | number { return a; }",
    ].join("\n");
    expect(undocumented("a.ts", text)).toEqual([]);
  });
});
