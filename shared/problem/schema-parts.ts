import * as z from "zod/mini";
import { ID_PATTERN } from "./reserved-ids.ts";
import { numberSchema } from "./schema-numbers.ts";

const idRule = "an id: a letter and up to 15 more letters or digits";
const bodyRule = "the id of a body";

/** The id of something; `not` names the part of the JSON Schema that lists what it must not be. */
export function idSchema(meaning: string, not: "reservedId" | "reservedSurfaceId"): z.ZodMiniString {
  return z
    .string({ error: idRule })
    .check(
      z.regex(ID_PATTERN, { error: idRule }),
      z.meta({ description: `${meaning}; unique in the document`, not: { $ref: `#/$defs/${not}` } }),
    );
}

/** The id of a body elsewhere in the document. */
export function bodyIdSchema(meaning: string): z.ZodMiniString {
  return z.string({ error: bodyRule }).check(z.meta({ description: meaning }));
}

/** What an object accepts: its keys for an unknown key, its description for a value that is no object. */
export function objectSchema<Shape extends z.core.$ZodLooseShape>(
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

/** A list of so many items: "a list of 1 to 12 bodies". */
export function listSchema<Item extends z.core.$ZodType>(
  item: Item,
  minimum: number,
  maximum: number,
  items: string,
): z.ZodMiniArray<Item> {
  const error = `a list of ${minimum} to ${maximum} ${items}`;
  return z
    .array(item, { error })
    .check(z.minLength(minimum, { error }), z.maxLength(maximum, { error }), z.meta({ description: error }));
}

type NumberSchema = ReturnType<typeof numberSchema>;

/** A place. */
export function placeSchema(
  description: string,
): z.ZodMiniObject<{ x: NumberSchema; y: NumberSchema }, z.core.$strict> {
  return objectSchema(description, { x: numberSchema("placeX"), y: numberSchema("placeY") });
}
