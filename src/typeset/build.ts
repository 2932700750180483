// KaTeX at build: imported by Astro pages and blocks alone, so that no page ships it before it is needed.
import katex from "katex";
import { FormCache } from "./form-cache.ts";

/** The forms typeset in this build. */
export const buildCache = new FormCache(katex);
