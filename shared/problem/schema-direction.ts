import * as z from "zod/mini";
import { numberSchema } from "./schema-numbers.ts";
import { objectSchema } from "./schema-parts.ts";

const fromLevel = objectSchema("an angle from the positive x axis", { angle: numberSchema("angle") });
const fromVertical = objectSchema("an angle from straight up", {
  angle: numberSchema("angleFromVertical"),
  from: z.literal("vertical", { error: '"vertical"' }),
  side: z.literal(["left", "right"], { error: '"left" or "right"' }),
});
const slope = objectSchema("so far to the right and so far up, not both 0, in any one unit of length", {
  run: numberSchema("run"),
  rise: numberSchema("rise"),
});

/** What a direction may be, in words. */
export const directionRule =
  'a direction: { "angle" }, { "run", "rise" } or { "angle", "from": "vertical", "side": "left" or "right" }';

/** A direction in any of the three ways to write it. */
export const directionSchema = z
  .xor([fromLevel, fromVertical, slope], { error: directionRule })
  .check(z.meta({ id: "direction", description: directionRule }));
