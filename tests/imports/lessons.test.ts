import { existsSync, globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../../src/tools/project.mjs";
import { codeInLesson } from "./lesson-code.ts";

const folder = join(root, "lessons");

describe("lessons", () => {
  it("hold prose and start values, and no code", () => {
    if (!existsSync(folder)) return;
    const files = globSync("**/*.*", { cwd: folder });
    expect(files.filter((file) => file.endsWith("lesson.mdx"))).not.toEqual([]);
    expect(files.filter((file) => !/\.(?:mdx|json|md|png)$/.test(file))).toEqual([]);
    for (const file of files.filter((name) => name.endsWith(".mdx"))) {
      expect(codeInLesson(readFileSync(join(folder, file), "utf8")), file).toEqual([]);
    }
  });

  it("are caught when they import or export something", () => {
    const seeded = '---\ntitle: A\n---\nimport A from "../a.ts";\n\nText to import.\n\nexport const b = 1;\n';
    expect(codeInLesson(seeded)).toEqual(['import A from "../a.ts";', "export const b = 1;"]);
  });
});
