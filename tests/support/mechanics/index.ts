// An independent formulation of what the solver answers, for tests: straight from the document, in Cartesian parts and doubles.
export { boundsOf } from "./bounds.ts";
export type { Interval } from "./bounds.ts";
export { complaints } from "./complaints.ts";
export { along, isKnown, newtonOf, seenFrom, unknownsOf } from "./equations.ts";
export type { State } from "./equations.ts";
export { hangsAt } from "./hanging.ts";
export { at, combine, constant, sizeAt } from "./linear.ts";
export type { Linear } from "./linear.ts";
export { modelOf, numberOf, unitOf } from "./read.ts";
export type { Model, ModelBody, ModelContact, Pair } from "./read.ts";
export { combinationsOf, heldIn, holdsIn } from "./states.ts";
export type { Held } from "./states.ts";
