// KaTeX in the browser: fetched when it is first needed, or at leisure once the reader has touched a control.
import { fetchOnce } from "./fetch-once.ts";
import type { MathPrinter } from "./slots.ts";

/** Fetches KaTeX once; a fetch that failed is tried again at the next call. */
export const fetchKatex: () => Promise<MathPrinter> = fetchOnce(() => import("katex").then((module) => module.default));
