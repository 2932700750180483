// What the pictures of a derivation are drawn from: one load on its ropes, or a set-up of any kind.
import { sceneOf } from "../diagram/index.ts";
import type { DiagramScene } from "../diagram/index.ts";
import type { SystemScene } from "../diagram/system-scene.ts";
import type { Derivation } from "../../solver/index.ts";

/** The scene of a derivation's pictures. */
export type ProblemPicture =
  | { readonly model: "hanging"; readonly scene: DiagramScene }
  | { readonly model: "system"; readonly scene: SystemScene };

/** The scene of a derivation. */
export const pictureOf = (derivation: Derivation): ProblemPicture => ({ model: "hanging", scene: sceneOf(derivation) });
