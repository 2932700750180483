// Published values: a load that hangs askew in a vehicle, run from the printed acceleration. Two ropes lead up on the side the vehicle
// gains speed to, so that one is slack and the load settles on the other: its angle is then an answer and not an input.
import { UNIVERSITY } from "./published-case.ts";
import type { PublishedCase } from "./published-case.ts";

const ASIDE = [{ angle: 20 }, { angle: 40 }] as const;

/** Loads in vehicles. */
export const VEHICLES: readonly PublishedCase[] = [
  {
    id: "pend-01",
    source: `${UNIVERSITY}, Ch. 5 challenge problem 103`,
    grade: "A",
    locator: "openstax/osbooks-university-physics-bundle @d0ed34a modules/m58301 #fs-id1165039472401",
    gravity: 9.8,
    mass: 0.0502,
    ax: 0.548,
    ropes: ASIDE,
    printed: [],
    fromVertical: { value: 3.2, figures: 2 },
  },
  {
    id: "pend-04",
    source:
      "A. K. Tayal, Engineering Mechanics: Statics and Dynamics, 14th ed. (Umesh Publications, 2010), Example 15.21: a carriage at 42.27 km/h in a curve of 100 m, so v²/r = (42.27/3.6)²/100 = 1.37867 m/s² towards its middle",
    grade: "B",
    locator:
      "FOSSEE/Python-Textbook-Companions @d34b2ae Engineering_Mechanics_by_A._K._Tayal/Chapter_15_CURVILINEAR_MOTION_OF_A.ipynb",
    gravity: 9.81,
    weight: 1,
    ax: "1.37867",
    ropes: ASIDE,
    printed: [{ rope: 1, value: 1.0098, figures: 5 }],
    fromVertical: { value: 8, figures: 4 },
  },
];
