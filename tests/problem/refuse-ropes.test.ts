import { expect, test } from "vitest";
import { toldOf } from "./lantern.ts";
import { angle, at, bell, block, document, lantern, roped, up } from "./small-set-ups.ts";

test.each([
  ["a rope on nothing", roped([lantern()], { id: "T" }), "/ropes/0/on", "nothing", "the id of a body"],
  [
    "a rope without a direction",
    roped([lantern()], { id: "T", on: "lantern" }),
    "/ropes/0/direction",
    "nothing",
    'a direction: { "angle" }, { "run", "rise" } or { "angle", "from": "vertical", "side": "left" or "right" }',
  ],
  [
    "an empty rope",
    roped([lantern()], {}),
    "/ropes/0",
    "an object without keys",
    'a rope: { "id", "on", "direction", "to" }, { "id", "on", "anchor", "length" } or { "id", "pulls" }',
  ],
  [
    "a rope of strange keys",
    roped([lantern()], { colour: "red" }),
    "/ropes/0",
    'an object with the keys "colour"',
    'a rope: { "id", "on", "direction", "to" }, { "id", "on", "anchor", "length" } or { "id", "pulls" }',
  ],
  [
    "a rope in a word",
    document({ ropes: ["T"] }),
    "/ropes/0",
    '"T"',
    'a rope: { "id", "on", "direction", "to" }, { "id", "on", "anchor", "length" } or { "id", "pulls" }',
  ],
  [
    "a direction beside an anchor",
    roped([lantern({ at: at(0, 0) })], { id: "T", on: "lantern", direction: up, anchor: at(0, 2) }),
    "/ropes/0/anchor",
    'the unknown key "anchor"',
    "only the keys id, on, direction, to",
  ],
  [
    "a direction beside a length",
    roped([lantern()], { id: "T", on: "lantern", direction: up, length: 2 }),
    "/ropes/0/length",
    'the unknown key "length"',
    "only the keys id, on, direction, to",
  ],
  [
    "pulls beside another body",
    roped([lantern(), bell()], { id: "T", pulls: [{ on: "lantern", direction: up }], to: "bell" }),
    "/ropes/0/to",
    'the unknown key "to"',
    "only the keys id, pulls",
  ],
  [
    "a rope that pulls nowhere",
    roped([lantern()], { id: "T", pulls: [] }),
    "/ropes/0/pulls",
    "an empty list",
    "a list of 1 to 12 pulls",
  ],
  [
    "a pull on nothing",
    roped([lantern()], {
      id: "T",
      pulls: [
        { on: "lantern", direction: up },
        { on: "bucket", direction: up },
      ],
    }),
    "/ropes/0/pulls/1/on",
    '"bucket"',
    'the id of a body: "lantern"',
  ],
  [
    "a pull beyond a turn",
    roped([lantern()], { id: "T", pulls: [{ on: "lantern", direction: { angle: 400 } }] }),
    "/ropes/0/pulls/0/direction/angle",
    "400",
    "a number from -360 to 360 (degrees)",
  ],
  [
    "a rope round a load",
    roped([lantern()], {
      id: "T",
      pulls: [
        { on: "lantern", direction: up },
        { on: "lantern", direction: angle(80) },
      ],
    }),
    "/ropes/0/pulls/1/on",
    '"lantern" twice in a row, which is no pulley',
    'another body; or a body of the kind "pulley"',
  ],
  [
    "a rope straight past a pulley",
    roped([block(), lantern()], {
      id: "T",
      pulls: [
        { on: "block", direction: up },
        { on: "block", direction: angle(-90) },
        { on: "lantern", direction: up },
      ],
    }),
    "/ropes/0/pulls/1/direction",
    "the opposite of the pull before it on the same pulley",
    "a direction in which the rope runs round the pulley",
  ],
  [
    "a rope to nothing",
    roped([lantern()], { id: "T", on: "lantern", direction: up, to: "bucket" }),
    "/ropes/0/to",
    '"bucket"',
    'the id of a body: "lantern"',
  ],
  [
    "a rope to its own body",
    roped([lantern()], { id: "T", on: "lantern", direction: up, to: "lantern" }),
    "/ropes/0",
    'a rope from "lantern" straight to "lantern"',
    "a rope to another body or to a support",
  ],
  [
    "a rope between bodies without places",
    roped([lantern(), bell()], { id: "T", on: "lantern", to: "bell" }),
    "/ropes/0",
    "neither a direction nor both places",
    'a direction; or "at" of both "lantern" and "bell"',
  ],
  [
    "a rope between bodies of which one has a place",
    roped([lantern({ at: at(0, 0) }), bell()], { id: "T", on: "lantern", to: "bell" }),
    "/ropes/0",
    "neither a direction nor both places",
    'a direction; or "at" of both "lantern" and "bell"',
  ],
  [
    "a direction beside two places",
    roped([lantern({ at: at(0, 0) }), bell({ at: at(3, 4) })], {
      id: "T",
      on: "lantern",
      direction: angle(50),
      to: "bell",
    }),
    "/ropes/0/direction",
    "a direction beside two places",
    '"to" without a direction, because both bodies have places ("at")',
  ],
  [
    "a rope between bodies at one place",
    roped([lantern({ at: at(1, 2) }), bell({ at: at(1, 2) })], { id: "T", on: "lantern", to: "bell" }),
    "/ropes/0/to",
    '"bell", which is at the same place as "lantern"',
    "a body at another place",
  ],
  [
    "an anchor at the body",
    roped([lantern({ at: at(1, 2) })], { id: "T", on: "lantern", anchor: at(1, 2) }),
    "/ropes/0/anchor",
    'the place of "lantern" itself',
    'a place other than that of "lantern"',
  ],
  [
    "an anchor for a body without a place",
    roped([lantern()], { id: "T", on: "lantern", anchor: at(1, 2) }),
    "/ropes/0/anchor",
    'an anchor, while "lantern" has no place',
    'a length as well, where "lantern" hangs freely; or "at", the place of "lantern"',
  ],
  [
    "an anchor for nothing",
    roped([lantern()], { id: "T", on: "bucket", anchor: at(1, 2) }),
    "/ropes/0/on",
    '"bucket"',
    'the id of a body: "lantern"',
  ],
  [
    "a length for a body with a place",
    roped([lantern({ at: at(0, 0) })], { id: "T", on: "lantern", anchor: at(1, 2), length: 3 }),
    "/ropes/0/length",
    'a length, while "lantern" has a place',
    'no length, because "at" of "lantern" and the anchor give it; or no "at", where "lantern" hangs freely',
  ],
  [
    "a rope of no length",
    roped([lantern()], { id: "T", on: "lantern", anchor: at(1, 2), length: 0 }),
    "/ropes/0/length",
    "0",
    "a number from 0.000000001 to 1000000000 (m, or ft)",
  ],
])("%s is refused, with where, what was found and what is accepted", (_, data, path, found, accepted) => {
  expect(toldOf(data)[0]).toEqual({ path, found, accepted });
  expect(toldOf(data)).toHaveLength(1);
});
