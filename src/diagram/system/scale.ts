// The scales of the force pictures of several bodies: one for all, and a round number of times as large for a body whose arrows would be too short.
import { words, type Run } from "../label.ts";
import { newtonScale, withBar, type NewtonScale } from "../newton-scale.ts";

/** A body's scale, and how many times it is that of the others. */
export interface BodyScale {
  readonly scale: NewtonScale;
  readonly times: number;
}

/** With a longest arrow shorter than this, a body gets a larger scale, at which it is at least so long if the picture has room. */
const shortest = 30;
const longEnough = 55;
const steps = [2, 5, 10, 20, 50, 100, 200, 500, 1000, 10_000, 100_000];

/**
 * The scale of one body. `fits` is the largest scale at which the picture of each body fits, `own` that of this one, and `longest` its
 * longest arrow in the unit of force; null where nothing has a size.
 */
export function bodyScale(fits: readonly number[], own: number, longest: number, unit: string): BodyScale | null {
  const common = newtonScale(Math.min(...fits), unit);
  if (common === null || longest === 0) return null;
  const length = longest * common.perNewton;
  if (length >= shortest) return { scale: common, times: 1 };
  const room = own / common.perNewton;
  const wanted =
    steps.find((step) => step * length >= longEnough && step <= room) ?? steps.findLast((step) => step <= room);
  if (wanted === undefined) return { scale: common, times: 1 };
  return { scale: withBar(common.perNewton * wanted, unit), times: wanted };
}

/** What to say of a scale that is not the others'. */
export function scaleRemark(times: number): Run[] {
  return times === 1 ? [] : [words(`arrows ${times} times as long as in the other diagrams`)];
}
