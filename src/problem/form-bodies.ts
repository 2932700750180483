// The bodies of a document as rows of the form, and what an edit of a row makes of the document.
import { wordsOf } from "./directions.ts";
import { bodyIdFor, idsOf } from "./ids.ts";
import { listAt, objectAt, textAt, withItem, withKey, withMore } from "./json.ts";
import type { Json, JsonObject } from "./json.ts";
import { withBodyId } from "./references.ts";

/** What a body is. */
export type BodyKind = "load" | "knot" | "pulley";
/** What is known of a body's motion, as the form offers it. */
export type MotionChoice = "rest" | "accelerates" | "line" | "steady" | "speeding" | "free";
/** Which way a body already moves along its line. */
export type Going = "from rest" | "forwards" | "backwards";

/** A body's motion in the form. */
export interface MotionRow {
  readonly choice: MotionChoice;
  readonly along: JsonObject | null;
  /** Along the line. */
  readonly acceleration: string;
  readonly x: string;
  readonly y: string;
  readonly going: Going;
  readonly seenFrom: string;
}

/** A body in the form; numbers as texts, "" where there is none. */
export interface BodyRow {
  readonly index: number;
  readonly id: string;
  readonly name: string;
  readonly kind: BodyKind;
  readonly by: "mass" | "weight";
  readonly load: string;
  readonly place: { readonly x: string; readonly y: string } | null;
  readonly motion: MotionRow;
}

const KINDS: readonly string[] = ["load", "knot", "pulley"];
const isZero = (text: string): boolean => Number(text) === 0;

/** The bodies of a document. */
export const bodyRows = (document: JsonObject): readonly BodyRow[] =>
  listAt(document, "bodies").map((body, index): BodyRow => {
    const kind = textAt(body, "kind");
    const place = objectAt(body, "at");
    const by = body.weight === undefined ? "mass" : "weight";
    return {
      index,
      id: textAt(body, "id"),
      name: nameOf(body),
      kind: KINDS.includes(kind) ? (kind as BodyKind) : "load",
      by,
      load: textAt(body, by),
      place: place === null ? null : { x: textAt(place, "x"), y: textAt(place, "y") },
      motion: motionRow(body),
    };
  });

/** What a body is called. */
export const nameOf = (body: JsonObject): string =>
  body.name === undefined ? textAt(body, "id") : textAt(body, "name");

function motionRow(body: JsonObject): MotionRow {
  const given = objectAt(body, "acceleration");
  const motion = objectAt(body, "motion");
  const acceleration = motion === null ? "" : textAt(motion, "acceleration");
  const going = motion === null ? "" : textAt(motion, "going");
  const isOpen = motion?.acceleration === undefined;
  const line = isOpen ? "line" : isZero(acceleration) ? "steady" : "speeding";
  return {
    choice: given !== null ? "accelerates" : motion !== null ? line : body.motion === "free" ? "free" : "rest",
    along: motion === null ? null : objectAt(motion, "along"),
    acceleration,
    x: given === null ? "" : textAt(given, "x"),
    y: given === null ? "" : textAt(given, "y"),
    going: going === "forwards" || going === "backwards" ? going : "from rest",
    seenFrom: motion === null ? "" : textAt(motion, "seenFrom"),
  };
}

const withBody = (document: JsonObject, index: number, change: (body: JsonObject) => JsonObject): JsonObject =>
  withItem(document, "bodies", index, change);

const NEW: Readonly<Record<BodyKind, JsonObject>> = {
  load: { mass: 1 },
  knot: { kind: "knot" },
  pulley: { kind: "pulley" },
};

/** The document with a body more. */
export function addBody(document: JsonObject, kind: BodyKind): JsonObject {
  const names = listAt(document, "bodies").map(nameOf);
  const name = [kind, ...names.map((_, i) => `${kind} ${i + 2}`)].find((one) => !names.includes(one)) ?? kind;
  return withMore(document, "bodies", { id: bodyIdFor(name, idsOf(document)), name, ...NEW[kind] });
}

/** The document with a body's name; an id that was made of the old name is made anew. */
export function renameBody(document: JsonObject, index: number, name: string): JsonObject {
  const body = listAt(document, "bodies")[index];
  if (body === undefined) return document;
  const id = textAt(body, "id");
  const named = withBody(document, index, (old) => withKey(old, "name", name));
  const taken = idsOf(document).filter((other) => other !== id);
  return id === bodyIdFor(nameOf(body), taken) ? withBodyId(named, id, bodyIdFor(name, taken)) : named;
}

/** The document with another kind of body: a knot has no mass, a load needs one. */
export const setKind = (document: JsonObject, index: number, kind: BodyKind): JsonObject =>
  withBody(document, index, (body) => {
    const bare = kind === "knot" ? withKey(withKey(body, "mass", undefined), "weight", undefined) : body;
    const hasLoad = bare.mass !== undefined || bare.weight !== undefined;
    const loaded = kind === "load" && !hasLoad ? withKey(bare, "mass", 1) : bare;
    return withKey(loaded, "kind", kind === "load" ? undefined : kind);
  });

/** The document with a body's mass or weight; undefined takes it away. */
export const setLoad = (
  document: JsonObject,
  index: number,
  by: "mass" | "weight",
  value: Json | undefined,
): JsonObject =>
  withBody(document, index, (body) => withKey(withKey(body, by === "mass" ? "weight" : "mass", undefined), by, value));

/** The document with a body given by its mass or by its weight, the number staying. */
export const setLoadBy = (document: JsonObject, index: number, by: "mass" | "weight"): JsonObject =>
  withBody(document, index, (body) => {
    const other = by === "mass" ? "weight" : "mass";
    const number = body[by] ?? body[other] ?? 1;
    return withKey(withKey(body, other, undefined), by, number);
  });

/** The document in which a body has a place, or none. */
export const setPlaced = (document: JsonObject, index: number, isPlaced: boolean): JsonObject =>
  withBody(document, index, (body) => withKey(body, "at", isPlaced ? { x: 0, y: 0 } : undefined));

/** The document with one part of the place of a body. */
export const setPlace = (document: JsonObject, index: number, axis: "x" | "y", value: Json): JsonObject =>
  withBody(document, index, (body) =>
    withKey(body, "at", withKey(objectAt(body, "at") ?? { x: 0, y: 0 }, axis, value)),
  );

/** The document with another kind of motion; what fits both stays. */
export const setMotionChoice = (document: JsonObject, index: number, choice: MotionChoice): JsonObject =>
  withBody(document, index, (body) => {
    const still = withKey(withKey(body, "acceleration", undefined), "motion", undefined);
    if (choice === "rest") return still;
    if (choice === "free") return withKey(still, "motion", "free");
    if (choice === "accelerates") return withKey(still, "acceleration", { x: 0, y: 1 });
    const before = objectAt(body, "motion");
    const along = { along: before?.along ?? { angle: 90 } };
    const going = before?.going === "backwards" ? "backwards" : "forwards";
    const seen = before?.seenFrom === undefined ? {} : { seenFrom: before.seenFrom };
    if (choice === "steady") return withKey(still, "motion", { ...along, acceleration: 0, going, ...seen });
    return withKey(still, "motion", { ...along, ...(choice === "speeding" ? { acceleration: 1 } : {}), ...seen });
  });

/** The document with one part of a body's motion along a line changed; undefined takes it away. */
export const setMotion = (
  document: JsonObject,
  index: number,
  key: "along" | "acceleration" | "going" | "seenFrom",
  value: Json | undefined,
): JsonObject =>
  withBody(document, index, (body) => {
    const motion = objectAt(body, "motion");
    return motion === null ? body : withKey(body, "motion", withKey(motion, key, value));
  });

/** The document with one part of a body's given acceleration. */
export const setAcceleration = (document: JsonObject, index: number, axis: "x" | "y", value: Json): JsonObject =>
  withBody(document, index, (body) =>
    withKey(body, "acceleration", withKey(objectAt(body, "acceleration") ?? {}, axis, value)),
  );

/** The direction of the slope that a body lies on; null if none, or a level one. */
export function slopeUnder(document: JsonObject, id: string): JsonObject | null {
  for (const surface of listAt(document, "surfaces")) {
    const slope = objectAt(surface, "slope");
    if (slope === null || textAt(surface, "on") !== id) continue;
    const { heading } = wordsOf(slope, null);
    if (heading !== "left" && heading !== "right") return slope;
  }
  return null;
}
