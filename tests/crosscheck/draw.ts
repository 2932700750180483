// Draws the numbers and directions of random documents from a seed, so that the same documents come again.
import type { DirectionDocument, ProblemDocument, SurfaceDocument } from "../../shared/problem/index.ts";
import { seeded } from "../arbitraries/set-ups.ts";

/** A direction that can be turned by quarters and mirrored: degrees, or a run and a rise. */
export type Slant = { readonly degrees: number } | { readonly run: number; readonly rise: number };

/** The direction of a slant, turned anticlockwise by so many quarters. */
export function turned(slant: Slant, quarters = 0): DirectionDocument {
  if ("degrees" in slant) {
    const angle = (((slant.degrees + 90 * quarters) % 360) + 360) % 360;
    return { angle: angle > 180 ? angle - 360 : angle };
  }
  let { run, rise } = slant;
  for (let i = ((quarters % 4) + 4) % 4; i > 0; i--) [run, rise] = [0 - rise, run];
  return { run, rise };
}

/** The same slant on the other side of the upright. */
export const mirrored = (slant: Slant): Slant =>
  "degrees" in slant ? { degrees: 180 - slant.degrees } : { run: 0 - slant.run, rise: slant.rise };

/** To the right, and so on. */
export const RIGHT: DirectionDocument = { angle: 0 };
export const LEFT: DirectionDocument = { angle: 180 };
export const UP: DirectionDocument = { angle: 90 };
export const DOWN: DirectionDocument = { angle: -90 };

type RunAndRise = readonly [run: number, rise: number];

const MASSES = [0.5, 1, 1.2, 2, 2.5, 3, 4, 4.2, 5, 6, 7.5, 8, 10, 12, 15, 20] as const;
const FIFTEENS = [15, 30, 45, 60, 75] as const;
const RISES: readonly [RunAndRise, ...RunAndRise[]] = [
  [4, 3],
  [3, 4],
  [12, 5],
  [24, 7],
  [1, 1],
  [2, 1],
  [1, 2],
  [3, 1],
  [3, 2],
];

/** A source of random numbers with the picks that documents need. */
export class Draw {
  private readonly random: () => number;

  constructor(seed: number) {
    this.random = seeded(seed);
  }

  pick<T>(values: readonly [T, ...T[]]): T {
    return values[Math.floor(this.random() * values.length)] ?? values[0];
  }

  /** True so often, 0 to 1. */
  chance(share: number): boolean {
    return this.random() < share;
  }

  /** A whole number from least to most. */
  whole(least: number, most: number): number {
    return least + Math.floor(this.random() * (most - least + 1));
  }

  mass(): number {
    return this.pick(MASSES);
  }

  /** A mass, or now and then a weight. */
  load(): { mass: number } | { weight: number } {
    return this.chance(0.15) ? { weight: this.whole(4, 200) } : { mass: this.mass() };
  }

  gravity(): number {
    return this.pick([9.8, 9.8, 9.81, 10]);
  }

  /** A steepness between the level and the upright: often with an exact sine. */
  slant(): Slant {
    const kind = this.random();
    if (kind < 0.45) return { degrees: this.pick(FIFTEENS) };
    if (kind < 0.7) {
      const [run, rise] = this.pick(RISES);
      return { run, rise };
    }
    return { degrees: this.whole(8, 160) / 2 };
  }

  /** Degrees of a multiple of 15 or of an ordinary angle. */
  degrees(): number {
    return this.chance(0.5) ? this.pick(FIFTEENS) : this.whole(5, 84);
  }

  /** Friction of a surface; an empty object where it is smooth. One coefficient alone now and then. */
  friction(share = 1): Pick<SurfaceDocument, "friction"> {
    if (!this.chance(share)) return {};
    const most = this.whole(2, 18) * 5;
    const sliding = Math.max(5, most - this.pick([0, 5, 5, 10, 15]));
    const kind = this.random();
    if (kind < 0.1) return { friction: { static: most / 100 } };
    if (kind < 0.2) return { friction: { kinetic: sliding / 100 } };
    return { friction: { static: most / 100, kinetic: sliding / 100 } };
  }
}

/** A document with its gravity and without empty lists. */
export function problem(draw: Draw, parts: Omit<ProblemDocument, "format" | "gravity">): ProblemDocument {
  return { format: 1, gravity: draw.gravity(), ...parts };
}
