/**
 * The outside check of the label metrics: the font files that the page uses, read here. OpenType tables: cmap (format 4), hhea, hmtx, head, loca, glyf.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { picturesOf, settings } from "./settings.ts";
import { twoRopes } from "./two-ropes.ts";
import { faceMetrics } from "../../src/diagram/glyph-widths.ts";

const folder = join(import.meta.dirname, "../../node_modules/katex/dist/fonts");

type Font = {
  ascent: number;
  descent: number;
  width: (character: string) => number | null;
  /** The right edge of the ink. */
  inkEnd: (character: string) => number;
};

function readFont(name: string): Font {
  const file = readFileSync(join(folder, name));
  const table = new Map<string, number>();
  for (let i = 0; i < file.readUInt16BE(4); i += 1) {
    const entry = 12 + 16 * i;
    table.set(file.toString("latin1", entry, entry + 4), file.readUInt32BE(entry + 8));
  }
  const at = (tag: string): number => table.get(tag) ?? -1;
  const perEm = file.readUInt16BE(at("head") + 18);
  const metricsCount = file.readUInt16BE(at("hhea") + 34);
  const glyphs = readCharacters(file, at("cmap"));
  const width = (character: string): number | null => {
    const glyph = glyphs.get(character.codePointAt(0) ?? -1);
    if (glyph === undefined || glyph === 0) return null;
    return (file.readUInt16BE(at("hmtx") + 4 * Math.min(glyph, metricsCount - 1)) * 1000) / perEm;
  };
  const longOffsets = file.readInt16BE(at("head") + 50) === 1;
  const inkEnd = (character: string): number => {
    const glyph = glyphs.get(character.codePointAt(0) ?? -1) ?? 0;
    const offset = longOffsets
      ? file.readUInt32BE(at("loca") + 4 * glyph)
      : 2 * file.readUInt16BE(at("loca") + 2 * glyph);
    return (file.readInt16BE(at("glyf") + offset + 6) * 1000) / perEm;
  };
  const inThousandths = (offset: number): number => (file.readInt16BE(at("hhea") + offset) * 1000) / perEm;
  return { ascent: inThousandths(4), descent: -inThousandths(6), width, inkEnd };
}

function readCharacters(file: Buffer, cmap: number): Map<number, number> {
  const glyphs = new Map<number, number>();
  for (let i = 0; i < file.readUInt16BE(cmap + 2); i += 1) {
    const start = cmap + file.readUInt32BE(cmap + 4 + 8 * i + 4);
    if (file.readUInt16BE(start) !== 4) continue;
    const doubled = file.readUInt16BE(start + 6);
    for (let s = 0; s < doubled; s += 2) {
      const last = file.readUInt16BE(start + 14 + s);
      const first = file.readUInt16BE(start + 16 + doubled + s);
      const delta = file.readUInt16BE(start + 16 + 2 * doubled + s);
      const rangeAt = start + 16 + 3 * doubled + s;
      const range = file.readUInt16BE(rangeAt);
      for (let code = first; code <= last && code < 0xffff; code += 1) {
        const glyph = range === 0 ? code : file.readUInt16BE(rangeAt + range + 2 * (code - first));
        if (glyph !== 0) glyphs.set(code, (glyph + delta) & 0xffff);
      }
    }
  }
  return glyphs;
}

describe("the widths of letters in labels", () => {
  it.each([
    ["word", "KaTeX_Main-Regular.ttf"],
    ["letter", "KaTeX_Math-Italic.ttf"],
  ] as const)("are those of the font for the face %s", (face, name) => {
    const font = readFont(name);
    const { ascent, descent, widths, overhangs } = faceMetrics[face];
    expect([ascent, descent]).toEqual([font.ascent, font.descent]);
    expect(widths.size).toBeGreaterThan(50);
    for (const [character, width] of widths) expect(Math.round(font.width(character) ?? -1), character).toBe(width);
    for (const [character, width] of widths) {
      if (character.trim() === "") continue;
      const over = Math.round(font.inkEnd(character) - width);
      expect(overhangs.get(character) ?? 0, character).toBe(over >= 20 ? over : 0);
    }
  });

  it("know every character that a picture writes", () => {
    const missing = settings.flatMap((setting) =>
      picturesOf(twoRopes(setting))
        .flatMap(([, picture]) => picture.labels.flatMap((label) => label.pieces))
        .flatMap(({ text, face }) => Array.from(text).filter((character) => !faceMetrics[face].widths.has(character))),
    );
    expect([...new Set(missing)]).toEqual([]);
  });
});
