// Published cases of the same kinds that one body on one or two ropes cannot express.

/** Cases of the same kinds that this model cannot express, with the reason. */
export const LEFT_OUT: Readonly<Record<string, string>> = {
  "hang-04": "the mass is wanted, and the second answer needs a second body (the scale)",
  "sym-03": "the sag angle follows from lengths that are given; angles cannot yet be given by lengths",
  "sym-08": "four strings over a bridge: the pull is given and a deflecting force wanted",
  "hor-03": "a spring: its length is wanted",
  "hor-08": "the angle is wanted",
  "hor-09": "the angle is wanted",
  "knot-01 (knot 2)": "a second knot, joined to the first by a rope",
  "knot-06": "several knots, and an angle is wanted",
  "lift-01": "a normal force, not a rope",
  "lift-04": "a normal force, and the mass is wanted",
  "lift-07": "a normal force, not a rope",
  "lift-09": "a normal force, not a rope",
  "lift-10": "the acceleration is wanted",
  "pend-01": "the acceleration is wanted",
  "pend-04": "circular motion",
  "sling-01 (three legs)": "three legs are not in one plane",
};
