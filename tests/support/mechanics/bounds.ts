// How small and how large an expression can be while inequalities hold, by elimination of one unknown after another (Fourier, Motzkin).
import { combine } from "./linear.ts";
import type { Linear } from "./linear.ts";

/** Least and largest value; infinite where there is none. */
export type Interval = readonly [number, number];

/** An expression's interval where all of the expressions in `atLeastZero` are 0 or more; null where they never are. */
export function boundsOf(e: Linear, atLeastZero: readonly Linear[]): Interval | null {
  // The value itself is an unknown, eliminated last.
  const self = "=";
  let rows: Linear[] = [...atLeastZero, combine([1, { [self]: 1 }], [-1, e]), combine([-1, { [self]: 1 }], [1, e])];
  const names = new Set(rows.flatMap((r) => Object.keys(r)).filter((n) => n !== "" && n !== self));
  for (const name of names) rows = withoutUnknown(rows, name);
  let [least, largest] = [-Infinity, Infinity];
  for (const row of rows) {
    const c = row[self] ?? 0;
    const rest = row[""] ?? 0;
    if (c === 0 && rest < 0) return null;
    if (c > 0) least = Math.max(least, -rest / c);
    if (c < 0) largest = Math.min(largest, -rest / c);
  }
  const gap = 1e-9 * (Math.abs(least) + Math.abs(largest));
  return least > largest + (Number.isFinite(gap) ? gap : 0) ? null : [least, largest];
}

function withoutUnknown(rows: readonly Linear[], name: string): Linear[] {
  const of = (r: Linear): number => r[name] ?? 0;
  const kept = rows.filter((r) => of(r) === 0);
  for (const up of rows.filter((r) => of(r) > 0))
    for (const down of rows.filter((r) => of(r) < 0)) {
      const both: Record<string, number> = { ...combine([1 / of(up), up], [-1 / of(down), down]) };
      both[name] = 0;
      for (const [key, c] of Object.entries(both)) {
        // What cancels leaves no trace of rounding behind.
        const size = Math.abs((up[key] ?? 0) / of(up)) + Math.abs((down[key] ?? 0) / of(down));
        if (Math.abs(c) <= 1e-12 * size) both[key] = 0;
      }
      kept.push(both);
    }
  return kept;
}
