import * as z from "zod/mini";
import { directionSchema } from "./schema-direction.ts";
import { numberSchema } from "./schema-numbers.ts";
import { bodyIdSchema, idSchema, objectSchema } from "./schema-parts.ts";

const oneCoefficient = "an object with static, kinetic or both; without friction leave it out";

const friction = objectSchema("coefficients of friction", {
  static: z.optional(numberSchema("coefficient")),
  kinetic: z.optional(numberSchema("coefficient")),
}).check(
  z.refine((given) => given.static !== undefined || given.kinetic !== undefined, { error: oneCoefficient }),
  z.meta({
    description: "coefficients of friction, of which kinetic is not the larger; a smooth surface has none",
    anyOf: [{ required: ["static"] }, { required: ["kinetic"] }],
  }),
);

const oneLie = "exactly one of slope (a direction along the surface) and normal (the direction away from it)";

/** A surface that a body touches. */
export const surfaceSchema = objectSchema("a surface that a body touches", {
  id: idSchema("the id of its normal force", "reservedSurfaceId"),
  on: bodyIdSchema("the id of the body that touches it and is pushed away from it"),
  of: z.optional(
    bodyIdSchema("the id of the body whose surface it is, which is pushed the opposite way; a support unless given"),
  ),
  slope: z.optional(directionSchema),
  normal: z.optional(directionSchema),
  friction: z.optional(friction),
}).check(
  z.refine(({ slope, normal }) => (slope === undefined) !== (normal === undefined), { error: oneLie }),
  z.meta({
    id: "surface",
    description:
      `a surface that a body touches, with ${oneLie}. A slope of 25 degrees rises to the right, one of 155 to the left; ` +
      "the body is on its upper side",
    oneOf: [{ required: ["slope"] }, { required: ["normal"] }],
  }),
);
