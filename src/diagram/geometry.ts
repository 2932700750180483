// Points and boxes of the drawing plane: y runs downwards, as in SVG.

/** A point of the drawing plane. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An upright rectangle. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The point `distance` away from `from` in the direction `unit`. */
export function along(from: Point, unit: Point, distance: number): Point {
  return { x: from.x + unit.x * distance, y: from.y + unit.y * distance };
}

/** The point a share of the way from `a` to `b`. */
export function between(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

/** The distance of two points. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The direction from `a` to `b` with length 1; `otherwise` where the two coincide. */
export function unitTo(a: Point, b: Point, otherwise: Point = { x: 0, y: 1 }): Point {
  const length = distance(a, b);
  return length < 1e-9 ? otherwise : { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}

/** The direction turned by a quarter, anticlockwise as it is seen on the screen. */
export function turned(unit: Point): Point {
  return { x: unit.y, y: -unit.x };
}

/** The square box of half-width `radius` round a point. */
export function boxRound(centre: Point, radius: number): Box {
  return { x: centre.x - radius, y: centre.y - radius, width: 2 * radius, height: 2 * radius };
}

/** The smallest box that holds the points; at least one is needed. */
export function boxOf(points: readonly Point[]): Box {
  let left = Infinity;
  let right = -Infinity;
  let top = Infinity;
  let bottom = -Infinity;
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** How deep two boxes reach into each other: the smaller of the two overlaps, 0 or less where they do not. */
export function overlap(a: Box, b: Box): number {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return Math.min(across, down);
}

/** How far a box sticks out of another, 0 where it does not. */
export function stickOut(inner: Box, outer: Box): number {
  return Math.max(
    0,
    outer.x - inner.x,
    outer.y - inner.y,
    inner.x + inner.width - outer.x - outer.width,
    inner.y + inner.height - outer.y - outer.height,
  );
}

/** Whether the straight line from (x1, y1) to (x2, y2) passes through the box. Liang and Barsky's clipping. */
export function crosses(box: Box, x1: number, y1: number, x2: number, y2: number): boolean {
  let enter = 0;
  let leave = 1;
  const dx = x2 - x1;
  const dy = y2 - y1;
  for (let edge = 0; edge < 4; edge += 1) {
    const step = edge === 0 ? -dx : edge === 1 ? dx : edge === 2 ? -dy : dy;
    const room =
      edge === 0 ? x1 - box.x : edge === 1 ? box.x + box.width - x1 : edge === 2 ? y1 - box.y : box.y + box.height - y1;
    if (step === 0) {
      if (room < 0) return false;
    } else {
      const share = room / step;
      if (step < 0) enter = Math.max(enter, share);
      else leave = Math.min(leave, share);
      if (enter > leave) return false;
    }
  }
  return true;
}
