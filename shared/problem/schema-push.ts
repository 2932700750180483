import * as z from "zod/mini";
import { directionSchema } from "./schema-direction.ts";
import { numberSchema } from "./schema-numbers.ts";
import { bodyIdSchema, idSchema, objectSchema } from "./schema-parts.ts";

/** A push or a pull by hand. */
export const pushSchema = objectSchema("a push or a pull by hand; without a size it is what keeps the given motion", {
  id: idSchema("the push's id", "reservedId"),
  on: bodyIdSchema("the id of the body it acts on"),
  direction: directionSchema,
  size: z.optional(numberSchema("push")),
}).check(z.meta({ id: "push" }));
