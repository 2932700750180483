// Where the ropes are tied and how long they are, when only angles are given. Multiples of h, the height of the beam above the load.
import type { ReadDirection } from "./direction.ts";
import type { Anchor } from "./types.ts";

/** A rope's upper end and its length. */
export interface Placed {
  readonly anchor: Anchor;
  readonly length: number;
}

/**
 * Ropes that rise hang from one level beam at height h = 1. A level or falling rope is tied to a post at the rope's own end height, as far away
 * as the other rope is long (1 if no rope rises). The load is at the origin.
 */
export function place(ropes: readonly ReadDirection[]): Placed[] {
  const rising = ropes.filter((r) => r.rise === 1).map((r) => 1 / r.acute.sine.decimal);
  const reach = rising[0] ?? 1;
  return ropes.map((r) => {
    const length = r.rise === 1 ? 1 / r.acute.sine.decimal : reach;
    const x = r.side * length * r.acute.cosine.decimal;
    return r.rise === 1
      ? { anchor: { kind: "beam", x, y: 1 }, length }
      : { anchor: { kind: "post", x, y: r.rise * length * r.acute.sine.decimal }, length };
  });
}
