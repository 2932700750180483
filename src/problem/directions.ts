// A direction in the words of the trade, and back into the document: "up to the left at 40° from the horizontal".
import { numberText, normalisedDegrees, readNumberText } from "../../shared/problem/index.ts";
import { compareRationals, equalRationals, isZeroRational, rational } from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";
import { readEntry } from "./document-text.ts";
import { sameJson, textAt } from "./json.ts";
import type { JsonObject } from "./json.ts";

/** Which way; "up-slope" and "down-slope" are along the slope that the body lies on. */
export type Heading =
  | "up"
  | "down"
  | "left"
  | "right"
  | "up-left"
  | "up-right"
  | "down-left"
  | "down-right"
  | "run-rise"
  | "up-slope"
  | "down-slope";

/** A direction as the form shows it; texts that its heading does not need are "". */
export interface DirectionWords {
  readonly heading: Heading;
  readonly reference: "horizontal" | "vertical";
  readonly angle: string;
  readonly run: string;
  readonly rise: string;
}

const STRAIGHT: Readonly<Record<string, string>> = { right: "0", up: "90", left: "180", down: "-90" };
const RIGHT_ANGLE = rational("90");
const HALF_TURN = rational("180");

/** Whether a heading needs an angle. */
export const isOblique = (heading: Heading): boolean => /^(?:up|down)-(?:left|right)$/.test(heading);

const plain = (heading: Heading): DirectionWords => ({
  heading,
  reference: "horizontal",
  angle: "",
  run: "",
  rise: "",
});
const written = (value: Rational): number | string => readEntry(numberText(value)) ?? numberText(value);
const ZERO = rational("0");
const isLess = (one: Rational, other: Rational): boolean => compareRationals(one, other) < 0;

/** The words of a direction; what cannot be read is shown as it stands. `slope` is that of the surface under the body. */
export function wordsOf(direction: JsonObject | null, slope: JsonObject | null): DirectionWords {
  if (direction === null) return { ...plain("up-right"), angle: "" };
  const uphill = slope === null ? null : uphillOf(slope);
  if (uphill !== null && sameJson(direction, uphill)) return plain("up-slope");
  if (uphill !== null && sameJson(direction, oppositeOf(uphill))) return plain("down-slope");
  if ("run" in direction || "rise" in direction)
    return { ...plain("run-rise"), run: textAt(direction, "run"), rise: textAt(direction, "rise") };
  return "from" in direction ? fromVertical(direction) : fromLevel(textAt(direction, "angle"));
}

function fromLevel(text: string): DirectionWords {
  const value = readNumberText(text);
  if (value === null) return { ...plain("up-right"), angle: text };
  const degrees = normalisedDegrees(value);
  const acute = degrees.abs();
  for (const [heading, angle] of Object.entries(STRAIGHT))
    if (equalRationals(degrees, rational(angle))) return plain(heading as Heading);
  const side = isLess(acute, RIGHT_ANGLE) ? "right" : "left";
  const angle = side === "right" ? acute : HALF_TURN.sub(acute);
  return { ...plain(`${degrees.s > 0n ? "up" : "down"}-${side}`), angle: numberText(angle) };
}

function fromVertical(direction: JsonObject): DirectionWords {
  const text = textAt(direction, "angle");
  const side = direction.side === "left" ? "left" : "right";
  const value = readNumberText(text);
  const words = { ...plain(`up-${side}`), reference: "vertical", angle: text } as const;
  if (value === null || isLess(value, ZERO) || isLess(HALF_TURN, value)) return words;
  if (isZeroRational(value)) return plain("up");
  if (equalRationals(value, HALF_TURN)) return plain("down");
  if (equalRationals(value, RIGHT_ANGLE)) return plain(side);
  if (isLess(value, RIGHT_ANGLE)) return { ...words, angle: numberText(value) };
  return { ...words, heading: `down-${side}`, angle: numberText(HALF_TURN.sub(value)) };
}

/** What an angle has to be in words, for the note at its field. */
export const ANGLE_RULE = "an angle from 0 to 90 degrees";

/** The direction that the words mean; null where a number is missing or is none, or an angle is not from 0 to 90. */
export function directionOf(words: DirectionWords, slope: JsonObject | null): JsonObject | null {
  const { heading } = words;
  const straight = STRAIGHT[heading];
  if (straight !== undefined) return { angle: Number(straight) };
  if (heading === "up-slope" || heading === "down-slope") {
    const uphill = slope === null ? null : uphillOf(slope);
    return uphill === null || heading === "up-slope" ? uphill : oppositeOf(uphill);
  }
  if (heading === "run-rise") {
    const [run, rise] = [readEntry(words.run), readEntry(words.rise)];
    return run === null || rise === null ? null : { run, rise };
  }
  const entry = readEntry(words.angle);
  const angle = entry === null ? null : readNumberText(String(entry));
  if (angle === null || isLess(angle, ZERO) || isLess(RIGHT_ANGLE, angle)) return null;
  const isUp = heading.startsWith("up");
  const side = heading.endsWith("left") ? "left" : "right";
  if (words.reference === "vertical")
    return { angle: written(isUp ? angle : HALF_TURN.sub(angle)), from: "vertical", side };
  const fromRight = side === "right" ? angle : HALF_TURN.sub(angle);
  return { angle: written(isUp ? fromRight : fromRight.neg()) };
}

/** The words with another heading, numbers that it needs filled in. */
export function reworded(words: DirectionWords, heading: Heading): DirectionWords {
  if (isOblique(heading)) return { ...words, heading, angle: words.angle === "" ? "30" : words.angle };
  if (heading !== "run-rise" || words.run !== "") return { ...words, heading };
  const run = words.heading.endsWith("left") ? "-4" : "4";
  return { ...words, heading, run, rise: words.heading.startsWith("down") ? "-3" : "3" };
}

/** The direction up along a surface; null for a level one, or one whose direction cannot be read. */
export function uphillOf(slope: JsonObject): JsonObject | null {
  const { heading } = wordsOf(slope, null);
  if (heading === "left" || heading === "right") return null;
  if (heading !== "run-rise") return heading.startsWith("up") ? slope : oppositeOf(slope);
  const rise = readNumberText(textAt(slope, "rise"));
  if (rise === null || isZeroRational(rise)) return null;
  return rise.s > 0n ? slope : oppositeOf(slope);
}

/** The opposite direction, written in the same manner; a direction that cannot be read stays as it is. */
export function oppositeOf(direction: JsonObject): JsonObject {
  const numbers = (key: string): Rational | null => readNumberText(textAt(direction, key));
  const [run, rise, angle] = [numbers("run"), numbers("rise"), numbers("angle")];
  if (run !== null && rise !== null) return { run: written(run.neg()), rise: written(rise.neg()) };
  if (angle === null) return direction;
  if ("from" in direction)
    return {
      angle: written(HALF_TURN.sub(angle)),
      from: "vertical",
      side: direction.side === "left" ? "right" : "left",
    };
  return { angle: written(normalisedDegrees(angle.add(HALF_TURN))) };
}
