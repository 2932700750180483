// The ids of all published cases that were gathered, so that none of them is forgotten.

/** Every id, in the order of the list. */
export const REFERENCE_IDS: readonly string[] = (
  "hang-03 hang-04 two-01 two-03 two-04 two-09 two-12 two-15 two-17 sym-02 sym-04 sym-06 sym-08 " +
  "sym-09 sym-11 hor-01 hor-03 hor-04 hor-08 hor-09 knot-01 knot-06 lift-01 lift-03 lift-04 " +
  "lift-06 lift-07 lift-09 lift-10 pend-01 pend-04 inc-01 inc-03 inc-04 inc-07 inc-09 hold-01 " +
  "hold-03 hold-04 frl-02 frl-04 frl-05 frl-07 frl-08 frl-11 fri-01 fri-03 fri-04 fri-06 fri-07 " +
  "fri-09 atw-01 atw-03 atw-04 tab-01 tab-03 tab-04 tab-06 ich-01 ich-03 ich-04 ich-06 psh-01 " +
  "psh-03 psh-04 psh-06 psh-08 bnk-01 bnk-03 bnk-04 bnk-07 bnk-08 bnk-10 bnk-11 d3-04 d3-06 pul-01 " +
  "pul-03 pul-04 pul-06 sling-01 g-01 glat-01 glat-05"
).split(" ");
