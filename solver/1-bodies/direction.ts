// A direction as a class reads it: which side, rising or falling, and the acute angle from the level line.
import {
  exactCosine,
  exactSine,
  cosineOf,
  sineOf,
  divide,
  rational,
  squareRoot,
  surd,
  toNumber,
} from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";
import type { Direction } from "../../shared/problem/index.ts";
import type { AngleValue, Value } from "../algebra/evaluate.ts";
import type { Side, WrittenDirection } from "./types.ts";

/** A direction read: side, rise, acute angle, and how it was written. */
export interface ReadDirection {
  readonly side: Side;
  readonly rise: Side;
  readonly acute: AngleValue;
  readonly written: WrittenDirection;
}

const QUARTER = rational("90");
const HALF = rational("180");
const EIGHTH = rational("45");

/** Reads a given direction. Angles are degrees anticlockwise from +x in (-180, 180]. Throws for one that is still to be found. */
export function readDirection(direction: Direction): ReadDirection {
  if (direction.kind === "hangs") throw new Error("the direction of this rope follows from where its body hangs");
  return direction.kind === "slope"
    ? fromSlope(direction.run, direction.rise)
    : fromDegrees(
        direction.degrees,
        direction.written.from === "vertical"
          ? { from: "vertical", angle: direction.written.angle }
          : { from: "horizontal" },
      );
}

function fromDegrees(degrees: Rational, written: WrittenDirection): ReadDirection {
  const up = degrees.compare(0) >= 0;
  const turned = up ? degrees : degrees.neg();
  const leftwards = turned.compare(QUARTER) > 0;
  const acute = leftwards ? HALF.sub(turned) : turned;
  const vertical = acute.equals(QUARTER);
  const level = acute.equals(0);
  return { side: vertical ? 0 : leftwards ? -1 : 1, rise: level ? 0 : up ? 1 : -1, acute: acuteAngle(acute), written };
}

/** The acute angle of so many degrees, 0 to 90. */
export function acuteAngle(degrees: Rational): AngleValue {
  const sineExact = exactSine(degrees);
  const cosineExact = exactCosine(degrees);
  return {
    degrees,
    radians: (degrees.valueOf() * Math.PI) / 180,
    sine: { decimal: sineOf(degrees), exact: sineExact },
    cosine: { decimal: cosineOf(degrees), exact: cosineExact },
  };
}

function fromSlope(run: Rational, rise: Rational): ReadDirection {
  const written: WrittenDirection = { from: "slope", run, rise };
  const side = signOf(run);
  const up = signOf(rise);
  if (side === 0) return { side, rise: up, acute: acuteAngle(QUARTER), written };
  if (up === 0) return { side, rise: up, acute: acuteAngle(rational("0")), written };
  const across = run.abs();
  const upwards = rise.abs();
  // One up for one across is the only slope whose angle is a whole number of degrees, or any fraction of them.
  if (across.equals(upwards)) return { side, rise: up, acute: acuteAngle(EIGHTH), written };
  const radians = Math.atan2(upwards.valueOf(), across.valueOf());
  return {
    side,
    rise: up,
    acute: { degrees: null, radians, sine: share(upwards, across, upwards), cosine: share(across, across, upwards) },
    written,
  };
}

/** part / sqrt(run² + rise²), exact when the root's square-free part can be found. */
function share(part: Rational, run: Rational, rise: Rational): Value {
  const length = squareRoot(run.mul(run).add(rise.mul(rise)));
  if (length === null) return { decimal: part.valueOf() / Math.hypot(run.valueOf(), rise.valueOf()), exact: null };
  const exact = divide(surd(part), length);
  return { decimal: toNumber(exact), exact };
}

/** Sign of a rational. */
export function signOf(x: Rational): Side {
  const s = x.compare(0);
  return s < 0 ? -1 : s > 0 ? 1 : 0;
}
