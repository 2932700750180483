// What the letters of a set-up stand for before anything is solved.
import type { SetUp, SetUpBody } from "../../1-bodies/types.ts";
import type { Value } from "../../algebra/evaluate.ts";
import { quarterAngles } from "../values.ts";
import type { AttemptValues } from "../values.ts";

/** The givens of a set-up: masses, weights, g, accelerations, coefficients, sizes of pushes; and every angle. */
export function setUpValues(setUp: SetUp): AttemptValues {
  const symbols = new Map<string, Value>([["g", setUp.gravity]]);
  const angles = new Map(setUp.angles);
  symbols.set("Ax", setUp.frame.x);
  symbols.set("Ay", setUp.frame.y);
  for (const body of setUp.bodies) addBody(symbols, body);
  for (const contact of setUp.contacts) {
    if (contact.staticFriction !== null) symbols.set(contact.coefficients.static, contact.staticFriction);
    if (contact.kineticFriction !== null) symbols.set(contact.coefficients.kinetic, contact.kineticFriction);
  }
  for (const push of setUp.pushes) if (push.size !== null) symbols.set(push.id, push.size);
  quarterAngles(symbols, angles);
  return { symbols, angles };
}

function addBody(symbols: Map<string, Value>, body: SetUpBody): void {
  const { letters, freedom } = body;
  if (!body.massless) {
    if (body.givenBy === "weight") symbols.set(letters.weightId, body.weight);
    else symbols.set(massLetter(body), body.mass);
  }
  if (freedom.kind === "given") {
    symbols.set(`${letters.acceleration}x`, body.acceleration.x);
    symbols.set(`${letters.acceleration}y`, body.acceleration.y);
  }
  if (freedom.kind === "line" && freedom.value !== null) symbols.set(letters.acceleration, freedom.value);
}

/** The letter of a body's mass, where it is given by its mass. */
const massLetter = (body: SetUpBody): string => (body.letters.mass.kind === "symbol" ? body.letters.mass.id : "m");
