// How the numbers of pictures are written: to the derivation's figures, given ones as they were given.
import { exactDecimal, toFigures, withUnit } from "../../shared/format/index.ts";
import type { Derivation } from "../../solver/index.ts";
import { letter, type Run } from "./label.ts";

const greek: Readonly<Record<string, string>> = {
  alpha: "α",
  beta: "β",
  gamma: "γ",
  delta: "δ",
  epsilon: "ε",
  zeta: "ζ",
  eta: "η",
  theta: "θ",
};

/** The letter of an angle by the name it has in the lines; a name without a letter stays. */
export const angleLetter = (name: string): string => greek[name] ?? name;

/** The same for print: theta1 is θ with a lowered 1. */
export function angleRuns(name: string): Run[] {
  const match = /^([a-z]+)(\d*)$/.exec(name);
  const sub = match?.[2] ?? "";
  const first = letter(angleLetter(match?.[1] ?? name));
  return sub === "" ? [first] : [first, { text: sub, face: "word", level: "sub" }];
}

/** An angle as the problem has it: degrees where it was given in degrees. */
export interface PrintedAngle {
  readonly radians: number;
  readonly degrees: GivenNumber | null;
}

/** A number of the problem. */
export type GivenNumber = Parameters<typeof exactDecimal>[0];

/** Writes the numbers of a derivation. */
export class Prints {
  readonly #figures: number;
  readonly #mark: "." | ",";

  constructor({ figures, mark }: Derivation["settings"]) {
    this.#figures = figures;
    this.#mark = mark;
  }

  /** A number that was worked out, with its unit. */
  found(value: number, unit: string): string {
    return withUnit(toFigures(value, this.#figures, { mark: this.#mark }), unit);
  }

  /** A number of the problem, with its unit: as a decimal with all its figures, or rounded where it has no end. */
  given(value: GivenNumber, unit: string): string {
    const printed = exactDecimal(value, { mark: this.#mark });
    return printed === null ? this.found(value.valueOf(), unit) : withUnit(printed, unit);
  }

  /** An angle in degrees. */
  angle({ radians, degrees }: PrintedAngle): string {
    if (degrees === null) return this.found((radians * 180) / Math.PI, "°");
    return `${String(degrees.valueOf()).replace(".", this.#mark)}°`;
  }
}
