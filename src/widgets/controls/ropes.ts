// A rope's direction as a reader sets it: degrees up from the level line on the side where the lesson ties it.
import type { Problem, Rope } from "../../../shared/problem/index.ts";

/** Degrees anticlockwise of a rope's direction as a double. */
export function degreesOf(rope: Rope): number {
  const { direction } = rope;
  return direction.kind === "angle" ? direction.degrees.valueOf() : (Math.atan2(direction.rise.valueOf(), direction.run.valueOf()) * 180) / Math.PI;
}

/** The side where the lesson's own problem ties a rope. */
export const sideOf = (start: Problem, rope: string): "left" | "right" => {
  const found = start.ropes.find((r) => r.id === rope);
  return found !== undefined && Math.abs(degreesOf(found)) > 90 ? "left" : "right";
};

/** Degrees up from the level line of that side; over 90 the rope leans to the other side, below 0 it falls. */
export function ownDegrees(degrees: number, side: "left" | "right"): number {
  const own = side === "right" ? degrees : 180 - degrees;
  return tidy(own > 180 ? own - 360 : own);
}

/** Back to degrees anticlockwise, as text. */
export function anticlockwise(own: string, side: "left" | "right"): string {
  return side === "right" ? own : String(tidy(180 - Number(own)));
}

const tidy = (x: number): number => Math.round(x * 1e6) / 1e6;
