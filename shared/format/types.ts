/** A number as it is printed. Sign, digits and power of ten are apart, so that typesetting and plain text agree. */
export type Printed = {
  /** The digits without a sign, in the chosen decimal mark: "32.6", "1.20", "0". Never a power of ten. */
  readonly digits: string;
  /** Whether a minus stands in front; never for a printed zero. */
  readonly negative: boolean;
  /** Times ten to this; null where the digits alone are the number. */
  readonly exponent: number | null;
  /** The printed decimal as a double, with its sign: what a reader would type into a calculator. */
  readonly value: number;
  /** Half a unit of the last printed figure: how far the printed number may be from the one that was rounded. */
  readonly halfUnit: number;
};

/** How numbers are written. */
export type PrintOptions = {
  /** The decimal mark, a full stop unless said otherwise. */
  readonly mark?: "." | ",";
  /** Whether whole parts of more than four digits stand in groups of three; not unless asked for. */
  readonly group?: boolean;
};
