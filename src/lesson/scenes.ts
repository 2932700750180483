// The scenes of a page, one a derivation shown, by id.
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { Scene } from "./scene-state.svelte.ts";

const scenes = new Map<string, Scene>();

/** The scene with an id, begun from the address of the page. */
export function sceneFor(id: string, document: ProblemDocument): Scene {
  const known = scenes.get(id);
  if (known !== undefined) return known;
  const made = new Scene(id, document, window.location.search);
  scenes.set(id, made);
  return made;
}
