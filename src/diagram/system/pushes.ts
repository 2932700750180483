// Pushes by hand: an arrow whose tip meets the body, or one that leaves the body where nobody could stand and push.
import type { SystemPush, SystemScene } from "../system-scene.ts";
import type { Shape } from "./shapes.ts";
import { cross, dot, exit, heading, left, plus, reach, times, type Vec } from "./vector.ts";

/** A push with its arrow, seen from the body's point. */
export interface PlacedPush extends SystemPush {
  readonly tail: Vec;
  readonly tip: Vec;
  /** Whether the arrow leaves the body. */
  readonly pulls: boolean;
}

const arrowLength = 42;
const clearance = 2;
/** Cosines of how near to an arrow a rope is in its way: at the middle of a body, and at the ring of one that hangs, where ropes spread wider. */
const nearMiddle = 0.9;
const nearRing = 0.45;

/** The arrow of every push of a scene. */
export function pushesOf(scene: SystemScene, shapes: ReadonlyMap<string, Shape>): PlacedPush[] {
  return scene.pushes.flatMap((push) => {
    const shape = shapes.get(push.on);
    if (shape === undefined) return [];
    const along = heading(push.degrees);
    const near = shape.kind === "hanging" ? nearRing : nearMiddle;
    const [behind, ahead] = [crowded(scene, push, times(along, -1), near), crowded(scene, push, along, near)];
    const pulls = behind > ahead;
    const before = scene.pushes.slice(0, scene.pushes.indexOf(push)).filter((other) => isAlong(push, other)).length;
    const centre = shape.kind === "hanging" ? { x: 0, y: shape.height * -0.55 } : { x: 0, y: 0 };
    const about = shape.outline.map((corner) => plus(corner, times(centre, -1)));
    const side = times(along, pulls ? 1 : -1);
    const crowd = Math.min(behind, ahead);
    const away = crowd > 1 ? left(along) : awayFromRope(scene, push, side);
    const { beside, out } = asideOf(about, along, side, crowd, before);
    const inner = plus(plus(centre, times(away, beside)), times(side, out));
    const outer = plus(inner, times(side, arrowLength));
    return [{ ...push, pulls, tail: pulls ? inner : outer, tip: pulls ? outer : inner }];
  });
}

/**
 * How far beside the middle of a body an arrow stands, and how far out it begins: beside the body where surfaces leave no room on either
 * side of it (`crowd` above 1), towards its edge where a rope lies on both sides, and beside other arrows along one line.
 */
function asideOf(
  about: readonly Vec[],
  along: Vec,
  side: Vec,
  crowd: number,
  before: number,
): { beside: number; out: number } {
  const half = reach(about, left(along));
  if (crowd > 1) return { beside: half + clearance + 5, out: 0 };
  return { beside: crowd > 0.9 ? 0.6 * half : 10 * before, out: exit(about, side) + clearance };
}

/** Across an arrow, to the side where the rope that lies nearest to it is not. */
function awayFromRope({ ropes }: SystemScene, { on }: SystemPush, side: Vec): Vec {
  const near = ropes
    .flatMap(({ pulls }) => pulls.filter((pull) => pull.on === on).map(({ degrees }) => heading(degrees)))
    .filter((along) => dot(along, side) > 0.9);
  return times(left(side), (near[0] === undefined ? 0 : cross(side, near[0])) > 0 ? -1 : 1);
}

/** Whether two pushes of one body are drawn along one line. */
function isAlong(push: SystemPush, other: SystemPush): boolean {
  return push.on === other.on && Math.abs(cross(heading(push.degrees), heading(other.degrees))) < 0.1;
}

/** How much stands in the way of an arrow on a side of a body: surfaces, neighbours, ropes. */
function crowded(scene: SystemScene, push: SystemPush, side: Vec, nearer: number): number {
  const surfaces = scene.surfaces.flatMap((surface) => {
    const towards = surface.on === push.on ? -1 : surface.of === push.on ? 1 : 0;
    const into = towards * dot(heading(surface.normal), side);
    return into > 0.12 ? [(surface.of === null ? 3 : 2) + into] : [];
  });
  const ropes = scene.ropes.flatMap((rope) =>
    rope.pulls.flatMap((pull) => {
      const near = pull.on === push.on ? dot(heading(pull.degrees), side) : 0;
      return near > nearer ? [near] : [];
    }),
  );
  return [...surfaces, ...ropes].reduce((sum, one) => sum + one, 0);
}
