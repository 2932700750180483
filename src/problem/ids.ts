// Ids are made by the page, so that nobody has to think of them: T1, N1, P1, and for a body a word of its name.
import { isReservedId } from "../../shared/problem/index.ts";
import { listAt, textAt } from "./json.ts";
import type { JsonObject } from "./json.ts";

const LONGEST = 16;
const LISTS = ["bodies", "ropes", "surfaces", "pushes"] as const;

/** All ids of a document. */
export const idsOf = (document: JsonObject): readonly string[] =>
  LISTS.flatMap((list) => listAt(document, list).map((item) => textAt(item, "id")));

/** Whether an id may be added: not there, no reserved name, and neither a component of another nor the other way round. */
export function isFreeId(id: string, taken: readonly string[]): boolean {
  const clashes = taken.some(
    (other) => other === id || [`${other}x`, `${other}y`].includes(id) || [`${id}x`, `${id}y`].includes(other),
  );
  return !clashes && !isReservedId(id);
}

/** The first free id of a series: T1, T2, … */
export function nextId(document: JsonObject, letter: string): string {
  const taken = idsOf(document);
  for (let number = 1; ; number++) if (isFreeId(`${letter}${number}`, taken)) return `${letter}${number}`;
}

/** An id for a body by its name, in plain letters: the last word, else all of them, else one with a number. */
export function bodyIdFor(name: string, taken: readonly string[]): string {
  const words = name
    .normalize("NFKD")
    .replaceAll(/[^A-Za-z0-9\s]/g, "")
    .toLowerCase()
    .trim()
    .split(/\s+/);
  const last = words.length > 1 && /^\d+$/.test(words.at(-1) ?? "") ? words.slice(-2) : words.slice(-1);
  const stems = [last, words].map(
    (some) =>
      some
        .join("")
        .replace(/^\d+/, "")
        .slice(0, LONGEST - 2) || "body",
  );
  const free = stems.find((stem) => isFreeId(stem, taken));
  if (free !== undefined) return free;
  for (let number = 2; ; number++)
    if (isFreeId(`${stems[0] ?? ""}${number}`, taken)) return `${stems[0] ?? ""}${number}`;
}
