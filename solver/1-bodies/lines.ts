// Exact questions about directions: do two ropes lie along one line, does a force lie along a rope? Decided without rounding.
import { divide, equal, isZero, multiply, subtract, surd } from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";
import type { AngleValue } from "../algebra/evaluate.ts";
import type { Side } from "./types.ts";

/** What these questions need of a rope. */
export interface Line {
  readonly side: Side;
  readonly rise: Side;
  readonly acute: AngleValue;
}

/** Whether two acute angles are equal, exactly. A slope and a number of degrees without an exact sine are never equal: the tangent of a rational number of degrees is rational only at multiples of 45° (Niven's theorem). */
export function equalAcute(a: AngleValue, b: AngleValue): boolean {
  if (a.degrees !== null && b.degrees !== null) return a.degrees.equals(b.degrees);
  if (a.sine.exact === null || b.sine.exact === null) return false;
  return equal(a.sine.exact, b.sine.exact);
}

/** Whether two ropes lie along one line, pulling the same way (1), opposite ways (-1), or not (0). */
export function alongOneLine(a: Line, b: Line): Side {
  if (!equalAcute(a.acute, b.acute)) return 0;
  const level = a.rise === 0;
  const upright = a.side === 0;
  if (level) return a.side === b.side ? 1 : -1;
  if (upright) return a.rise === b.rise ? 1 : -1;
  if (a.side === b.side && a.rise === b.rise) return 1;
  return a.side === -b.side && a.rise === -b.rise ? -1 : 0;
}

/** Whether the force (fx, fy) points along the rope (1), against it (-1), or neither (0); a zero force is neither. */
export function forceAlong(fx: Rational, fy: Rational, line: Line): Side {
  const sx = fx.compare(0);
  const sy = fy.compare(0);
  if (sx === 0 && sy === 0) return 0;
  if (!onLine(fx, fy, line)) return 0;
  return sx * line.side > 0 || sy * line.rise > 0 ? 1 : -1;
}

function onLine(fx: Rational, fy: Rational, line: Line): boolean {
  if (line.side === 0) return fx.compare(0) === 0;
  if (line.rise === 0) return fy.compare(0) === 0;
  const { sine, cosine } = line.acute;
  if (sine.exact === null || cosine.exact === null) return false;
  if (fx.compare(0) * line.side * fy.compare(0) * line.rise <= 0) return false;
  const tangent = divide(sine.exact, cosine.exact);
  return isZero(subtract(multiply(tangent, surd(fx.abs())), surd(fy.abs())));
}

/** The sign of fx·uy − fy·ux for a force and a rope's direction u: on which side of the rope the force points. */
export function turn(fx: Rational, fy: Rational, line: Line): Side {
  if (onLine(fx, fy, line)) return 0;
  const value =
    fx.valueOf() * line.rise * line.acute.sine.decimal - fy.valueOf() * line.side * line.acute.cosine.decimal;
  return value > 0 ? 1 : value < 0 ? -1 : 0;
}
