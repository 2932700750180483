// The documents of a batch, a few at a time, in the order in which they were given; nothing is read before it is wanted.
import { createReadStream } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { linesOf } from "./lines.ts";
import type { BatchDocument } from "./types.ts";

/** Where documents of a batch stand. */
export interface Source {
  readonly kind: "document" | "lines";
  /** As it is named in the output; "-" is standard input. */
  readonly file: string;
}

/** Whether a file of this name holds a document a line. */
const holdsLines = (file: string): boolean => /\.(jsonl|ndjson)$/i.test(file);

/** Whether a file or folder, as it was named, is a batch by itself. A file that is not there is none. */
export async function isBatch(file: string): Promise<boolean> {
  if (file === "-") return false;
  return holdsLines(file) || ((await stat(file).catch(() => null))?.isDirectory() ?? false);
}

/**
 * The sources in a list of files and folders; of a folder, its own .json, .jsonl and .ndjson files in the order of their
 * names. Throws the system's error for one that is not there.
 */
export async function sourcesOf(files: readonly string[], lines: boolean): Promise<readonly Source[]> {
  const found: Source[] = [];
  for (const file of files) {
    if (file === "-") found.push({ kind: lines ? "lines" : "document", file });
    else if ((await stat(file)).isDirectory()) {
      const names = (await readdir(file)).filter((name) => /\.json$/i.test(name) || holdsLines(name)).sort();
      // One by one: a folder may hold more files than a call takes arguments.
      for (const name of names) found.push(sourceOf(join(file, name)));
    } else found.push(sourceOf(file));
  }
  return found;
}

const sourceOf = (file: string): Source => ({ kind: holdsLines(file) ? "lines" : "document", file });

/** The documents of some sources in lists of at most `most`; lines are not held back until a list is full. */
export async function* documentsOf(sources: readonly Source[], most: number): AsyncGenerator<readonly BatchDocument[]> {
  let waiting: BatchDocument[] = [];
  for (const source of sources) {
    if (source.kind === "document") {
      waiting.push({ file: source.file, line: null, text: null, unreadable: null });
      if (waiting.length < most) continue;
    }
    if (waiting.length > 0) yield waiting;
    waiting = [];
    if (source.kind === "lines") yield* documentsIn(source.file, most);
  }
  if (waiting.length > 0) yield waiting;
}

async function* documentsIn(file: string, most: number): AsyncGenerator<readonly BatchDocument[]> {
  let last = 0;
  try {
    const stream = file === "-" ? process.stdin.setEncoding("utf8") : createReadStream(file, "utf8");
    for await (const lines of linesOf(stream as AsyncIterable<string>)) {
      const documents = lines.map(({ number, text, length }): BatchDocument => {
        const unreadable = text === null ? `a line of ${length} characters` : null;
        return { file, line: number, text, unreadable };
      });
      last = lines.at(-1)?.number ?? last;
      for (let from = 0; from < documents.length; from += most) yield documents.slice(from, from + most);
    }
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    yield [{ file, line: last + 1, text: null, unreadable: `no more that can be read (${String(error.code)})` }];
  }
}
