import * as z from "zod/mini";
import { unitInWords } from "./limits.ts";
import { bodySchema } from "./schema-body.ts";
import { numberSchema } from "./schema-numbers.ts";
import { listSchema, objectSchema } from "./schema-parts.ts";
import { pushSchema } from "./schema-push.ts";
import { ropeSchema } from "./schema-rope.ts";
import { surfaceSchema } from "./schema-surface.ts";

/** So many bodies, ropes, surfaces and pushes a document may have, each. */
const MOST = 12;

const unitsRule = '"SI" or "lbf-ft"';
const units = z
  .literal(["SI", "lbf-ft"], { error: unitsRule })
  .check(z.meta({ description: "SI (kg, N, m, s) unless given; lbf-ft: all numbers are in slug, lbf, ft and s" }));

const frame = objectSchema(
  `acceleration of all supports (beams, ground, slopes, fixed pulleys) seen from the ground, ${unitInWords("frameX")}: ` +
    "a lift, a cart; each part is 0 unless given",
  { x: z.optional(numberSchema("frameX")), y: z.optional(numberSchema("frameY")) },
);

/** The whole document. What ties its parts together is `checkProblem`'s affair. */
export const documentSchema = objectSchema(
  "A problem of mechanics: bodies, and the forces on them. Angles in degrees.",
  {
    format: z.literal(1, { error: "1, the version of the format" }),
    units: z.optional(units),
    gravity: numberSchema("gravity"),
    frame: z.optional(frame),
    bodies: listSchema(bodySchema, 1, MOST, "bodies"),
    ropes: z.optional(listSchema(ropeSchema, 0, MOST, "ropes")),
    surfaces: z.optional(listSchema(surfaceSchema, 0, MOST, "surfaces")),
    pushes: z.optional(listSchema(pushSchema, 0, MOST, "pushes")),
  },
);
