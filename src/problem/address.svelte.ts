// Keeps the document in the address bar, and in the browser's store.
import { remember } from "../lesson/memory.ts";
import type { ProblemPage } from "./problem-page.svelte.ts";

const SETTLE = 400;
/** The name under which the browser's store keeps the last state. */
export const STORED_AS = "problem";

/** Writes the page's state into the address a little after each change; one too long for it is left out. Returns the function that ends it. */
export function keepAddress(page: ProblemPage): () => void {
  return $effect.root(() => {
    $effect(() => {
      const { query, touched } = page;
      if (!touched || query === null) return undefined;
      const timer = window.setTimeout(() => {
        const { pathname, hash } = window.location;
        window.history.replaceState(window.history.state, "", `${pathname}${query === "" ? "" : `?${query}`}${hash}`);
        remember(STORED_AS, query);
      }, SETTLE);
      return () => window.clearTimeout(timer);
    });
  });
}
