// Ways of moving in Cartesian parts, from a document and the answers alone.
import type { SurfaceDocument } from "../../shared/problem/index.ts";
import { unitOf } from "../support/mechanics/index.ts";
import type { Pair } from "../support/mechanics/index.ts";
import { answerOf } from "./set-up-cases.ts";
import type { SetUpCase } from "./set-up-cases.ts";

/** The ways in which sentences say that something goes, as a test of Cartesian parts. */
export const WAYS: Readonly<Record<string, (x: number, y: number) => boolean>> = {
  "to the right": (x) => x > 0,
  "to the left": (x) => x < 0,
  upwards: (_, y) => y > 0,
  downwards: (_, y) => y < 0,
  "up the slope": (_, y) => y > 0,
  "down the slope": (_, y) => y < 0,
};

/** A body's acceleration as answered: along its stated line, else up the slope it is on or to the right, else in two parts. */
export function accelerationOf(one: Pick<SetUpCase, "document" | "derivation">, id: string): Pair | null {
  const { document, derivation: d } = one;
  const letter = d.system.setUp.bodies.find((b) => b.id === id)?.letters.acceleration ?? "";
  const under = (document.surfaces ?? []).find((surface) => surface.on === id);
  // What does not move on another body goes with it.
  if (under?.of !== undefined && answerOf(d, letter) === 0) return accelerationOf(one, under.of);
  const has = (name: string): boolean => d.answers.some((a) => a.id === name);
  if (has(`${letter}x`)) return [answerOf(d, `${letter}x`), answerOf(d, `${letter}y`)];
  const motion = document.bodies.find((b) => b.id === id)?.motion;
  const stated = typeof motion === "object" ? unitOf(motion.along) : null;
  const line = stated ?? (under === undefined ? null : upwards(tangentOf(under)));
  return line === null || !has(letter) ? null : [answerOf(d, letter) * line[0], answerOf(d, letter) * line[1]];
}

/** Of two opposite directions the one that points up, or to the right. */
const upwards = ([x, y]: Pair): Pair => (y > 1e-9 || (Math.abs(y) <= 1e-9 && x > 0) ? [x, y] : [-x, -y]);

/** Along a surface. */
export function tangentOf(surface: SurfaceDocument): Pair {
  if ("slope" in surface && surface.slope !== undefined) return unitOf(surface.slope);
  if (!("normal" in surface) || surface.normal === undefined)
    throw new Error(`${surface.id} has neither slope nor normal`);
  const [x, y] = unitOf(surface.normal);
  return [y, -x];
}
