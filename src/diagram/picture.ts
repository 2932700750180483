// A finished picture as plain data: what a component draws, and the boxes a test compares.
import type { Box, Point } from "./geometry.ts";
import type { Face } from "./label.ts";

/** A path and how it looks. `look` is a list of class names of pictures.css. */
export interface Shape {
  readonly key: string;
  readonly d: string;
  readonly look: string;
  /** The quantities it stands for, separated by spaces, or null. */
  readonly ref: string | null;
  /** Its box, where a label must keep off it and a test looks for it under `key`. */
  readonly box: Box | null;
}

/** One piece of a label's text, set in one face and size. */
export interface TextPiece {
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  readonly x: number;
  /** Of the baseline. */
  readonly y: number;
  /** The length the text is set to. */
  readonly width: number;
}

/** A label in its place. */
export interface PlacedLabel {
  readonly key: string;
  readonly look: string;
  readonly ref: string | null;
  readonly pieces: readonly TextPiece[];
  readonly box: Box;
  /** A thin line to what it names, where it had to stand apart. */
  readonly leader: string | null;
}

/** A place to take hold of. */
export interface Handle {
  readonly key: string;
  /** The rope whose end it is, or null for the load. */
  readonly rope: string | null;
  readonly centre: Point;
  /** Of the target, not of the ring that is seen. */
  readonly radius: number;
  /** What it moves: the point itself, from which a drag is measured. */
  readonly point: Point;
  readonly box: Box;
}

/** A drawn picture. */
export interface Picture {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  readonly labels: readonly PlacedLabel[];
  readonly handles: readonly Handle[];
}

/** What a box belongs to. */
export type BoxKind = "label" | "arrowhead" | "handle";

/** The box of a label, an arrowhead or a handle, under the key that its element carries as `data-box`. */
export interface NamedBox {
  readonly key: string;
  readonly kind: BoxKind;
  readonly box: Box;
}

/** Every box of the picture that a label must keep off, in the picture's own units; keys are unique in the picture. */
export function boxesOf(picture: Picture): NamedBox[] {
  return [
    ...picture.labels.map(({ key, box }): NamedBox => ({ key, kind: "label", box })),
    ...picture.shapes.flatMap(({ key, box }): NamedBox[] => (box === null ? [] : [{ key, kind: "arrowhead", box }])),
    ...picture.handles.map(({ key, box }): NamedBox => ({ key, kind: "handle", box })),
  ];
}
