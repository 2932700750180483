// Random set-ups of one body on one or two ropes, from a seed, so that a failure can be run again.
import type { SetUp } from "../solver/set-ups.ts";

/** A small seeded generator: numbers from 0 to 1 (mulberry32, public domain, from memory). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const TENTH = 10;
const tenths = (x: number): number => Math.round(x * TENTH) / TENTH;
const pick = <T>(random: () => number, values: readonly [T, ...T[]]): T =>
  values[Math.floor(random() * values.length)] ?? values[0];

/** An acute angle from −30° to 90° in tenths; 0, 90 and multiples of 15 often. */
export function acute(random: () => number): number {
  const kind = random();
  if (kind < 0.08) return 0;
  if (kind < 0.16) return 90;
  if (kind < 0.3) return pick(random, [15, 30, 45, 60, 75]);
  return tenths(random() * 120 - 30);
}

/** Two directions, degrees anticlockwise: mostly on opposite sides; equal and near-parallel ones often. */
export function directions(random: () => number): [number, number] {
  const first = acute(random);
  const kind = random();
  const second = kind < 0.12 ? first : kind < 0.2 ? tenths(first + 0.1) : acute(random);
  const left = random() < 0.8;
  const right = random() < 0.8;
  return [left ? tenths(180 - first) : first, right ? second : tenths(180 - second)];
}

/** A random set-up: masses from a spider's to a ship's, lifts and carts, weights instead of masses, one rope now and then. */
export function setUp(random: () => number): SetUp {
  const ropes = directions(random);
  const gravity = pick(random, [9.8, 9.81, 10, 9.80665, 1.62, 0]);
  const motion = { ax: pick(random, [0, 0, 0, 2, -3, 12, 9.8]), ay: pick(random, [0, 0, 0, 2, -3, -9.8, -12]) };
  const load = gravity > 0 && random() < 0.15 ? { weight: 50 } : { mass: pick(random, [4.2, 1, 12.5, 0.00002, 3500]) };
  return { ropes: random() < 0.08 ? [ropes[0]] : ropes, gravity, ...motion, ...load };
}
