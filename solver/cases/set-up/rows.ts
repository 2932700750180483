// The equations of a set-up as rows of numbers, to judge a hypothesis by before anything of it is written down.
import type { SetUpEquation } from "../../3-equations/index.ts";
import { decimal } from "../../algebra/evaluate.ts";
import type { Values } from "../../algebra/evaluate.ts";

/** The coefficients of the unknowns add up, each times its unknown, to `constant`. */
export interface Row {
  readonly id: string;
  readonly coefficients: ReadonlyMap<string, number>;
  readonly constant: number;
}

/** A row for each equation. `values` holds every given. */
export function rowsOf(equations: readonly SetUpEquation[], values: Values): Row[] {
  return equations.map((equation) => rowOf(equation, values));
}

function rowOf(equation: SetUpEquation, values: Values): Row {
  const coefficients = new Map<string, number>();
  let constant = 0;
  let largest = 0;
  const add = (unknown: string | null, factor: number, known: () => number): void => {
    if (unknown === null) {
      constant -= factor * known();
      largest = Math.max(largest, Math.abs(factor * known()));
    } else coefficients.set(unknown, (coefficients.get(unknown) ?? 0) + factor);
  };
  switch (equation.kind) {
    case "law": {
      for (const { force, sign, factor } of equation.parts)
        add(force.unknown, sign * decimal(factor, values), () => decimal(force.size, values));
      const mass = equation.mass === null ? 0 : decimal(equation.mass, values);
      for (const { letter, unknown, sign, factor } of mass === 0 ? [] : equation.motion)
        add(unknown ? letter : null, -mass * sign * decimal(factor, values), () => known(letter, values));
      break;
    }
    case "rope":
    case "touch":
    case "stick":
      for (const { letter, unknown, sign, factor } of equation.terms)
        add(unknown ? letter : null, sign * decimal(factor, values), () => known(letter, values));
      break;
    case "friction":
      add(equation.friction, 1, () => 0);
      add(equation.normal, -known(equation.coefficient, values), () => 0);
  }
  // Known terms that cancel leave nothing, whatever rounding leaves of them.
  return { id: equation.id, coefficients, constant: Math.abs(constant) <= ROUNDING * largest ? 0 : constant };
}

const ROUNDING = 1e-13;

const known = (letter: string, values: Values): number => decimal({ kind: "symbol", id: letter }, values);
