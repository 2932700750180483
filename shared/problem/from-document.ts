import { readDirection } from "./direction.ts";
import type { BodyDocument, ProblemDocument } from "./document.ts";
import type { Body, Load, Problem } from "./types.ts";
import { readCheckedNumber } from "./written-number.ts";

/**
 * The problem of a document that `readProblemDocument` or the build has already passed; no schema library is needed.
 * Throws TypeError for a number that no checked document can hold.
 */
export function problemFromDocument(document: ProblemDocument): Problem {
  return {
    format: 1,
    gravity: readCheckedNumber(document.gravity),
    bodies: document.bodies.map(readBody),
    ropes: document.ropes.map((rope) => ({ id: rope.id, on: rope.on, direction: readDirection(rope.direction) })),
  };
}

function readBody(body: BodyDocument): Body {
  return {
    id: body.id,
    name: body.name ?? body.id,
    load: readLoad(body),
    acceleration: { x: readCheckedNumber(body.acceleration?.x ?? 0), y: readCheckedNumber(body.acceleration?.y ?? 0) },
  };
}

function readLoad(body: BodyDocument): Load {
  if (body.weight !== undefined) return { kind: "weight", weight: readCheckedNumber(body.weight) };
  if (body.mass !== undefined) return { kind: "mass", mass: readCheckedNumber(body.mass) };
  throw new TypeError("the document has not been checked: a body has neither mass nor weight");
}
