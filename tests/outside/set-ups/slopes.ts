// Published values: one body on a slope, smooth or rough, let go, held or hauled.
import type { BodyDocument, DirectionDocument, ProblemDocument, PushDocument } from "../../../shared/problem/index.ts";
import { BANSAL, BUECHE, NCERT, OPENSTAX, companion, follows, openstax, prints, written } from "./case.ts";
import type { SetUpCase } from "./case.ts";

/** One body on a slope that rises to the right. */
const on = (
  slope: DirectionDocument,
  body: Omit<BodyDocument, "id">,
  more: Omit<Partial<ProblemDocument>, "surfaces" | "bodies"> & {
    readonly friction?: { readonly static?: number; readonly kinetic?: number };
  } = {},
): ProblemDocument => {
  const { friction, ...rest } = more;
  return {
    format: 1,
    gravity: 9.8,
    bodies: [{ id: "sledge", ...body }],
    surfaces: [{ id: "N", on: "sledge", slope, ...(friction === undefined ? {} : { friction }) }],
    ...rest,
  };
};
const up = (angle: number): DirectionDocument => ({ angle });
const down = (angle: number): DirectionDocument => ({ angle: angle - 180 });
const push = (id: string, direction: DirectionDocument, size?: number | string): PushDocument => ({
  id,
  on: "sledge",
  direction,
  ...(size === undefined ? {} : { size }),
});
const THREE_FOUR_FIVE: DirectionDocument = { run: 4, rise: 3 };

/** Smooth slopes. */
const SMOOTH: readonly SetUpCase[] = [
  {
    id: "inc-01",
    source: `${OPENSTAX}, Example 5.12; down the slope is positive; the given friction of 45.0 N stands as a push`,
    grade: "A",
    locator: openstax("m58300", "fs-id1165036775239"),
    documents: [
      on(up(25), { mass: 60, motion: { along: down(25) } }),
      on(up(25), { mass: 60, motion: { along: down(25) } }, { pushes: [push("P", up(25), 45)] }),
    ],
    found: [prints("a1", 4.14, 3), prints("a1", 3.39, 3, 1)],
  },
  {
    id: "inc-03",
    source: `${OPENSTAX}, Ch. 5 problem 67; nothing is said of the motion, so up the slope is positive`,
    grade: "A",
    locator: openstax("m58300", "fs-id1165038364528"),
    documents: [on(up(30), { mass: 2 }), on(up(30), { mass: 2 }, { pushes: [push("P", up(30))] })],
    found: [prints("a1", -4.9, 2), prints("N", 17, 2), prints("P", 9.8, 2, 1)],
  },
  {
    id: "inc-04",
    source: `${OPENSTAX}, Check Your Understanding 5.8; the given friction of 120 N stands as a push`,
    grade: "A",
    locator: openstax("m58300", "fs-id1165037982849"),
    documents: [
      on(up(17), { mass: 250 }, { pushes: [push("F", up(17), 1150)] }),
      on(up(17), { mass: 250 }, { pushes: [push("F", up(17), 1150), push("R", down(17), 120)] }),
    ],
    found: [prints("a1", 1.7, 2), prints("a1", 1.3, 2, 1)],
  },
  {
    id: "inc-07",
    source: "Calculus Volume 3, OpenStax (Strang, Herman), online edition as of 2026, sect. 2.1 exercise 57",
    grade: "A",
    locator: "openstax/osbooks-calculus-bundle @8dbc2ce modules/m53900 #fs-id1167793546872",
    documents: [on(up(30), { weight: 1500 }, { units: "lbf-ft", gravity: 32.2, pushes: [push("P", up(30))] })],
    found: [prints("P", 750, 3), prints("N", 1299, 4)],
  },
  {
    id: "inc-09",
    source: "Precalculus 2e / Algebra and Trigonometry 2e, OpenStax (Abramson), review exercise on a 50-pound object",
    grade: "A",
    locator: "openstax/osbooks-college-algebra-bundle @789b540 modules/m49412 #fs-id1165134183770",
    documents: [on(up(19), { weight: 50 }, { units: "lbf-ft", gravity: 32.2, pushes: [push("P", up(19))] })],
    found: [prints("P", 16.28, 4), prints("N", 47.28, 4)],
  },
  {
    id: "hold-01",
    source:
      "Beer, Johnston, Mazurek, Cornwell, Eisenberg, Vector Mechanics for Engineers, 9th ed. (McGraw-Hill), Sample Problem 2.5, p. 39; the smallest force, so along the slope",
    grade: "B",
    locator: companion(
      "Vector_Mechanics_for_Engineers:_Stastics_And_Dynamics_by_F._P._Beer,_E._R._Johnston,_D._F._Mazurek,_P._J._Cornwell_And_E._R._Eisenberg/ch2_1.ipynb",
    ),
    documents: [on(up(15), { mass: 30 }, { gravity: 9.81, ropes: [{ id: "T", on: "sledge", direction: up(15) }] })],
    found: [prints("T", 76.17, 4)],
  },
];

/** Rough slopes. */
const ROUGH: readonly SetUpCase[] = [
  {
    id: "hold-03",
    source: `${BUECHE}, Example 4.10, p. 159; hauled up at constant speed, sine 0.6 and cosine 0.8`,
    grade: "B",
    locator: companion("Principles_of_Physics_by_F.J.Bueche/Chapter4_2.ipynb"),
    documents: [
      on(
        THREE_FOUR_FIVE,
        { mass: 50, motion: { along: THREE_FOUR_FIVE, acceleration: 0, going: "forwards" } },
        { friction: { kinetic: 0.7 }, ropes: [{ id: "T", on: "sledge", direction: THREE_FOUR_FIVE }] },
      ),
    ],
    found: [prints("T", 568, 3)],
    states: { N: "slides forwards" },
  },
  {
    id: "hold-04",
    source: `${OPENSTAX}, Ch. 6 additional problem 97; the friction found from the motion up acts the other way on the motion down`,
    grade: "A",
    locator: openstax("m58306", "fs-id1165039109864"),
    documents: [
      on(
        up(40),
        { mass: 3, motion: { along: up(40), acceleration: 0 } },
        { pushes: [push("F", up(40), 26), push("R", down(40))] },
      ),
      (answer) =>
        on(
          up(40),
          { mass: 3, motion: { along: down(40), acceleration: 0 } },
          { pushes: [push("R", up(40), written(answer("R"))), push("F", up(40))] },
        ),
    ],
    found: [prints("F", 12, 2, 1)],
  },
  {
    id: "fri-01",
    source: `${OPENSTAX}, Example 6.11 (same in College Physics 2e, Example 5.1); the given friction of 45.0 N stands as a push, μ follows as 45.0/N`,
    grade: "A",
    locator: openstax("m58304", "fs-id1165037861524"),
    documents: [on(up(25), { mass: 62 }, { pushes: [push("R", up(25), 45)] })],
    found: [follows("45/N", (a) => 45 / a("N"), 0.082, 2)],
  },
  {
    id: "fri-03",
    source: `${OPENSTAX}, Check Your Understanding 6.8; moving down, which is positive`,
    grade: "A",
    locator: openstax("m58304", "fs-id1165038305013"),
    documents: [
      on(up(10), { mass: 60, motion: { along: down(10), going: "forwards" } }, { friction: { kinetic: 0.2 } }),
    ],
    found: [prints("a1", -0.23, 2)],
  },
  {
    id: "fri-04",
    source: `${OPENSTAX}, Ch. 6 problem 55(a)`,
    grade: "A",
    locator: openstax("m58304", "fs-id1165037987755"),
    documents: [
      on(up(10), { mass: 1, motion: { along: down(10), going: "forwards" } }, { friction: { kinetic: 0.1 } }),
      on(up(10), { mass: 25 }, { friction: { kinetic: 0.1 } }),
    ],
    found: [prints("a1", 0.737, 3), prints("a1", -0.737, 3, 1)],
  },
  {
    id: "fri-06",
    source:
      "Introductory Physics: Building Models to Describe Our World (Martin, Neary, Rinaldo, Woodman), ch. Newton's laws, sample problem; from rest over 40 m",
    grade: "A",
    locator: "OSTP/PhysicsArtofModelling @6dcfba1 tex/NewtonsLaws.tex",
    documents: [on(up(50), { mass: 70, motion: { along: down(50) } }, { friction: { kinetic: 0.45 } })],
    found: [prints("a1", 4.67, 3), follows("√(2·40/a)", (a) => Math.sqrt(80 / a("a1")), 4.14, 3)],
  },
  {
    id: "fri-07",
    source: `${NCERT}, Example 5.8, p. 102; it just slips, so μ = f/N while it still sticks`,
    grade: "B",
    locator: companion("Physics_Textbook_Part-I_for_class_XI_by_NCERT_by_Chief_Editor_-_Naresh_Yadav/Chapter5_3.ipynb"),
    documents: [on(up(15), { mass: 1 }, { friction: { static: 1 } })],
    found: [follows("f/N", (a) => Math.abs(a("f")) / a("N"), 0.27, 2)],
    states: { N: "stuck" },
  },
  {
    id: "fri-09",
    source: `${BANSAL}, Example 8.11, p. 241; a push up the slope that just moves it, so μ = f/N while it still sticks`,
    grade: "B",
    locator: companion("Engineering_Mechanics_by_R.K_Bansal/chapter_8.ipynb"),
    documents: [on(up(30), { weight: 500 }, { friction: { static: 1 }, pushes: [push("P", up(30), 350)] })],
    found: [follows("f/N", (a) => Math.abs(a("f")) / a("N"), 0.23, 2)],
    states: { N: "stuck" },
  },
];

/** One body on a slope. */
export const SLOPES: readonly SetUpCase[] = [...SMOOTH, ...ROUGH];
