// Directions of a set-up in words: the true side and the acute angle from the level line.
import type { Heading } from "../../../1-bodies/types.ts";
import { degreesOfTurned, quarterTurn } from "../../../algebra/turned.ts";
import type { Turned } from "../../../algebra/turned.ts";
import { toFigures, withUnit } from "../../../../shared/format/index.ts";
import { degreesOf } from "../../print/tex.ts";
import { say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Run, Sentence } from "../../types.ts";
import { sideWord } from "../directions.ts";

/** An acute angle by its letter: 65°, or α ≈ 53.1° where its degrees have no end. */
export function angleWords(s: SetUpSpeech, angle: string): Sentence {
  const { mark, figures } = s.settings;
  const degrees = degreesOf([{ sign: 1, id: angle }], s.values, mark);
  const radians = s.setUp.angles.get(angle)?.radians ?? 0;
  const value = (text: string): Run => ({ kind: "value", text, ref: angle });
  if (degrees !== null) return [value(`${degrees.text}°`)];
  const about = withUnit(toFigures((radians * 180) / Math.PI, figures, { mark }), "°");
  return say`${s.letter(angle)} ≈ ${value(about)}`;
}

/** "up to the left at 65° from the horizontal", "straight up", "level to the right"; with `back` the opposite way. */
export function headingWords(s: SetUpSpeech, heading: Turned["heading"] | Heading, back = false): Sentence {
  const side = back ? -heading.side : heading.side;
  const rise = back ? -heading.rise : heading.rise;
  if (side === 0) return say`straight ${rise > 0 ? "up" : "down"}`;
  if (rise === 0) return say`level ${sideWord(side)}`;
  return say`${rise > 0 ? "up" : "down"} ${sideWord(side)} at ${angleWords(s, heading.angle)} from the horizontal`;
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

/** Which way a direction points, without its angle: "up and to the left", "to the right", "straight down". */
export function wayWords(toward: Turned): string {
  const degrees = degreesOfTurned(toward);
  if (isNear(degrees, 0)) return "to the right";
  if (isNear(degrees, 90)) return "straight up";
  if (isNear(degrees, 180)) return "to the left";
  if (isNear(degrees, -90)) return "straight down";
  return `${degrees > 0 ? "up" : "down"} and ${Math.abs(degrees) > 90 ? "to the left" : "to the right"}`;
}

/** Along a surface or line: "up the slope", "down the slope", "to the right", "upwards". */
export function alongWords(toward: Turned): string {
  const degrees = degreesOfTurned(toward);
  if (isNear(degrees, 0)) return "to the right";
  if (isNear(degrees, 90)) return "upwards";
  if (isNear(degrees, 180)) return "to the left";
  if (isNear(degrees, -90)) return "downwards";
  return degrees > 0 ? "up the slope" : "down the slope";
}

/** The opposite direction. */
export const oppositeWay = (toward: Turned): Turned => quarterTurn(toward, 2);

/** The way something counted along a direction goes, by its sign. */
export const signedWay = (toward: Turned, size: number): string => alongWords(size < 0 ? oppositeWay(toward) : toward);

/** The two ways along a line: "up or down", "to the left or right", "up or down the slope". */
export function lineWords(toward: Turned): string {
  const degrees = degreesOfTurned(toward);
  if (isNear(Math.abs(degrees), 90)) return "straight up or down";
  if (isNear(degrees, 0) || isNear(degrees, 180)) return "to the left or right";
  return "up or down the slope";
}
