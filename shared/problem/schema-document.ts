import * as z from "zod/mini";
import { numberSchema } from "./schema-numbers.ts";
import { ID_PATTERN, RESERVED_IDS, ROPE_LENGTH_PATTERN } from "./reserved-ids.ts";

/** The longest name of a body, in characters. */
const LONGEST_NAME = 60;
const ON_ONE_LINE = /^[^\p{Cc}\p{Cs}\p{Zl}\p{Zp}]*$/u;
const NOT_BLANK = /\S/u;

const idRule = "an id: a letter and up to 15 more letters or digits";
const nameRule = `a name of 1 to ${LONGEST_NAME} characters, not all spaces, none of them a control character`;

const RESERVED = { anyOf: [{ enum: [...RESERVED_IDS] }, { pattern: ROPE_LENGTH_PATTERN.source }] };

function id(meaning: string): z.ZodMiniString {
  return z
    .string({ error: idRule })
    .check(
      z.regex(ID_PATTERN, { error: idRule }),
      z.meta({ description: `${meaning}; unique in the document`, not: RESERVED }),
    );
}

/** What an object accepts: its keys for an unknown key, its description for a value that is no object. */
function object<Shape extends z.core.$ZodLooseShape>(
  description: string,
  shape: Shape,
): z.ZodMiniObject<Shape, z.core.$strict> {
  const keys = Object.keys(shape).join(", ");
  return z
    .strictObject(shape, {
      error: (issue) =>
        issue.code === "unrecognized_keys" ? `only the keys ${keys}` : `an object with the keys ${keys}`,
    })
    .check(z.meta({ description }));
}

const acceleration = object("acceleration of the body seen from the ground, m/s²; each part is 0 unless given", {
  x: z.optional(numberSchema("accelerationX")),
  y: z.optional(numberSchema("accelerationY")),
});

const oneLoad = "exactly one of mass (kg) and weight (N)";

const body = object("something that hangs", {
  id: id("the body's id"),
  name: z.optional(
    z
      .string({ error: nameRule })
      .check(
        z.minLength(1, { error: nameRule }),
        z.maxLength(LONGEST_NAME, { error: nameRule }),
        z.regex(ON_ONE_LINE, { error: nameRule }),
        z.regex(NOT_BLANK, { error: nameRule }),
        z.meta({ description: "what sentences call the body; its id unless given" }),
      ),
  ),
  mass: z.optional(numberSchema("mass")),
  weight: z.optional(numberSchema("weight")),
  acceleration: z.optional(acceleration),
}).check(
  z.refine(({ mass, weight }) => (mass === undefined) !== (weight === undefined), { error: oneLoad }),
  z.meta({
    description: `something that hangs, with ${oneLoad}`,
    oneOf: [{ required: ["mass"] }, { required: ["weight"] }],
  }),
);

const fromLevel = object("an angle from the positive x axis", { angle: numberSchema("angle") });
const fromVertical = object("an angle from straight up", {
  angle: numberSchema("angleFromVertical"),
  from: z.literal("vertical", { error: '"vertical"' }),
  side: z.literal(["left", "right"], { error: '"left" or "right"' }),
});
const slope = object("so far to the right and so far up, not both 0, in any one unit of length", {
  run: numberSchema("run"),
  rise: numberSchema("rise"),
});

const directionRule =
  'a direction: { "angle" }, { "run", "rise" } or { "angle", "from": "vertical", "side": "left" or "right" }';

const direction = z.union([fromLevel, fromVertical, slope], { error: directionRule });

/** The one of the three ways that a direction means, by its keys: only the faults of that one are worth telling. */
export function directionMeant(written: object): typeof fromLevel | typeof fromVertical | typeof slope | null {
  if ("run" in written || "rise" in written) return slope;
  if ("from" in written || "side" in written) return fromVertical;
  return "angle" in written ? fromLevel : null;
}

const rope = object("a rope that is tied to a body and pulls it", {
  id: id("the rope's id, which its tension has too"),
  on: z.string({ error: "the id of a body" }).check(z.meta({ description: "the id of the body it pulls" })),
  direction,
});

const oneBody = "a list of one body";
const oneOrTwoRopes = "a list of one or two ropes";

/** The whole document. What ties its parts together is `checkProblem`'s affair. */
export const documentSchema = object("A problem of mechanics: a body that hangs on ropes. SI units and degrees.", {
  format: z.literal(1, { error: "1, the version of the format" }),
  gravity: numberSchema("gravity"),
  bodies: z.array(body, { error: oneBody }).check(z.length(1, { error: oneBody })),
  ropes: z
    .array(rope, { error: oneOrTwoRopes })
    .check(z.minLength(1, { error: oneOrTwoRopes }), z.maxLength(2, { error: oneOrTwoRopes })),
});
