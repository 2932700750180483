// Which colour the letter of a force has in the lines: that of its arrow in the pictures.
import { paintOf } from "../diagram/system/forces.ts";
import type { ProblemPicture } from "./picture-of.ts";

/** The colour names ("1", "normal") by the ids of forces; a weight keeps the colour of ink. */
export function letterColours(picture: ProblemPicture): ReadonlyMap<string, string> {
  if (picture.model === "hanging") return new Map(picture.scene.ropes.map(({ id, number }) => [id, String(number)]));
  const { scene } = picture;
  const forces = scene.bodies.flatMap((body) => body.forces).filter((force) => force.kind !== "weight");
  return new Map(forces.map((force) => [force.ref, paintOf(scene, force).replace(/^force-/, "")]));
}

/** The rules that give the letters of forces and of their components these colours. */
export function coloursAsRules(colours: ReadonlyMap<string, string>): string {
  return [...colours]
    .filter(([id, colour]) => /^[A-Za-z]\w*$/.test(id) && /^\w+$/.test(colour))
    .map(([id, colour]) => {
      const places = [id, `${id}x`, `${id}y`].map((ref) => `[data-ref="${ref}"]`);
      return `${places.join(",")}{--own:var(--force-${colour}-text)}`;
    })
    .join("\n");
}
