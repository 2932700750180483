// What the pictures of a derivation are drawn from: one load on its ropes, or a set-up of any kind.
import { sceneOf, systemSceneOf } from "../diagram/index.ts";
import type { DiagramScene, SystemScene } from "../diagram/index.ts";
import type { Derivation } from "../../solver/index.ts";

/** The scene of a derivation's pictures. */
export type ProblemPicture =
  | { readonly model: "hanging"; readonly scene: DiagramScene }
  | { readonly model: "system"; readonly scene: SystemScene };

/** The scene of a derivation. */
export const pictureOf = (derivation: Derivation): ProblemPicture =>
  derivation.model === "hanging"
    ? { model: "hanging", scene: sceneOf(derivation) }
    : { model: "system", scene: systemSceneOf(derivation) };
