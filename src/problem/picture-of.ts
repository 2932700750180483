// What the pictures of a derivation are drawn from: one load on its ropes, or a set-up of any kind.
import { assumedSceneOf, sceneOf, systemSceneOf } from "../diagram/index.ts";
import type { DiagramScene, SystemScene } from "../diagram/index.ts";
import type { Derivation } from "../../solver/index.ts";

/** The scene of a derivation's pictures. */
export type ProblemPicture =
  | { readonly model: "hanging"; readonly scene: DiagramScene }
  | {
      readonly model: "system";
      /** What was found. */
      readonly scene: SystemScene;
      /** What was assumed first. */
      readonly assumed: SystemScene;
      /** Whether the first assumption failed and another case is in force. */
      readonly isOtherCase: boolean;
    };

/** The scene of a derivation. */
export const pictureOf = (derivation: Derivation): ProblemPicture =>
  derivation.model === "hanging"
    ? { model: "hanging", scene: sceneOf(derivation) }
    : {
        model: "system",
        scene: systemSceneOf(derivation),
        assumed: assumedSceneOf(derivation),
        isOtherCase: derivation.system.attempts.length > 1,
      };
