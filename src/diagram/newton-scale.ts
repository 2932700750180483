// Newtons to lengths: the scale goes in ten steps a decade, so that arrows keep their lengths while a drag stays within a step.
import { words, type Run } from "./label.ts";

/** A scale and a bar of a round number of newtons that shows it. */
export interface NewtonScale {
  readonly perNewton: number;
  readonly bar: { readonly runs: readonly Run[]; readonly length: number };
}

const stepsPerDecade = 10;
const longestBar = 70;

/** The scale at or just below the largest that fits; null where nothing has a size. `unit` is the unit of force. */
export function newtonScale(largest: number, unit = "N"): NewtonScale | null {
  if (!Number.isFinite(largest) || largest <= 0) return null;
  return withBar(10 ** (Math.floor(Math.log10(largest) * stepsPerDecade + 1e-9) / stepsPerDecade), unit);
}

/** A scale with the bar that shows it. */
export function withBar(perNewton: number, unit: string): NewtonScale {
  const most = longestBar / perNewton;
  const exponent = Math.floor(Math.log10(most) + 1e-9);
  const mantissa = [5, 2, 1].find((m) => m * 10 ** exponent <= most * (1 + 1e-9)) ?? 1;
  return {
    perNewton,
    bar: { runs: roundNumber(mantissa, exponent, unit), length: mantissa * 10 ** exponent * perNewton },
  };
}

function roundNumber(mantissa: number, exponent: number, unit: string): Run[] {
  if (exponent >= 0 && exponent <= 3) return [words(`this long is ${mantissa}${"0".repeat(exponent)} ${unit}`)];
  if (exponent < 0 && exponent >= -3) return [words(`this long is 0.${"0".repeat(-exponent - 1)}${mantissa} ${unit}`)];
  const power = String(exponent).replace("-", "−");
  return [words(`this long is ${mantissa} × 10`), { text: power, face: "word", level: "sup" }, words(` ${unit}`)];
}
