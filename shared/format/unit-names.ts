/** The systems of units that a problem can be in: kg, N, m, s; or slug, lbf, ft, s. */
export type UnitSystem = "SI" | "lbf-ft";

/** The quantities with a unit of their own; angles are in degrees and times in seconds everywhere. */
export type Dimension = "force" | "mass" | "acceleration" | "length";

/** The units of each system as they are printed. */
export const unitNames: Readonly<Record<UnitSystem, Readonly<Record<Dimension, string>>>> = {
  SI: { force: "N", mass: "kg", acceleration: "m/s²", length: "m" },
  "lbf-ft": { force: "lbf", mass: "slug", acceleration: "ft/s²", length: "ft" },
};
