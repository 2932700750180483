// What all parts of a page share while they follow their scenes: typeset forms, line numbers, and text that waits until the hand rests.
import type { Scene } from "../lesson/scene-state.svelte.ts";
import { FormCache, RestQueue } from "../typeset/index.ts";
import type { Writing } from "../typeset/index.ts";

const REST_AFTER = 200;

const cache = new FormCache(null);
/** Text for reading aloud, written when the numbers have stopped changing. */
export const restQueue = new RestQueue();
let timer: number | undefined;

/** Writes waiting text a little after the last change. */
export function restSoon(): void {
  window.clearTimeout(timer);
  timer = window.setTimeout(() => restQueue.flush(), REST_AFTER);
}

const numbers = new WeakMap<object, ReadonlyMap<string, number>>();

/** Typesetting for a scene's parts. */
export function pageWriting(scene: Pick<Scene, "derivation">): Writing {
  return {
    cache,
    numberOf: (line) => {
      const { derivation } = scene;
      let known = numbers.get(derivation);
      if (known === undefined) {
        known = new Map(derivation.paragraphs.flatMap((p) => p.lines.map((l): [string, number] => [l.id, l.number])));
        numbers.set(derivation, known);
      }
      return known.get(line);
    },
  };
}
