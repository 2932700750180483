// The examples to start from: documents that stand beside the format. Fetched when one is chosen.
import { writeDocument } from "./document-text.ts";
import type { JsonObject } from "./json.ts";

const documents = import.meta.glob<JsonObject>(
  ["../../shared/problem/examples/*.json", "!../../shared/problem/examples/index.json"],
  { eager: true, import: "default" },
);

/** The text of an example, by its id. Throws RangeError for one that is not there. */
export function textOfExample(id: string): string {
  const document = documents[`../../shared/problem/examples/${id}.json`];
  if (document === undefined) throw new RangeError(`there is no example ${id}`);
  return writeDocument(document);
}
