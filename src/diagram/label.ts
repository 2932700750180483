// A label before it has a place: pieces of text in a row, measured with the fonts' own widths.
import { faceMetrics, unknownWidth, type Face } from "./glyph-widths.ts";
import type { QuantityLabel } from "./scene.ts";

export type { Face } from "./glyph-widths.ts";

/** A stretch of text in one face, on the line, lowered or raised. */
export interface Run {
  readonly text: string;
  readonly face: Face;
  readonly level: "base" | "sub" | "sup";
}

/** A run measured: `dx` from the label's left edge, `dy` of its baseline below the label's top. */
export interface MeasuredRun {
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  readonly dx: number;
  readonly dy: number;
  readonly width: number;
}

/** A row of runs and its size. */
export interface MeasuredText {
  readonly runs: readonly MeasuredRun[];
  readonly width: number;
  readonly height: number;
}

const smaller = 0.72;
const shift = { base: 0, sub: 0.2, sup: -0.38 };

/** Upright words or digits. */
export function words(text: string): Run {
  return { text, face: "word", level: "base" };
}

/** An italic letter. */
export function letter(text: string): Run {
  return { text, face: "letter", level: "base" };
}

/** The symbol of a quantity; `axis` names one of its components. */
export function symbol(label: QuantityLabel, axis: "" | "x" | "y" = ""): Run[] {
  const runs: Run[] = [letter(label.letter)];
  if (label.sub !== "") runs.push({ text: label.sub, face: "word", level: "sub" });
  if (axis !== "") runs.push({ text: axis, face: "letter", level: "sub" });
  return runs;
}

/** The width of a text at font size 1. */
export function textWidth(text: string, face: Face): number {
  const { widths } = faceMetrics[face];
  let width = 0;
  for (const character of text) width += widths.get(character) ?? widths.get(plainLetter(character)) ?? unknownWidth;
  return width / 1000;
}

/** A letter without its accents, for one that the font does not have. */
const plainLetter = (character: string): string => character.normalize("NFD").charAt(0);

/**
 * Sets runs in a row at a font size. The box reaches as far up and down as the browser's box of the same text does. Spaces at the ends of
 * a run become distance, since SVG drops them.
 */
export function measure(runs: readonly Run[], size: number): MeasuredText {
  let x = 0;
  let right = 0;
  let top = 0;
  let bottom = 0;
  const set = runs.map((run) => {
    const runSize = run.level === "base" ? size : size * smaller;
    const { ascent, descent } = faceMetrics[run.face];
    const baseline = shift[run.level] * size;
    top = Math.min(top, baseline - (ascent / 1000) * runSize);
    bottom = Math.max(bottom, baseline + (descent / 1000) * runSize);
    const inner = run.text.trim();
    const before = textWidth(run.text.slice(0, run.text.length - run.text.trimStart().length), run.face) * runSize;
    const width = textWidth(inner, run.face) * runSize;
    const dx = x + before;
    x += textWidth(run.text, run.face) * runSize;
    const overhang = ((faceMetrics[run.face].overhangs.get(inner.slice(-1)) ?? 0) / 1000) * runSize;
    right = Math.max(right, x, dx + width + overhang);
    return { text: inner, face: run.face, size: runSize, dx, dy: baseline, width };
  });
  return { runs: set.map((run) => ({ ...run, dy: run.dy - top })), width: right, height: bottom - top };
}
