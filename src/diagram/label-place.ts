// Where a label goes: a short list of spots in a fixed order, each judged by what it would cover; further out, on a leader, where none is free.
import { crosses, overlap, stickOut, type Box, type Point } from "./geometry.ts";

/** A wish: the label beyond `at` in the direction `away` (length 1), `gap` from it. */
export interface Spot {
  readonly at: Point;
  readonly away: Point;
  readonly gap: number;
  /** How the gap is kept: the whole box beyond the line across `away` (for lines), or only its edge (for points; closer). */
  readonly keep?: "whole" | "edge";
}

/** What labels keep off: boxes never to be covered, and lines better not crossed. */
export interface Obstacles {
  readonly bounds: Box;
  readonly boxes: Box[];
  /** Straight lines as x1, y1, x2, y2, cost of crossing. */
  readonly lines: number[];
}

/** A place found. `far` says that it needs a leader. */
export interface Placement {
  readonly box: Box;
  readonly far: boolean;
}

const clearance = 2;
const covering = 1000;
/** What the place of a spot in its list costs, so that the first of equals is taken. */
const perSpot = 0.7;
/** From here on a place further out is looked for. */
const tolerable = 3.5;
const ringCost = { base: 5, perUnit: 0.12 };
const ringStep = 10;
const ringDirections = Array.from({ length: 20 }, (_, i) => {
  const angle = (i * Math.PI) / 10;
  return { x: Math.cos(angle), y: Math.sin(angle) };
});

/** What a box would cover: nothing costs 0; another box or the picture's edge costs more than any number of lines. */
export function costOf(box: Box, obstacles: Obstacles): number {
  let cost = 0;
  const sticking = stickOut(box, obstacles.bounds);
  if (sticking > 0) cost += covering + 50 * sticking;
  for (const other of obstacles.boxes) {
    const depth = overlap(box, other) + clearance;
    if (depth > 0) cost += covering + 20 * depth;
  }
  const { lines } = obstacles;
  for (let i = 0; i < lines.length; i += 5) {
    if (crosses(box, lines[i] ?? 0, lines[i + 1] ?? 0, lines[i + 2] ?? 0, lines[i + 3] ?? 0)) cost += lines[i + 4] ?? 0;
  }
  return cost;
}

/** The box of this size beyond the spot. */
export function boxAt(spot: Spot, width: number, height: number): Box {
  const across = Math.abs(spot.away.x);
  const down = Math.abs(spot.away.y);
  const half =
    spot.keep === "edge" ? Math.min(width / across, height / down) / 2 : (across * width + down * height) / 2;
  const reach = spot.gap + half;
  return {
    x: spot.at.x + spot.away.x * reach - width / 2,
    y: spot.at.y + spot.away.y * reach - height / 2,
    width,
    height,
  };
}

/**
 * The cheapest place for a label. The spots come first, in order; rings round `home` follow only if every spot covers something.
 */
export function placeLabel(
  spots: readonly Spot[],
  home: Point,
  width: number,
  height: number,
  obstacles: Obstacles,
): Placement {
  let best: Placement = { box: boxAt({ at: home, away: { x: 0, y: -1 }, gap: 0 }, width, height), far: true };
  let bestCost = Infinity;
  for (const [index, spot] of spots.entries()) {
    const own = index * perSpot;
    if (own >= bestCost) break;
    const box = boxAt(spot, width, height);
    const cost = own + costOf(box, obstacles);
    if (cost < bestCost) {
      best = { box, far: false };
      bestCost = cost;
    }
  }
  if (bestCost <= tolerable + spots.length * perSpot) return best;
  const furthest = Math.hypot(obstacles.bounds.width, obstacles.bounds.height);
  for (let radius = 14; radius < furthest; radius += ringStep) {
    const own = ringCost.base + spots.length * perSpot + radius * ringCost.perUnit;
    if (own >= bestCost) break;
    for (const away of ringDirections) {
      const box = boxAt({ at: home, away, gap: radius }, width, height);
      const cost = own + costOf(box, obstacles);
      if (cost < bestCost) {
        best = { box, far: radius > 14 };
        bestCost = cost;
      }
    }
  }
  return best;
}

/** The point of a box nearest to a point. */
export function nearestOf(box: Box, point: Point): Point {
  return {
    x: Math.min(Math.max(point.x, box.x), box.x + box.width),
    y: Math.min(Math.max(point.y, box.y), box.y + box.height),
  };
}
