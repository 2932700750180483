// KaTeX in the browser: fetched when it is first needed, or at leisure once the reader has touched a control.
import type { MathPrinter } from "./slots.ts";

let coming: Promise<MathPrinter> | null = null;

/** Fetches KaTeX once. */
export function fetchKatex(): Promise<MathPrinter> {
  coming ??= import("katex").then((module) => module.default);
  return coming;
}
