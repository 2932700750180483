// A page sleeps until it is touched, or until its address asks for other numbers: the built page is whole without the solver.
import type { ProblemDocument } from "../../shared/problem/index.ts";
import type { Scene } from "../lesson/scene-state.svelte.ts";

/** The module that wakes a page. */
export type Awake = typeof import("./awake.ts");

/** A scene once it is awake. */
export interface Woken {
  readonly scene: Scene;
  readonly tools: Awake;
}

let coming: Promise<Awake> | null = null;

/** One scene of the page, asleep or awake. */
export class Sleeper {
  woken: Woken | null = $state.raw(null);
  readonly id: string;
  private readonly document: ProblemDocument;

  /** Asleep until `wake`. */
  constructor(id: string, document: ProblemDocument) {
    this.id = id;
    this.document = document;
  }

  /** Fetches the solver and wakes the scene; each further call gives the same scene. */
  async wake(): Promise<Woken> {
    coming ??= import("./awake.ts");
    const tools = await coming;
    this.woken ??= { scene: tools.sceneFor(this.id, this.document), tools };
    return this.woken;
  }
}

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
