import { compareRationals, ratio, signedNumerator } from "../exact/index.ts";
import type { Rational } from "../exact/index.ts";
import type { DirectionDocument } from "./document.ts";
import type { Direction, Side } from "./types.ts";
import { readCheckedNumber, writeNumber } from "./written-number.ts";

const RIGHT_ANGLE = ratio(90n, 1n);

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

/** The same manner of writing for another angle: what was given from the vertical stays so, everything else is level. */
export function turnedTo(direction: Direction, degrees: Rational): Direction {
  if (direction.kind !== "angle" || direction.written.from !== "vertical") return angleDirection(degrees);
  const fromUp = normalisedDegrees(degrees.sub(RIGHT_ANGLE));
  const turn = compareRationals(fromUp, ratio(0n, 1n));
  // Straight up and straight down lie on neither side: keep the side that stands there.
  const straight = turn === 0 || compareRationals(fromUp, ratio(180n, 1n)) === 0;
  return verticalDirection(fromUp.abs(), straight ? direction.written.side : turn > 0 ? "left" : "right");
}

/** Reads a direction from a document that the schema has passed. Throws TypeError on another. */
export function readDirection(document: DirectionDocument): Direction {
  if ("run" in document)
    return { kind: "slope", run: readCheckedNumber(document.run), rise: readCheckedNumber(document.rise) };
  if ("from" in document) return verticalDirection(readCheckedNumber(document.angle), document.side);
  return angleDirection(readCheckedNumber(document.angle));
}

/** The direction as a document gives it. */
export function writeDirection(direction: Direction): DirectionDocument {
  if (direction.kind === "slope") return { run: writeNumber(direction.run), rise: writeNumber(direction.rise) };
  if (direction.written.from === "horizontal") return { angle: writeNumber(direction.degrees) };
  return { angle: writeNumber(direction.written.angle), from: "vertical", side: direction.written.side };
}
