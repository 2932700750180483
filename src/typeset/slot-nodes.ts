// The text nodes of a typeset formula's slots, and patching them: what is seen at once, what is read aloud when the hand rests.
import type { SlottedTex } from "../../solver/index.ts";

/** A formula on the page with what it shows now. */
export interface ShownMath {
  form: string;
  slots: readonly string[];
  /** Text nodes of slot i in the visible part. */
  readonly seen: readonly (readonly Text[])[];
  /** Text nodes of slot i in the part for reading aloud. */
  readonly read: readonly (readonly Text[])[];
}

function textOf(element: Element): Text {
  const node = element.firstChild;
  if (node instanceof Text) return node;
  return element.appendChild(document.createTextNode(""));
}

/** Finds the slots of a formula that shows `tex`. */
export function findSlots(element: Element, tex: SlottedTex): ShownMath {
  const seen: Text[][] = tex.slots.map(() => []);
  const read: Text[][] = tex.slots.map(() => []);
  for (const e of element.querySelectorAll("[data-n]")) {
    const index = Number(e.getAttribute("data-n"));
    (e.localName === "mn" ? read : seen)[index]?.push(textOf(e));
  }
  return { form: tex.form, slots: tex.slots, seen, read };
}

/** Text to be written when the hand rests. */
export class RestQueue {
  private readonly waiting = new Map<Text, string>();

  /** Keeps the latest text for a node. */
  add(node: Text, text: string): void {
    this.waiting.set(node, text);
  }

  /** Writes all that waits. */
  flush(): void {
    for (const [node, text] of this.waiting) if (node.data !== text) node.data = text;
    this.waiting.clear();
  }
}

/** Shows other slots in a formula of the same form. */
export function patchSlots(shown: ShownMath, slots: readonly string[], rest: RestQueue): void {
  slots.forEach((text, i) => {
    if (shown.slots[i] === text) return;
    for (const node of shown.seen[i] ?? []) node.data = text;
    for (const node of shown.read[i] ?? []) rest.add(node, text);
  });
  shown.slots = slots;
}
