// A small drawing of the load, hanging by its ring from a point. Chosen by a word in its name; a crate where none is known.
import type { Point } from "./geometry.ts";

/** Path data of the parts, and the class each is painted with. */
export interface GlyphPart {
  readonly key: string;
  readonly d: string;
  readonly look: string;
}

/** The size of the place that every glyph keeps to, below its point. */
export const glyphSize = { width: 34, height: 36 };

type Draw = (at: (x: number, y: number) => string) => GlyphPart[];

const lantern: Draw = (at) => [
  { key: "ring", d: `M${at(0, 0)}L${at(0, 6)}M${at(-6, 10)}L${at(0, 5)}L${at(6, 10)}`, look: "glyph-line" },
  { key: "glass", d: `M${at(-8, 13)}L${at(8, 13)}L${at(10, 29)}L${at(-10, 29)}Z`, look: "glyph-light" },
  { key: "flame", d: `M${at(0, 17)}L${at(3, 23)}L${at(0, 27)}L${at(-3, 23)}Z`, look: "glyph-body" },
  {
    key: "frame",
    d: `M${at(-9, 10)}L${at(9, 10)}L${at(9, 13)}L${at(-9, 13)}ZM${at(-12, 29)}L${at(12, 29)}L${at(12, 33)}L${at(-12, 33)}Z`,
    look: "glyph-body",
  },
];

const bell: Draw = (at) => [
  {
    key: "body",
    d: `M${at(0, 0)}L${at(0, 7)}M${at(-3, 7)}L${at(3, 7)}L${at(7, 13)}L${at(8, 23)}L${at(13, 30)}L${at(-13, 30)}L${at(-8, 23)}L${at(-7, 13)}Z`,
    look: "glyph-body",
  },
  { key: "clapper", d: `M${at(0, 30)}L${at(0, 35)}`, look: "glyph-line" },
];

const sign: Draw = (at) => [
  { key: "hooks", d: `M${at(0, 0)}L${at(0, 4)}M${at(-12, 12)}L${at(0, 4)}L${at(12, 12)}`, look: "glyph-line" },
  { key: "board", d: `M${at(-17, 12)}L${at(17, 12)}L${at(17, 30)}L${at(-17, 30)}Z`, look: "glyph-light" },
  { key: "rows", d: `M${at(-11, 18)}L${at(11, 18)}M${at(-11, 24)}L${at(5, 24)}`, look: "glyph-line" },
];

const crate: Draw = (at) => [
  { key: "sling", d: `M${at(0, 0)}L${at(0, 4)}M${at(-13, 12)}L${at(0, 4)}L${at(13, 12)}`, look: "glyph-line" },
  { key: "box", d: `M${at(-14, 12)}L${at(14, 12)}L${at(14, 34)}L${at(-14, 34)}Z`, look: "glyph-light" },
  { key: "slats", d: `M${at(-14, 19)}L${at(14, 19)}M${at(-14, 27)}L${at(14, 27)}`, look: "glyph-line" },
];

const bucket: Draw = (at) => [
  {
    key: "handle",
    d: `M${at(0, 0)}L${at(0, 5)}M${at(-12, 15)}L${at(-8, 8)}L${at(0, 5)}L${at(8, 8)}L${at(12, 15)}`,
    look: "glyph-line",
  },
  { key: "pail", d: `M${at(-13, 14)}L${at(13, 14)}L${at(9, 35)}L${at(-9, 35)}Z`, look: "glyph-light" },
  { key: "hoop", d: `M${at(-12, 19)}L${at(12, 19)}`, look: "glyph-line" },
];

const byWord: readonly (readonly [word: string, draw: Draw])[] = [
  ["lantern", lantern],
  ["lamp", lantern],
  ["bell", bell],
  ["sign", sign],
  ["bucket", bucket],
];

/** The parts of the glyph for a load of this name, hanging from a point; `size` 1 is the size it has on its own. */
export function loadGlyph(name: string, top: Point, size = 1): GlyphPart[] {
  const lower = name.toLowerCase();
  const draw = byWord.find(([word]) => lower.includes(word))?.[1] ?? crate;
  const round = (value: number): number => Math.round(value * 100) / 100 + 0;
  return draw((x, y) => `${round(top.x + size * x)},${round(top.y + size * y)}`);
}
