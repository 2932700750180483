// What the inequalities say of an attempt, decided before it is written down; the module `cases` makes it.

/** The sign of a rope's pull as the attempt's equations would have it. */
export interface PullSign {
  readonly rope: string;
  readonly sign: -1 | 0 | 1;
}

/** How an attempt stands against "ropes only pull". */
export type Verdict =
  | { readonly kind: "holds" }
  | { readonly kind: "all-zero" }
  | { readonly kind: "negative"; readonly evidence: boolean }
  | { readonly kind: "off-line" }
  | { readonly kind: "combination"; readonly sense: "sum" | "difference" }
  | { readonly kind: "push-line" };

/** Whether the attempt ends in a contradiction. */
export const fails = (verdict: Verdict): boolean =>
  verdict.kind === "negative" || verdict.kind === "off-line" || verdict.kind === "push-line";
