// What one thread does: reads documents, derives them, and writes a line of JSON each.
import { readFileSync, statSync } from "node:fs";
import type { Fault } from "../../shared/problem/index.ts";
import { readProblem } from "../../shared/problem/schema.ts";
import { exportDerivation } from "../exports/index.ts";
import { derive, solve } from "../index.ts";
import { compactData } from "./compact.ts";
import type { BatchDocument, BatchResult, BatchTask } from "./types.ts";

/** A file of more bytes than this is no document, and is not read. */
const LARGEST_FILE = 4_000_000;

/** Derives a task's documents. One that is refused, or on which the program fails, does not stop the rest. */
export default function deriveTask({ documents, settings, whole }: BatchTask): BatchResult {
  const lines: string[] = [];
  let faulty = 0;
  for (const document of documents) {
    const data = dataOf(document, settings, whole);
    if ("faults" in data || "failed" in data) faulty++;
    const { file, line } = document;
    lines.push(`${JSON.stringify({ file, ...(line === null ? {} : { line }), ...data })}\n`);
  }
  return { text: lines.join(""), documents: documents.length, faulty };
}

type Data = Readonly<Record<string, unknown>>;

function dataOf(document: BatchDocument, settings: BatchTask["settings"], whole: boolean): Data {
  if (document.unreadable !== null) return refused(document.unreadable);
  const text = document.text ?? textOf(document.file);
  if (typeof text !== "string") return refused(text.unreadable);
  const reading = readProblem(text);
  if (!reading.ok) return { faults: reading.faults };
  try {
    return whole ? exportDerivation(derive(reading.problem, settings)) : compactData(solve(reading.problem));
  } catch (error) {
    // A fault of the program: said beside the document it was found on, so that a long run keeps what it has.
    return { failed: error instanceof Error ? `${error.name}: ${error.message}` : String(error) };
  }
}

const refused = (found: string): { readonly faults: readonly Fault[] } => ({
  faults: [{ path: "", found, accepted: "a problem document" }],
});

function textOf(file: string): string | { readonly unreadable: string } {
  try {
    if (file !== "-") {
      const { size } = statSync(file);
      if (size > LARGEST_FILE) return { unreadable: `a file of ${size} bytes` };
    }
    return readFileSync(file === "-" ? 0 : file, "utf8").replace(/^\uFEFF/, "");
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    return { unreadable: `no file that can be read (${String(error.code)})` };
  }
}
