// Directions of a set-up in words: the true side and the acute angle from the level line.
import type { Heading } from "../../../1-bodies/types.ts";
import type { Turned } from "../../../algebra/turned.ts";
import { toFigures, withUnit } from "../../../../shared/format/index.ts";
import { degreesOf } from "../../print/tex.ts";
import { say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Run, Sentence } from "../../types.ts";
import { sideWord } from "../directions.ts";

/** An acute angle by its letter: 65°, or about 53.1°. */
export function angleWords(s: SetUpSpeech, angle: string): Run {
  const { mark, figures } = s.settings;
  const degrees = degreesOf([{ sign: 1, id: angle }], s.values, mark);
  const radians = s.setUp.angles.get(angle)?.radians ?? 0;
  const text =
    degrees === null
      ? `about ${withUnit(toFigures((radians * 180) / Math.PI, figures, { mark }), "°")}`
      : `${degrees.text}°`;
  return { kind: "value", text, ref: angle };
}

/** "up to the left at 65° from the horizontal", "straight up", "level, to the right". */
export function headingWords(s: SetUpSpeech, heading: Turned["heading"] | Heading): Sentence {
  const { side, rise } = heading;
  if (side === 0) return say`straight ${rise > 0 ? "up" : "down"}`;
  if (rise === 0) return say`level, ${sideWord(side)}`;
  return say`${rise > 0 ? "up" : "down"} ${sideWord(side)} at ${angleWords(s, heading.angle)} from the horizontal`;
}

/** Which way a direction points, without its angle: "up and to the left", "to the right", "up the slope". */
export function wayWords({ heading, quarters }: Turned): string {
  const degrees = ((((heading.degrees + 90 * quarters) % 360) + 360) % 360) * 1;
  const near = (d: number): boolean => Math.abs(degrees - d) < 1e-9;
  if (near(0) || near(360)) return "to the right";
  if (near(90)) return "straight up";
  if (near(180)) return "to the left";
  if (near(270)) return "straight down";
  const up = degrees < 180 ? "up" : "down";
  return `${up} and ${degrees > 90 && degrees < 270 ? "to the left" : "to the right"}`;
}

/** Along a surface or line: "up the slope", "down the slope", "to the right", "upwards". */
export function alongWords({ heading, quarters }: Turned): string {
  const degrees = (((heading.degrees + 90 * quarters) % 360) + 360) % 360;
  if (Math.abs(degrees % 90) < 1e-9) {
    return ["to the right", "upwards", "to the left", "downwards"][Math.round(degrees / 90) % 4] ?? "";
  }
  return degrees < 180 ? "up the slope" : "down the slope";
}
