// What the controls show of a page's state: plain numbers, so that they are there before anything else is fetched.
import type { PageState } from "../../shared/link/index.ts";
import type { Problem, Rope } from "../../shared/problem/index.ts";

/** A rope's direction as a reader sets it: degrees up from the level line, on the side where the lesson ties it. */
export interface RopeValue {
  readonly id: string;
  readonly side: "left" | "right";
  /** Over 90 the rope leans to the other side; below 0 it falls. */
  readonly degrees: number;
}

/** The values of all controls. */
export interface ControlValues {
  readonly ropes: readonly RopeValue[];
  readonly load: { readonly kind: "mass" | "weight"; readonly value: number };
  readonly gravity: number;
  readonly acceleration: { readonly x: number; readonly y: number };
  readonly figures: number;
  readonly firstAxis: "vertical" | "horizontal";
}

/** Degrees anticlockwise of a rope's direction. */
function degreesOf(rope: Rope): number {
  const { direction } = rope;
  if (direction.kind === "angle") return direction.degrees.valueOf();
  // Where a rope of given length lies is found by the solver, and no control turns it.
  if (direction.kind === "hangs") return 90;
  return (Math.atan2(direction.rise.valueOf(), direction.run.valueOf()) * 180) / Math.PI;
}

const tidy = (x: number): number => Math.round(x * 1e6) / 1e6;

/** The side where the lesson's own problem ties a rope. */
export function sideOf(start: Problem, rope: string): "left" | "right" {
  const found = start.ropes.find((r) => r.id === rope);
  return found !== undefined && Math.abs(degreesOf(found)) > 90 ? "left" : "right";
}

/** Degrees up from the level line of a side, for degrees anticlockwise; and back, since it is its own inverse but for whole turns. */
export function ownDegrees(degrees: number, side: "left" | "right"): number {
  const own = side === "right" ? degrees : 180 - degrees;
  return tidy(own > 180 ? own - 360 : own);
}

/** The controls' values of a state, sides as in the lesson's start. */
export function controlValues(page: PageState, start: PageState): ControlValues {
  const [body] = page.problem.bodies;
  const load = body?.load;
  return {
    ropes: page.problem.ropes.map((rope) => {
      const side = sideOf(start.problem, rope.id);
      return { id: rope.id, side, degrees: ownDegrees(degreesOf(rope), side) };
    }),
    load:
      load?.kind === "weight"
        ? { kind: "weight", value: load.weight.valueOf() }
        : { kind: "mass", value: load?.mass.valueOf() ?? 0 },
    gravity: page.problem.gravity.valueOf(),
    acceleration: { x: body?.acceleration.x.valueOf() ?? 0, y: body?.acceleration.y.valueOf() ?? 0 },
    figures: page.settings.figures,
    firstAxis: page.settings.firstAxis,
  };
}
