// Published values: one rope, and two ropes at unequal angles.
import { BUECHE, HARTOG, STRAIGHT_UP, UNIVERSITY, two, up } from "./published-case.ts";
import type { PublishedCase } from "./published-case.ts";

/** One rope, and two at unequal angles. */
export const UNEQUAL: readonly PublishedCase[] = [
  {
    id: "hang-03",
    source: `${UNIVERSITY}, Ch. 5 problem 59(a)`,
    grade: "A",
    locator: "openstax/osbooks-university-physics-bundle @d0ed34a modules/m58300 #fs-id1165036763040",
    gravity: 9.8,
    mass: 2e-5,
    ropes: STRAIGHT_UP,
    printed: [{ rope: 0, value: 0.000196, figures: 3 }],
  },
  {
    id: "two-01",
    source: `${UNIVERSITY}, Example 6.1 (same numbers in College Physics 2e, Example 4.8)`,
    grade: "A",
    locator:
      "openstax/osbooks-university-physics-bundle @d0ed34a modules/m58303 #fs-id1165037164648 ; openstax/osbooks-college-physics-bundle @fd1b25d modules/m42132 #fs-id1348788",
    gravity: 9.8,
    mass: 15,
    ropes: up(30, 45),
    printed: two(108, 132, 3),
  },
  {
    id: "two-03",
    source: "Calculus Volume 3, OpenStax (Strang, Herman), online edition as of 2026, sect. 2.1 exercise 55",
    grade: "A",
    locator: "openstax/osbooks-calculus-bundle @8dbc2ce modules/m53900 #fs-id1167794098521",
    gravity: 9.8,
    weight: 50,
    ropes: up(40, 53),
    printed: two(30.13, 38.35, 4),
  },
  {
    id: "two-04",
    source: "APEX Calculus 4.0 (Hartman et al.), sect. 10.2, example on a weight hanging from two chains",
    grade: "A",
    locator: "APEXCalculus/APEXCalculusV4 @6120781 text/10_Vector_Introduction.tex (example ex_vect6)",
    gravity: 9.8,
    weight: 50,
    ropes: [
      { angle: 30, from: "vertical", side: "left" },
      { angle: 45, from: "vertical", side: "right" },
    ],
    printed: [
      { rope: 0, value: 36.6, figures: 3 },
      { rope: 1, value: 25.88, figures: 4 },
    ],
  },
  {
    id: "two-09",
    source: `${BUECHE}, Example 2.2, p. 41; 3-4-5 trigonometry as in the book`,
    grade: "B",
    locator: "FOSSEE/Python-Textbook-Companions @d34b2ae Principles_of_Physics_by_F.J.Bueche/Chapter2_2.ipynb",
    gravity: 9.8,
    weight: 400,
    ropes: [
      { run: -4, rise: 3 },
      { run: 3, rise: 4 },
    ],
    printed: two(240, 320, 2),
  },
  {
    id: "two-12",
    source:
      "R. K. Bansal, A Textbook of Engineering Mechanics (Laxmi Publications), Example 1.9, p. 18 (rope labels of the companion exchanged)",
    grade: "B",
    locator: "FOSSEE/Python-Textbook-Companions @d34b2ae Engineering_Mechanics_by_R.K_Bansal/chapter_1.ipynb",
    gravity: 9.8,
    weight: 15,
    ropes: up(60, 45),
    printed: [
      { rope: 0, value: 10.98, figures: 4 },
      { rope: 1, value: 7.76, figures: 3 },
    ],
  },
  {
    id: "two-15",
    source: `${HARTOG}, Problem 3, run from the middle weight to the end weights`,
    grade: "B",
    locator: "drdrang/mechanics @400dd56 src/problem003.md",
    gravity: 9.8,
    weight: 20,
    ropes: up(30, 60),
    printed: [
      { rope: 0, value: 10, figures: 2 },
      { rope: 1, value: 17.32, figures: 4 },
    ],
  },
  {
    id: "two-17",
    source:
      "R. C. Hibbeler and A. Gupta, Engineering Mechanics: Statics and Dynamics (11th-ed. Indian adaptation, Pearson), Example 3.3, p. 76, knot E; one rope leads down",
    grade: "B",
    locator:
      "FOSSEE/Python-Textbook-Companions @d34b2ae Engineering_Mechanics_Statics_and_Dynamics_by_Hibbeler_and_Gupta/Chapter_3_Equilibrium_of_a_Particle.ipynb",
    gravity: 9.8,
    weight: 20,
    ropes: [{ angle: 225 }, { angle: 30, from: "vertical", side: "right" }],
    printed: two(38.6, 54.6, 3),
  },
];
