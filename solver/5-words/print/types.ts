// What printing a line needs, and a line ready to be printed.
import type { Values } from "../../algebra/evaluate.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Relation } from "../../4-steps/types.ts";
import type { Letter } from "./letters.ts";
import type { Rounding } from "./number.ts";

/** What all lines of a derivation share. */
export interface LinePrinter {
  readonly values: Values;
  readonly components: ReadonlySet<string>;
  /** Letters of this derivation that do not follow from their ids. */
  readonly letters?: ReadonlyMap<string, Letter>;
  readonly figures: number;
  readonly mark: "." | ",";
}

/** The rounding of a line: of the numbers it works with, and of its result, the last side. */
export interface LineRounding {
  readonly inner: Rounding;
  readonly result: Rounding;
}

/** A line with its rounding settled, ready to be printed. */
export interface ReadyLine {
  readonly relation: Relation;
  readonly sides: readonly Expr[];
  readonly angles: "degrees" | "letters";
  readonly rounding: LineRounding;
}
