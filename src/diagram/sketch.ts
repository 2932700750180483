// A picture in the making. Lines, arrowheads and handles are drawn first; the labels find their places when all of these are known.
import { boxRound, distance, type Box, type Point } from "./geometry.ts";
import { measure, type Run } from "./label.ts";
import { costOf, nearestOf, placeLabel, type Obstacles, type Spot } from "./label-place.ts";
import { polyline, rounded } from "./path-text.ts";
import type { Handle, Picture, PlacedLabel, Shape } from "./picture.ts";

/** How much a label is to keep off a line: the arrows and ropes, arcs and outlines, helping lines. */
export const avoid = { shaft: 16, outline: 3, helper: 3, nothing: 0 } as const;

/** A label waiting for its place. */
export interface LabelWish {
  readonly key: string;
  readonly runs: readonly Run[];
  readonly size: number;
  readonly look: string;
  readonly ref: string | null;
  readonly spots: readonly Spot[];
  /** The point it names; a label that stands far from it gets a leader to here. */
  readonly home: Point;
}

const margin = 3;

/** Gathers what a picture consists of. */
export class Sketch {
  readonly #name: string;
  readonly #width: number;
  readonly #height: number;
  readonly #shapes: Shape[] = [];
  readonly #handles: Handle[] = [];
  readonly #wishes: LabelWish[] = [];
  readonly #obstacles: Obstacles;

  /** A picture of a fixed size, in its own units. */
  constructor(name: string, width: number, height: number) {
    this.#name = name;
    this.#width = width;
    this.#height = height;
    const bounds = { x: margin, y: margin, width: width - 2 * margin, height: height - 2 * margin };
    this.#obstacles = { bounds, boxes: [], lines: [] };
  }

  /** Draws path data that no label needs to keep off. */
  path(key: string, d: string, look: string, ref: string | null = null): void {
    this.#shapes.push({ key, d, look, ref, box: null });
  }

  /** Draws a shape that labels never cover. */
  solid(key: string, d: string, look: string, ref: string | null, box: Box): void {
    this.#shapes.push({ key, d, look, ref, box: roundedBox(box) });
    this.#obstacles.boxes.push(box);
  }

  /** Draws straight lines through the points; `cost` is what covering one of them costs a label. */
  lines(key: string, points: readonly Point[], look: string, cost: number, ref: string | null = null): void {
    this.path(key, polyline(points), look, ref);
    this.keepOff(points, cost);
  }

  /** Makes labels keep off straight lines that something else draws. */
  keepOff(points: readonly Point[], cost: number): void {
    if (cost === 0) return;
    for (let i = 1; i < points.length; i += 1) {
      const a = points[i - 1];
      const b = points[i];
      if (a !== undefined && b !== undefined) this.#obstacles.lines.push(a.x, a.y, b.x, b.y, cost);
    }
  }

  /** Makes labels keep wholly off a box. */
  block(box: Box): void {
    this.#obstacles.boxes.push(box);
  }

  /** A handle: a round target, moving `point`. */
  handle(key: string, rope: string | null, centre: Point, radius: number, point: Point): void {
    const at = { x: rounded(centre.x), y: rounded(centre.y) };
    const box = boxRound(at, radius);
    this.#handles.push({ key, rope, centre: at, radius, point, box });
    this.#obstacles.boxes.push(box);
  }

  /** Asks for a label. Those asked for first choose first. */
  label(wish: LabelWish): void {
    this.#wishes.push(wish);
  }

  /** What a box would cover of all that is drawn so far. */
  cost(box: Box): number {
    return costOf(box, this.#obstacles);
  }

  /** Places the labels and gives the picture. */
  picture(): Picture {
    const labels = this.#wishes.map((wish) => this.#place(wish));
    return {
      name: this.#name,
      width: this.#width,
      height: this.#height,
      shapes: this.#shapes,
      labels,
      handles: this.#handles,
    };
  }

  #place(wish: LabelWish): PlacedLabel {
    const text = measure(wish.runs, wish.size);
    const { box, far } = placeLabel(wish.spots, wish.home, text.width, text.height, this.#obstacles);
    this.#obstacles.boxes.push(box);
    const pieces = text.runs.map((run) => ({
      text: run.text,
      face: run.face,
      size: rounded(run.size),
      x: rounded(box.x + run.dx),
      y: rounded(box.y + run.dy),
      width: rounded(run.width),
    }));
    const end = nearestOf(box, wish.home);
    const leader = far && distance(end, wish.home) > 10 ? polyline([wish.home, end]) : null;
    if (leader !== null) this.keepOff([wish.home, end], avoid.outline);
    return { key: wish.key, look: wish.look, ref: wish.ref, pieces, box: roundedBox(box), leader };
  }
}

function roundedBox(box: Box): Box {
  return { x: rounded(box.x), y: rounded(box.y), width: rounded(box.width), height: rounded(box.height) };
}
