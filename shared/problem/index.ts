/**
 * The problem: its types, its document and its edits, without the schema library, so that a page stays light. Reading
 * a document that nobody has checked is in `schema.ts`.
 */
export type { Body, Direction, Load, Problem, Rope, Side, WrittenAngle } from "./types.ts";
export type { BodyDocument, DirectionDocument, ProblemDocument, RopeDocument, WrittenNumber } from "./document.ts";
export { quote } from "./fault.ts";
export type { Fault, Reading } from "./fault.ts";
export { changeProblem, editProblem } from "./change.ts";
export type { ProblemChange } from "./change.ts";
export { checkProblem } from "./check.ts";
export { angleDirection, normalisedDegrees, turnedTo, verticalDirection } from "./direction.ts";
export { problemFromDocument } from "./from-document.ts";
export { gravityAtLatitude, gravityChoices } from "./gravity.ts";
export type { GravityChoice } from "./gravity.ts";
export { isWithinLimits, LIMITS, rangeInWords } from "./limits.ts";
export type { Limit, Quantity } from "./limits.ts";
export { ID_PATTERN, isReservedId, RESERVED_IDS } from "./reserved-ids.ts";
export { writeProblem } from "./to-document.ts";
export { numberText, readNumberText } from "./written-number.ts";
