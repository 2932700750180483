/**
 * The colours of the pictures keep the contrasts of WCAG 2.2 with their ground: 3:1 for lines (1.4.11), 4.5:1 for letters (1.4.3).
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const css = readFileSync(join(import.meta.dirname, "../../src/widgets/pictures/force-colours.css"), "utf8");

/** The variables of the block that begins at a place of the style sheet, those with a six-figure or three-figure colour. */
function colours(from: number): Map<string, string> {
  const block = css.slice(from, css.indexOf("}", from));
  return new Map(
    Array.from(block.matchAll(/--([\w-]+):\s*#([\da-f]{6}|[\da-f]{3});/g), ([, name = "", hex = ""]) => [name, hex]),
  );
}

/** Relative luminance as WCAG defines it. */
function luminance(hex: string): number {
  const full = hex.length === 3 ? Array.from(hex, (c) => c + c).join("") : hex;
  const [r = 0, g = 0, b = 0] = [0, 2, 4].map((at) => {
    const share = parseInt(full.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const themes = [
  ["light", css.indexOf(":root {")],
  ["dark, by the system", css.indexOf(':root:not([data-theme="light"])')],
  ["dark, chosen", css.indexOf(':root[data-theme="dark"]')],
] as const;

describe("the colours of the pictures", () => {
  it.each(themes)("keep their contrasts in the theme %s", (_, from) => {
    const found = colours(from);
    const paper = found.get("picture-paper") ?? "";
    const lines = [
      "force-1",
      "force-2",
      "force-3",
      "force-weight",
      "force-normal",
      "force-friction",
      "force-push",
      "accel",
      "picture-support",
      "picture-quiet",
      "picture-ink",
    ];
    const letters = lines.filter((name) => /^(?:force|accel)/.test(name)).map((name) => `${name}-text`);
    for (const name of lines) expect(contrast(found.get(name) ?? paper, paper), name).toBeGreaterThanOrEqual(3);
    for (const name of [...letters, "picture-quiet", "picture-ink"]) {
      expect(contrast(found.get(name) ?? paper, paper), name).toBeGreaterThanOrEqual(4.5);
    }
  });

  it("are the same in both dark themes", () => {
    expect(colours(themes[1][1])).toEqual(colours(themes[2][1]));
  });

  it("go with a line pattern for each force, no two alike", () => {
    const patterns = Array.from(css.matchAll(/--force-[\w-]+-line:\s*([^;]+);/g), ([, pattern = ""]) => pattern);
    expect(patterns).toHaveLength(7);
    expect(new Set(patterns).size).toBe(7);
  });

  it("give way to the system's where colours are forced, every one", () => {
    const forced = css.slice(css.indexOf("forced-colors: active"));
    for (const name of colours(themes[0][1]).keys()) {
      if (name.startsWith("force-")) expect(forced, name).toContain(`--${name}: CanvasText;`);
    }
  });

  it("measure black on white as 21", () => {
    expect(contrast("000", "ffffff")).toBeCloseTo(21, 9);
  });
});
