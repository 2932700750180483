import { expect, test } from "vitest";
import { toldOf } from "./lantern.ts";
import { at, bell, block, document, knot, lantern, up } from "./small-set-ups.ts";

test.each([
  ["a third system of units", document({ units: "cgs" }), "/units", '"cgs"', '"SI" or "lbf-ft"'],
  ["a frame in a word", document({ frame: "lift" }), "/frame", '"lift"', "an object with the keys x, y"],
  [
    "a frame that speeds up too much",
    document({ frame: { y: 1e10 } }),
    "/frame/y",
    "10000000000",
    "a number from -1000000000 to 1000000000 (m/s², or ft/s²)",
  ],
  [
    "more bodies than a lesson needs",
    document({ bodies: Array.from({ length: 13 }, (_, n) => ({ id: `b${n}`, mass: 1 })) }),
    "/bodies",
    "a list of 13",
    "a list of 1 to 12 bodies",
  ],
  [
    "a fourth kind of body",
    document({ bodies: [lantern({ kind: "hook" })] }),
    "/bodies/0/kind",
    '"hook"',
    '"load", "knot" or "pulley"',
  ],
  [
    "a knot with a mass",
    document({ bodies: [knot({ mass: 2 })] }),
    "/bodies/0/mass",
    "2",
    "0 or nothing, because a knot has no mass",
  ],
  [
    "a knot with a weight",
    document({ bodies: [knot({ weight: 2 })] }),
    "/bodies/0/weight",
    "2",
    "nothing, because a knot has no weight",
  ],
  [
    "a pulley with mass and weight",
    document({ bodies: [block({ mass: 2, weight: 3 })] }),
    "/bodies/0",
    'an object with the keys "id", "kind", "mass", "weight"',
    "at most one of mass (kg, or slug) and weight (N, or lbf)",
  ],
  [
    "a load without either",
    document({ bodies: [{ id: "lantern", kind: "load" }] }),
    "/bodies/0",
    'an object with the keys "id", "kind"',
    "exactly one of mass (kg, or slug) and weight (N, or lbf)",
  ],
  [
    "an acceleration beside a motion",
    document({ bodies: [lantern({ acceleration: { x: 1 }, motion: "free" })] }),
    "/bodies/0",
    'an object with the keys "id", "mass", "acceleration", "motion"',
    "at most one of acceleration and motion",
  ],
  [
    "a motion in another word",
    document({ bodies: [lantern({ motion: "fixed" })] }),
    "/bodies/0/motion",
    '"fixed"',
    'what is known of the motion: "free", or { "along", "acceleration", "going", "seenFrom" }',
  ],
  [
    "a motion along nothing",
    document({ bodies: [lantern({ motion: { acceleration: 2 } })] }),
    "/bodies/0/motion/along",
    "nothing",
    'a direction: { "angle" }, { "run", "rise" } or { "angle", "from": "vertical", "side": "left" or "right" }',
  ],
  [
    "a third way of going",
    document({ bodies: [lantern({ motion: { along: up, going: "left" } })] }),
    "/bodies/0/motion/going",
    '"left"',
    '"forwards" or "backwards"',
  ],
  [
    "half a line",
    document({ bodies: [lantern({ motion: { along: { run: 1 } } })] }),
    "/bodies/0/motion/along/rise",
    "nothing",
    "a number from -1000000000 to 1000000000",
  ],
  [
    "a line to nowhere",
    document({ bodies: [lantern({ motion: { along: { run: 0, rise: 0 } } })] }),
    "/bodies/0/motion/along",
    "a run of 0 with a rise of 0",
    "a run and a rise that are not both 0",
  ],
  [
    "a motion seen from the body itself",
    document({ bodies: [lantern({ motion: { along: up, seenFrom: "lantern" } })] }),
    "/bodies/0/motion/seenFrom",
    '"lantern", the body itself',
    "the id of another body, of which there is none",
  ],
  [
    "a motion seen from nothing",
    document({ bodies: [lantern({ motion: { along: up, seenFrom: "cart" } })] }),
    "/bodies/0/motion/seenFrom",
    '"cart"',
    "the id of another body, of which there is none",
  ],
  [
    "two bodies seen from each other",
    document({
      bodies: [
        lantern({ motion: { along: up, seenFrom: "bell" } }),
        bell({ motion: { along: up, seenFrom: "lantern" } }),
      ],
    }),
    "/bodies/0/motion/seenFrom",
    '"bell", which is itself seen from "lantern"',
    "a body that is not seen from this one",
  ],
  [
    "half a place",
    document({ bodies: [lantern({ at: { x: 1 } })] }),
    "/bodies/0/at/y",
    "nothing",
    "a number from -1000000000 to 1000000000 (m, or ft)",
  ],
  [
    "a place far away",
    document({ bodies: [lantern({ at: at(2e9, 0) })] }),
    "/bodies/0/at/x",
    "2000000000",
    "a number from -1000000000 to 1000000000 (m, or ft)",
  ],
])("%s is refused, with where, what was found and what is accepted", (_, data, path, found, accepted) => {
  expect(toldOf(data)[0]).toEqual({ path, found, accepted });
  expect(toldOf(data).length).toBeLessThanOrEqual(2);
});
