import { compareRationals, equalRationals, isZeroRational, ratio, signedNumerator } from "../exact/index.ts";
import type { Rational } from "../exact/index.ts";
import type { DirectionDocument } from "./document.ts";
import type { Direction, Side, Vector } from "./types.ts";
import { readCheckedNumber, writeNumber } from "./written-number.ts";

const RIGHT_ANGLE = ratio(90n, 1n);
const HALF_TURN = ratio(180n, 1n);

/** An angle in degrees brought into (−180, 180] by whole turns. */
export function normalisedDegrees(degrees: Rational): Rational {
  const turn = 360n * degrees.d;
  const half = 180n * degrees.d;
  const within = ((signedNumerator(degrees) % turn) + turn) % turn;
  return ratio(within > half ? within - turn : within, degrees.d);
}

/** A direction given by its angle in degrees, anticlockwise from the positive x axis. */
export function angleDirection(degrees: Rational): Direction {
  return { kind: "angle", degrees: normalisedDegrees(degrees), written: { from: "horizontal" } };
}

/** A direction given by an angle of 0° to 180° from straight up towards a side. */
export function verticalDirection(angle: Rational, side: Side): Direction {
  const degrees = side === "left" ? RIGHT_ANGLE.add(angle) : RIGHT_ANGLE.sub(angle);
  return { kind: "angle", degrees: normalisedDegrees(degrees), written: { from: "vertical", side, angle } };
}

/** The direction from one place to another: a slope, of which both parts are 0 where the places are the same. */
export function directionBetween(from: Vector, to: Vector): Direction {
  return { kind: "slope", run: to.x.sub(from.x), rise: to.y.sub(from.y) };
}

/** The same manner of writing for another angle: what was given from the vertical stays so, everything else is level. */
export function turnedTo(direction: Direction, degrees: Rational): Direction {
  if (direction.kind !== "angle" || direction.written.from !== "vertical") return angleDirection(degrees);
  const fromUp = normalisedDegrees(degrees.sub(RIGHT_ANGLE));
  const turn = compareRationals(fromUp, ratio(0n, 1n));
  // Straight up and straight down lie on neither side: keep the side that stands there.
  const straight = turn === 0 || compareRationals(fromUp, HALF_TURN) === 0;
  return verticalDirection(fromUp.abs(), straight ? direction.written.side : turn > 0 ? "left" : "right");
}

/** The opposite direction in the same manner of writing. */
export function opposite(direction: Direction): Direction {
  if (direction.kind === "hangs") return direction;
  if (direction.kind === "angle") return turnedTo(direction, direction.degrees.add(HALF_TURN));
  return { kind: "slope", run: direction.run.neg(), rise: direction.rise.neg() };
}

/** Whether two directions are written alike, to the number. */
export function equalDirections(one: Direction, other: Direction): boolean {
  if (one.kind === "hangs" || other.kind === "hangs") return one.kind === other.kind;
  if (one.kind === "slope" || other.kind === "slope") {
    if (one.kind !== "slope" || other.kind !== "slope") return false;
    return equalRationals(one.run, other.run) && equalRationals(one.rise, other.rise);
  }
  if (one.written.from === "horizontal" || other.written.from === "horizontal")
    return one.written.from === other.written.from && equalRationals(one.degrees, other.degrees);
  return one.written.side === other.written.side && equalRationals(one.written.angle, other.written.angle);
}

/** Whether a direction goes straight up or straight down. */
export function isUpright(direction: Direction): boolean {
  if (direction.kind === "slope") return isZeroRational(direction.run) && !isZeroRational(direction.rise);
  return direction.kind === "angle" && equalRationals(direction.degrees.abs(), RIGHT_ANGLE);
}

/** Reads a direction from a document that the schema has passed. Throws TypeError on another. */
export function readDirection(document: DirectionDocument): Direction {
  if ("run" in document)
    return { kind: "slope", run: readCheckedNumber(document.run), rise: readCheckedNumber(document.rise) };
  if ("from" in document) return verticalDirection(readCheckedNumber(document.angle), document.side);
  return angleDirection(readCheckedNumber(document.angle));
}

/** The direction as a document gives it. Throws TypeError for one that follows from lengths, which no document gives. */
export function writeDirection(direction: Direction): DirectionDocument {
  if (direction.kind === "hangs") throw new TypeError("where a rope of given length lies is not written");
  if (direction.kind === "slope") return { run: writeNumber(direction.run), rise: writeNumber(direction.rise) };
  if (direction.written.from === "horizontal") return { angle: writeNumber(direction.degrees) };
  return { angle: writeNumber(direction.written.angle), from: "vertical", side: direction.written.side };
}
