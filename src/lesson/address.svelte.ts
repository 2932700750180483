// The only user of the address bar: keeps a scene's state in it, and in the browser's store.
import { remember } from "./memory.ts";
import type { Scene } from "./scene-state.svelte.ts";

const SETTLE = 300;

/** Writes the scene's state into the address a little after each change. Returns the function that ends it. */
export function keepAddress(scene: Scene): () => void {
  return $effect.root(() => {
    $effect(() => {
      const { query, touched } = scene;
      if (!touched) return undefined;
      const timer = window.setTimeout(() => {
        const { pathname, hash } = window.location;
        window.history.replaceState(window.history.state, "", `${pathname}${query === "" ? "" : `?${query}`}${hash}`);
        remember(scene.id, query);
      }, SETTLE);
      return () => window.clearTimeout(timer);
    });
  });
}
