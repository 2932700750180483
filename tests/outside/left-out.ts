// Published cases of the same kinds that one body on one or two ropes cannot express.

/** Cases of the same kinds that this model cannot express, with the reason. */
export const LEFT_OUT: Readonly<Record<string, string>> = {
  "hang-04": "the mass is wanted, and the second answer needs a second body (the scale)",
  "hor-03": "a spring: its length is wanted",
  "knot-06": "several knots, and an angle is wanted",
  "lift-01": "a normal force, not a rope",
  "lift-04": "a normal force, and the mass is wanted",
  "lift-07": "a normal force, not a rope",
  "lift-09": "a normal force, not a rope",
  "lift-10": "the acceleration is wanted",
  "sling-01 (three legs)": "three legs are not in one plane",
};
