// Terms of equations with unknowns on both sides: which are open, and how they are gathered.
import { opposite, unknownsOf } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import type { Expr } from "../../algebra/expr.ts";
import { factorsOf } from "./order.ts";
import type { Equality } from "./types.ts";

/** The unknowns of an equality that no line has given yet. */
export const openIn = (e: Equality, found: { has(id: string): boolean }): string[] =>
  unknownsOf([...e.left, ...e.right]).filter((u) => !found.has(u));

/** An equality with one unknown on its own side. */
export interface Gathered {
  readonly mine: readonly Term[];
  readonly rest: readonly Term[];
  /** Terms that changed sides, as they stood. */
  readonly moved: readonly Term[];
  /** Whether the sides were exchanged. */
  readonly flipped: boolean;
}

/** Brings all terms of an unknown to one side and everything else to the other, so that not every term of it is negative. */
export function gather(e: Equality, unknown: string): Gathered {
  const mineLeft = e.left.filter((t) => t.unknown === unknown);
  const mineRight = e.right.filter((t) => t.unknown === unknown);
  const restLeft = e.left.filter((t) => t.unknown !== unknown);
  const restRight = e.right.filter((t) => t.unknown !== unknown);
  const toLeft: Gathered = {
    mine: byBody([...mineLeft, ...mineRight.map(opposite)]),
    rest: [...restLeft.map(opposite), ...restRight],
    moved: [...mineRight, ...restLeft],
    flipped: false,
  };
  const toRight: Gathered = {
    mine: byBody([...mineRight, ...mineLeft.map(opposite)]),
    rest: [...restLeft, ...restRight.map(opposite)],
    moved: [...mineLeft, ...restRight],
    flipped: true,
  };
  if (mineLeft.length === 0 && toRight.mine.some((t) => t.sign > 0)) return toRight;
  return toLeft.mine.every((t) => t.sign < 0) ? toRight : toLeft;
}

/** Terms in the order of the numbers of their masses, those without a mass as they stand: m1 a + m2 a. */
function byBody(terms: readonly Term[]): readonly Term[] {
  const numbers = terms.map((t) => massNumber(t.factor));
  if (numbers.some((n) => n === null)) return terms;
  return terms
    .map((t, i) => ({ t, n: numbers[i] ?? 0 }))
    .sort((a, b) => a.n - b.n)
    .map(({ t }) => t);
}

/** The number of the first mass in a product: 2 of 4 m2 cos 30°; null where there is none. */
function massNumber(e: Expr): number | null {
  for (const f of factorsOf(e)) {
    const letter = f.kind === "quotient" ? f.over : f;
    const match = letter.kind === "symbol" ? /^[mW](\d*)$/.exec(letter.id) : null;
    if (match !== null) return Number(match[1] ?? "0");
  }
  return null;
}
