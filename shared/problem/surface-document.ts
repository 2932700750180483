import { readDirection, writeDirection } from "./direction.ts";
import type { PushDocument, SurfaceDocument, WrittenNumber } from "./document.ts";
import type { Rational } from "../exact/index.ts";
import type { Push, Surface } from "./types.ts";
import { readCheckedNumber, writeNumber } from "./written-number.ts";

function readOptional(written: WrittenNumber | undefined): Rational | null {
  return written === undefined ? null : readCheckedNumber(written);
}

/** A surface of a document that the schema has passed. Throws TypeError for one without a slope and a normal. */
export function readSurface({ id, on, of, slope, normal, friction }: SurfaceDocument): Surface {
  const direction = slope ?? normal;
  if (direction === undefined) throw new TypeError("the document has not been checked: a surface lies nowhere");
  return {
    id,
    on,
    of: of ?? null,
    lies: { kind: slope === undefined ? "normal" : "slope", direction: readDirection(direction) },
    friction: { static: readOptional(friction?.static), kinetic: readOptional(friction?.kinetic) },
  };
}

/** A surface as a document gives it; a smooth one says nothing of friction. */
export function writeSurface({ id, on, of, lies, friction }: Surface): SurfaceDocument {
  const direction = writeDirection(lies.direction);
  const coefficients = {
    ...(friction.static === null ? {} : { static: writeNumber(friction.static) }),
    ...(friction.kinetic === null ? {} : { kinetic: writeNumber(friction.kinetic) }),
  };
  return {
    id,
    on,
    ...(of === null ? {} : { of }),
    ...(lies.kind === "slope" ? { slope: direction } : { normal: direction }),
    ...(Object.keys(coefficients).length === 0 ? {} : { friction: coefficients }),
  };
}

/** A push of a document that the schema has passed. */
export function readPush({ id, on, direction, size }: PushDocument): Push {
  return { id, on, direction: readDirection(direction), size: readOptional(size) };
}

/** A push as a document gives it. */
export function writePush({ id, on, direction, size }: Push): PushDocument {
  return { id, on, direction: writeDirection(direction), ...(size === null ? {} : { size: writeNumber(size) }) };
}
