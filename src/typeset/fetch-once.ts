// Something that is fetched late and once. A fetch that failed is forgotten, so that the next need tries again, and whoever listens is told.

type Listener = (failed: boolean) => void;
const listeners = new Set<Listener>();

/** Hears of every late fetch that fails (true) or comes after all (false), until the returned function is called. */
export function onLateFetch(listener: Listener): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

const tell = (failed: boolean): void => listeners.forEach((listener) => listener(failed));

/** Makes a function that loads once and then gives the same; a load that failed is tried again at the next call. */
export function fetchOnce<T>(load: () => Promise<T>): () => Promise<T> {
  let coming: Promise<T> | null = null;
  let hasFailed = false;
  return () => {
    coming ??= load().then(
      (loaded) => {
        if (hasFailed) tell(false);
        return loaded;
      },
      (error: unknown) => {
        coming = null;
        hasFailed = true;
        tell(true);
        throw error;
      },
    );
    return coming;
  };
}
