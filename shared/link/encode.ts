import { equalRationals } from "../exact/index.ts";
import { equalDirections, numberText } from "../problem/index.ts";
import type { Body, Direction, Load, Problem } from "../problem/index.ts";
import { turnable } from "./parameters.ts";
import type { PageState } from "./types.ts";

/**
 * The query of an address (without "?") that leads from the lesson's start to this state: only what differs, in a fixed
 * order, so that one state has one address; "" where nothing differs. Both states are of one lesson: ids, names and the
 * manner in which an angle is written are the lesson's own and not in the address.
 */
export function encodeState(state: PageState, start: PageState): string {
  const entries = [
    ...encodeProblem(state.problem, start.problem),
    differing("figures", String(state.settings.figures), String(start.settings.figures)),
    differing("first", state.settings.firstAxis, start.settings.firstAxis),
    differing("upto", state.upTo ?? "", start.upTo ?? ""),
  ];
  return entries.filter((entry) => entry !== null).join("&");
}

// Every text written here is digits, letters and . - / : , none of which needs an escape in a query.
function encodeProblem(problem: Problem, start: Problem): (string | null)[] {
  const body = problem.bodies[0];
  const startBody = start.bodies[0];
  if (body === undefined || startBody === undefined) return [];
  const ropes = turnable(problem).map((rope) => {
    const before = start.ropes.find((other) => other.id === rope.id)?.direction;
    return before !== undefined && sameDirection(rope.direction, before)
      ? null
      : `${rope.id}=${directionText(rope.direction)}`;
  });
  return [
    encodeLoad(body, startBody),
    differing("g", numberText(problem.gravity), numberText(start.gravity)),
    ...ropes,
    ...encodeAcceleration(body, startBody),
  ];
}

function differing(name: string, text: string, start: string): string | null {
  return text === start ? null : `${name}=${text}`;
}

/** A body that gets an acceleration although the lesson states none has one in its address, if only of 0. */
function encodeAcceleration(body: Body, start: Body): (string | null)[] {
  const parts = [
    differing("ax", numberText(body.acceleration.x), numberText(start.acceleration.x)),
    differing("ay", numberText(body.acceleration.y), numberText(start.acceleration.y)),
  ];
  const unsaid = body.motion.kind !== start.motion.kind && parts.every((part) => part === null);
  return unsaid ? [`ax=${numberText(body.acceleration.x)}`] : parts;
}

function encodeLoad(body: Body, start: Body): string | null {
  const text = loadText(body.load);
  return text === loadText(start.load) ? null : text;
}

function loadText(load: Load): string {
  return load.kind === "mass" ? `mass=${numberText(load.mass)}` : `weight=${numberText(load.weight)}`;
}

function sameDirection(one: Direction, other: Direction): boolean {
  // However it is written: the manner is the lesson's own.
  if (one.kind === "angle") return other.kind === "angle" && equalRationals(one.degrees, other.degrees);
  return equalDirections(one, other);
}

function directionText(direction: Direction): string {
  if (direction.kind === "angle") return numberText(direction.degrees);
  if (direction.kind === "hangs") throw new TypeError("the direction of a rope given by its length is in no address");
  return `${numberText(direction.run)}:${numberText(direction.rise)}`;
}
