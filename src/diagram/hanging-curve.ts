// The curve of a slack rope: a chain of given length hanging from two points. y upwards.
// With a the ratio of the level pull to the weight of a unit of length, the chain is y = a·cosh(x/a), and for end points dx apart and dy
// different in height, √(length² − dy²) = 2a·sinh(dx/(2a)).
import type { ScenePoint } from "./scene.ts";

/**
 * Points along a chain of the given length from one point to another, evenly spaced along the chain (`count` pieces). A chain no longer
 * than the distance is straight; between points one above the other it hangs down and comes up again.
 */
export function hangingCurve(from: ScenePoint, to: ScenePoint, length: number, count: number): ScenePoint[] {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const shares = Array.from({ length: count + 1 }, (_, i) => i / count);
  if (length <= Math.hypot(dx, dy) * (1 + 1e-9)) {
    return shares.map((share) => ({ x: from.x + dx * share, y: from.y + dy * share }));
  }
  if (Math.abs(dx) < 1e-6 * length) return foldedChain(from, to, length, shares);
  const ratio = Math.sqrt(length * length - dy * dy) / Math.abs(dx);
  const a = Math.abs(dx) / (2 * chainParameter(ratio));
  // From dy/length = tanh of the mean of the parameters at the two ends.
  const start = Math.atanh(dy / length) - Math.abs(dx) / (2 * a);
  return shares.map((share) => {
    const parameter = Math.asinh(Math.sinh(start) + (share * length) / a);
    return {
      x: from.x + Math.sign(dx) * a * (parameter - start),
      y: from.y + a * (Math.cosh(parameter) - Math.cosh(start)),
    };
  });
}

function foldedChain(from: ScenePoint, to: ScenePoint, length: number, shares: readonly number[]): ScenePoint[] {
  const down = (length + from.y - to.y) / 2;
  return shares.map((share) => {
    const travelled = share * length;
    const y = travelled < down ? from.y - travelled : from.y - 2 * down + travelled;
    return { x: from.x + (to.x - from.x) * share, y };
  });
}

/** Solves sinh(z)/z = ratio for z > 0 (ratio > 1) by Newton's method, from a start on the far side, where it falls steadily. */
export function chainParameter(ratio: number): number {
  let z = ratio < 3 ? Math.sqrt(6 * (ratio - 1)) : Math.log(2 * ratio) + Math.log(Math.log(2 * ratio)) + 1;
  for (let step = 0; step < 60; step += 1) {
    const next = z - (Math.sinh(z) - ratio * z) / (Math.cosh(z) - ratio);
    if (Math.abs(next - z) <= 1e-14 * z) return next;
    z = next;
  }
  return z;
}
