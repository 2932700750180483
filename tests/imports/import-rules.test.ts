import { ESLint } from "eslint";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../../src/tools/project.mjs";
import { seededProject, type SeededProject } from "./seeded-project.ts";

/** Each: the importing file, and its import. */
const allowed = [
  ["shared/exact/surd.ts", 'import Fraction from "fraction.js";'],
  ["shared/exact/angle.ts", 'import { a } from "./surd.ts";'],
  ["shared/format/number.ts", 'import { a } from "../exact/index.ts";'],
  ["shared/problem/schema.ts", 'import * as z from "zod/mini";'],
  ["solver/1-bodies/rope.ts", 'import { a } from "../../shared/problem/index.ts";'],
  ["solver/cli.ts", 'import { a } from "../shared/problem/schema.ts";'],
  ["solver/4-steps/draw.ts", 'import { a } from "../algebra/expr.ts";'],
  ["solver/4-steps/draw.ts", 'import type { a } from "../2-forces/types.ts";'],
  ["solver/cases/index.ts", 'import { a } from "../4-steps/index.ts";'],
  ["solver/index.ts", 'import { a } from "./cases/index.ts";'],
  ["solver/cli.ts", 'import { readFileSync } from "node:fs";'],
  ["src/diagram/arrow.ts", 'import type { a } from "../../solver/index.ts";'],
  ["src/lesson/scene.ts", 'import { a } from "../../solver/index.ts";'],
  ["src/typeset/slots.ts", 'import katex from "katex";'],
  ["src/widgets/line.ts", 'import { a } from "../typeset/slots.ts";'],
  ["tests/exact/surd.test.ts", 'import { a } from "../../shared/exact/surd.ts";'],
  ["tests/cases.test.ts", 'import { lusolve } from "mathjs";'],
] as const;

const forbidden = [
  ["shared/exact/surd.ts", 'import { a } from "../format/index.ts";'],
  ["shared/exact/surd.ts", 'import { create } from "mathjs";'],
  ["shared/exact/surd.ts", 'import { readFileSync } from "node:fs";'],
  ["shared/format/number.ts", 'import { a } from "../exact/surd.ts";'],
  ["shared/problem/schema.ts", 'import * as z from "zod";'],
  ["shared/link/decode.ts", 'import { a } from "../problem/check.ts";'],
  ["shared/link/decode.ts", 'import { a } from "../../solver/index.ts";'],
  ["solver/algebra/expr.ts", 'import { a } from "../1-bodies/index.ts";'],
  ["solver/1-bodies/rope.ts", 'import { a } from "../2-forces/types.ts";'],
  ["solver/4-steps/draw.ts", 'import { a } from "../2-forces/index.ts";'],
  ["solver/4-steps/draw.ts", 'import { a } from "../2-forces/weight.ts";'],
  ["solver/4-steps/draw.ts", 'import { a } from "../../shared/format/index.ts";'],
  ["solver/2-forces/weight.ts", 'import { a } from "../../shared/problem/index.ts";'],
  ["solver/5-words/tex.ts", 'import katex from "katex";'],
  ["solver/index.ts", 'import { a } from "./2-forces/weight.ts";'],
  ["solver/cli.ts", 'import { a } from "./4-steps/index.ts";'],
  ["src/diagram/arrow.ts", 'import { a } from "../../solver/index.ts";'],
  ["src/lesson/scene.ts", 'import { a } from "../../solver/4-steps/index.ts";'],
  ["src/widgets/line.ts", 'import katex from "katex";'],
  ["src/widgets/line.ts", 'const katex = await import("katex");'],
  ["src/pages/index.ts", 'import { a } from "../../solver/index.ts";'],
  ["src/pages/index.ts", 'export { a } from "../../solver/index.ts";'],
  ["src/tools/start.ts", 'import { a } from "../lesson/link.ts";'],
  ["tests/exact/angle.test.ts", 'import { a } from "../../shared/exact/surd.ts";'],
  ["tests/support/numbers.ts", 'import { a } from "../../solver/2-forces/weight.ts";'],
  ["src/pages/index.ts", 'import { a } from "../other/index.ts";'],
] as const;

describe("who may import what", () => {
  let project: SeededProject;

  beforeAll(() => {
    project = seededProject();
  });

  afterAll(() => {
    project.remove();
  });

  it.each(allowed)("lets %s say %s", async (path, line) => {
    expect(await project.complaints(path, line)).toEqual([]);
  });

  it.each(forbidden)("catches %s saying %s", async (path, line) => {
    expect(await project.complaints(path, line)).toEqual([expect.stringContaining(`${path} may not import`)]);
  });

  it("catches a file in a folder that the table does not have", async () => {
    for (const path of ["shared/other/index.ts", "solver/6-more/types.ts", "solver/loose.ts", "src/other/a.ts"]) {
      expect(await project.complaints(path, "export const a = 1;"), path).toHaveLength(1);
    }
  });

  it("is enforced on every kind of source file of this project", async () => {
    const linter = new ESLint({ cwd: root });
    for (const path of ["solver/a.ts", "src/widgets/a.svelte", "src/blocks/a.astro", "src/tools/a.mjs"]) {
      const config: unknown = await linter.calculateConfigForFile(path);
      expect(config, path).toMatchObject({
        rules: { "boundaries/dependencies": [2, expect.anything()], "boundaries/no-unknown-files": [2] },
      });
    }
  });
});
