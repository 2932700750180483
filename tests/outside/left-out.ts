// Published cases, or parts of them, that are not run as problems, with the reason. A word in brackets names the part.

const CIRCLE = "circular motion";
const SPACE = "its ropes are not in one plane";
const GRAVITY = "the acceleration of free fall itself; see tests/problem/gravity.test.ts for what is built in";

/** What is not run, by id. */
export const LEFT_OUT: Readonly<Record<string, string>> = {
  "hang-04 (mass)": "the mass is wanted",
  "hor-03": "a spring: its length is wanted",
  "lift-04 (mass)": "the mass is wanted; the other parts are run from it",
  "fri-04 (angle)": "the slope is wanted on which it moves steadily",
  "atw-04 (lighter weight)": "the lighter weight is wanted; its rope is run",
  "bnk-01": CIRCLE,
  "bnk-03": CIRCLE,
  "bnk-04": CIRCLE,
  "bnk-07": CIRCLE,
  "bnk-08": CIRCLE,
  "bnk-10": `${CIRCLE}, on a cone`,
  "bnk-11": CIRCLE,
  "d3-04": SPACE,
  "d3-06": SPACE,
  "sling-01 (three legs)": SPACE,
  "g-01": GRAVITY,
  "glat-01": GRAVITY,
  "glat-05": `${CIRCLE}: the weight on a turning Earth`,
};
