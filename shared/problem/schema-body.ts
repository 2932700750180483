import * as z from "zod/mini";
import { unitInWords } from "./limits.ts";
import { directionSchema } from "./schema-direction.ts";
import { loadAlternatives, loadRules, loadsInWords } from "./schema-load.ts";
import { numberSchema } from "./schema-numbers.ts";
import { bodyIdSchema, idSchema, objectSchema, placeSchema } from "./schema-parts.ts";

/** The longest name of a body, in characters. */
const LONGEST_NAME = 60;
const ON_ONE_LINE = /^[^\p{Cc}\p{Cs}\p{Zl}\p{Zp}]*$/u;
const NOT_BLANK = /\S/u;
const nameRule = `a name of 1 to ${LONGEST_NAME} characters, not all spaces, none of them a control character`;

const name = z
  .string({ error: nameRule })
  .check(
    z.minLength(1, { error: nameRule }),
    z.maxLength(LONGEST_NAME, { error: nameRule }),
    z.regex(ON_ONE_LINE, { error: nameRule }),
    z.regex(NOT_BLANK, { error: nameRule }),
    z.meta({ description: "what sentences call the body, without article; its id unless given" }),
  );

const acceleration = objectSchema(
  `acceleration of the body seen from the ground, ${unitInWords("accelerationX")}; each part is 0 unless given`,
  { x: z.optional(numberSchema("accelerationX")), y: z.optional(numberSchema("accelerationY")) },
);

const goingRule = '"forwards" or "backwards"';
const line = objectSchema("the body can only move along a line", {
  along: directionSchema,
  acceleration: z.optional(numberSchema("accelerationAlong")),
  going: z.optional(
    z
      .literal(["forwards", "backwards"], { error: goingRule })
      .check(
        z.meta({ description: "whether it already moves along the line or against it; at first at rest unless given" }),
      ),
  ),
  seenFrom: z.optional(
    bodyIdSchema("the id of the body from which line and acceleration are seen; from the supports unless given"),
  ),
});

const motionRule = 'what is known of the motion: "free", or { "along", "acceleration", "going", "seenFrom" }';
const motion = z.xor([z.literal("free", { error: motionRule }), line], { error: motionRule }).check(
  z.meta({
    id: "motion",
    description:
      'how the body may move: "free" where nothing is known, or along a line with an acceleration that is given or to ' +
      "be found. A body without acceleration and motion stays at rest as seen from the supports, unless it touches a " +
      "surface and has to slide on it",
  }),
);

const kindRule = '"load", "knot" or "pulley"';
const kind = z.literal(["load", "knot", "pulley"], { error: kindRule }).check(
  z.meta({
    description: "a load unless given; a knot joins ropes; a pulley is a movable one, round which ropes run",
  }),
);

const oneMotion = "at most one of acceleration and motion";

/** A body: a load, a knot or a movable pulley. */
export const bodySchema = objectSchema("something that forces act on", {
  id: idSchema("the body's id", "reservedId"),
  name: z.optional(name),
  kind: z.optional(kind),
  mass: z.optional(numberSchema("mass")),
  weight: z.optional(numberSchema("weight")),
  at: z.optional(placeSchema(`where the body is, ${unitInWords("placeX")}, for ropes given by places`)),
  acceleration: z.optional(acceleration),
  motion: z.optional(motion),
}).check(
  ...loadRules,
  z.refine((body) => body.acceleration === undefined || body.motion === undefined, { error: oneMotion }),
  z.meta({
    id: "body",
    description: `something that forces act on: ${loadsInWords}`,
    anyOf: loadAlternatives,
    not: { required: ["acceleration", "motion"] },
  }),
);
