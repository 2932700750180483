// Solves rows of numbers: one solution, many, or none. Gauss–Jordan elimination with full pivoting on rows and columns brought to size 1.
import type { Row } from "./rows.ts";

/** What rows of numbers come to. */
export type Solution =
  | { readonly kind: "one"; readonly values: ReadonlyMap<string, number> }
  | {
      readonly kind: "many";
      /** One of the solutions. */
      readonly values: ReadonlyMap<string, number>;
      /** Directions in which one may go from it and still solve all rows. */
      readonly free: readonly ReadonlyMap<string, number>[];
    }
  | { readonly kind: "none"; readonly row: string };

/** Smaller than this beside 1, a number counts as what rounding left of zero. */
const TINY = 1e-11;

/** A size to divide by: 1 where there is none. */
const divisorOf = (size: number | undefined): number => (size === undefined || size === 0 ? 1 : size);

/** Solves the rows for all unknowns that occur in them; what is left over of the rows is solved for once more and added. */
export function solveRows(rows: readonly Row[]): Solution {
  const first = solveOnce(rows);
  if (first.kind !== "one") return first;
  const rest = rows.map((r): Row => {
    const sum = [...r.coefficients].reduce((total, [u, c]) => total + c * (first.values.get(u) ?? 0), 0);
    return { ...r, constant: r.constant - sum };
  });
  const more = solveOnce(rest);
  if (more.kind !== "one") return first;
  return {
    kind: "one",
    values: new Map(
      [...first.values].map(([u, x]): [string, number] => [u, x === 0 ? 0 : x + (more.values.get(u) ?? 0)]),
    ),
  };
}

function solveOnce(rows: readonly Row[]): Solution {
  const unknowns = [...new Set(rows.flatMap((r) => [...r.coefficients.keys()]))];
  const columns = unknowns.map((u) => Math.max(...rows.map((r) => Math.abs(r.coefficients.get(u) ?? 0))));
  const matrix = rows.map((r) => {
    const scaled = unknowns.map((u, j) => (r.coefficients.get(u) ?? 0) / divisorOf(columns[j]));
    const size = Math.max(...scaled.map(Math.abs), 0) || 1;
    return { id: r.id, left: scaled.map((x) => x / size), right: r.constant / size };
  });
  const size = Math.max(...matrix.map((r) => Math.abs(r.right)), 0) || 1;
  const pivots = reduce(matrix, unknowns.length);
  const open = matrix.find((r, i) => !pivots.some((p) => p.row === i) && Math.abs(r.right) > TINY * size * 10);
  if (open !== undefined) return { kind: "none", row: open.id };
  const valueAt = (j: number, raw: number): number => raw / divisorOf(columns[j]);
  const values = new Map(
    unknowns.map((u, j): [string, number] => {
      const pivot = pivots.find((p) => p.column === j);
      const raw = pivot === undefined ? 0 : (matrix[pivot.row]?.right ?? 0);
      return [u, valueAt(j, Math.abs(raw) <= TINY * size ? 0 : raw)];
    }),
  );
  const loose = unknowns.flatMap((_, j) => (pivots.some((p) => p.column === j) ? [] : [j]));
  if (loose.length === 0) return { kind: "one", values };
  const free = loose.map(
    (k) =>
      new Map(
        unknowns.flatMap((u, j): [string, number][] => {
          if (j === k) return [[u, valueAt(j, 1)]];
          const pivot = pivots.find((p) => p.column === j);
          const raw = pivot === undefined ? 0 : -(matrix[pivot.row]?.left[k] ?? 0);
          return Math.abs(raw) <= TINY ? [] : [[u, valueAt(j, raw)]];
        }),
      ),
  );
  return { kind: "many", values, free };
}

interface Pivot {
  readonly row: number;
  readonly column: number;
}

interface ScaledRow {
  readonly id: string;
  readonly left: number[];
  right: number;
}

/** Brings the matrix to reduced form in place; gives the pivots. */
function reduce(matrix: ScaledRow[], width: number): Pivot[] {
  const pivots: Pivot[] = [];
  for (;;) {
    const next = largest(matrix, width, pivots);
    if (next === null) return pivots;
    pivots.push(next);
    const row = matrix[next.row];
    if (row === undefined) return pivots;
    const lead = row.left[next.column] ?? 1;
    for (let j = 0; j < width; j++) row.left[j] = (row.left[j] ?? 0) / lead;
    row.right /= lead;
    matrix.forEach((other, i) => {
      const by = other.left[next.column] ?? 0;
      if (i === next.row || by === 0) return;
      for (let j = 0; j < width; j++) other.left[j] = (other.left[j] ?? 0) - by * (row.left[j] ?? 0);
      other.left[next.column] = 0;
      other.right -= by * row.right;
    });
  }
}

function largest(matrix: readonly ScaledRow[], width: number, pivots: readonly Pivot[]): Pivot | null {
  let best: Pivot | null = null;
  let size = TINY;
  matrix.forEach((row, i) => {
    if (pivots.some((p) => p.row === i)) return;
    for (let j = 0; j < width; j++) {
      if (pivots.some((p) => p.column === j)) continue;
      const x = Math.abs(row.left[j] ?? 0);
      if (x > size) {
        size = x;
        best = { row: i, column: j };
      }
    }
  });
  return best;
}
