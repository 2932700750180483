import * as z from "zod/mini";
import { isZeroRational } from "../exact/index.ts";
import type { WrittenNumber } from "./document.ts";
import { unitInWords } from "./limits.ts";
import { readWrittenNumber } from "./written-number.ts";

const mass = unitInWords("mass");
const weight = unitInWords("weight");
const oneLoad = `exactly one of mass (${mass}) and weight (${weight})`;
const atMostOne = `at most one of mass (${mass}) and weight (${weight})`;
const knotMass = "0 or nothing, because a knot has no mass";
const knotWeight = "nothing, because a knot has no weight";

/** What mass or weight each kind of body has, in words. */
export const loadsInWords = `a load, with ${oneLoad}; a knot, with none; a pulley, with ${atMostOne}`;

type LoadKeys = {
  readonly kind?: "load" | "knot" | "pulley" | undefined;
  readonly mass?: WrittenNumber | undefined;
  readonly weight?: WrittenNumber | undefined;
};
type Rule = ReturnType<typeof z.refine<LoadKeys>>;

/** What mass or weight each kind of body has: rules for an object with the keys of a body. */
export const loadRules: readonly [Rule, Rule, Rule, Rule] = [
  z.refine((body) => (body.kind ?? "load") !== "load" || (body.mass === undefined) !== (body.weight === undefined), {
    error: oneLoad,
  }),
  z.refine((body) => body.kind !== "knot" || body.mass === undefined || isZero(body.mass), {
    error: knotMass,
    path: ["mass"],
  }),
  z.refine((body) => body.kind !== "knot" || body.weight === undefined, { error: knotWeight, path: ["weight"] }),
  z.refine((body) => body.kind !== "pulley" || body.mass === undefined || body.weight === undefined, {
    error: atMostOne,
  }),
];

function isZero(written: WrittenNumber): boolean {
  const value = readWrittenNumber(written);
  return value !== null && isZeroRational(value);
}

/** The same rules for a JSON Schema, as far as it can say them. */
export const loadAlternatives = [
  { properties: { kind: { const: "load" } }, oneOf: [{ required: ["mass"] }, { required: ["weight"] }] },
  { properties: { kind: { const: "pulley" } }, required: ["kind"], not: { required: ["mass", "weight"] } },
  {
    properties: { kind: { const: "knot" }, mass: { enum: [0, "0"] } },
    required: ["kind"],
    not: { required: ["weight"] },
  },
];
