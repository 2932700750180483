// Where the load hangs on one rope alone, once it has stopped swinging relative to the support.
import type { Point, World, WorldRope } from "../1-bodies/index.ts";

/** The load's new place, and how far it then is from the slack rope's upper end; multiples of h. */
export interface Settled {
  readonly position: Point;
  readonly dx: number;
  readonly dy: number;
}

/** Hangs the load from `kept`: the rope points the way of (ax, g + ay), along which it has to pull. */
export function settle(world: World, kept: WorldRope, slack: WorldRope): Settled {
  const fx = world.body.acceleration.x.decimal;
  const fy = world.gravity.decimal + world.body.acceleration.y.decimal;
  const size = Math.hypot(fx, fy);
  const position = { x: kept.anchor.x - (kept.length * fx) / size, y: kept.anchor.y - (kept.length * fy) / size };
  return { position, dx: slack.anchor.x - position.x, dy: slack.anchor.y - position.y };
}
