// Directions in words: the true side and the acute angle from the level line, never an angle above 90°.
import type { WorldRope } from "../../1-bodies/types.ts";
import type { Speech } from "../speech.ts";
import { say } from "../sentence.ts";
import type { Run, Sentence } from "../types.ts";

/** "to the left" or "to the right". */
export const sideWord = (side: number): string => (side < 0 ? "to the left" : "to the right");

/** "up to the left at 65° from the horizontal", "straight up", "level to the right", "down to the left at 20° ...". */
export function ropeDirection(speech: Speech, rope: WorldRope): Sentence {
  if (rope.side === 0) return say`straight ${rope.rise > 0 ? "up" : "down"}`;
  if (rope.rise === 0) return say`level, ${sideWord(rope.side)}`;
  return say`${rope.rise > 0 ? "up" : "down"} ${sideWord(rope.side)} at ${speech.angle(rope)}`;
}

/** "up and to the left", for the way a pull points. */
export function pullDirection(rope: WorldRope): string {
  if (rope.side === 0) return rope.rise > 0 ? "straight up" : "straight down";
  if (rope.rise === 0) return `level, ${sideWord(rope.side)}`;
  return `${rope.rise > 0 ? "up" : "down"} and ${sideWord(rope.side)}`;
}

/** The acceleration in words: "at 12 m/s² to the right and 2 m/s² upwards"; null when there is none. */
export function accelerationWords(speech: Speech): Sentence | null {
  const { x, y } = speech.world.body.acceleration;
  const parts: Sentence[] = [];
  if (x.decimal !== 0) parts.push(say`${sizeOf(speech, "axGiven", x.decimal)} ${sideWord(x.decimal)}`);
  if (y.decimal !== 0)
    parts.push(say`${sizeOf(speech, "ayGiven", y.decimal)} ${y.decimal > 0 ? "upwards" : "downwards"}`);
  const [first, second] = parts;
  if (first === undefined) return null;
  return second === undefined ? first : say`${first} and ${second}`;
}

/** The size of a given acceleration, in the digits it was given in. */
const sizeOf = (speech: Speech, id: string, value: number): Run => speech.given(id, "m/s²", value < 0 ? -1 : 1);
