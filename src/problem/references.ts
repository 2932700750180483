// Where a document names a body, so that a body can be renamed or taken away with everything that hangs on it.
import { isObject, listAt, objectAt, textAt, withKey } from "./json.ts";
import type { JsonObject } from "./json.ts";

type Rename = (id: string) => string;

const LISTS = ["ropes", "surfaces", "pushes"] as const;

function renamedIn(item: JsonObject, rename: Rename): JsonObject {
  let result = item;
  for (const key of ["on", "to", "of"])
    if (typeof item[key] === "string") result = withKey(result, key, rename(textAt(item, key)));
  if (Array.isArray(item.pulls))
    result = withKey(
      result,
      "pulls",
      listAt(item, "pulls").map((p) => renamedIn(p, rename)),
    );
  return result;
}

/** The document with a body's id changed wherever it stands. */
export function withBodyId(document: JsonObject, from: string, to: string): JsonObject {
  const rename: Rename = (id) => (id === from ? to : id);
  const bodies = listAt(document, "bodies").map((body) => {
    const own = textAt(body, "id") === from ? withKey(body, "id", to) : body;
    const motion = objectAt(own, "motion");
    return motion === null || textAt(motion, "seenFrom") !== from
      ? own
      : withKey(own, "motion", withKey(motion, "seenFrom", to));
  });
  return LISTS.reduce(
    (result, list) =>
      result[list] === undefined
        ? result
        : withKey(
            result,
            list,
            listAt(result, list).map((item) => renamedIn(item, rename)),
          ),
    withKey(document, "bodies", bodies),
  );
}

/** The document without a body, and without all that touches it: a rope that leads on to another body then ends at a support. */
export function withoutBody(document: JsonObject, index: number): JsonObject {
  const bodies = listAt(document, "bodies");
  const id = textAt(bodies[index] ?? {}, "id");
  const others = bodies
    .filter((_, i) => i !== index)
    .map((body) => {
      const motion = objectAt(body, "motion");
      return motion === null || textAt(motion, "seenFrom") !== id
        ? body
        : withKey(body, "motion", withKey(motion, "seenFrom", undefined));
    });
  let result = withKey(document, "bodies", others);
  // Where ids are doubled the other body of that name keeps its ropes.
  if (others.some((body) => textAt(body, "id") === id)) return result;
  for (const list of LISTS) {
    if (result[list] === undefined) continue;
    result = withKey(
      result,
      list,
      listAt(result, list).flatMap((item) => withoutReference(item, id)),
    );
  }
  return result;
}

function withoutReference(item: JsonObject, id: string): JsonObject[] {
  if (Array.isArray(item.pulls)) {
    const pulls = listAt(item, "pulls").filter((pull) => textAt(pull, "on") !== id);
    const [first] = pulls;
    if (first === undefined) return [];
    if (pulls.length > 1) return [withKey(item, "pulls", pulls)];
    const rope = withKey(withKey(item, "pulls", undefined), "on", textAt(first, "on"));
    return isObject(first.direction) ? [withKey(rope, "direction", first.direction)] : [];
  }
  if (textAt(item, "on") === id) return [];
  // A rope by the places of its two ends alone has no direction left.
  if (textAt(item, "to") === id) return item.direction === undefined ? [] : [withKey(item, "to", undefined)];
  return [textAt(item, "of") === id ? withKey(item, "of", undefined) : item];
}

/** How many ropes, surfaces and pushes touch a body, for saying what goes with it. */
export const touching = (document: JsonObject, id: string): number =>
  LISTS.flatMap((list) => listAt(document, list)).filter((item) => withoutReference(item, id).length === 0).length;
