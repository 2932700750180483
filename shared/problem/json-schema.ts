import * as z from "zod/mini";
import { RESERVED_IDS, RESERVED_SURFACE_IDS, ROPE_LENGTH_PATTERN } from "./reserved-ids.ts";
import { documentSchema } from "./schema-document.ts";

/**
 * The format as a JSON Schema (draft 2020-12), generated from the same schema that reads documents. What it cannot say
 * (exact ranges of numbers given as text, ids that must differ, the body that a rope names) stands in its descriptions.
 */
export function problemJsonSchema(): object {
  const { $schema, $defs, ...rest } = z.toJSONSchema(documentSchema, { target: "draft-2020-12", io: "input" });
  return {
    $schema,
    title: "Problem, format 1",
    ...rest,
    $defs: { ...$defs, reservedId: reserved(RESERVED_IDS), reservedSurfaceId: reserved(RESERVED_SURFACE_IDS) },
  };
}

function reserved(ids: readonly string[]): object {
  return { anyOf: [{ enum: [...ids] }, { pattern: ROPE_LENGTH_PATTERN.source }] };
}
