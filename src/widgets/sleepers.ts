// The sleepers of a page, one a scene, and what wakes them.
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { Sleeper } from "./waking.svelte.ts";

const sleepers = new Map<string, Sleeper>();
const TOUCHES = ["pointerdown", "keydown", "focusin", "touchstart"] as const;

/** The sleeper of a scene. On the server it is made anew each time and never kept. */
export function sleeperFor(id: string, document: ProblemDocument): Sleeper {
  if (typeof window === "undefined") return new Sleeper(id, document);
  const known = sleepers.get(id);
  if (known !== undefined) return known;
  const made = new Sleeper(id, document);
  sleepers.set(id, made);
  listen(made);
  return made;
}

function listen(sleeper: Sleeper): void {
  const wake = (): void => {
    void sleeper.wake();
  };
  if (window.location.search !== "") {
    wake();
    return;
  }
  for (const touch of TOUCHES) window.addEventListener(touch, wake, { once: true, passive: true, capture: true });
  // A pointer that comes near the stage is about to touch it.
  window.document.querySelector(".stage")?.addEventListener("pointerenter", wake, { once: true });
}
