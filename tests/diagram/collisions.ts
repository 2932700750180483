/**
 * Finds what a label must not do: cover another label, an arrowhead or a handle, or be cut off by the picture's edge.
 */
import { boxesOf, overlap, stickOut, type NamedBox, type Picture } from "../../src/diagram/index.ts";

/** A line for each fault, naming the boxes; boxes that only touch are no fault. */
export function collisions(picture: Picture): string[] {
  return [...faults(boxesOf(picture), picture.width, picture.height)].map((fault) => `${picture.name}: ${fault}`);
}

/** The same for boxes given by themselves, in a picture of this size. */
export function* faults(boxes: readonly NamedBox[], width: number, height: number): Generator<string> {
  for (const [index, one] of boxes.entries()) {
    const cut = stickOut(one.box, { x: 0, y: 0, width, height });
    if (cut > 0) yield `${one.kind} ${one.key} is cut off by ${cut.toFixed(1)}`;
    for (const other of boxes.slice(index + 1)) {
      if (one.kind !== "label" && other.kind !== "label" && !(one.kind === "handle" && other.kind === "handle"))
        continue;
      const depth = overlap(one.box, other.box);
      if (depth > 0) yield `${one.kind} ${one.key} and ${other.kind} ${other.key} overlap by ${depth.toFixed(1)}`;
    }
  }
}
