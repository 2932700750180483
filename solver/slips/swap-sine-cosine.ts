// A slip as one row of the rules replaced: sine and cosine exchanged for one rope.
import { standardRules } from "../2-forces/index.ts";
import type { Rules } from "../2-forces/index.ts";
import type { Expr } from "../algebra/expr.ts";

/** Sine for cosine and cosine for sine; anything else as it is. */
function exchanged(factor: Expr): Expr {
  if (factor.kind !== "trig" || factor.fn === "tan") return factor;
  return { ...factor, fn: factor.fn === "sin" ? "cos" : "sin" };
}

/** The rules of someone who takes the cosine for the vertical part and the sine for the horizontal part of one rope's pull. */
export function swapSineCosine(rope: string): Rules {
  return {
    ...standardRules,
    component: (of, axis) => {
      const right = standardRules.component(of, axis);
      return of.id === rope ? { ...right, factor: exchanged(right.factor) } : right;
    },
  };
}
