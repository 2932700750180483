// Keeps what a layout consists of apart: where two things overlap, the plan is asked to part them along the line on which they overlap least.
import type { Kit } from "./demands.ts";
import { holdAt, type Hold, type Places, type Plan } from "./plan.ts";
import type { PlacedPush } from "./pushes.ts";
import { thingsOf, type Thing } from "./things.ts";
import { dot, times, type Vec } from "./vector.ts";

const rounds = 14;
/** By how much bounds may be missed, and how many ways to part two things are tried one by one. */
const bearable = 1.5;
const waysTried = 6;
const tooMuch = 1000;
/** How many trials a layout may take: more than any set-up that makes sense needs. */
const mostTrials = 60;
/** Kinds of which two may lie over each other. */
const mayCross: ReadonlySet<Thing["kind"]> = new Set(["end", "under"]);
/** How far two things are kept apart. */
const gaps = { body: 8, pulley: 6, rope: 5, end: 6, push: 5, under: 4 } as const;

/** Solves a plan, parts what overlaps, and gives the places with the number of overlaps that could not be helped. */
export function partOverlaps(plan: Plan, kit: Kit, pushes: readonly PlacedPush[]): Places & { readonly left: number } {
  const things = thingsOf(kit, pushes);
  const tried = new Map<string, number>();
  let found = plan.solve();
  // What cannot be kept without any parting is not laid to a parting.
  const limit = found.missing + bearable;
  let trials = mostTrials;
  const costOf = (places: Places): number => {
    trials -= 1;
    return overlapsIn(things, places).length + (places.missing > limit ? tooMuch : 0);
  };
  let overlaps = overlapsIn(things, found);
  for (let round = 0; round < rounds && trials > 0 && overlaps.length > 0; round += 1) {
    for (const overlap of overlaps) {
      if (overlap.evenly && !tried.has(overlap.key)) partBest(plan, overlap, tried, 2, costOf);
      else partAnew(plan, overlap, tried);
    }
    found = plan.solve();
    if (found.missing > limit) {
      for (const { key } of overlaps) plan.drop(key);
      for (const overlap of overlaps) if (trials > 0) partBest(plan, overlap, tried, waysTried, costOf);
      found = plan.solve();
    }
    overlaps = overlapsIn(things, found);
  }
  return { ...found, left: overlaps.filter(({ apart }) => apart < 1).length };
}

/** Parts two things along the next way that has not been tried. */
function partAnew(plan: Plan, { key, a, b, ways }: Overlap, tried: Map<string, number>): void {
  const turn = (tried.get(key) ?? -1) + 1;
  const way = ways[Math.min(turn, ways.length - 1)];
  tried.set(key, turn);
  plan.drop(key);
  if (way !== undefined) part(plan, key, a, b, way);
}

/** Parts two things along the one of their first ways that leaves the least overlaps; not at all where none leaves all other bounds kept. */
function partBest(
  plan: Plan,
  { key, a, b, ways }: Overlap,
  tried: Map<string, number>,
  count: number,
  costOf: (places: Places) => number,
): void {
  let best: { way: Vec; cost: number } | null = null;
  for (const way of ways.slice(0, count)) {
    part(plan, key, a, b, way);
    const cost = costOf(plan.solve());
    plan.drop(key);
    if (best === null || cost < best.cost) best = { way, cost };
    if (cost === 0) break;
  }
  tried.set(key, 0);
  if (best !== null && best.cost < tooMuch) part(plan, key, a, b, best.way);
}

interface Overlap {
  readonly key: string;
  readonly a: Thing;
  readonly b: Thing;
  readonly apart: number;
  /** Whether two ways to part them are equally short. */
  readonly evenly: boolean;
  /** Directions to part them along, the easiest first. */
  readonly ways: readonly Vec[];
}

function overlapsIn(things: readonly Thing[], { places }: Places): Overlap[] {
  const corners = things.map((thing) => thing.corners.map((corner) => holdAt(places, corner)));
  return things.flatMap((a, i) =>
    things.slice(i + 1).flatMap((b, k) => {
      if (a.joined.has(b.key) || b.joined.has(a.key) || (a.kind === b.kind && mayCross.has(a.kind))) return [];
      const gap = gapOf(a, b);
      const [p, q] = [corners[i] ?? [], corners[i + 1 + k] ?? []];
      const ways = [...a.across, ...b.across]
        .flatMap((across) => [across, times(across, -1)])
        .map((across) => ({ across, apart: distanceAlong(p, q, across) }))
        .sort((one, other) => other.apart - one.apart);
      const apart = ways[0]?.apart ?? 0;
      if (apart > gap - 1.5) return [];
      const evenly = apart - (ways[1]?.apart ?? -Infinity) < 2;
      return [{ key: `${a.key} ${b.key}`, a, b, apart, evenly, ways: ways.map(({ across }) => across) }];
    }),
  );
}

const gapOf = (a: Thing, b: Thing): number => (a.kind === b.kind ? gaps[a.kind] : Math.min(gaps[a.kind], gaps[b.kind]));

function distanceAlong(p: readonly Vec[], q: readonly Vec[], across: Vec): number {
  let nearest = Infinity;
  let furthest = -Infinity;
  for (const corner of q) nearest = Math.min(nearest, dot(corner, across));
  for (const corner of p) furthest = Math.max(furthest, dot(corner, across));
  return nearest - furthest;
}

function part(plan: Plan, key: string, a: Thing, b: Thing, way: Vec): void {
  for (const one of outermost(a, way)) {
    for (const other of outermost(b, times(way, -1))) plan.atLeast(one, other, way, gapOf(a, b), key);
  }
}

/** For each place of a thing its corner furthest out. */
function outermost({ corners }: Thing, way: Vec): Hold[] {
  const best = new Map<string, Hold>();
  for (const corner of corners) {
    const known = best.get(corner.at);
    if (known === undefined || dot(corner.offset, way) > dot(known.offset, way)) best.set(corner.at, corner);
  }
  return [...best.values()];
}
