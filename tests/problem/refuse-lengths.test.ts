import { expect, test } from "vitest";
import { toldOf } from "./lantern.ts";
import { at, bell, document, knot, lantern, roped, surfaced, up } from "./small-set-ups.ts";

const accepted = "a length only where one load at rest hangs on one or two ropes that all have an anchor and a length";

test.each([
  [
    "a length beside a rope without",
    roped(
      [lantern()],
      { id: "T1", on: "lantern", anchor: at(1, 2), length: 3 },
      { id: "T2", on: "lantern", direction: up },
    ),
    'a length together with the rope "T2", which has none',
  ],
  [
    "three lengths",
    roped(
      [lantern()],
      { id: "T1", on: "lantern", anchor: at(1, 2), length: 3 },
      { id: "T2", on: "lantern", anchor: at(0, 2), length: 3 },
      { id: "T3", on: "lantern", anchor: at(3, 2), length: 3 },
    ),
    "a length together with 3 ropes",
  ],
  [
    "a length among several bodies",
    roped([lantern(), bell()], { id: "T1", on: "lantern", anchor: at(1, 2), length: 3 }),
    "a length together with several bodies",
  ],
  [
    "a length for a body that speeds up",
    roped([lantern({ acceleration: { y: 1 } })], { id: "T1", on: "lantern", anchor: at(1, 2), length: 3 }),
    "a length together with a body that moves",
  ],
  [
    "a length for a body on a line",
    roped([lantern({ motion: { along: up } })], { id: "T1", on: "lantern", anchor: at(1, 2), length: 3 }),
    "a length together with a body that moves",
  ],
  [
    "a length in a cart",
    document({ frame: { x: 1 }, ropes: [{ id: "T1", on: "lantern", anchor: at(1, 2), length: 3 }] }),
    "a length together with supports that speed up",
  ],
  [
    "a length beside a push",
    document({
      ropes: [{ id: "T1", on: "lantern", anchor: at(1, 2), length: 3 }],
      pushes: [{ id: "P", on: "lantern", direction: up }],
    }),
    "a length together with a push",
  ],
  [
    "a length beside a surface",
    surfaced({}, { ropes: [{ id: "T1", on: "lantern", anchor: at(1, 2), length: 3 }] }),
    "a length together with a surface",
  ],
  [
    "a length for a knot",
    roped([knot()], { id: "T1", on: "k1", anchor: at(1, 2), length: 3 }),
    "a length together with a knot",
  ],
])("%s is refused: a length says where a body hangs, and nothing else may", (_, data, found) => {
  expect(toldOf(data)).toEqual([{ path: "/ropes/0/length", found, accepted }]);
});
