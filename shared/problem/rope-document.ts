import { directionBetween, equalDirections, readDirection, writeDirection } from "./direction.ts";
import type { RopeDocument, StraightRopeDocument, TiedRopeDocument } from "./document.ts";
import { joinedBody, straightTo } from "./rope.ts";
import type { Body, Direction, Rope, Vector } from "./types.ts";
import { readVector, writeVector } from "./vector.ts";
import { readCheckedNumber, writeNumber } from "./written-number.ts";

/** The direction of a rope whose places are not all there: `checkProblem` says what is missing. */
const HANGS: Direction = { kind: "hangs" };

/** A rope of a document that the schema has passed; `bodies` are those of the document. */
export function readRope(rope: RopeDocument, bodies: readonly Body[]): Rope {
  if ("pulls" in rope) {
    const [first, ...further] = rope.pulls.map(({ on, direction }) => ({ on, direction: readDirection(direction) }));
    if (first === undefined) throw new TypeError("the document has not been checked: a rope pulls nowhere");
    return { id: rope.id, ...first, further, anchor: null, length: null };
  }
  return "anchor" in rope ? readTied(rope, bodies) : readStraight(rope, bodies);
}

function readTied(rope: TiedRopeDocument, bodies: readonly Body[]): Rope {
  const anchor = readVector(rope.anchor);
  const at = placeOf(rope.on, bodies);
  return {
    id: rope.id,
    on: rope.on,
    direction: at === null || rope.length !== undefined ? HANGS : directionBetween(at, anchor),
    further: [],
    anchor,
    length: rope.length === undefined ? null : readCheckedNumber(rope.length),
  };
}

function readStraight(rope: StraightRopeDocument, bodies: readonly Body[]): Rope {
  const direction = rope.direction === undefined ? directionTo(rope, bodies) : readDirection(rope.direction);
  const further = rope.to === undefined ? [] : [straightTo(rope.to, direction)];
  return { id: rope.id, on: rope.on, direction, further, anchor: null, length: null };
}

function directionTo({ on, to }: StraightRopeDocument, bodies: readonly Body[]): Direction {
  const from = placeOf(on, bodies);
  const end = to === undefined ? null : placeOf(to, bodies);
  return from === null || end === null ? HANGS : directionBetween(from, end);
}

function placeOf(id: string, bodies: readonly Body[]): Vector | null {
  return bodies.find((body) => body.id === id)?.at ?? null;
}

/** A rope as a document gives it: without a direction where places give it, and with all its pulls where it must. */
export function writeRope(rope: Rope, bodies: readonly Body[]): RopeDocument {
  const { id, on, direction, further, anchor, length } = rope;
  if (anchor !== null)
    return { id, on, anchor: writeVector(anchor), ...(length === null ? {} : { length: writeNumber(length) }) };
  if (further.length === 0) return { id, on, direction: writeDirection(direction) };
  const to = joinedBody(rope);
  if (to === null) {
    const pulls = [{ on, direction }, ...further];
    return { id, pulls: pulls.map((pull) => ({ on: pull.on, direction: writeDirection(pull.direction) })) };
  }
  return equalDirections(direction, directionTo({ id, on, to }, bodies))
    ? { id, on, to }
    : { id, on, direction: writeDirection(direction), to };
}
