// A page sleeps until it is touched, or until its address asks for other numbers: the built page is whole without the solver.
import type { ProblemDocument } from "../../shared/problem/index.ts";
import type { DiagramScene } from "../diagram/index.ts";
import type { Scene } from "../lesson/scene-state.svelte.ts";
import { fetchOnce } from "../typeset/fetch-once.ts";

/** The module that wakes a page. */
export type Awake = typeof import("./awake.ts");

/** A scene once it is awake. */
export interface Woken {
  readonly scene: Scene;
  readonly tools: Awake;
}

const fetchAwake = fetchOnce<Awake>(() => import("./awake.ts"));

/** One scene of the page, asleep or awake. */
export class Sleeper {
  woken: Woken | null = $state.raw(null);
  /** The scene for the pictures, made once a change however many pictures show it; null while asleep. */
  picture: DiagramScene | null = $derived.by(() =>
    this.woken === null ? null : this.woken.tools.sceneOf(this.woken.scene.derivation),
  );
  readonly id: string;
  private readonly document: ProblemDocument;

  /** Asleep until `wake`. */
  constructor(id: string, document: ProblemDocument) {
    this.id = id;
    this.document = document;
  }

  /** Fetches the solver and wakes the scene; each further call gives the same scene. */
  async wake(): Promise<Woken> {
    const tools = await fetchAwake();
    this.woken ??= { scene: tools.sceneFor(this.id, this.document), tools };
    return this.woken;
  }
}
