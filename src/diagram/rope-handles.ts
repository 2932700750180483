// Where the handles stand: above the beam over each rope's end, moved apart where two would share a place, and on the load's knot.
import type { Point } from "./geometry.ts";
import { situationSize } from "./situation-view.ts";

/** Of the round target. The picture is at least 320 px wide on a page of 360 px, where this is more than 24 px across. */
export const handleRadius = 14;
/** How far above the beam's lower side a handle stands. */
const raised = 22;
const apart = 2 * handleRadius + 3;

/** The centres of the handles of rope ends on a beam, in the order of the ends. */
export function handlePlaces(ends: readonly Point[]): Point[] {
  const order = ends.map((_, index) => index).sort((a, b) => (ends[a]?.x ?? 0) - (ends[b]?.x ?? 0) || a - b);
  const xs = ends.map((end) => end.x);
  // Each pass pushes neighbours apart by halves; two need one pass, a few more a few.
  for (let pass = 0; pass < (ends.length > 2 ? 40 : 1); pass += 1) spread(xs, order);
  return ends.map((end, index) => ({
    x: inside(xs[index] ?? end.x, order.indexOf(index), ends.length),
    y: end.y - raised,
  }));
}

function spread(xs: number[], order: readonly number[]): void {
  for (let i = 1; i < order.length; i += 1) {
    const left = order[i - 1];
    const right = order[i];
    if (left === undefined || right === undefined) continue;
    const a = xs[left] ?? 0;
    const b = xs[right] ?? 0;
    const missing = apart - (b - a);
    if (missing > 0) {
      xs[left] = a - missing / 2;
      xs[right] = b + missing / 2;
    }
  }
}

/** Within the picture, and leaving room for those that stand before and after in the row. */
function inside(x: number, before: number, count: number): number {
  const edge = handleRadius + 1;
  const right = situationSize.width - edge - (count - 1 - before) * apart;
  return Math.max(edge + before * apart, Math.min(right, x));
}
