// Terms of equations with unknowns on both sides: gathered, multiplied, collected, divided, common factors taken out and cancelled.
import { isInteger, negative, product, quotient, same, sum, symbol, ONE } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { collect, opposite, sideExpr, unknownsOf } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
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
    mine: [...mineLeft, ...mineRight.map(opposite)],
    rest: [...restRight, ...restLeft.map(opposite)],
    moved: [...mineRight, ...restLeft],
    flipped: false,
  };
  const toRight: Gathered = {
    mine: [...mineRight, ...mineLeft.map(opposite)],
    rest: [...restLeft, ...restRight.map(opposite)],
    moved: [...mineLeft, ...restRight],
    flipped: true,
  };
  if (mineLeft.length === 0 && toRight.mine.some((t) => t.sign > 0)) return toRight;
  return toLeft.mine.every((t) => t.sign < 0) ? toRight : toLeft;
}

/** The factors of a product; any other expression alone. */
export const factorsOf = (e: Expr): readonly Expr[] => (e.kind === "product" ? e.factors : [e]);

/** A product without one of its factors; null if it does not have it. */
function without(e: Expr, factor: Expr): Expr | null {
  const factors = factorsOf(e);
  const at = factors.findIndex((f) => same(f, factor));
  if (at < 0) return null;
  return product(factors.filter((_, i) => i !== at));
}

/** Every term without a factor; null unless each has it. */
function allWithout(terms: readonly Term[], factor: Expr): Term[] | null {
  const made: Term[] = [];
  for (const t of terms) {
    if (t.unknown !== null && factor.kind === "symbol" && t.unknown === factor.id) {
      made.push({ sign: t.sign, unknown: null, factor: t.factor });
      continue;
    }
    const rest = without(t.factor, factor);
    if (rest === null) return null;
    made.push({ sign: t.sign, unknown: t.unknown, factor: rest });
  }
  return made;
}

/** The terms over a divisor, factors cancelled that all of them share with it. */
export function divided(terms: readonly Term[], divisor: Expr): Expr {
  let over = terms;
  let under = divisor;
  for (const factor of factorsOf(divisor)) {
    if (factor.kind === "integer" || over.length === 0) continue;
    const left = allWithout(over, factor);
    if (left === null) continue;
    over = left;
    under = without(under, factor) ?? ONE;
  }
  if (over.length === 0) return { kind: "integer", value: 0 };
  return quotient(commonOut(over), under);
}

/** The terms as one expression with the factors they all share in front: g (m2 − m1). */
export function commonOut(terms: readonly Term[]): Expr {
  const shared = sharedFactors(terms);
  if (terms.length < 2 || shared.length === 0) return sideExpr(terms);
  let inner = [...terms];
  for (const factor of shared) inner = allWithout(inner, factor) ?? inner;
  return product([...shared, sideExpr(inner)]);
}

/** Factors that every term has; whole numbers not counted. */
export function sharedFactors(terms: readonly Term[]): Expr[] {
  const [first, ...others] = terms;
  if (first === undefined) return [];
  const candidates = [...(first.unknown === null ? [] : [symbol(first.unknown)]), ...factorsOf(first.factor)];
  return candidates.filter((f) => f.kind !== "integer" && others.every((t) => allWithout([t], f) !== null));
}

/** Terms of one unknown taken together into a single one; null where there is only one, or nothing to join. */
export function joinTerms(terms: readonly Term[], unknown: string): Term[] | null {
  const mine = terms.filter((t) => t.unknown === unknown);
  if (mine.length < 2) return null;
  const { sign, factor } = combined(mine);
  const at = terms.findIndex((t) => t.unknown === unknown);
  return terms.flatMap((t, i): Term[] => {
    if (t.unknown !== unknown) return [t];
    return i === at && !isInteger(factor, 0) ? [{ sign, unknown, factor }] : [];
  });
}

/** The terms of one unknown as a sign and a factor: whole multiples of one factor added up, what cancels gone. */
export function combined(terms: readonly Term[]): { readonly sign: 1 | -1; readonly factor: Expr } {
  const groups: { base: Expr; count: number }[] = [];
  for (const t of terms) {
    const whole = factorsOf(t.factor).find((f) => f.kind === "integer");
    const base = product(factorsOf(t.factor).filter((f) => f !== whole));
    const count = t.sign * (whole?.kind === "integer" ? whole.value : 1);
    const known = groups.find((g) => same(g.base, base));
    if (known === undefined) groups.push({ base, count });
    else known.count += count;
  }
  const made = groups
    .filter((g) => g.count !== 0)
    .map(({ base, count }): Term => ({
      sign: count > 0 ? 1 : -1,
      unknown: null,
      factor: product([{ kind: "integer", value: Math.abs(count) }, base]),
    }));
  const [first] = made;
  if (first === undefined) return { sign: 1, factor: { kind: "integer", value: 0 } };
  const plusFirst = [...made].sort((a, b) => b.sign - a.sign);
  return made.length === 1 ? { sign: first.sign, factor: first.factor } : collect(plusFirst);
}

/** A term's sign put on an expression. */
export const signed = (t: Term, e: Expr): Expr => (t.sign < 0 ? negative(e) : e);

/** Terms as one expression in the order they stand, for lines in which one of them was just replaced. */
export const inOrder = (parts: readonly Expr[]): Expr => {
  const plus = parts.filter((p) => p.kind !== "negative");
  return sum([...plus, ...parts.filter((p) => p.kind === "negative")]);
};
