/**
 * Every picture of the grid, and of the crosscheck's documents with the oracle's answers.
 */
import {
  bodyForceDiagram,
  bodyPolygon,
  systemSituation,
  type Picture,
  type SystemScene,
} from "../../../src/diagram/index.ts";
import { readFixture } from "../../crosscheck/fixture.ts";
import { sceneFromDocument } from "./from-document.ts";
import { namedScenes } from "./scenes.ts";

/** A picture with a name to find it by. */
export interface NamedPicture {
  readonly name: string;
  readonly picture: Picture;
  readonly scene: SystemScene;
}

/** Every picture of a scene. */
export function allPictures(name: string, scene: SystemScene): NamedPicture[] {
  const bodies = scene.bodies.flatMap(({ id }) => [
    { name: `${name}, ${id}`, picture: bodyForceDiagram(scene, id, "unknown"), scene },
    { name: `${name}, ${id}, to scale`, picture: bodyForceDiagram(scene, id, "to-scale"), scene },
    { name: `${name}, ${id}, polygon`, picture: bodyPolygon(scene, id), scene },
  ]);
  return [{ name, picture: systemSituation(scene), scene }, ...bodies];
}

/** The scenes of the crosscheck's documents. */
export const crosscheckScenes = readFixture().cases.map(({ kind, document, answer }, index) => ({
  name: `${kind} (case ${index})`,
  document,
  answer,
  scene: sceneFromDocument(document, answer),
}));

/** Every picture there is; drawn when asked for, for there are thousands. */
export const everyPicture = (): NamedPicture[] =>
  [...namedScenes, ...crosscheckScenes].flatMap(({ name, scene }) => allPictures(name, scene));
