// Where a fault is, in words: a JSON pointer such as /ropes/0/direction/angle as "rope T1, direction, angle".
import { nameOf } from "./form-bodies.ts";
import { listAt, textAt } from "./json.ts";
import type { JsonObject } from "./json.ts";

const ITEMS: Readonly<Record<string, string>> = {
  bodies: "body",
  ropes: "rope",
  surfaces: "surface",
  pushes: "push",
  pulls: "pull",
};
const LISTS: Readonly<Record<string, string>> = { pushes: "pushes and pulls" };
const KEYS: Readonly<Record<string, string>> = {
  frame: "supports",
  at: "place",
  on: "the body it acts on",
  to: "the body it leads to",
  of: "the body it belongs to",
  seenFrom: "seen from",
  static: "static coefficient",
  kinetic: "kinetic coefficient",
  x: "to the right",
  y: "upwards",
  angle: "angle",
};

/** The place in words; "the document" for all of it. */
export function placeInWords(path: string, document: JsonObject): string {
  const keys = path
    .split("/")
    .slice(1)
    .map((key) => key.replaceAll("~1", "/").replaceAll("~0", "~"));
  const words: string[] = [];
  let at: JsonObject = document;
  for (let i = 0; i < keys.length; i++) {
    const key = keys[i] ?? "";
    const item = Object.hasOwn(ITEMS, key) ? ITEMS[key] : undefined;
    const index = keys[i + 1];
    if (item === undefined || index === undefined || !/^\d+$/.test(index)) {
      words.push(
        (Object.hasOwn(LISTS, key) ? LISTS[key] : undefined) ??
          (Object.hasOwn(KEYS, key) ? KEYS[key] : undefined) ??
          key,
      );
      continue;
    }
    at = listAt(at, key)[Number(index)] ?? {};
    const name = key === "bodies" ? nameOf(at) : textAt(at, "id");
    words.push(`${item} ${name === "" ? Number(index) + 1 : name}`);
    i++;
  }
  return words.length === 0 ? "the document" : words.join(", ");
}

/** The ids that the fields of the form may have for a place, the nearest first: the field itself, then what holds it. */
export function fieldsFor(path: string): readonly string[] {
  const keys = path.split("/").slice(1);
  return keys.map((_, i) => `at-${keys.slice(0, keys.length - i).join("-")}`);
}
