// @vitest-environment jsdom
// The state of the page of any problem: text, form, last good derivation, undo, link.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { setLoad } from "../../src/problem/index.ts";
import { ProblemPage } from "../../src/problem/problem-page.svelte.ts";
import type { Step } from "../../src/problem/problem-page.svelte.ts";
import { plainSentence } from "../../solver/index.ts";

const text = readFileSync("shared/problem/examples/shop-sign-on-level-stay.json", "utf8");
const start: Step = { text, settings: { figures: 3, firstAxis: "vertical", axes: "along", mark: "point" } };
const awake = async (): Promise<ProblemPage> => {
  const page = new ProblemPage(start);
  await page.wake();
  return page;
};
const settled = (page: ProblemPage): Promise<unknown> => page.wake();
const outcome = (page: ProblemPage): string =>
  page.derivation === null ? "" : plainSentence(page.derivation.outcome, () => undefined);
const mass = (kg: string): string => text.replace('"mass": 8', `"mass": ${kg}`);

describe("a page", () => {
  it("has the form and the text of its start while asleep, and nothing derived", () => {
    const page = new ProblemPage(start);
    expect(page.text).toBe(text);
    expect(page.document).toEqual(JSON.parse(text));
    expect(page.derivation).toBeNull();
    expect(page.query).toBe("");
  });

  it("derives what is typed, and keeps the last derivation where that has faults", async () => {
    const page = await awake();
    expect(outcome(page)).toMatch(/102\sN/);
    page.write(mass("16"));
    await settled(page);
    expect(outcome(page)).toMatch(/205\sN/);
    page.write(mass('"heavy"'));
    await settled(page);
    expect(page.faults).toEqual([
      { path: "/bodies/0/mass", found: '"heavy"', accepted: expect.stringMatching(/number/) as string },
    ]);
    expect(page.isCurrent).toBe(false);
    expect(outcome(page)).toMatch(/205\sN/);
    expect(page.text).toBe(mass('"heavy"'));
    page.write(mass("8"));
    await settled(page);
    expect(page.isCurrent).toBe(true);
    expect(outcome(page)).toMatch(/102\sN/);
  });

  it("keeps the form where the text is no JSON, and writes the text anew when the form is changed", async () => {
    const page = await awake();
    page.write("{ not yet");
    await settled(page);
    expect(page.isReadable).toBe(false);
    expect(page.document).toEqual(JSON.parse(text));
    page.edit((d) => setLoad(d, 0, "mass", 16));
    await settled(page);
    expect(page.isReadable).toBe(true);
    expect(JSON.parse(page.text)).toMatchObject({ bodies: [{ mass: 16 }] });
    expect(outcome(page)).toMatch(/205\sN/);
  });

  it("undoes and redoes texts and settings, also those with faults", async () => {
    const page = await awake();
    page.write(mass("16"));
    page.keep();
    page.set({ figures: 5 });
    page.keep();
    page.write("{");
    page.keep();
    page.keep();
    page.undo();
    expect(page.text).toBe(mass("16"));
    expect(page.settings.figures).toBe(5);
    page.undo();
    expect(page.settings.figures).toBe(3);
    page.undo();
    expect(page.text).toBe(text);
    expect(page.canUndo).toBe(false);
    page.redo();
    page.redo();
    page.redo();
    expect(page.text).toBe("{");
    expect(page.canRedo).toBe(false);
    page.undo();
    page.write(mass("9"));
    page.keep();
    expect(page.canRedo).toBe(false);
  });

  it("has a link for the last text without faults", async () => {
    const page = await awake();
    expect(page.query).toBe("");
    page.write(mass("16"));
    await settled(page);
    const { query } = page;
    expect(query).toMatch(/^doc=\(format:1,gravity:9\.8,.*mass:16/);
    page.write(mass("-16"));
    await settled(page);
    expect(page.query).toBe(query);
    const other = new ProblemPage(start);
    await other.open(`?${query ?? ""}`);
    expect(other.document).toEqual(JSON.parse(mass("16")));
    expect(outcome(other)).toMatch(/205\sN/);
    expect(other.query).toBe(query);
    expect(other.canUndo).toBe(false);
  });

  it("opened by an address without a document has its start's own text", async () => {
    const page = new ProblemPage(start);
    await page.open("?figures=4&nonsense=1");
    expect(page.text).toBe(text);
    expect(page.settings.figures).toBe(4);
    expect(page.linkFaults).toHaveLength(1);
  });

  it("does not take from an address what the reader has changed meanwhile", async () => {
    const page = new ProblemPage(start);
    const opening = page.open("?doc=(format:1,gravity:9.8,bodies:!())");
    page.write(mass("16"));
    await opening;
    expect(page.text).toBe(mass("16"));
  });

  it("knows when nothing is set up yet", async () => {
    const page = await awake();
    page.write('{ "format": 1, "gravity": 9.8, "bodies": [] }');
    await settled(page);
    expect(page.isEmpty).toBe(true);
    page.write("{}");
    await settled(page);
    expect(page.isEmpty).toBe(false);
  });
});
