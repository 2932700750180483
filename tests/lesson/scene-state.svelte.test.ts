// @vitest-environment jsdom
// A scene: what it shows, what can be taken back, and what it takes from an address.
import { describe, expect, it } from "vitest";
import { rational } from "../../shared/exact/index.ts";
import { writeProblem } from "../../shared/problem/index.ts";
import type { ProblemChange } from "../../shared/problem/index.ts";
import { Scene } from "../../src/lesson/scene-state.svelte.ts";
import { opposite, problemOf } from "../solver/set-ups.ts";

const document = writeProblem(problemOf({ ropes: opposite(65, 40) }));
const scene = (query = ""): Scene => new Scene("two-ropes", document, query);
const mass = (text: string): ProblemChange => ({ kind: "mass", body: "lantern", value: rational(text) });
const frame = (): Promise<void> => new Promise((done) => requestAnimationFrame(() => done()));

describe("a scene", () => {
  it("shows an edit in the next frame, however many came before it, as one step to take back", async () => {
    const it = scene();
    for (const text of ["5", "6", "7"]) expect(it.edit([mass(text)])).toEqual([]);
    expect(it.query).toBe("");
    await frame();
    expect(it.query).toBe("mass=7");
    it.keep();
    it.undo();
    expect(it.query).toBe("");
    it.redo();
    expect(it.query).toBe("mass=7");
    expect([it.canUndo, it.canRedo]).toEqual([true, false]);
  });

  it("forgets what was taken back once something else is done", () => {
    const it = scene();
    for (const text of ["5", "6"]) {
      it.edit([mass(text)]);
      it.keep();
    }
    it.undo();
    it.edit([mass("8")]);
    it.keep();
    expect(it.canRedo).toBe(false);
    it.undo();
    expect(it.query).toBe("mass=5");
  });

  it("has nothing to take back where a change ended where it began", () => {
    const it = scene();
    it.edit([mass("5")]);
    it.edit([mass("4.2")]);
    it.keep();
    expect(it.canUndo).toBe(false);
  });

  it("loses no edit that waits for its frame when a setting or a stop is chosen", () => {
    const it = scene();
    it.edit([mass("5")]);
    it.set({ figures: 4 });
    it.showUpTo("vertical.law");
    expect(it.query).toBe("mass=5&figures=4&upto=vertical.law");
  });

  it("refuses a value with its reason and changes nothing", () => {
    const it = scene();
    expect(it.edit([mass("5"), mass("-1")])).toHaveLength(1);
    it.keep();
    expect(it.query).toBe("");
    expect(it.touched).toBe(false);
  });

  it("goes back to the lesson's start, from an address too, and that can be taken back", () => {
    const it = scene("?mass=9&figures=4");
    expect(it.query).toBe("mass=9&figures=4");
    it.reset();
    expect(it.query).toBe("");
    it.undo();
    expect(it.query).toBe("mass=9&figures=4");
  });

  it("derives what it shows, its lines numbered without gaps", () => {
    const it = scene("?ax=12");
    expect(it.derivation.kind).toBe("slack");
    expect(it.lines.map((line) => line.number)).toEqual(it.lines.map((_, i) => i + 1));
  });

  it("keeps no more than the last 200 steps", () => {
    const it = scene();
    for (let i = 1; i <= 250; i++) {
      it.edit([mass(String(i))]);
      it.keep();
    }
    let steps = 0;
    for (; it.canUndo; steps++) it.undo();
    expect(steps).toBe(200);
    expect(it.query).toBe("mass=50");
  });
});
