// The letters of a body: plain where it is the only one that needs them, numbered otherwise.
import { isZeroRational } from "../../../shared/exact/index.ts";
import type { Body, Problem } from "../../../shared/problem/index.ts";
import { product, quotient, symbol } from "../../algebra/expr.ts";
import type { BodyLetters } from "../set-up-types.ts";

const isHeavy = ({ load }: Body): boolean => load.kind === "weight" || !isZeroRational(load.mass);

/** Letters of the body with this number. One body with a mass is m, W, a; of several each carries its number. */
export function lettersOf(problem: Problem, number: number): BodyLetters {
  const body = problem.bodies[number - 1];
  if (body === undefined) throw new Error(`there is no body ${number}`);
  const heavy = problem.bodies.filter(isHeavy);
  const own = heavy.length > 1 || !isHeavy(body) ? String(number) : "";
  const byWeight = body.load.kind === "weight";
  const mass = byWeight ? quotient(symbol(`W${own}`), symbol("g")) : symbol(`m${own}`);
  const lines = problem.bodies.length > 1 ? String(number) : "";
  return {
    mass,
    weight: byWeight ? symbol(`W${own}`) : product([symbol(`m${own}`), symbol("g")]),
    weightId: `W${own}`,
    acceleration: `a${lines}`,
  };
}
