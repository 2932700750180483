// A derivation as other programs see it: the exported data alone.
import { exportDerivation } from "../../solver/exports/index.ts";
import type { Derivation } from "../../solver/index.ts";

/** A line of the exported data. */
export interface ExportedLine {
  readonly id: string;
  readonly tex: string;
  readonly plain: { readonly relation: "=" | "≈" | ">" | "<"; readonly sides: readonly string[] };
  readonly attempt: string;
  readonly status: "always" | "solution" | "trial" | "rounded" | "contradiction";
  readonly from: readonly string[];
  readonly reason: string;
}

/** The exported data. */
export interface Exported {
  readonly case: string;
  readonly slack: readonly string[];
  readonly answers: readonly {
    readonly id: string;
    readonly decimal: number | null;
    readonly exact: {
      readonly terms: readonly (readonly [string, number])[];
      readonly perWeight: readonly (readonly [string, number])[] | null;
    } | null;
  }[];
  readonly attempts: readonly { readonly id: string; readonly holds: boolean }[];
  readonly symbols: readonly { readonly id: string; readonly attempt: string; readonly value: number }[];
  readonly paragraphs: readonly {
    readonly id: string;
    readonly attempt: string;
    readonly sentences: readonly string[];
    readonly lines: readonly ExportedLine[];
  }[];
}

/** The data of a derivation, through its JSON text. */
export const exported = (derivation: Derivation): Exported =>
  JSON.parse(JSON.stringify(exportDerivation(derivation))) as Exported;

/** The lines of one attempt, in order. */
export const linesOf = (data: Exported, attempt: string): ExportedLine[] =>
  data.paragraphs.flatMap((p) => p.lines).filter((l) => l.attempt === attempt);

/** The values of one attempt's symbols. */
export const scopeOf = (data: Exported, attempt: string): Record<string, number> =>
  Object.fromEntries(data.symbols.filter((s) => s.attempt === attempt).map((s) => [s.id, s.value]));
