// What the pictures of one body's forces share: a key for each force, its paint, its arrow.
import { unitOf } from "../direction.ts";
import type { Run } from "../label.ts";
import type { ScenePoint } from "../scene.ts";
import type { SystemForce, SystemScene } from "../system-scene.ts";

/** A force with a key that no other force of its body has. */
export interface ShownForce extends SystemForce {
  readonly key: string;
}

/** Forces with keys: their references, numbered where a rope pulls the body in two places. */
export function shownForces(forces: readonly SystemForce[]): ShownForce[] {
  return forces.map((force, index) => {
    const before = forces.slice(0, index).filter(({ ref }) => ref === force.ref).length;
    return { ...force, key: before === 0 ? force.ref : `${force.ref}-${before + 1}` };
  });
}

/** The class that gives a force its colour and line pattern: its rope's, or that of its kind. */
export function paintOf({ ropes }: Pick<SystemScene, "ropes">, force: SystemForce): string {
  if (force.kind !== "tension") return force.kind;
  return `force-${ropePaints(ropes).get(force.ref) ?? 1}`;
}

/** One of three paints for each rope, in turn; another one where ropes on one body would look alike and a paint is left. */
export function ropePaints(ropes: SystemScene["ropes"]): Map<string, number> {
  const paints = new Map<string, number>();
  ropes.forEach((rope, index) => {
    const bodies = new Set(rope.pulls.map((pull) => pull.on));
    const near = ropes.slice(0, index).filter((other) => other.pulls.some((pull) => bodies.has(pull.on)));
    const taken = new Set(near.map(({ id }) => paints.get(id)));
    const turns = [0, 1, 2].map((step) => ((index + step) % 3) + 1);
    paints.set(rope.id, turns.find((paint) => !taken.has(paint)) ?? (index % 3) + 1);
  });
  return paints;
}

/** A force as an arrow in its unit, y upwards; zero where its size is not known. */
export function vectorOf({ degrees, size }: Pick<SystemForce, "degrees" | "size">): ScenePoint {
  const { x, y } = unitOf(degrees);
  return { x: (size ?? 0) * x, y: 0 - (size ?? 0) * y };
}

/** The plain id that a letter has in the lines: a with a lowered 1 is "a1". */
export const idOf = (label: readonly Run[]): string => label.map(({ text }) => text).join("");
