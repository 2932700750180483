// The last state of a lesson, kept in the browser: offered, never applied by itself. A store that refuses is no store.

const KEY = "tautline.last.";

/** The query kept for a scene, or null if there is none or the browser keeps nothing. */
export function recall(scene: string): string | null {
  try {
    return window.localStorage.getItem(KEY + scene);
  } catch (error) {
    if (error instanceof DOMException) return null;
    throw error;
  }
}

/** Keeps a query for a scene. Says whether the browser took it. */
export function remember(scene: string, query: string): boolean {
  try {
    if (query === "") window.localStorage.removeItem(KEY + scene);
    else window.localStorage.setItem(KEY + scene, query);
    return true;
  } catch (error) {
    if (error instanceof DOMException) return false;
    throw error;
  }
}
