import * as z from "zod/mini";
import { isZeroRational } from "../exact/index.ts";
import type { WrittenNumber } from "./document.ts";
import { unitInWords } from "./limits.ts";
import { directionSchema } from "./schema-direction.ts";
import { numberSchema } from "./schema-numbers.ts";
import { bodyIdSchema, idSchema, objectSchema, placeSchema } from "./schema-parts.ts";
import { readWrittenNumber } from "./written-number.ts";

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

const mass = unitInWords("mass");
const weight = unitInWords("weight");
const oneLoad = `exactly one of mass (${mass}) and weight (${weight})`;
const knotLoad = "no weight, and no mass but 0, because a knot has none";
const pulleyLoad = `at most one of mass (${mass}) and weight (${weight})`;
const oneMotion = "at most one of acceleration and motion";

type LoadKeys = {
  readonly kind?: "load" | "knot" | "pulley" | undefined;
  readonly mass?: WrittenNumber | undefined;
  readonly weight?: WrittenNumber | undefined;
};

/** Whether a body of a kind has the load it may have; the message is the kind's own. */
const hasLoadOf = {
  load: (body: LoadKeys) => (body.mass === undefined) !== (body.weight === undefined),
  knot: (body: LoadKeys) => body.weight === undefined && (body.mass === undefined || isZero(body.mass)),
  pulley: (body: LoadKeys) => body.mass === undefined || body.weight === undefined,
};

function isZero(written: WrittenNumber): boolean {
  const value = readWrittenNumber(written);
  return value !== null && isZeroRational(value);
}

function loadRule(of: "load" | "knot" | "pulley", error: string): ReturnType<typeof z.refine<LoadKeys>> {
  return z.refine((body: LoadKeys) => (body.kind ?? "load") !== of || hasLoadOf[of](body), { error });
}

// The same three rules for an editor.
const loadAlternatives = [
  { properties: { kind: { const: "load" } }, oneOf: [{ required: ["mass"] }, { required: ["weight"] }] },
  { properties: { kind: { const: "pulley" } }, required: ["kind"], not: { required: ["mass", "weight"] } },
  {
    properties: { kind: { const: "knot" }, mass: { enum: [0, "0"] } },
    required: ["kind"],
    not: { required: ["weight"] },
  },
];

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
  loadRule("load", oneLoad),
  loadRule("knot", knotLoad),
  loadRule("pulley", pulleyLoad),
  z.refine((body) => body.acceleration === undefined || body.motion === undefined, { error: oneMotion }),
  z.meta({
    id: "body",
    description: `something that forces act on: a load, with ${oneLoad}; a knot, with none; a pulley, with ${pulleyLoad}`,
    anyOf: loadAlternatives,
    not: { required: ["acceleration", "motion"] },
  }),
);
