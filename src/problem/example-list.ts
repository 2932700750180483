// The list of examples beside the format: file names, titles, and what each is about.
import { isObject, textAt } from "./json.ts";

/** An example to start from. */
export interface Example {
  /** The file's name without its ending. */
  readonly id: string;
  readonly title: string;
  readonly concept: string;
}

/** The examples of an index file. Throws TypeError where an entry has no id or no title. */
export function listExamples(text: string): readonly Example[] {
  const read: unknown = JSON.parse(text);
  if (!Array.isArray(read)) throw new TypeError("the index of examples is no list");
  return read.map((entry: unknown) => {
    const { id, title, concept } = isObject(entry)
      ? { id: textAt(entry, "id"), title: textAt(entry, "title"), concept: textAt(entry, "concept") }
      : { id: "", title: "", concept: "" };
    if (id === "" || title === "") throw new TypeError("an example in the index has no id or no title");
    return { id, title, concept };
  });
}
