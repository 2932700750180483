// Small linear systems in doubles, with full pivoting; what stays open is kept as steps.

/** A linear expression: coefficients by unknown, and a constant under "". */
export type Linear = Readonly<Record<string, number>>;

/** a·A + b·B + … */
export function combine(...parts: readonly (readonly [number, Linear])[]): Linear {
  const total: Record<string, number> = {};
  for (const [factor, part] of parts)
    if (factor !== 0)
      for (const [name, c] of Object.entries(part)) if (c !== 0) total[name] = (total[name] ?? 0) + factor * c;
  return total;
}

/** A constant. */
export const constant = (value: number): Linear => ({ "": value });

/** The value of an expression at a point. */
export const at = (e: Linear, point: Readonly<Record<string, number>>): number => {
  let total = 0;
  for (const [name, c] of Object.entries(e)) total += name === "" ? c : c * (point[name] ?? 0);
  return total;
};

/** The sum of the sizes of its terms at a point. */
export const sizeAt = (e: Linear, point: Readonly<Record<string, number>>): number => {
  let total = 0;
  for (const [name, c] of Object.entries(e)) total += Math.abs(name === "" ? c : c * (point[name] ?? 0));
  return total;
};

/** All solutions of "expression = 0, …": a point, and steps that may be added in any amount. */
export interface Solved {
  readonly point: Readonly<Record<string, number>>;
  readonly steps: readonly Readonly<Record<string, number>>[];
  /** Which equations decided, by index: as many as unknowns less steps, and none of them says what others say. */
  readonly used: readonly number[];
}

/** A pivot smaller than this beside its row's largest coefficient at first is none. */
const TINY = 1e-13;
/** Equations that say nothing new may be so far from true, beside the sizes of their terms. */
const LOOSE = 1e-9;
/** Or so far beside the largest that their constants were while they were eliminated: what should cancel does so to that. */
const NOISE = 1e-13;
const ZERO = 1e-14;

/**
 * Solves equations for the unknowns of the given names; null where they contradict each other. Forces are measured in
 * `force` newtons meanwhile: with the largest mass for it, they and accelerations are numbers of one size.
 */
export function solve(equations: readonly Linear[], names: readonly string[], force = 1): Solved | null {
  const width = names.length;
  const units = names.map((n) => (/^[xy]:/.test(n) ? 1 : force));
  const rows = equations.map((e) => {
    // The constant, and how large the parts are that it is made of.
    const row = [...names.map((n, j) => (e[n] ?? 0) * (units[j] ?? 1)), -(e[""] ?? 0), Math.abs(e[""] ?? 0)];
    const scale = Math.max(...row.slice(0, width).map(Math.abs));
    return scale === 0 ? row : row.map((c) => c / scale);
  });
  const pivots: { readonly row: number; readonly column: number }[] = [];
  const left = new Set(rows.keys());
  const columns = new Set(names.keys());
  for (;;) {
    let best = { row: -1, column: -1, size: TINY };
    for (const row of left)
      for (const column of columns) {
        const size = Math.abs(rows[row]?.[column] ?? 0);
        if (size > best.size) best = { row, column, size };
      }
    if (best.row < 0) break;
    left.delete(best.row);
    columns.delete(best.column);
    pivots.push(best);
    eliminate(rows, best.row, best.column);
  }
  const point: Record<string, number> = {};
  for (const n of names) point[n] = 0;
  for (const { row, column } of pivots) point[names[column] ?? ""] = (rows[row]?.[width] ?? 0) * (units[column] ?? 1);
  for (const row of left) {
    const equation = equations[row] ?? {};
    const scale = Math.max(...names.map((n, j) => Math.abs(equation[n] ?? 0) * (units[j] ?? 1)), 0) || 1;
    const allowed = LOOSE * sizeAt(equation, point) + NOISE * scale * (rows[row]?.[width + 1] ?? 0);
    if (Math.abs(at(equation, point)) > allowed) return null;
  }
  const steps = [...columns].map((free) => {
    const column = pivots.map((p) => -(rows[p.row]?.[free] ?? 0));
    const largest = Math.max(1, ...column.map(Math.abs));
    const step: Record<string, number> = { [names[free] ?? ""]: units[free] ?? 1 };
    pivots.forEach((p, i) => {
      const c = column[i] ?? 0;
      // What is that small beside the rest is a zero that rounding left.
      step[names[p.column] ?? ""] = Math.abs(c) < ZERO * largest ? 0 : c * (units[p.column] ?? 1);
    });
    return step;
  });
  return { point, steps, used: pivots.map((p) => p.row) };
}

function eliminate(rows: number[][], pivot: number, column: number): void {
  const from = rows[pivot] ?? [];
  const by = from[column] ?? 1;
  const size = from.length - 1;
  for (let j = 0; j < size; j++) from[j] = (from[j] ?? 0) / by;
  from[size] = (from[size] ?? 0) / Math.abs(by);
  rows.forEach((row, i) => {
    const factor = row[column] ?? 0;
    if (i === pivot || factor === 0) return;
    for (let j = 0; j < size; j++) row[j] = (row[j] ?? 0) - factor * (from[j] ?? 0);
    row[size] = (row[size] ?? 0) + Math.abs(factor) * (from[size] ?? 0);
    row[column] = 0;
  });
}
