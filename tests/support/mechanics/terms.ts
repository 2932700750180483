import type { Surd } from "../../../shared/exact/index.ts";

/** The value of an exact number term by term, and the sum of the sizes of its terms. */
export function termsOf({ terms }: Surd): { readonly total: number; readonly size: number } {
  let [total, size] = [0, 0];
  for (const { coefficient, radicand } of terms) {
    const value = (Number(coefficient.s * coefficient.n) / Number(coefficient.d)) * Math.sqrt(Number(radicand));
    total += value;
    size += Math.abs(value);
  }
  return { total, size };
}
