/**
 * Reading a problem document that nobody has checked yet: a file, standard input, a lesson at build. This face needs
 * the schema library; a page that only edits a checked problem uses `index.ts` alone.
 */
import { checkProblem } from "./check.ts";
import type { ProblemDocument } from "./document.ts";
import type { Reading } from "./fault.ts";
import { problemFromDocument } from "./from-document.ts";
import { parseJson } from "./json-text.ts";
import { documentSchema } from "./schema-document.ts";
import { faultsOf } from "./schema-faults.ts";

export { documentSchema } from "./schema-document.ts";
export { problemJsonSchema } from "./json-schema.ts";

/** The problem in a JSON text, or everything that is wrong with it. Takes any text; never throws. */
export function readProblem(text: string): Reading {
  const parsed = parseJson(text);
  return parsed.ok ? readProblemDocument(parsed.document) : { ok: false, faults: [parsed.fault] };
}

/** The same from parsed data; a number of more than 15 significant digits is refused, for it may have been rounded. */
export function readProblemDocument(document: unknown): Reading {
  const checked = documentSchema.safeParse(document);
  if (!checked.success) return { ok: false, faults: faultsOf(checked.error.issues, document) };
  const accepted: ProblemDocument = checked.data;
  const problem = problemFromDocument(accepted);
  const faults = checkProblem(problem);
  return faults.length === 0 ? { ok: true, problem } : { ok: false, faults };
}
