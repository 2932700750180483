// Gives each direction of a set-up its letter: equal acute angles share one, so that no line is longer than it need be.
import type { Direction } from "../../../shared/problem/index.ts";
import { rational } from "../../../shared/exact/index.ts";
import type { AngleValue } from "../../algebra/evaluate.ts";
import { acuteAngle, readDirection } from "../direction.ts";
import type { ReadDirection } from "../direction.ts";
import { equalAcute } from "../lines.ts";
import { STRAIGHT } from "../../algebra/turned.ts";
import type { Heading } from "../set-up-types.ts";

const ROPE_LETTERS = ["alpha", "beta", "gamma", "delta", "epsilon", "zeta", "eta"];

/** Hands out angle letters: theta for slopes, alpha, beta … for everything else. */
export class Headings {
  /** Every letter given out, with its value. */
  readonly angles = new Map<string, AngleValue>([[STRAIGHT, acuteOf180()]]);
  private readonly slopes: string[] = [];
  private readonly others: string[] = [];
  private readonly slopeCount: number;

  /** `slopeCount` is how many different slope angles there are: one is theta, more are theta1, theta2 … */
  constructor(slopeCount: number) {
    this.slopeCount = slopeCount;
  }

  /** The heading of a direction as the problem gives it. */
  read(direction: Direction, of: "slope" | "other"): Heading {
    return this.letter(readDirection(direction), of);
  }

  /** The heading of a direction that was read or found elsewhere. */
  letter(read: ReadDirection, of: "slope" | "other"): Heading {
    const { side, rise, acute, written } = read;
    const oblique = side !== 0 && rise !== 0;
    return { degrees: degreesOf(read), side, rise, acute, written, angle: oblique ? this.letterFor(acute, of) : "" };
  }

  private letterFor(acute: AngleValue, of: "slope" | "other"): string {
    const known = [...this.angles].find(([id, other]) => id !== STRAIGHT && equalAcute(other, acute));
    if (known !== undefined) return known[0];
    const list = of === "slope" ? this.slopes : this.others;
    const next =
      of === "slope"
        ? this.slopeCount > 1
          ? `theta${list.length + 1}`
          : "theta"
        : (ROPE_LETTERS[list.length] ?? `angle${list.length + 1}`);
    list.push(next);
    this.angles.set(next, acute);
    return next;
  }
}

/** How many different oblique angles the directions make. */
export function countAngles(directions: readonly Direction[]): number {
  const seen: AngleValue[] = [];
  for (const direction of directions) {
    const { side, rise, acute } = readDirection(direction);
    if (side !== 0 && rise !== 0 && !seen.some((other) => equalAcute(other, acute))) seen.push(acute);
  }
  return seen.length;
}

function degreesOf({ side, rise, acute }: ReadDirection): number {
  const degrees = acute.degrees === null ? (acute.radians * 180) / Math.PI : acute.degrees.valueOf();
  const own = side < 0 ? 180 - degrees : degrees;
  if (rise === 0) return side < 0 ? 180 : 0;
  return rise < 0 ? -own : own;
}

function acuteOf180(): AngleValue {
  const degrees = rational("180");
  return { ...acuteAngle(degrees), radians: Math.PI };
}
