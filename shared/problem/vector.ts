import { equalRationals, isZeroRational, ratio } from "../exact/index.ts";
import type { AccelerationDocument, PlaceDocument } from "./document.ts";
import type { Vector } from "./types.ts";
import { readCheckedNumber, writeNumber } from "./written-number.ts";

/** No acceleration. */
export const ZERO_VECTOR: Vector = { x: ratio(0n, 1n), y: ratio(0n, 1n) };

/** The parts of a place or an acceleration in a document that the schema has passed; a part left out is 0. */
export function readVector(document: AccelerationDocument | undefined): Vector {
  return { x: readCheckedNumber(document?.x ?? 0), y: readCheckedNumber(document?.y ?? 0) };
}

/** Both parts as a document gives them. */
export function writeVector({ x, y }: Vector): PlaceDocument {
  return { x: writeNumber(x), y: writeNumber(y) };
}

/** Whether both parts are exactly 0. */
export function isZeroVector({ x, y }: Vector): boolean {
  return isZeroRational(x) && isZeroRational(y);
}

/** Whether two have exactly the same parts. */
export function equalVectors(one: Vector, other: Vector): boolean {
  return equalRationals(one.x, other.x) && equalRationals(one.y, other.y);
}
