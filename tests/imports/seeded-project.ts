/**
 * A small project in a folder of its own, laid out like this one, to seed forbidden imports in.
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { ESLint } from "eslint";
import tseslint from "typescript-eslint";
import { importRulesIn } from "../../src/tools/import-rules.mjs";

/** What there is to import. The packages need no place: they are told by their names. */
const files = [
  "shared/exact/index.ts",
  "shared/exact/surd.ts",
  "shared/format/index.ts",
  "shared/problem/index.ts",
  "shared/problem/schema.ts",
  "shared/problem/check.ts",
  "shared/link/index.ts",
  "solver/algebra/expr.ts",
  "solver/1-bodies/index.ts",
  "solver/1-bodies/types.ts",
  "solver/2-forces/index.ts",
  "solver/2-forces/types.ts",
  "solver/2-forces/weight.ts",
  "solver/4-steps/index.ts",
  "solver/4-steps/types.ts",
  "solver/cases/index.ts",
  "solver/index.ts",
  "src/diagram/arrow.ts",
  "src/lesson/link.ts",
  "src/pages/index.ts",
  "src/typeset/slots.ts",
  "src/other/index.ts",
  "lessons/two-ropes/problem.json",
];

/** A linter of imports in the small project. */
export type SeededProject = {
  /** The complaints about a file with this one line, if it stood at `path` in the project. */
  complaints: (path: string, line: string) => Promise<string[]>;
  remove: () => void;
};

/** Makes the small project. The caller removes it. */
export function seededProject(): SeededProject {
  const folder = mkdtempSync(join(tmpdir(), "tautline-imports-"));
  for (const file of files) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), file.endsWith(".json") ? "{}" : "export const a = 1;\n");
  }
  const linter = new ESLint({
    cwd: folder,
    overrideConfigFile: true,
    overrideConfig: [{ files: ["**/*.ts"], languageOptions: { parser: tseslint.parser } }, ...importRulesIn(folder)],
  });
  return {
    complaints: async (path, line) => {
      const results = await linter.lintText(line, { filePath: join(folder, path) });
      return results.flatMap((result) => result.messages.map((message) => message.message));
    },
    remove: () => {
      rmSync(folder, { recursive: true });
    },
  };
}
