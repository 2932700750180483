// TeX of single expressions, outside any line: answers in exports.
import type { Surd } from "../../../shared/exact/index.ts";
import type { CaseResult } from "../../cases/types.ts";
import { exact } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { letterOf } from "./letters.ts";
import { lineTex } from "./line.ts";
import type { SlottedTex } from "./line.ts";
import { evenly, withGuard } from "./rounding.ts";

function componentIds(result: CaseResult): Set<string> {
  return new Set(result.world.ropes.flatMap((r) => [`${r.id}x`, `${r.id}y`]));
}

/** An expression with angles as letters. */
export function exprTex(e: Expr, result: CaseResult): SlottedTex {
  const attempt = result.attempts[result.attempts.length - 1];
  if (attempt === undefined) throw new Error("a result has an attempt");
  return lineTex(
    { relation: "=", sides: [e], angles: "letters", rounding: evenly(withGuard({ figures: 3, mark: "." }, 2)) },
    { values: attempt.values, components: componentIds(result), figures: 3, mark: "." },
  );
}

/** An exact value. */
export const surdTexOf = (x: Surd): string =>
  lineTex(
    { relation: "=", sides: [exact(x)], angles: "letters", rounding: evenly(withGuard({ figures: 3, mark: "." }, 2)) },
    { values: { symbols: new Map(), angles: new Map() }, components: new Set(), figures: 3, mark: "." },
  ).form;

/** A letter. */
export const letterTex = (id: string, result: CaseResult): string => letterOf(id, componentIds(result)).tex;
