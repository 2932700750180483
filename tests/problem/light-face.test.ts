import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

/** Every file that a module brings in at run time, and every package. */
function reached(file: URL, seen = new Set<string>()): Set<string> {
  if (seen.has(file.href)) return seen;
  seen.add(file.href);
  const text = readFileSync(file, "utf8");
  for (const [, specifier = ""] of text.matchAll(/^(?:import|export)\s(?!type\b)[^"]*from "([^"]+)";/gmu)) {
    if (specifier.startsWith(".")) reached(new URL(specifier, file), seen);
    else seen.add(specifier);
  }
  return seen;
}

test("a page that imports the problem's face does not get the schema library", () => {
  const light = reached(new URL("../../shared/problem/index.ts", import.meta.url));
  expect([...light].filter((name) => !name.startsWith("file:"))).toEqual(["fraction.js"]);
  expect([...light].length).toBeGreaterThan(12);
});

test("reading unchecked documents does need it", () => {
  const full = reached(new URL("../../shared/problem/schema.ts", import.meta.url));
  expect([...full]).toContain("zod/mini");
});
