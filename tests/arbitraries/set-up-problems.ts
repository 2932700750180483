// Random problem documents of every kind of set-up that the format has.
import type fc from "fast-check";
import type { ProblemDocument } from "../../shared/problem/index.ts";
import * as crates from "./set-up-problems/crates.ts";
import * as frames from "./set-up-problems/frames.ts";
import * as hanging from "./set-up-problems/hanging.ts";
import * as hoists from "./set-up-problems/hoists.ts";
import * as knots from "./set-up-problems/knots.ts";
import { inSetting } from "./set-up-problems/parts.ts";
import type { Plan } from "./set-up-problems/parts.ts";
import * as slopes from "./set-up-problems/slopes.ts";

type Kinds = readonly (readonly [string, fc.Arbitrary<ProblemDocument>])[];

const named = (plans: Readonly<Record<string, fc.Arbitrary<Plan>>>): Kinds =>
  Object.entries(plans).map(([name, plan]) => [name, inSetting(plan)] as const);

/** Ropes, knots and pulleys. */
export const ropeKinds: Kinds = [...named(hanging), ...named(knots), ...named(hoists)];

/** Crates on the ground, on slopes, and on each other. */
export const crateKinds: Kinds = [...named(slopes), ...named(crates)];

/** Lifts, carts and wedges. */
export const frameKinds: Kinds = named(frames);
