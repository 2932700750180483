// The ropes of a document as rows of the form, and what an edit of a row makes of the document.
import { wordsOf, directionOf } from "./directions.ts";
import { nextId } from "./ids.ts";
import { listAt, objectAt, textAt, withItem, withKey, withMore } from "./json.ts";
import type { Json, JsonObject } from "./json.ts";

/** How a rope is tied: with its direction given, or by places. */
export type Tie = "support" | "body" | "fixed-pulley" | "movable-pulley" | "anchor" | "anchor-length" | "body-places";

/** A rope in the form; numbers as texts. */
export interface RopeRow {
  readonly index: number;
  readonly id: string;
  readonly tie: Tie;
  readonly on: string;
  readonly to: string;
  readonly direction: JsonObject | null;
  readonly anchor: { readonly x: string; readonly y: string };
  readonly length: string;
  readonly pulls: readonly { readonly on: string; readonly direction: JsonObject | null }[];
}

const UP = { angle: 90 };

/** The ropes of a document. */
export const ropeRows = (document: JsonObject): readonly RopeRow[] =>
  listAt(document, "ropes").map((rope, index) => {
    const anchor = objectAt(rope, "anchor") ?? {};
    return {
      index,
      id: textAt(rope, "id"),
      tie: tieOf(rope),
      on: textAt(rope, "on"),
      to: textAt(rope, "to"),
      direction: objectAt(rope, "direction"),
      anchor: { x: textAt(anchor, "x"), y: textAt(anchor, "y") },
      length: textAt(rope, "length"),
      pulls: pullsOf(rope),
    };
  });

const pullsOf = (rope: JsonObject): RopeRow["pulls"] =>
  listAt(rope, "pulls").map((pull) => ({ on: textAt(pull, "on"), direction: objectAt(pull, "direction") }));

function tieOf(rope: JsonObject): Tie {
  if (rope.pulls !== undefined) {
    const [first, second, ...more] = pullsOf(rope);
    return more.length === 0 && first?.on !== second?.on ? "fixed-pulley" : "movable-pulley";
  }
  if (rope.anchor !== undefined) return rope.length === undefined ? "anchor" : "anchor-length";
  if (rope.to !== undefined) return rope.direction === undefined ? "body-places" : "body";
  return "support";
}

/** The bodies that a rope pulls first and last. */
function endsOf(rope: JsonObject): { readonly first: string; readonly last: string; readonly direction: Json } {
  const pulls = pullsOf(rope);
  const last = pulls.at(-1)?.on ?? textAt(rope, "to");
  return {
    first: pulls[0]?.on ?? textAt(rope, "on"),
    last,
    direction: pulls[0]?.direction ?? objectAt(rope, "direction") ?? UP,
  };
}

/** The document with a rope more, from the last body that has none straight up to a support. */
export function addRope(document: JsonObject): JsonObject {
  const bodies = listAt(document, "bodies").map((body) => textAt(body, "id"));
  const held = listAt(document, "ropes").flatMap((rope) => [textAt(rope, "on"), ...pullsOf(rope).map((p) => p.on)]);
  const on = bodies.find((id) => !held.includes(id)) ?? bodies.at(-1) ?? "";
  return withMore(document, "ropes", { id: nextId(document, "T"), on, direction: UP });
}

/** The document with a rope tied in another way; bodies and direction stay where they fit. */
export function setTie(document: JsonObject, index: number, tie: Tie): JsonObject {
  const rope = listAt(document, "ropes")[index];
  if (rope === undefined || tieOf(rope) === tie) return document;
  const { first: on, last, direction } = endsOf(rope);
  const bodies = listAt(document, "bodies");
  const ids = bodies.map((body) => textAt(body, "id"));
  const to = last !== "" && last !== on ? last : (ids.find((id) => id !== on) ?? on);
  const id = textAt(rope, "id");
  const replaced = (item: JsonObject): JsonObject => withItem(document, "ropes", index, () => item);
  switch (tie) {
    case "support":
      return replaced({ id, on, direction });
    case "body":
      return withoutIdlePlaces(replaced({ id, on, to, direction }), [on, to]);
    case "body-places":
      return withPlaces(replaced({ id, on, to }), [on, to]);
    case "fixed-pulley":
      return freed(
        replaced({
          id,
          pulls: [
            { on, direction },
            { on: to, direction: UP },
          ],
        }),
        index,
      );
    case "movable-pulley": {
      const block = textAt(bodies.find((body) => body.kind === "pulley") ?? {}, "id") || on;
      const hand = ids.find((one) => one !== block) ?? block;
      const round = [
        { on: block, direction: UP },
        { on: block, direction: UP },
      ];
      return freed(replaced({ id, pulls: hand === block ? round : [...round, { on: hand, direction: UP }] }), index);
    }
    case "anchor":
      return withPlaces(replaced({ id, on, anchor: anchorOf(rope) }), [on]);
    case "anchor-length":
      return withoutPlace(replaced({ id, on, anchor: anchorOf(rope), length: rope.length ?? 2 }), on);
  }
}

/** What hangs on a rope over pulleys may move along it, unless it lies on a surface or its motion is said already. */
function freed(document: JsonObject, index: number): JsonObject {
  const lying = listAt(document, "surfaces").map((surface) => textAt(surface, "on"));
  const pulls = listAt(listAt(document, "ropes")[index] ?? {}, "pulls");
  const bodies = listAt(document, "bodies").map((body) => {
    const id = textAt(body, "id");
    const pull = pulls.find((one) => textAt(one, "on") === id);
    const isStated = body.motion !== undefined || body.acceleration !== undefined;
    return pull === undefined || isStated || lying.includes(id) || body.kind === "knot"
      ? body
      : withKey(body, "motion", { along: pull.direction ?? UP });
  });
  return withKey(document, "bodies", bodies);
}

function anchorOf(rope: JsonObject): JsonObject {
  const side = wordsOf(objectAt(rope, "direction"), null).heading;
  return objectAt(rope, "anchor") ?? { x: side.endsWith("left") ? -1 : side.endsWith("right") ? 1 : 0, y: 1 };
}

/** Bodies that are named by place need one; a new one stands to the right of the last. */
function withPlaces(document: JsonObject, ids: readonly string[]): JsonObject {
  const bodies = listAt(document, "bodies");
  let right = Math.max(-1, ...bodies.map((body) => Number(textAt(objectAt(body, "at") ?? {}, "x")) || 0));
  if (bodies.every((body) => body.at === undefined)) right = -1;
  const placed = bodies.map((body) =>
    ids.includes(textAt(body, "id")) && body.at === undefined ? withKey(body, "at", { x: ++right, y: 0 }) : body,
  );
  return withKey(document, "bodies", placed);
}

/** Between two places a direction is one thing too much: places that no other rope needs are taken away. */
function withoutIdlePlaces(document: JsonObject, ids: readonly string[]): JsonObject {
  const needed = listAt(document, "ropes")
    .filter((rope) => ["anchor", "body-places"].includes(tieOf(rope)))
    .flatMap((rope) => [textAt(rope, "on"), textAt(rope, "to")]);
  return ids.filter((id) => !needed.includes(id)).reduce(withoutPlace, document);
}

const withoutPlace = (document: JsonObject, id: string): JsonObject =>
  withKey(
    document,
    "bodies",
    listAt(document, "bodies").map((body) => (textAt(body, "id") === id ? withKey(body, "at", undefined) : body)),
  );

/** The document with one part of a rope changed; undefined takes it away. */
export const setRope = (
  document: JsonObject,
  index: number,
  key: "id" | "on" | "to" | "direction" | "length",
  value: Json | undefined,
): JsonObject => withItem(document, "ropes", index, (rope) => withKey(rope, key, value));

/** The document with one part of the place where a rope is tied. */
export const setAnchor = (document: JsonObject, index: number, axis: "x" | "y", value: Json): JsonObject =>
  withItem(document, "ropes", index, (rope) =>
    withKey(rope, "anchor", withKey(objectAt(rope, "anchor") ?? {}, axis, value)),
  );

/** The document with one of the places where a rope pulls changed. */
export const setPull = (
  document: JsonObject,
  index: number,
  pull: number,
  key: "on" | "direction",
  value: Json,
): JsonObject =>
  withItem(document, "ropes", index, (rope) => withItem(rope, "pulls", pull, (item) => withKey(item, key, value)));

/** The document with one more place where a rope pulls, on the same body as the last. */
export const addPull = (document: JsonObject, index: number): JsonObject =>
  withItem(document, "ropes", index, (rope) =>
    withMore(rope, "pulls", { on: pullsOf(rope).at(-1)?.on ?? "", direction: UP }),
  );

/** The document with a rope turned to degrees anticlockwise, to a tenth, its angle still from where it was given. */
export function turnRope(document: JsonObject, id: string, degrees: number): JsonObject {
  const index = listAt(document, "ropes").findIndex((rope) => textAt(rope, "id") === id);
  const before = wordsOf(objectAt(listAt(document, "ropes")[index] ?? {}, "direction"), null);
  const turned = wordsOf({ angle: Math.round(degrees * 10) / 10 }, null);
  if (before.reference === "horizontal" || turned.angle === "")
    return setRope(document, index, "direction", directionOf(turned, null) ?? undefined);
  const fromVertical = Math.round((90 - Number(turned.angle)) * 10) / 10;
  const words = { ...turned, reference: "vertical", angle: String(fromVertical) } as const;
  return setRope(document, index, "direction", directionOf(words, null) ?? undefined);
}
