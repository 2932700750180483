// How wide the letters of the label fonts are, in thousandths of the font size, and how far a line of them reaches up and down.
// Read from the advance widths (hmtx), outlines (glyf) and line metrics (hhea) of KaTeX_Main-Regular and KaTeX_Math-Italic in the package
// katex; tests/diagram/glyph-widths.test.ts reads the fonts again and compares.

/** Upright words and digits, or italic letters. */
export type Face = "word" | "letter";

interface FaceMetrics {
  readonly ascent: number;
  readonly descent: number;
  readonly widths: ReadonlyMap<string, number>;
  /** How far the ink of slanted letters reaches beyond their width, where that is 20 or more. Browsers count it into a text's box. */
  readonly overhangs: ReadonlyMap<string, number>;
}

/** One width, and the characters that have it. */
type Row = readonly [width: number, characters: string];

function byCharacter(rows: readonly Row[]): Map<string, number> {
  return new Map(rows.flatMap(([width, characters]) => Array.from(characters, (c): [string, number] => [c, width])));
}

const wordRows: readonly Row[] = [
  [250, " \u00a0"],
  [278, "!',.:;il’"],
  [306, "fj"],
  [333, "-"],
  [361, "I"],
  [389, "()t"],
  [392, "r"],
  [394, "s"],
  [444, "cez"],
  [472, "?"],
  [500, "*/0123456789ago°"],
  [514, "J"],
  [528, "kqvxy"],
  [556, "Sbdhnpu"],
  [611, "Z"],
  [625, "L"],
  [653, "F"],
  [681, "EP"],
  [708, "B"],
  [722, "CTw"],
  [736, "R"],
  [750, "AHNUVXY"],
  [764, "D"],
  [778, "&+=KOQ×−≈"],
  [785, "G"],
  [833, "%m√"],
  [917, "M"],
  [1028, "W"],
];

const letterRows: readonly Row[] = [
  [298, "l"],
  [345, "i"],
  [361, "t"],
  [412, "j"],
  [429, "b"],
  [433, "c"],
  [438, "ζ"],
  [440, "I"],
  [444, "δ"],
  [446, "q"],
  [451, "r"],
  [465, "z"],
  [466, "eε"],
  [469, "sθ"],
  [477, "g"],
  [485, "ov"],
  [490, "fy"],
  [497, "η"],
  [503, "p"],
  [518, "γ"],
  [520, "d"],
  [521, "k"],
  [529, "a"],
  [555, "J"],
  [566, "β"],
  [572, "ux"],
  [576, "h"],
  [581, "Y"],
  [583, "V"],
  [584, "T"],
  [600, "n"],
  [613, "S"],
  [640, "α"],
  [642, "P"],
  [643, "F"],
  [654, "φ"],
  [681, "L"],
  [683, "UZ"],
  [715, "C"],
  [716, "w"],
  [738, "E"],
  [750, "A"],
  [759, "BR"],
  [763, "O"],
  [786, "G"],
  [791, "Q"],
  [803, "N"],
  [828, "DX"],
  [831, "H"],
  [849, "K"],
  [878, "m"],
  [944, "W"],
  [970, "M"],
];

const wordOverhangRows: readonly Row[] = [
  [20, "√"],
  [66, "f"],
];

const letterOverhangRows: readonly Row[] = [
  [24, "X"],
  [25, "γ"],
  [26, "E"],
  [32, "S"],
  [33, "ζ"],
  [39, "K"],
  [40, "Z"],
  [45, "C"],
  [58, "H"],
  [60, "f"],
  [66, "I"],
  [78, "J"],
  [81, "M"],
  [83, "U"],
  [84, "N"],
  [106, "FW"],
  [109, "P"],
  [120, "T"],
  [181, "Y"],
  [186, "V"],
];

/** What the table knows of each face, in thousandths of the font size. */
export const faceMetrics: Readonly<Record<Face, FaceMetrics>> = {
  word: { ascent: 903, descent: 272, widths: byCharacter(wordRows), overhangs: byCharacter(wordOverhangRows) },
  letter: { ascent: 717, descent: 218, widths: byCharacter(letterRows), overhangs: byCharacter(letterOverhangRows) },
};

/** Wide enough for a letter that the table does not have. */
export const unknownWidth = 780;
