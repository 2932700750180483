// What speaks for isolating an unknown in one equation rather than another.
import { decimal } from "../../algebra/evaluate.ts";
import { isPlain } from "../../algebra/linear.ts";
import type { AttemptValues } from "../values.ts";
import { openIn } from "./terms.ts";
import type { Equality } from "./types.ts";

/** Whether an unknown stands once in an equation, with a factor of one. */
export function isPlainIn(e: Equality, unknown: string): boolean {
  const mine = [...e.left, ...e.right].filter((t) => t.unknown === unknown);
  return mine.length === 1 && mine.every(isPlain);
}

/** Whether the terms of an unknown in an equation cancel at these values, though not by their letters. */
export function vanishes(e: Equality, unknown: string, values: AttemptValues): boolean {
  const signed = [...e.left.map((t) => [1, t] as const), ...e.right.map((t) => [-1, t] as const)].filter(
    ([, t]) => t.unknown === unknown,
  );
  const parts = signed.map(([side, t]) => side * t.sign * decimal(t.factor, values));
  const inner = signed.flatMap(([, t]) => (t.factor.kind === "sum" ? t.factor.terms : [t.factor]));
  const size = Math.max(...inner.map((f) => Math.abs(decimal(f, values))));
  return Math.abs(parts.reduce((a, b) => a + b, 0)) <= 1e-12 * size;
}

/** Whether an unknown is all there is on the left. */
export const standsAlone = (e: Equality, unknown: string): boolean =>
  e.left.length === 1 && e.left[0]?.unknown === unknown;

/** Ties of motion first, then what has no mass, then friction, then the laws of what has. */
const RANK = { rope: 0, touch: 0, stick: 0, balance: 1, friction: 2, law: 3 } as const;

/** How soon to use an equation: by what it is, then a plain unknown, then few unknowns, then few terms. */
export function rankOf(e: Equality, plain: boolean, found: { has(id: string): boolean }): number {
  return RANK[e.kind] * 1000 + (plain ? 0 : 500) + openIn(e, found).length * 20 + e.left.length + e.right.length;
}

/** Equations but those that hold an unknown of their own: these can wait until the rest is solved. */
export function withoutLonely(open: readonly Equality[], found: { has(id: string): boolean }): readonly Equality[] {
  const isLonely = (e: Equality): boolean =>
    openIn(e, found).some((u) => !open.some((other) => other !== e && openIn(other, found).includes(u)));
  const left = open.filter((e) => !isLonely(e));
  return left.length === open.length ? open : withoutLonely(left, found);
}
