// What holds for the whole problem: units, gravity, and how the supports speed up.
import { objectAt, textAt, withKey } from "./json.ts";
import type { Json, JsonObject } from "./json.ts";

/** The system of units of a document's numbers. */
export type Units = "SI" | "lbf-ft";

/** The whole problem's row of the form; numbers as texts. */
export interface WorldRow {
  readonly units: Units;
  readonly gravity: string;
  /** null: the supports do not speed up. */
  readonly frame: { readonly x: string; readonly y: string } | null;
}

/** The names of the units beside fields. */
export const UNIT_NAMES: Readonly<
  Record<Units, Readonly<Record<"mass" | "force" | "length" | "acceleration", string>>>
> = {
  SI: { mass: "kg", force: "N", length: "m", acceleration: "m/s²" },
  "lbf-ft": { mass: "slug", force: "lbf", length: "ft", acceleration: "ft/s²" },
};

/** Values of g in both systems: standard gravity to ever more figures, a round value for quick sums, Moon, Mars, none. */
const GRAVITIES: readonly (readonly [si: string, feet: string])[] = [
  ["9.8", "32.2"],
  ["9.81", "32.17"],
  ["9.80665", "32.174"],
  ["10", "32"],
  ["1.62", "5.31"],
  ["3.73", "12.2"],
  ["0", "0"],
];

/** Values of g to choose from, in the units of a document. */
export const gravitiesIn = (units: Units): readonly string[] =>
  GRAVITIES.map(([si, feet]) => (units === "SI" ? si : feet));

/** The whole problem's row. */
export function worldRow(document: JsonObject): WorldRow {
  const frame = objectAt(document, "frame");
  return {
    units: document.units === "lbf-ft" ? "lbf-ft" : "SI",
    gravity: textAt(document, "gravity"),
    frame: frame === null ? null : { x: textAt(frame, "x") || "0", y: textAt(frame, "y") || "0" },
  };
}

/** The document in other units. Numbers stay as they are; a listed value of g becomes the other system's. */
export function setUnits(document: JsonObject, units: Units): JsonObject {
  const before = worldRow(document);
  const listed = GRAVITIES.find((pair) => pair[before.units === "SI" ? 0 : 1] === before.gravity);
  const inUnits = withKey(document, "units", units === "SI" ? undefined : units);
  return listed === undefined || units === before.units
    ? inUnits
    : withKey(inUnits, "gravity", Number(listed[units === "SI" ? 0 : 1]));
}

/** The document with another gravity. */
export const setGravity = (document: JsonObject, value: Json): JsonObject => withKey(document, "gravity", value);

/** The document whose supports speed up, or do not. */
export const setFrame = (document: JsonObject, speedsUp: boolean): JsonObject =>
  withKey(document, "frame", speedsUp ? { x: 0, y: 1 } : undefined);

/** The document with one part of how the supports speed up. */
export const setFramePart = (document: JsonObject, axis: "x" | "y", value: Json): JsonObject =>
  withKey(document, "frame", withKey(objectAt(document, "frame") ?? { x: 0, y: 0 }, axis, value));

/** A document with nothing in it yet. */
export const emptyDocument = (units: Units): JsonObject => ({
  format: 1,
  ...(units === "SI" ? {} : { units }),
  gravity: units === "SI" ? 9.8 : 32.2,
  bodies: [],
});
