// The document as the form sees it: JSON data that nobody may have checked, changed by copies.

/** JSON data. */
export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
/** An object of JSON; a key with undefined counts as absent. */
export type JsonObject = { readonly [key: string]: Json | undefined };

/** Where a key stands among others when it is added; the order of the format's description. Others come last. */
const ORDER =
  "format units gravity frame bodies ropes surfaces pushes id name kind mass weight on to of pulls direction anchor " +
  "length slope normal friction size at acceleration motion along angle from side run rise x y static kinetic going seenFrom";
const RANKS = new Map(ORDER.split(" ").map((key, rank) => [key, rank]));
const rankOf = (key: string): number => RANKS.get(key) ?? RANKS.size;

/** Whether JSON data is an object. */
export const isObject = (value: unknown): value is JsonObject =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The objects in a list of an object; what is no object stands there as an empty one, so that places stay. */
export function listAt(object: JsonObject, key: string): readonly JsonObject[] {
  const list = object[key];
  return Array.isArray(list) ? list.map((item: unknown) => (isObject(item) ? item : {})) : [];
}

/** The object under a key, or null. */
export function objectAt(object: JsonObject, key: string): JsonObject | null {
  const value = object[key];
  return isObject(value) ? value : null;
}

/** A text or a number under a key as text; "" for anything else. */
export function textAt(object: JsonObject, key: string): string {
  const value = object[key];
  return typeof value === "string" || typeof value === "number" ? String(value) : "";
}

/** The object with a key set, in the format's order, or without it where the value is undefined. */
export function withKey(object: JsonObject, key: string, value: Json | undefined): JsonObject {
  const entries = Object.entries(object).filter(([other]) => other !== key);
  if (value === undefined) return Object.fromEntries(entries);
  if (key in object) return { ...object, [key]: value };
  const before = entries.filter(([other]) => rankOf(other) <= rankOf(key));
  const after = entries.filter(([other]) => rankOf(other) > rankOf(key));
  return Object.fromEntries([...before, [key, value], ...after]);
}

/** The object with one item of a list changed; an item that is not there changes nothing. */
export function withItem(
  object: JsonObject,
  key: string,
  index: number,
  change: (item: JsonObject) => JsonObject,
): JsonObject {
  const list = listAt(object, key);
  if (list[index] === undefined) return object;
  return withKey(
    object,
    key,
    list.map((item, i) => (i === index ? change(item) : item)),
  );
}

/** The object with one more item at the end of a list. */
export const withMore = (object: JsonObject, key: string, item: JsonObject): JsonObject =>
  withKey(object, key, [...listAt(object, key), item]);

/** The object without one item of a list. */
export const withoutItem = (object: JsonObject, key: string, index: number): JsonObject =>
  withKey(
    object,
    key,
    listAt(object, key).filter((_, i) => i !== index),
  );

/** Whether two pieces of JSON data say the same, whatever the order of their keys. */
export function sameJson(one: Json | undefined, other: Json | undefined): boolean {
  if (isObject(one) && isObject(other)) {
    const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
    return [...keys].every((key) => sameJson(one[key], other[key]));
  }
  if (Array.isArray(one) && Array.isArray(other)) {
    const [a, b] = [one as readonly Json[], other as readonly Json[]];
    return a.length === b.length && a.every((item, i) => sameJson(item, b[i]));
  }
  return one === other;
}
