// All published cases of general set-ups.
import { HOISTS } from "./hoists.ts";
import { KNOTS } from "./knots.ts";
import { LEVEL } from "./level.ts";
import { LIFTS } from "./lifts.ts";
import { PULLEYS } from "./pulleys.ts";
import { SLOPES } from "./slopes.ts";
import { TOGETHER } from "./together.ts";

export type { SetUpCase } from "./case.ts";

/** Every case that is run. */
export const SET_UP_CASES = [...LIFTS, ...SLOPES, ...LEVEL, ...TOGETHER, ...HOISTS, ...PULLEYS, ...KNOTS];
