// Many documents over many threads, their results in order, memory bounded.
import { pMapIterable } from "p-map";
import { Piscina } from "piscina";
import type { Settings } from "../index.ts";
import type { BatchDocument, BatchResult, BatchTask } from "./types.ts";

export { documentsOf, isBatch, sourcesOf } from "./documents.ts";
export type { Source } from "./documents.ts";
export type { BatchDocument, BatchResult } from "./types.ts";

/** So many documents go to a thread at once: enough that passing them on costs little, few enough to keep memory small. */
export const atOnce = (whole: boolean): number => (whole ? 8 : 64);
/** So many tasks a thread may be under way, so that none waits for its next; and so many more may wait to be written. */
const UNDER_WAY = 2;
const WAITING = 2;

/** How a batch is to be derived. */
export interface BatchOptions {
  readonly settings: Settings;
  readonly whole: boolean;
  /** How many threads at most; they are started as work comes. */
  readonly workers: number;
}

/** Derives lists of documents; gives a result a list, in order, and takes the next list no sooner than there is room for it. */
export async function* deriveBatch(
  documents: AsyncIterable<readonly BatchDocument[]>,
  { settings, whole, workers }: BatchOptions,
): AsyncGenerator<BatchResult> {
  const pool = new Piscina<BatchTask, BatchResult>({
    filename: new URL("./worker.ts", import.meta.url).href,
    minThreads: 1,
    maxThreads: workers,
    concurrentTasksPerWorker: UNDER_WAY,
    // A thread that has nothing to do for a moment is kept until the batch ends.
    idleTimeout: Infinity,
  });
  try {
    yield* pMapIterable(documents, (some) => pool.run({ documents: some, settings, whole }), {
      concurrency: workers * UNDER_WAY,
      backpressure: workers * (UNDER_WAY + WAITING),
    });
  } finally {
    await pool.destroy();
  }
}
