// What passages about a set-up of any number of bodies are about.
import type { Tie } from "../../3-equations/types.ts";

/** What a passage about a set-up of any number of bodies is about. */
export type SetUpPassageData =
  | { readonly kind: "body-law"; readonly body: string; readonly laws: readonly string[] }
  | { readonly kind: "ties"; readonly ties: readonly Tie[] }
  | { readonly kind: "friction-laws"; readonly contacts: readonly string[]; readonly limit: boolean }
  | { readonly kind: "count-all"; readonly unknowns: readonly string[]; readonly equationCount: number }
  | { readonly kind: "given-angles" }
  | { readonly kind: "parts"; readonly refs: readonly string[] }
  | { readonly kind: "parts-in-laws" }
  | { readonly kind: "turned-laws"; readonly body: string }
  | { readonly kind: "settle-size"; readonly unknown: string; readonly equation: string; readonly zero: boolean }
  | { readonly kind: "isolate-size"; readonly unknown: string; readonly equation: string }
  | { readonly kind: "zero-size"; readonly unknown: string }
  | { readonly kind: "vanishing"; readonly unknown: string }
  | { readonly kind: "eliminate-size"; readonly unknown: string; readonly line: string }
  | { readonly kind: "spare"; readonly equations: readonly string[] }
  | { readonly kind: "open-sizes"; readonly unknowns: readonly string[] }
  | { readonly kind: "unmentioned"; readonly unknowns: readonly string[] }
  | { readonly kind: "clash"; readonly equation: string }
  | { readonly kind: "breach"; readonly breach: string; readonly of: string }
  | { readonly kind: "sizes"; readonly unknowns: readonly string[] }
  | { readonly kind: "all-answers"; readonly unknowns: readonly string[] }
  | { readonly kind: "check-laws" }
  | { readonly kind: "check-conditions"; readonly contacts: readonly string[] };
