// Where a body comes to rest on ropes of given anchors and lengths: the lowest point that every rope lets it reach.
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { modelOf, numberOf } from "./read.ts";
import type { Pair } from "./read.ts";

/** Where it hangs and what its ropes carry, in their order. */
export interface HangsAt {
  readonly place: Pair;
  /** Null where two ropes hang side by side: then only their sum is fixed. */
  readonly tensions: readonly number[] | null;
}

interface Disc {
  readonly x: number;
  readonly y: number;
  readonly length: number;
}

const TOUCH = 1e-12;

/** The rest of a document whose ropes have lengths, under gravity. */
export function hangsAt(document: ProblemDocument): HangsAt | null {
  const [body] = modelOf(document).bodies;
  const weight = (body?.mass ?? 0) * numberOf(document.gravity);
  const discs = (document.ropes ?? []).map((rope): Disc => {
    if (!("anchor" in rope) || rope.length === undefined) throw new Error("this rope has no length");
    return { x: numberOf(rope.anchor.x), y: numberOf(rope.anchor.y), length: numberOf(rope.length) };
  });
  const reaches = ([x, y]: Pair): boolean =>
    discs.every((d) => Math.hypot(x - d.x, y - d.y) <= d.length * (1 + TOUCH) + TOUCH);
  const bottoms = discs.map((d): Pair => [d.x, d.y - d.length]);
  const lowest = [...bottoms, ...crossings(discs)].filter(reaches).sort((a, b) => a[1] - b[1])[0];
  if (lowest === undefined) return null;
  const tensions = tensionsAt(lowest, discs, weight);
  // Two ropes that are just long enough to meet on one line would have to carry more than any force.
  return tensions === null || tensions.every(Number.isFinite) ? { place: lowest, tensions } : null;
}

/** Where the rims of two discs cross. */
function crossings([a, b]: readonly Disc[]): Pair[] {
  if (a === undefined || b === undefined) return [];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const d = Math.hypot(dx, dy);
  if (d === 0) return [];
  const along = (a.length ** 2 - b.length ** 2 + d ** 2) / (2 * d);
  const square = a.length ** 2 - along ** 2;
  if (square < -TOUCH * a.length ** 2) return [];
  const across = Math.sqrt(Math.max(0, square));
  return [1, -1].map((s): Pair => [a.x + (along * dx - s * across * dy) / d, a.y + (along * dy + s * across * dx) / d]);
}

/** What ropes carry that are straight; one that hangs upright carries all, and two that do share it anyhow. */
function tensionsAt([x, y]: Pair, discs: readonly Disc[], weight: number): number[] | null {
  const upright = discs.map((d) => Math.max(Math.abs(d.x - x), Math.abs(d.y - d.length - y)) <= TOUCH * d.length);
  const count = upright.filter(Boolean).length;
  if (count > 1 && weight > 0) return null;
  if (count > 0) return upright.map((u) => (u ? weight : 0));
  const ways = discs.map((d): Pair => [(d.x - x) / d.length, (d.y - y) / d.length]);
  const [[a, b] = [0, 0], [c, e] = [0, 0]] = ways;
  const turn = a * e - b * c;
  return [(-c * weight) / turn, (a * weight) / turn];
}
