import { ratio, rational, sineOf } from "../exact/index.ts";
import type { Rational } from "../exact/index.ts";

/** A value of g to choose from a list. */
export type GravityChoice = {
  readonly id: string;
  /** m/s². */
  readonly value: Rational;
  /** What the list says beside the value. */
  readonly label: string;
  /** Where the value comes from. */
  readonly source: string;
};

/** The values of g that the page offers, besides a latitude and a typed value. */
export const gravityChoices: readonly GravityChoice[] = [
  { id: "ten", value: rational("10"), label: "10, for quick sums", source: "9.81 rounded to one figure" },
  { id: "two-figures", value: rational("9.8"), label: "9.8, two figures", source: "standard gravity to two figures" },
  {
    id: "three-figures",
    value: rational("9.81"),
    label: "9.81, three figures",
    source: "standard gravity to three figures",
  },
  {
    id: "standard",
    value: rational("9.80665"),
    label: "9.80665, the standard value, exact",
    source: "3rd General Conference on Weights and Measures, 1901: exact by definition",
  },
  {
    id: "moon",
    value: rational("1.62"),
    label: "1.62, on the Moon",
    source: "planetary fact sheets, surface gravity of the Moon; value from memory",
  },
  {
    id: "mars",
    value: rational("3.73"),
    label: "3.73, on Mars",
    source: "planetary fact sheets, mean surface gravity of Mars; value from memory",
  },
];

/** Normal gravity at the equator, m/s². */
const EQUATOR = 9.7803267715;
/** (b·γ_pole)/(a·γ_equator) − 1. */
const K = 0.001931851353;
/** The square of the ellipsoid's first eccentricity. */
const E2 = 0.0066943800229;
const DECIMALS = 100_000;

/**
 * Normal gravity at sea level by latitude in degrees (north positive, −90 to 90), m/s², rounded to 5 decimals, which is
 * as fine as the formula without local rock is worth. Somigliana's formula with the constants of the Geodetic
 * Reference System 1980 (H. Moritz, Bulletin Géodésique 62:3, 1988). Throws RangeError beyond the poles.
 */
export function gravityAtLatitude(degrees: Rational): Rational {
  if (degrees.n > 90n * degrees.d) throw new RangeError("a latitude lies between -90 and 90 degrees");
  const sine = sineOf(degrees);
  const square = sine * sine;
  const gravity = (EQUATOR * (1 + K * square)) / Math.sqrt(1 - E2 * square);
  return ratio(BigInt(Math.round(gravity * DECIMALS)), BigInt(DECIMALS));
}
