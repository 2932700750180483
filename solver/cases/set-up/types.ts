// What a set-up turns out to be, and how a hypothesis about it can fail.

/** What an inequality of a hypothesis says of its own solution. */
export type Failure =
  /** A taut rope would have to push. */
  | { readonly kind: "pushing-rope"; readonly id: string }
  /** The ends of a slack rope would move apart. */
  | { readonly kind: "parting-rope"; readonly id: string }
  /** A surface would have to pull. */
  | { readonly kind: "pulling-surface"; readonly id: string }
  /** A body that has lifted off would move into the surface. */
  | { readonly kind: "sinking"; readonly id: string }
  /** Static friction would have to be larger than it can be; `sense` is the way it would act along the tangent. */
  | { readonly kind: "too-rough"; readonly id: string; readonly sense: 1 | -1 }
  /** A body would slide the way its kinetic friction points. */
  | { readonly kind: "wrong-way"; readonly id: string }
  /** The equations contradict each other. */
  | { readonly kind: "no-solution"; readonly row: string };
