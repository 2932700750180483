// Binds a part of the page to its scene: paragraphs, the stop of a class link, and parts that are empty at these values.
import type { Part } from "../../solver/index.ts";
import type { Reveal } from "../lesson/reveal.ts";
import type { Scene } from "../lesson/scene-state.svelte.ts";
import { Follower, NotYetTypeset } from "../typeset/index.ts";
import { pageWriting, restQueue, restSoon } from "./page-writing.ts";
import { fetchKatex } from "../typeset/late-katex.ts";

/** What is followed: the derivation that the build wrote, the present one, and the stop of a class link. */
export type Followed = Pick<Scene, "built" | "derivation" | "reveal">;

/** Follows one part until the returned function is called. */
export function followPart(root: HTMLElement, scene: Followed, part: Part): () => void {
  const paragraphs = root.querySelector<HTMLElement>(".paragraphs");
  if (paragraphs === null) throw new Error(`the part ${part} has no paragraphs to follow`);
  const writing = pageWriting(scene);
  const follower = new Follower(
    paragraphs,
    scene.built.paragraphs.filter((p) => p.part === part),
    writing,
    restQueue,
  );
  const frame = root.closest<HTMLElement>(".part");
  let alive = true;
  let hides = false;

  const show = (): void => {
    const mine = scene.derivation.paragraphs.filter((p) => p.part === part);
    const { reveal } = scene;
    try {
      follower.show(mine);
    } catch (error) {
      if (!(error instanceof NotYetTypeset)) throw error;
      // The numbers shown stay whole; the new form follows as soon as the printer has come.
      void fetchKatex().then((printer) => {
        writing.cache.use(printer);
        if (alive) show();
      });
      return;
    }
    // Elements are only gone through when something is hidden or was.
    if (reveal !== null || hides) hideBeyond(paragraphs, reveal);
    hides = reveal !== null;
    if (frame !== null)
      frame.hidden = mine.length === 0 || (reveal !== null && !mine.some((p) => reveal.paragraphs.has(p.id)));
    restSoon();
  };

  const stop = $effect.root(() => {
    $effect(show);
  });
  return () => {
    alive = false;
    stop();
  };
}

/** Hides what stands after the stop of a class link. */
function hideBeyond(root: HTMLElement, reveal: Reveal | null): void {
  for (const element of root.children) {
    if (!(element instanceof HTMLElement)) continue;
    const id = element.dataset.paragraph ?? "";
    element.hidden = reveal !== null && !reveal.paragraphs.has(id);
    for (const line of element.querySelectorAll<HTMLElement>(":scope > .lines > .line"))
      line.hidden = reveal !== null && !reveal.lines.has(line.id);
    const after = element.querySelector<HTMLElement>(":scope > .after");
    if (after !== null) after.hidden = reveal !== null && !reveal.complete.has(id);
  }
}
