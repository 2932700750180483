// Number slots: a patched line must look exactly like one typeset with its numbers.
import katex from "katex";
import { describe, expect, it } from "vitest";
import { FIRST_SLOT, derive } from "../../solver/index.ts";
import { FormCache, NotYetTypeset, mathMarkup } from "../../src/typeset/index.ts";
import { seeded, setUp } from "../arbitraries/set-ups.ts";
import { problemOf } from "../solver/set-ups.ts";

const cache = new FormCache(katex);

/** The line typeset with its numbers in place, without slots. */
function direct(form: string, slots: readonly string[]): string {
  const tex = form.replace(
    /\{9000\d{5}\}/g,
    (placeholder) => `{${slots[Number(placeholder.slice(1, -1)) - FIRST_SLOT] ?? ""}}`,
  );
  return katex
    .renderToString(tex, {
      displayMode: true,
      throwOnError: true,
      strict: (code: string) => (code === "htmlExtension" ? "ignore" : "error"),
      trust: true,
      maxSize: 50,
    })
    .replace(/<annotation[^>]*>.*?<\/annotation>/gs, "");
}

describe("a line with number slots", () => {
  it("looks like the same line typeset with its numbers, for every form of 150 random derivations", () => {
    const random = seeded(161803);
    const forms = new Map<string, readonly string[]>();
    for (let i = 0; i < 150; i++) {
      for (const line of derive(problemOf(setUp(random))).paragraphs.flatMap((p) => p.lines))
        forms.set(line.tex.form, line.tex.slots);
    }
    expect(forms.size).toBeGreaterThan(150);
    const different = [...forms].filter(
      ([form, slots]) => mathMarkup({ form, slots }, true, cache).replace(/ data-n="\d+"/g, "") !== direct(form, slots),
    );
    expect(different.slice(0, 3)).toEqual([]);
  });

  it("is refused where two numbers would run together", () => {
    for (const form of ["2{900000000}", "{900000000}{900000001}"]) expect(() => cache.get(form, true)).toThrow(/slot/);
  });

  it("waits where the printer has not come, and is there once it has", () => {
    const late = new FormCache(null);
    expect(() => mathMarkup({ form: "x", slots: [] }, true, late)).toThrow(NotYetTypeset);
    late.use(katex);
    expect(mathMarkup({ form: "x", slots: [] }, true, late)).toContain("katex");
  });

  it("lets no mark-up in by a slot's text", () => {
    expect(mathMarkup({ form: "x = {900000000}", slots: ["<b>&"] }, true, cache)).toContain("&lt;b&gt;&amp;");
  });

  it("refuses bad TeX, and lets through no attribute or link but our own references", () => {
    expect(() => cache.get("\\frac{1", true)).toThrow();
    for (const form of ["\\htmlData{onclick=x}{y}", "\\href{https://example.org}{y}", "\\htmlStyle{color: red}{y}"]) {
      expect(mathMarkup({ form, slots: [] }, true, cache)).not.toMatch(/data-onclick|href=|color:\s*red/);
    }
    expect(mathMarkup({ form: "\\htmlData{ref=T1}{y}", slots: [] }, true, cache)).toContain('data-ref="T1"');
  });
});
