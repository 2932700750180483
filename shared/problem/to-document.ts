import { writeDirection } from "./direction.ts";
import type { BodyDocument, ProblemDocument } from "./document.ts";
import type { Body, Problem } from "./types.ts";
import { writeNumber } from "./written-number.ts";

/**
 * The canonical document of a problem, ready for JSON.stringify: every default written, keys in the order of the
 * format's description, numbers as JSON numbers where those are exact and as text otherwise.
 */
export function writeProblem(problem: Problem): ProblemDocument {
  return {
    format: 1,
    gravity: writeNumber(problem.gravity),
    bodies: problem.bodies.map(writeBody),
    ropes: problem.ropes.map((rope) => ({ id: rope.id, on: rope.on, direction: writeDirection(rope.direction) })),
  };
}

function writeBody(body: Body): BodyDocument {
  const { x, y } = body.acceleration;
  const load =
    body.load.kind === "mass" ? { mass: writeNumber(body.load.mass) } : { weight: writeNumber(body.load.weight) };
  return { id: body.id, name: body.name, ...load, acceleration: { x: writeNumber(x), y: writeNumber(y) } };
}
