/**
 * The problem: its types, its document and its edits, without the schema library, so that a page stays light. Reading
 * a document that nobody has checked is in `schema.ts`.
 */
export type {
  Body,
  Direction,
  Load,
  Motion,
  Problem,
  Pull,
  Push,
  Rope,
  Side,
  Surface,
  Units,
  Vector,
  WrittenAngle,
} from "./types.ts";
export type {
  AccelerationDocument,
  BodyDocument,
  DirectionDocument,
  LongRopeDocument,
  MotionDocument,
  PlaceDocument,
  ProblemDocument,
  PushDocument,
  RopeDocument,
  StraightRopeDocument,
  SurfaceDocument,
  TiedRopeDocument,
  WrittenNumber,
} from "./document.ts";
export { quote } from "./fault.ts";
export type { Fault, Reading } from "./fault.ts";
export { changeProblem, editProblem } from "./change.ts";
export type { ProblemChange } from "./change.ts";
export { checkProblem } from "./check.ts";
export {
  angleDirection,
  directionBetween,
  equalDirections,
  isUpright,
  normalisedDegrees,
  opposite,
  turnedTo,
  verticalDirection,
} from "./direction.ts";
export { problemFromDocument } from "./from-document.ts";
export { gravityAtLatitude, gravityChoices } from "./gravity.ts";
export type { GravityChoice } from "./gravity.ts";
export { isPlainHanging } from "./kinds.ts";
export { isWithinLimits, LIMITS, rangeInWords, unitInWords } from "./limits.ts";
export type { Limit, Quantity } from "./limits.ts";
export { frictionId } from "./names.ts";
export { ID_PATTERN, isReservedId, isReservedInSystems, RESERVED_IDS, RESERVED_SURFACE_IDS } from "./reserved-ids.ts";
export { isPlaced, joinedBody, pullsOf, straightTo } from "./rope.ts";
export { writeProblem } from "./to-document.ts";
export type { WrittenProblem } from "./to-document.ts";
export { equalVectors, isZeroVector, ZERO_VECTOR } from "./vector.ts";
export { numberText, readNumberText } from "./written-number.ts";
