// A scene cut into the parts that nothing joins, so that each is laid out for itself.
import type { SystemScene } from "../system-scene.ts";

/** The parts of a scene, each with its own ropes, surfaces and pushes. */
export function partsOf(scene: SystemScene): SystemScene[] {
  const groups = scene.bodies.map((body) => new Set([body.id]));
  const join = (ids: readonly string[]): void => {
    const mine = groups.filter((group) => ids.some((id) => group.has(id)));
    const [first, ...others] = mine;
    for (const other of others) {
      for (const id of other) first?.add(id);
      groups.splice(groups.indexOf(other), 1);
    }
  };
  for (const rope of scene.ropes) join(rope.pulls.map((pull) => pull.on));
  for (const { on, of } of scene.surfaces) if (of !== null) join([on, of]);
  // Given places stand to each other as they were given.
  join(scene.bodies.flatMap((body) => (body.at === null ? [] : [body.id])));
  return groups.map((group) => ({
    ...scene,
    bodies: scene.bodies.filter(({ id }) => group.has(id)),
    ropes: scene.ropes.filter((rope) => rope.pulls.some((pull) => group.has(pull.on))),
    surfaces: scene.surfaces.filter(({ on }) => group.has(on)),
    pushes: scene.pushes.filter(({ on }) => group.has(on)),
  }));
}
