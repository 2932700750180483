// The surfaces and the pushes of a document as rows of the form, and what an edit of a row makes of the document.
import { directionOf, oppositeOf, uphillOf, wordsOf } from "./directions.ts";
import type { DirectionWords } from "./directions.ts";
import { nextId } from "./ids.ts";
import { listAt, objectAt, sameJson, textAt, withItem, withKey, withMore } from "./json.ts";
import type { Json, JsonObject } from "./json.ts";

/** How a surface lies, seen from the body that touches it. */
export type Lie =
  "level" | "rises-right" | "rises-left" | "run-rise" | "wall-left" | "wall-right" | "overhead" | "normal";

/** A surface in the form; numbers as texts. */
export interface SurfaceRow {
  readonly index: number;
  readonly id: string;
  readonly on: string;
  /** The body whose surface it is; "" for the ground and all that is fixed. */
  readonly of: string;
  readonly lie: Lie;
  /** The words of the slope, for its numbers. */
  readonly slope: DirectionWords;
  readonly normal: JsonObject | null;
  readonly isRough: boolean;
  readonly still: string;
  readonly sliding: string;
}

/** A push or a pull in the form. */
export interface PushRow {
  readonly index: number;
  readonly id: string;
  readonly on: string;
  readonly direction: JsonObject | null;
  /** null: to be found. */
  readonly size: string | null;
}

/** The surfaces of a document. */
export const surfaceRows = (document: JsonObject): readonly SurfaceRow[] =>
  listAt(document, "surfaces").map((surface, index) => {
    const friction = objectAt(surface, "friction") ?? {};
    return {
      index,
      id: textAt(surface, "id"),
      on: textAt(surface, "on"),
      of: textAt(surface, "of"),
      lie: lieOf(surface),
      slope: wordsOf(objectAt(surface, "slope"), null),
      normal: objectAt(surface, "normal"),
      isRough: surface.friction !== undefined,
      still: textAt(friction, "static"),
      sliding: textAt(friction, "kinetic"),
    };
  });

function lieOf(surface: JsonObject): Lie {
  if (surface.slope === undefined) {
    switch (wordsOf(objectAt(surface, "normal"), null).heading) {
      case "right":
        return "wall-left";
      case "left":
        return "wall-right";
      case "down":
        return "overhead";
      default:
        return "normal";
    }
  }
  const { heading } = wordsOf(objectAt(surface, "slope"), null);
  switch (heading) {
    case "left":
    case "right":
      return "level";
    case "run-rise":
      return "run-rise";
    case "up-left":
    case "down-right":
      return "rises-left";
    default:
      return "rises-right";
  }
}

/** The document with a surface more: level ground under the first body that rests on none. */
export function addSurface(document: JsonObject): JsonObject {
  const bodies = listAt(document, "bodies").map((body) => textAt(body, "id"));
  const held = listAt(document, "surfaces").map((surface) => textAt(surface, "on"));
  const on = bodies.find((id) => !held.includes(id)) ?? bodies.at(-1) ?? "";
  return guided(withMore(document, "surfaces", { id: nextId(document, "N"), on, slope: { angle: 0 } }), on);
}

/** A surface says how a body on it can move: a line along which the body might have moved without it is taken back. */
function guided(document: JsonObject, id: string): JsonObject {
  const bodies = listAt(document, "bodies").map((body) => {
    const motion = objectAt(body, "motion");
    const isBare = motion !== null && Object.keys(motion).join() === "along";
    return isBare && textAt(body, "id") === id ? withKey(body, "motion", undefined) : body;
  });
  return withKey(document, "bodies", bodies);
}

/** The document with a surface under another body. */
export const setTouched = (document: JsonObject, index: number, id: string): JsonObject =>
  guided(setSurface(document, index, "on", id), id);

const NORMALS: Readonly<Partial<Record<Lie, number>>> = {
  "wall-left": 0,
  "wall-right": 180,
  overhead: -90,
  normal: 45,
};

/** The document with a surface lying in another way; a slope keeps its angle. What moves along it follows. */
export function setLie(document: JsonObject, index: number, lie: Lie): JsonObject {
  const normal = NORMALS[lie];
  if (normal !== undefined)
    return withItem(document, "surfaces", index, (surface) =>
      withKey(withKey(surface, "slope", undefined), "normal", { angle: normal }),
    );
  const words = surfaceRows(document)[index]?.slope;
  const angle = words === undefined || words.angle === "" ? "30" : words.angle;
  const flat = { heading: "right", reference: "horizontal", angle: "", run: "", rise: "" } as const;
  if (lie === "run-rise") return setSlope(document, index, { ...flat, heading: "run-rise", run: "4", rise: "3" });
  if (lie === "level") return setSlope(document, index, flat);
  const reference = words?.reference ?? "horizontal";
  return setSlope(document, index, {
    ...flat,
    heading: lie === "rises-left" ? "up-left" : "up-right",
    reference,
    angle,
  });
}

/** The document with the slope that the words mean; as it was where they mean none. Directions along the old slope turn with it. */
export function setSlope(document: JsonObject, index: number, words: DirectionWords): JsonObject {
  const slope = directionOf(words, null);
  const surface = listAt(document, "surfaces")[index];
  if (slope === null || surface === undefined) return document;
  const before = objectAt(surface, "slope");
  const turned = withItem(document, "surfaces", index, (old) =>
    withKey(withKey(old, "normal", undefined), "slope", slope),
  );
  return before === null ? turned : withTurned(turned, textAt(surface, "on"), before, slope);
}

/** Ropes, pushes and motion of a body that were along its old slope are along the new one. */
function withTurned(document: JsonObject, body: string, before: JsonObject, after: JsonObject): JsonObject {
  const [from, to] = [uphillOf(before), uphillOf(after)];
  if (from === null || to === null) return document;
  const turn = (holder: JsonObject, key: string): JsonObject => {
    if (sameJson(holder[key], from)) return withKey(holder, key, to);
    return sameJson(holder[key], oppositeOf(from)) ? withKey(holder, key, oppositeOf(to)) : holder;
  };
  const isHere = (item: JsonObject): boolean => textAt(item, "on") === body;
  let result = document;
  for (const list of ["ropes", "pushes"]) {
    if (result[list] === undefined) continue;
    const items = listAt(result, list).map((item) => {
      const own = isHere(item) ? turn(item, "direction") : item;
      if (own.pulls === undefined) return own;
      const pulls = listAt(own, "pulls").map((pull) => (isHere(pull) ? turn(pull, "direction") : pull));
      return withKey(own, "pulls", pulls);
    });
    result = withKey(result, list, items);
  }
  const bodies = listAt(result, "bodies").map((item) => {
    const motion = objectAt(item, "motion");
    return motion === null || textAt(item, "id") !== body ? item : withKey(item, "motion", turn(motion, "along"));
  });
  return withKey(result, "bodies", bodies);
}

/** The document with one part of a surface changed; undefined takes it away. */
export const setSurface = (
  document: JsonObject,
  index: number,
  key: "id" | "on" | "of" | "normal",
  value: Json | undefined,
): JsonObject => withItem(document, "surfaces", index, (surface) => withKey(surface, key, value));

/** The document with a surface rough or smooth. */
export const setRough = (document: JsonObject, index: number, isRough: boolean): JsonObject =>
  withItem(document, "surfaces", index, (surface) =>
    withKey(surface, "friction", isRough ? { static: 0.5, kinetic: 0.4 } : undefined),
  );

/** The document with a coefficient of friction; undefined takes it away. */
export const setCoefficient = (
  document: JsonObject,
  index: number,
  key: "static" | "kinetic",
  value: Json | undefined,
): JsonObject =>
  withItem(document, "surfaces", index, (surface) =>
    withKey(surface, "friction", withKey(objectAt(surface, "friction") ?? {}, key, value)),
  );

/** The pushes and pulls of a document. */
export const pushRows = (document: JsonObject): readonly PushRow[] =>
  listAt(document, "pushes").map((push, index) => ({
    index,
    id: textAt(push, "id"),
    on: textAt(push, "on"),
    direction: objectAt(push, "direction"),
    size: push.size === undefined ? null : textAt(push, "size"),
  }));

/** The document with a push more, on the last body to the right. */
export function addPush(document: JsonObject): JsonObject {
  const on = textAt(listAt(document, "bodies").at(-1) ?? {}, "id");
  return withMore(document, "pushes", { id: nextId(document, "P"), on, direction: { angle: 0 }, size: 10 });
}

/** The document with one part of a push changed; a size of undefined is to be found. */
export const setPush = (
  document: JsonObject,
  index: number,
  key: "id" | "on" | "direction" | "size",
  value: Json | undefined,
): JsonObject => withItem(document, "pushes", index, (push) => withKey(push, key, value));
