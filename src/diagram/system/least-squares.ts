// Places that come as near as they can to what is wished, under equations that hold exactly and bounds that are kept where they can be.
// The equations are solved for as many unknowns as there are independent ones (Gauss and Jordan); what is left free is found by least
// squares, and the bounds enter one after the other, again and again, each as far as it still pushes (Hildreth's method, 1957).

/** A sum of unknowns, each with its factor. */
export type Terms = readonly (readonly [unknown: number, factor: number])[];

/** A sum that is equal to a value, or at least as large, or wished to be near it. */
export interface Row {
  readonly terms: Terms;
  readonly value: number;
}

/** What is wished, with its weight. */
export interface Wish extends Row {
  readonly weight: number;
}

/** All that is asked of the unknowns. */
export interface Asked {
  readonly count: number;
  readonly equal: readonly Row[];
  readonly atLeast: readonly Row[];
  readonly wishes: readonly Wish[];
}

const tiny = 1e-9;
/** Every unknown is drawn to zero this much, so that none is left open. */
const stay = 1e-4;
const sweeps = 300;
/** Bounds that are missed by less are kept well enough for a picture. */
const enough = 1e-3;

/** The unknowns, and how many equations were passed over because they contradict earlier ones. */
export interface Found {
  readonly unknowns: readonly number[];
  readonly contradictions: number;
}

/** Finds the unknowns. */
export function leastSquares(asked: Asked): Found {
  const free = freeForm(asked);
  const size = free.columns.length;
  const normal = Array.from({ length: size }, (_, i): number[] =>
    Array.from({ length: size }, (_, j) => (i === j ? stay : 0)),
  );
  const right = Array.from({ length: size }, () => 0);
  for (const wish of asked.wishes) {
    const { factors, value } = reduced(wish, free, size);
    factors.forEach((a, i) => {
      if (a === 0) return;
      right[i] = (right[i] ?? 0) + wish.weight * a * value;
      const row = normal[i] ?? [];
      factors.forEach((b, j) => (row[j] = (row[j] ?? 0) + wish.weight * a * b));
    });
  }
  const root = cholesky(normal);
  const found = solveWith(root, right);
  keepBounds(asked, free, root, found);
  const unknowns = free.rows.map(({ value, factors }) =>
    factors.reduce((sum, f, i) => sum + f * (found[i] ?? 0), value),
  );
  return { unknowns, contradictions: free.contradictions };
}

function keepBounds(asked: Asked, free: FreeForm, root: readonly number[][], found: number[]): void {
  const bounds = asked.atLeast.flatMap((bound) => {
    const { factors, value } = reduced(bound, free, found.length);
    const way = solveWith(root, factors);
    const gain = product(factors, way);
    return gain < tiny ? [] : [{ factors, value, way, gain, push: 0 }];
  });
  for (let sweep = 0; sweep < sweeps; sweep += 1) {
    let worst = 0;
    for (const bound of bounds) {
      const missing = bound.value - product(bound.factors, found);
      const push = Math.max(0, bound.push + missing / bound.gain);
      const change = push - bound.push;
      if (change === 0) continue;
      bound.push = push;
      for (let i = 0; i < found.length; i += 1) found[i] = (found[i] ?? 0) + change * (bound.way[i] ?? 0);
      worst = Math.max(worst, Math.abs(change) * bound.gain);
    }
    if (worst < enough) return;
  }
}

function product(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

/** Every unknown as a value and factors of the free ones. */
interface FreeForm {
  readonly columns: readonly number[];
  readonly contradictions: number;
  readonly rows: readonly { readonly value: number; readonly factors: readonly number[] }[];
}

function freeForm({ count, equal }: Asked): FreeForm {
  const solved = new Map<number, number[]>();
  let contradictions = 0;
  for (const { terms, value } of equal) {
    const row = Array.from({ length: count + 1 }, () => 0);
    for (const [unknown, factor] of terms) row[unknown] = (row[unknown] ?? 0) + factor;
    row[count] = value;
    for (const [column, known] of solved) subtract(row, known, row[column] ?? 0);
    const column = largestOf(row, count);
    const pivot = row[column] ?? 0;
    if (Math.abs(pivot) < 1e-7) {
      if (Math.abs(row[count] ?? 0) > 1e-6) contradictions += 1;
      continue;
    }
    const unitRow = row.map((entry) => entry / pivot);
    for (const known of solved.values()) subtract(known, unitRow, known[column] ?? 0);
    solved.set(column, unitRow);
  }
  const columns = Array.from({ length: count }, (_, i) => i).filter((i) => !solved.has(i));
  const rows = Array.from({ length: count }, (_, i) => {
    const row = solved.get(i);
    if (row === undefined) return { value: 0, factors: columns.map((column) => (column === i ? 1 : 0)) };
    return { value: row[count] ?? 0, factors: columns.map((column) => 0 - (row[column] ?? 0)) };
  });
  return { columns, rows, contradictions };
}

function subtract(row: number[], other: readonly number[], factor: number): void {
  if (factor === 0) return;
  other.forEach((entry, i) => {
    const rest = (row[i] ?? 0) - factor * entry;
    row[i] = Math.abs(rest) < 1e-13 ? 0 : rest;
  });
}

function largestOf(row: readonly number[], count: number): number {
  let best = 0;
  for (let i = 1; i < count; i += 1) if (Math.abs(row[i] ?? 0) > Math.abs(row[best] ?? 0)) best = i;
  return best;
}

function reduced(row: Row, free: FreeForm, size: number): { factors: number[]; value: number } {
  const factors = Array.from({ length: size }, () => 0);
  let { value } = row;
  for (const [unknown, factor] of row.terms) {
    const form = free.rows[unknown];
    if (form === undefined) continue;
    value -= factor * form.value;
    form.factors.forEach((f, i) => (factors[i] = (factors[i] ?? 0) + factor * f));
  }
  return { factors, value };
}

function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  const root: number[][] = [];
  matrix.forEach((row, i) => {
    const own: number[] = [];
    root.push(own);
    for (let j = 0; j <= i; j += 1) {
      const other = root[j] ?? [];
      let sum = row[j] ?? 0;
      for (let k = 0; k < j; k += 1) sum -= (own[k] ?? 0) * (other[k] ?? 0);
      own[j] = i === j ? Math.sqrt(Math.max(sum, tiny * tiny)) : sum / (other[j] ?? 1);
    }
  });
  return root;
}

function solveWith(root: readonly (readonly number[])[], right: readonly number[]): number[] {
  const out = [...right];
  root.forEach((row, i) => {
    let sum = out[i] ?? 0;
    for (let k = 0; k < i; k += 1) sum -= (row[k] ?? 0) * (out[k] ?? 0);
    out[i] = sum / (row[i] ?? 1);
  });
  for (let i = out.length - 1; i >= 0; i -= 1) {
    let sum = out[i] ?? 0;
    for (let k = i + 1; k < out.length; k += 1) sum -= (root[k]?.[i] ?? 0) * (out[k] ?? 0);
    out[i] = sum / (root[i]?.[i] ?? 1);
  }
  return out;
}
