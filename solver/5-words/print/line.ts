// One line printed: its form and slots, and on demand the same line for an evaluator or a terminal.
import type { Relation } from "../../4-steps/types.ts";
import type { Rounding } from "./number.ts";
import { PlainDialect, TextDialect } from "./plain.ts";
import { render } from "./render.ts";
import type { LinePrinter, ReadyLine } from "./types.ts";
import { TexDialect } from "./tex.ts";

/** TeX with slots. */
export interface SlottedTex {
  readonly form: string;
  readonly slots: readonly string[];
}

/** A line for a general-purpose evaluator. */
export interface PlainLine {
  readonly relation: Relation;
  readonly sides: readonly string[];
}

const TEX_RELATION: Readonly<Record<Relation, string>> = { "=": " = ", "≈": " \\approx ", ">": " > ", "<": " < " };

const roundingOf = (line: ReadyLine, side: number): Rounding =>
  side === line.sides.length - 1 ? line.rounding.result : line.rounding.inner;

/** The line in TeX with slots. */
export function lineTex(line: ReadyLine, p: LinePrinter): SlottedTex {
  const dialect = new TexDialect({
    values: p.values,
    components: p.components,
    letters: p.letters,
    angles: line.angles,
    mark: p.mark,
  });
  const form = line.sides
    .map((s, i) => render(s, dialect, { values: p.values, rounding: roundingOf(line, i) }))
    .join(TEX_RELATION[line.relation]);
  return { form, slots: dialect.slots };
}

/** The line for an evaluator. */
export function linePlain(line: ReadyLine, p: LinePrinter): PlainLine {
  const dialect = new PlainDialect({
    values: p.values,
    components: p.components,
    letters: p.letters,
    angles: line.angles,
    mark: ".",
  });
  return {
    relation: line.relation,
    sides: line.sides.map((s, i) => render(s, dialect, { values: p.values, rounding: roundingOf(line, i) })),
  };
}

/** The line for a terminal. */
export function lineText(line: ReadyLine, p: LinePrinter): string {
  const dialect = new TextDialect({
    values: p.values,
    components: p.components,
    letters: p.letters,
    angles: line.angles,
    mark: p.mark,
  });
  return line.sides
    .map((s, i) => render(s, dialect, { values: p.values, rounding: roundingOf(line, i) }))
    .join(` ${line.relation} `);
}
