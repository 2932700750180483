// A batch: a line of JSON a document on standard output, how far it is on standard error.
import { pipeline } from "node:stream/promises";
import { atOnce, deriveBatch, documentsOf, sourcesOf } from "../batch/index.ts";
import type { BatchResult, Source } from "../batch/index.ts";
import type { Request } from "./arguments.ts";
import { progressOn } from "./progress.ts";
import { refuse, systemCode } from "./refuse.ts";

/** Derives all documents that were asked for. The program's exit code is 1 if any of them had faults. */
export async function deriveMany(request: Request): Promise<void> {
  const { files, as, lines, progress, settings, whole, workers } = request;
  if (as !== null && as !== "json") refuse([`--as: found ${as} for a batch, accepted: json`]);
  const sources = await sourcesIn(files, lines);
  const shown = progress || process.stderr.isTTY ? progressOn(process.stderr, knownCount(sources)) : null;
  let faulty = 0;
  async function* texts(results: AsyncIterable<BatchResult>): AsyncGenerator<string> {
    for await (const result of results) {
      faulty += result.faulty;
      shown?.add(result);
      yield result.text;
    }
  }
  try {
    const results = deriveBatch(documentsOf(sources, atOnce(whole)), { settings, whole, workers });
    await pipeline(texts(results), process.stdout, { end: false });
  } catch (error) {
    // Whoever read the output has seen enough.
    if (systemCode(error) !== "EPIPE" && systemCode(error) !== "ERR_STREAM_PREMATURE_CLOSE") throw error;
  }
  shown?.end();
  if (faulty > 0) process.exitCode = 1;
}

async function sourcesIn(files: readonly string[], lines: boolean): Promise<readonly Source[]> {
  const accepted =
    "a problem document, a file with a document a line (.jsonl), a folder of them, or - for standard input";
  const sources: Source[] = [];
  const refusals: string[] = [];
  for (const file of files) {
    try {
      const found = await sourcesOf([file], lines);
      if (found.length === 0) refusals.push(`${file}: found a folder without documents, accepted: ${accepted}`);
      for (const source of found) sources.push(source);
    } catch (error) {
      refusals.push(`${file}: found no file that can be read (${systemCode(error)}), accepted: ${accepted}`);
    }
  }
  return refusals.length > 0 ? refuse(refusals) : sources;
}

/** How many documents there are, where that is known before they are read. */
const knownCount = (sources: readonly Source[]): number | null =>
  sources.every((s) => s.kind === "document") ? sources.length : null;
