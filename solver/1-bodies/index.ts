// Stage 1: problem to world. Directions become side, rise and acute angle; the body gets its mass and weight; ropes get their places.
import { rational, surd } from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";
import type { Body, Problem } from "../../shared/problem/index.ts";
import type { Value } from "../algebra/evaluate.ts";
import { readDirection, signOf } from "./direction.ts";
import { alongOneLine, equalAcute } from "./lines.ts";
import { place } from "./place.ts";
import type { World, WorldBody, WorldRope } from "./types.ts";

export type { Anchor, Point, Side, World, WorldBody, WorldRope, WrittenDirection } from "./types.ts";
export { alongOneLine, equalAcute, forceAlong, turn } from "./lines.ts";
export type * from "./set-up-types.ts";
export { buildSetUp } from "./set-up/index.ts";

const ANGLE_LETTERS = ["alpha", "beta", "gamma", "delta"];
const letterOf = (index: number): string => ANGLE_LETTERS[index] ?? `angle${index + 1}`;

/** A rational as a value with both faces. */
export const valueOf = (x: Rational): Value => ({ decimal: x.valueOf(), exact: surd(x) });

/** Builds the world of a validated problem. Angles of ropes are letters alpha, beta in the problem's order. */
export function buildWorld(problem: Problem): World {
  const body = problem.bodies[0];
  if (body === undefined) throw new Error("a problem has a body: the schema lets none through without");
  const read = problem.ropes.map((r) => readDirection(r.direction));
  const placed = place(read);
  const ropes = problem.ropes.flatMap((rope, i): WorldRope[] => {
    const direction = read[i];
    const at = placed[i];
    if (direction === undefined || at === undefined) return [];
    const twin = read.findIndex((other) => equalAcute(other.acute, direction.acute));
    return [{ id: rope.id, number: i + 1, angle: letterOf(twin), ownAngle: letterOf(i), ...direction, ...at }];
  });
  const first = ropes[0];
  const oneLine = first !== undefined && ropes.every((r) => alongOneLine(first, r) !== 0);
  return {
    gravity: valueOf(problem.gravity),
    body: buildBody(body, problem.gravity),
    ropes,
    lines: oneLine ? "one-line" : "spread",
  };
}

function buildBody(body: Body, gravity: Rational): WorldBody {
  const { x, y } = body.acceleration;
  const weight = body.load.kind === "weight" ? body.load.weight : body.load.mass.mul(gravity);
  const mass =
    body.load.kind === "mass" ? body.load.mass : gravity.equals(0) ? rational("0") : body.load.weight.div(gravity);
  return {
    id: body.id,
    name: body.name,
    givenBy: body.load.kind,
    mass: valueOf(mass),
    weight: valueOf(weight),
    acceleration: { x: valueOf(x), y: valueOf(y) },
    lift: signOf(gravity.add(y)),
    push: signOf(x),
  };
}
