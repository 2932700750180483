// Directions by side, rise and the letter of an acute angle; the cosine of the angle between two of them is a sine or cosine of a sum of letters.
import { isZero, rational } from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";
import { exactly } from "./evaluate.ts";
import type { AngleValue } from "./evaluate.ts";
import type { AngleSum, TrigName } from "./expr.ts";

/** A direction that may be a quarter turn off a given one: a normal, or the way friction acts. */
export interface Turned {
  readonly heading: {
    /** Degrees anticlockwise from the x axis, in (-180, 180]. */
    readonly degrees: number;
    readonly side: -1 | 0 | 1;
    readonly rise: -1 | 0 | 1;
    /** The letter of its acute angle from the level line; "" where it is level or upright. */
    readonly angle: string;
  };
  /** Quarter turns anticlockwise from the heading. */
  readonly quarters: 0 | 1 | 2 | 3;
}

/** The cosine of an angle between two directions: a sign and a positive factor. */
export interface Cosine {
  readonly sign: -1 | 0 | 1;
  /** sin or cos of a sum of angle letters; null where the factor is one (or, with sign 0, nothing). */
  readonly trig: { readonly fn: TrigName; readonly angle: AngleSum } | null;
  readonly decimal: number;
}

/** The name of half a turn, where an angle is taken from it. */
export const STRAIGHT = "straight";

/** A direction as quarter turns and at most one angle letter. */
interface Course {
  readonly quarters: number;
  readonly letters: AngleSum;
}

/** The course of a direction anticlockwise from the x axis. */
function courseOf({ heading, quarters }: Turned): Course {
  const { side, rise, angle } = heading;
  if (side === 0) return { quarters: quarters + (rise > 0 ? 1 : 3), letters: [] };
  const base = side > 0 ? 0 : 2;
  if (rise === 0) return { quarters: quarters + base, letters: [] };
  return { quarters: quarters + base, letters: [{ sign: side * rise > 0 ? 1 : -1, id: angle }] };
}

/** Degrees of a direction anticlockwise from the x axis, in (-180, 180]. */
export function degreesOfTurned({ heading, quarters }: Turned): number {
  const turned = (((heading.degrees + 90 * quarters) % 360) + 360) % 360;
  return turned > 180 ? turned - 360 : turned;
}

/** The cosine of the angle from one direction to another. `angles` holds every letter's value. */
export function cosineBetween(from: Turned, to: Turned, angles: ReadonlyMap<string, AngleValue>): Cosine {
  const a = courseOf(from);
  const b = courseOf(to);
  const quarters = (((b.quarters - a.quarters) % 4) + 4) % 4;
  const letters = difference(b.letters, a.letters);
  if (letters.length === 0) {
    const decimal = [1, 0, -1, 0][quarters] ?? 0;
    return { sign: decimal === 0 ? 0 : decimal > 0 ? 1 : -1, trig: null, decimal };
  }
  // cos(q·90° + L) is cos L, −sin L, −cos L or sin L.
  const fn = quarters % 2 === 0 ? "cos" : "sin";
  const outer = quarters === 0 || quarters === 3 ? 1 : -1;
  return outer === 1 ? positive(fn, letters, angles) : opposite(positive(fn, letters, angles));
}

const opposite = (c: Cosine): Cosine => ({
  ...c,
  sign: c.sign === 0 ? 0 : c.sign > 0 ? -1 : 1,
  decimal: c.sign === 0 ? 0 : -c.decimal,
});

/** a − b as a sum of letters; equal letters of opposite sign cancel. */
function difference(a: AngleSum, b: AngleSum): AngleSum {
  const all = [...a, ...b.map(({ sign, id }) => ({ sign: sign > 0 ? (-1 as const) : (1 as const), id }))];
  const [first, second] = all;
  return first !== undefined && first.id === second?.id && first.sign !== second.sign ? [] : all;
}

/** sin or cos of a sum of one or two angles, written with a positive factor. */
function positive(fn: "sin" | "cos", letters: AngleSum, angles: ReadonlyMap<string, AngleValue>): Cosine {
  const value = radiansOf(letters, angles);
  const decimal = fn === "sin" ? Math.sin(value) : Math.cos(value);
  const size = exactSize(fn, letters, angles, decimal);
  if (size !== null) return { sign: size, trig: null, decimal: size };
  const turned = fn === "sin" ? sineForm(letters, value) : cosineForm(letters, value);
  return { sign: decimal > 0 ? 1 : -1, trig: { fn, angle: turned }, decimal };
}

const flip = (letters: AngleSum): AngleSum => letters.map(({ sign, id }) => ({ sign: sign > 0 ? -1 : 1, id }));
/** Letters with a plus first, otherwise in the order of the alphabet. */
const ordered = (letters: AngleSum): AngleSum =>
  [...letters].sort((a, b) => b.sign - a.sign || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));

const fromStraight = (letters: AngleSum): AngleSum => [{ sign: 1, id: STRAIGHT }, ...flip(ordered(letters))];

/** |sin L| as the sine of an angle between 0° and 180°. */
const sineForm = (letters: AngleSum, value: number): AngleSum => ordered(value < 0 ? flip(letters) : letters);

/** |cos L| as the cosine of an angle between 0° and 90°. */
function cosineForm(letters: AngleSum, value: number): AngleSum {
  const upright = ordered(value < 0 ? flip(letters) : letters);
  return Math.abs(value) > Math.PI / 2 ? fromStraight(upright) : upright;
}

function radiansOf(letters: AngleSum, angles: ReadonlyMap<string, AngleValue>): number {
  return letters.reduce((total, { sign, id }) => total + sign * (angles.get(id)?.radians ?? Number.NaN), 0);
}

/** 0, 1 or -1 where the value is exactly that; null otherwise. */
function exactSize(
  fn: "sin" | "cos",
  letters: AngleSum,
  angles: ReadonlyMap<string, AngleValue>,
  decimal: number,
): -1 | 0 | 1 | null {
  const near = Math.abs(decimal) < 1e-9 ? 0 : Math.abs(Math.abs(decimal) - 1) < 1e-9 ? (decimal > 0 ? 1 : -1) : null;
  if (near === null) return null;
  const degrees = degreesSum(letters, angles);
  if (degrees !== null) return degrees.mod(rational("90")).equals(0) ? near : null;
  const value = exactly(
    { kind: "trig", fn: near === 0 ? fn : other(fn), angle: letters },
    { symbols: new Map(), angles },
  );
  return value !== null && isZero(value) ? near : null;
}

const other = (fn: "sin" | "cos"): "sin" | "cos" => (fn === "sin" ? "cos" : "sin");

function degreesSum(letters: AngleSum, angles: ReadonlyMap<string, AngleValue>): Rational | null {
  let total: Rational = rational("0");
  for (const { sign, id } of letters) {
    const degrees = angles.get(id)?.degrees ?? null;
    if (degrees === null) return null;
    total = sign > 0 ? total.add(degrees) : total.sub(degrees);
  }
  return total;
}

const level = (quarters: 0 | 1): Turned => ({ heading: { degrees: 0, side: 1, rise: 0, angle: "" }, quarters });
const LEVEL = [level(0), level(1)] as const;

/** The ground's own axes as directions: to the right (0) or upwards (1). */
export const axisDirection = (axis: 0 | 1): Turned => LEVEL[axis];

/** A direction so many quarter turns further anticlockwise. */
export const quarterTurn = (turned: Turned, quarters: 1 | 2 | 3): Turned => ({
  heading: turned.heading,
  quarters: ((turned.quarters + quarters) % 4) as 0 | 1 | 2 | 3,
});
