import * as z from "zod/mini";
import { unitInWords } from "./limits.ts";
import { directionRule, directionSchema } from "./schema-direction.ts";
import { numberSchema } from "./schema-numbers.ts";
import { bodyIdSchema, idSchema, listSchema, objectSchema, placeSchema } from "./schema-parts.ts";

/** So many times a rope may pull. */
const MOST_PULLS = 12;

const id = idSchema("the rope's id, which its tension has too", "reservedId");
const on = bodyIdSchema("the id of the body it pulls");

const straight = objectSchema("a rope from a body straight to a support or to another body", {
  id,
  on,
  direction: z.optional(directionSchema),
  to: z.optional(
    bodyIdSchema("the id of the body at its other end, which it pulls the opposite way; a support unless given"),
  ),
}).check(
  z.refine(({ direction, to }) => direction !== undefined || to !== undefined, {
    error: directionRule,
    path: ["direction"],
  }),
  z.meta({
    description:
      'a rope from a body straight to a support, or to the body "to"; the direction may be left out between two bodies ' +
      'that both have "at"',
    anyOf: [{ required: ["direction"] }, { required: ["to"] }],
  }),
);

const tied = objectSchema(
  'a rope tied to a support at a place: from a body with "at"; or, with its length, from a body that hangs where the ropes let it',
  {
    id,
    on,
    anchor: placeSchema(`where it is tied to the support, ${unitInWords("placeX")}`),
    length: z.optional(numberSchema("length")),
  },
);

const pull = objectSchema("a place where the rope pulls a body", { on, direction: directionSchema });

const long = objectSchema(
  "a rope over fixed pulleys and round movable ones, by its pulls in their order along it; a pulley round which it runs " +
    "has two in a row",
  { id, pulls: listSchema(pull, 1, MOST_PULLS, "pulls") },
);

const ropeRule = 'a rope: { "id", "on", "direction", "to" }, { "id", "on", "anchor", "length" } or { "id", "pulls" }';

/** A rope in any of the three ways to give it. */
export const ropeSchema = z
  .xor([straight, tied, long], { error: ropeRule })
  .check(z.meta({ id: "rope", description: ropeRule }));
