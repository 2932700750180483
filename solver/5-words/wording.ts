// What every sentence is made with, whatever it speaks of: numbers in words, maths in a sentence, references to lines.
import { toFigures, withUnit } from "../../shared/format/index.ts";
import { decimal } from "../algebra/evaluate.ts";
import type { Values } from "../algebra/evaluate.ts";
import { negative, symbol } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { lineTex, lineText } from "./print/line.ts";
import { evenly, withGuard } from "./print/rounding.ts";
import type { LinePrinter } from "./print/types.ts";
import type { Run } from "./types.ts";

/** Settings that sentences depend on. */
export interface WordSettings {
  readonly figures: number;
  readonly mark: "." | ",";
  readonly firstAxis: "vertical" | "horizontal";
  readonly axes: "along" | "level";
}

/** Numbers and maths for the sentences of one attempt. */
export abstract class Wording {
  readonly settings: WordSettings;
  readonly printer: LinePrinter;
  private readonly mathCache = new Map<string, Run>();

  /** Prints letters and numbers as `printer` says. */
  constructor(settings: WordSettings, printer: LinePrinter) {
    this.settings = settings;
    this.printer = printer;
  }

  /** What a sentence calls a rope. */
  abstract rope(id: string): string;

  /** The values of this attempt. */
  get values(): Values {
    return this.printer.values;
  }

  /** A size or component as maths in a sentence. */
  letter(id: string): Run {
    return this.math(symbol(id));
  }

  /** An expression as maths in a sentence, angles as letters unless asked otherwise. */
  math(e: Expr, angles: "degrees" | "letters" = "letters"): Run {
    return this.relation("=", [e], angles);
  }

  /** A short equation in a sentence. */
  relation(relation: "=" | ">" | "<", sides: readonly Expr[], angles: "degrees" | "letters" = "letters"): Run {
    const only = sides.length === 1 ? sides[0] : undefined;
    const key = only?.kind === "symbol" ? only.id : null;
    const cached = key === null ? undefined : this.mathCache.get(key);
    if (cached !== undefined) return cached;
    const ready = { relation, sides, angles, rounding: evenly(withGuard(this.settings, 2)) } as const;
    const run: Run = { kind: "math", tex: lineTex(ready, this.printer), text: lineText(ready, this.printer) };
    if (key !== null) this.mathCache.set(key, run);
    return run;
  }

  /** A number of the answer's figures with its unit, as words: 41.2 N. */
  number(e: Expr, unit: string, ref: string | null = null): Run {
    return this.figure(decimal(e, this.values), unit, ref);
  }

  /** A double with its unit, to the answer's figures. */
  figure(x: number, unit: string, ref: string | null = null): Run {
    return {
      kind: "value",
      text: withUnit(toFigures(x, this.settings.figures, { mark: this.settings.mark }), unit),
      ref,
    };
  }

  /** The digits of a given number as written: 4.2 kg; with a sign of −1 those of its opposite. */
  given(id: string, unit: string, sign: 1 | -1 = 1): Run {
    const ready = {
      relation: "=",
      sides: [{ kind: "quantity", of: sign < 0 ? negative(symbol(id)) : symbol(id), unit, role: "given" }],
      angles: "letters",
      rounding: evenly(withGuard(this.settings, 2)),
    } as const;
    return { kind: "value", text: lineText(ready, this.printer).replace(/ /g, "\u00a0"), ref: null };
  }

  /** A reference to a line. */
  line(id: string): Run {
    return { kind: "line", id };
  }
}
