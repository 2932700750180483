import { isZeroRational, ratio } from "../exact/index.ts";
import { readDirection, writeDirection } from "./direction.ts";
import type { BodyDocument, MotionDocument } from "./document.ts";
import type { Body, Load, Motion } from "./types.ts";
import { readVector, writeVector } from "./vector.ts";
import { readCheckedNumber, writeNumber } from "./written-number.ts";

/** A body of a document that the schema has passed. Throws TypeError for a load without mass and weight. */
export function readBody(body: BodyDocument): Body {
  return {
    id: body.id,
    name: body.name ?? body.id,
    kind: body.kind ?? "load",
    load: readLoad(body),
    acceleration: readVector(body.acceleration),
    motion: readMotion(body),
    at: body.at === undefined ? null : readVector(body.at),
  };
}

function readLoad(body: BodyDocument): Load {
  if (body.weight !== undefined) return { kind: "weight", weight: readCheckedNumber(body.weight) };
  if (body.mass !== undefined) return { kind: "mass", mass: readCheckedNumber(body.mass) };
  if (body.kind === "knot" || body.kind === "pulley") return { kind: "mass", mass: ratio(0n, 1n) };
  throw new TypeError("the document has not been checked: a body has neither mass nor weight");
}

const GOING = { forwards: 1, backwards: -1 } as const;

function readMotion({ acceleration, motion }: BodyDocument): Motion {
  if (motion === "free") return { kind: "free" };
  if (motion === undefined) return { kind: acceleration === undefined ? "unstated" : "given" };
  return {
    kind: "line",
    along: readDirection(motion.along),
    acceleration: motion.acceleration === undefined ? null : readCheckedNumber(motion.acceleration),
    going: motion.going === undefined ? 0 : GOING[motion.going],
    seenFrom: motion.seenFrom ?? null,
  };
}

/** A body as a document gives it; what a knot and a pulley have by themselves is left out. */
export function writeBody(body: Body): BodyDocument {
  return {
    id: body.id,
    name: body.name,
    ...(body.kind === "load" ? {} : { kind: body.kind }),
    ...writeLoad(body),
    ...(body.at === null ? {} : { at: writeVector(body.at) }),
    ...writeMotion(body),
  };
}

function writeLoad({ kind, load }: Body): Pick<BodyDocument, "mass" | "weight"> {
  if (load.kind === "weight") return { weight: writeNumber(load.weight) };
  return kind !== "load" && isZeroRational(load.mass) ? {} : { mass: writeNumber(load.mass) };
}

function writeMotion({ motion, acceleration }: Body): Pick<BodyDocument, "acceleration" | "motion"> {
  switch (motion.kind) {
    case "unstated":
      return {};
    case "given":
      return { acceleration: writeVector(acceleration) };
    case "free":
      return { motion: "free" };
    case "line":
      return { motion: writeLine(motion) };
  }
}

function writeLine(motion: Extract<Motion, { readonly kind: "line" }>): MotionDocument {
  return {
    along: writeDirection(motion.along),
    ...(motion.acceleration === null ? {} : { acceleration: writeNumber(motion.acceleration) }),
    ...(motion.going === 0 ? {} : { going: motion.going > 0 ? "forwards" : "backwards" }),
    ...(motion.seenFrom === null ? {} : { seenFrom: motion.seenFrom }),
  };
}
