// What carries the ropes and the bodies: surfaces that are one ground, and what kind of support each rope's end and fixed pulley wants.
import type { SystemScene, SystemSurface } from "../system-scene.ts";
import type { FixedPulley, Rigging, Tie } from "./strands.ts";
import { cross, dot, heading, left, plus, times, unit, type Vec } from "./vector.ts";

/** One plane of a support, with the bodies on it. */
export interface Ground {
  readonly key: string;
  /** Away from the support. */
  readonly normal: Vec;
  /** Along it: to the right, or up where it is upright. */
  readonly along: Vec;
  readonly surfaces: readonly SystemSurface[];
}

/** What a rope's end is tied to: the beam overhead, a wall beside, a ring in the ground, a post on the surface along which it pulls. */
export type TieKind = "beam" | "wall" | "ring" | "post";

/** What holds a fixed pulley: the edge of a surface, the beam above, or a bracket of its own. */
export type MountKind = "edge" | "beam" | "bracket";

/** A rope that rises or falls less than this (its sine) is tied to a wall. */
const shallow = 0.34;

/** The surfaces of supports, those that are one plane together; `all` makes one plane of all that look the same way. */
export function groundsOf(scene: SystemScene, rigging: Rigging, all: boolean): Ground[] {
  const supports = scene.surfaces.filter((surface) => surface.of === null);
  const groups: SystemSurface[][] = [];
  for (const surface of supports) {
    const mine = groups.filter((group) => group.some((other) => isOne(scene, rigging, surface, other, all)));
    for (const group of mine) groups.splice(groups.indexOf(group), 1);
    groups.push([...mine.flat(), surface]);
  }
  return groups.map((surfaces) => {
    const normal = heading(surfaces[0]?.normal ?? 90);
    const across = times(left(normal), -1);
    const flip = across.x < -1e-9 || (Math.abs(across.x) <= 1e-9 && across.y < 0);
    return { key: `ground-${surfaces[0]?.id ?? ""}`, normal, along: flip ? times(across, -1) : across, surfaces };
  });
}

function isOne(scene: SystemScene, rigging: Rigging, one: SystemSurface, other: SystemSurface, all: boolean): boolean {
  const normal = heading(one.normal);
  if (one.on === other.on || dot(normal, heading(other.normal)) < 1 - 1e-9) return false;
  if (all) return true;
  const joined = (a: string, b: string): boolean =>
    (a === one.on && b === other.on) || (a === other.on && b === one.on);
  const roped = rigging.strands.some(
    ({ body, to, from, degrees }) =>
      joined(body, to.at) &&
      Math.abs(dot(heading(degrees), normal)) < 1e-6 &&
      Math.abs(dot(plus(from.offset, times(to.offset, -1)), normal)) < 1e-6,
  );
  const touching = scene.surfaces.some(
    ({ on, of, normal: side }) => of !== null && joined(on, of) && Math.abs(dot(heading(side), normal)) < 1e-6,
  );
  return roped || touching;
}

/** The ground along which a body is pulled in a direction, if there is one. */
export function groundAlong(grounds: readonly Ground[], body: string, degrees: number): Ground | null {
  const along = heading(degrees);
  const found = grounds.find(
    (ground) => Math.abs(cross(along, ground.along)) < 1e-6 && ground.surfaces.some((surface) => surface.on === body),
  );
  return found ?? null;
}

/** What a rope's end is tied to. */
export function tieKind(grounds: readonly Ground[], { body, degrees }: Pick<Tie, "body" | "degrees">): TieKind {
  const ground = groundAlong(grounds, body, degrees);
  if (ground !== null && ground.normal.y > 0.05) return "post";
  const { y } = heading(degrees);
  return y > shallow ? "beam" : y < -shallow ? "ring" : "wall";
}

/** The direction from a fixed pulley towards what holds it against its rope. */
export function mountDirection(degrees: readonly [number, number]): Vec {
  return unit(plus(heading(degrees[0]), heading(degrees[1])));
}

/** What holds a fixed pulley. */
export function mountKind(
  grounds: readonly Ground[],
  pulley: FixedPulley,
  degrees: readonly [number, number],
): MountKind {
  const edge = pulley.bodies.some((body, index) => groundAlong(grounds, body, degrees[index] ?? 90) !== null);
  if (edge) return "edge";
  return mountDirection(degrees).y > 0.5 ? "beam" : "bracket";
}
