import type { Settings } from "../index.ts";

/** A document of a batch: where it stands, and its text, or null where a file has yet to be read. */
export interface BatchDocument {
  readonly file: string;
  /** The line of a file that holds a document a line, from 1; null where the file is one document. */
  readonly line: number | null;
  readonly text: string | null;
  /** Why there is no document here, found while its file was read; null if all is well. */
  readonly unreadable: string | null;
}

/** Some documents for one thread to derive. */
export interface BatchTask {
  readonly documents: readonly BatchDocument[];
  readonly settings: Settings;
  /** Whether each gives its whole derivation, or the case and the answers alone. */
  readonly whole: boolean;
}

/** What came of a task. */
export interface BatchResult {
  /** A line of JSON a document, in their order, each with its line end. */
  readonly text: string;
  readonly documents: number;
  /** How many of them were refused, or could not be derived. */
  readonly faulty: number;
}
