// Things that hang at rest, or that are carried along: on one rope, two, three, by places, by lengths.
import fc from "fast-check";
import type { DirectionDocument, PlaceDocument, RopeDocument } from "../../../shared/problem/index.ts";
import { accelerations, amounts, anyDirection, direction, goings, inclines, overhead, sizes, UP } from "./parts.ts";
import type { Plan, Shape } from "./parts.ts";

const lantern = (amount: Shape["amount"]): Shape => ({
  id: "lantern",
  name: "brass lantern",
  ...(amount === undefined ? {} : { amount }),
});
const ropesAlong = (ways: readonly DirectionDocument[]): RopeDocument[] =>
  ways.map((way, i) => ({ id: `T${i + 1}`, on: "lantern", direction: way }));

/** A lantern on one rope, mostly straight up, from a support that may speed up; or one that may move along a line. */
export const oneRope: fc.Arbitrary<Plan> = fc
  .record({
    amount: fc.oneof({ weight: 12, arbitrary: amounts }, { weight: 1, arbitrary: fc.constant(0) }),
    way: fc.oneof({ weight: 3, arbitrary: fc.constant(UP) }, { weight: 1, arbitrary: anyDirection }),
    y: accelerations,
    how: fc.constantFrom("frame", "line", "own"),
    going: goings,
  })
  .map(({ amount, way, y, how, going }): Plan => {
    const body = lantern(amount);
    const ropes = ropesAlong([way]);
    if (how === "own") return { bodies: [{ ...body, acceleration: { y } }], ropes };
    if (how === "line") return { bodies: [{ ...body, motion: { along: UP, ...going } }], ropes };
    return { frame: { y }, bodies: [body], ropes };
  });

/** A lantern on two ropes to supports that may speed up: overhead, level or falling. */
export const twoRopes: fc.Arbitrary<Plan> = fc
  .record({
    amount: amounts,
    ways: fc.oneof(
      {
        weight: 3,
        arbitrary: fc.tuple(inclines, inclines).map(([a, b]) => [direction(a, "up", "left"), direction(b)]),
      },
      { weight: 1, arbitrary: fc.tuple(overhead, anyDirection) },
      { weight: 1, arbitrary: fc.tuple(anyDirection, anyDirection) },
    ),
    x: accelerations,
    y: accelerations,
  })
  .map(({ amount, ways, x, y }) => ({ frame: { x, y }, bodies: [lantern(amount)], ropes: ropesAlong(ways) }));

/** A lantern on three ropes: what each of them carries stays open, or none has to push. */
export const threeRopes: fc.Arbitrary<Plan> = fc
  .record({ amount: amounts, ways: fc.tuple(overhead, overhead, anyDirection), y: accelerations })
  .map(({ amount, ways, y }) => ({ frame: { y }, bodies: [lantern(amount)], ropes: ropesAlong(ways) }));

/** A lantern on a rope and held aside by a push of unknown size, or two ropes and a push of given size. */
export const heldAside: fc.Arbitrary<Plan> = fc
  .record({ amount: amounts, first: overhead, second: overhead, push: anyDirection, size: sizes, open: fc.boolean() })
  .map(({ amount, first, second, push, size, open }) => ({
    bodies: [lantern(amount)],
    ropes: ropesAlong(open ? [first] : [first, second]),
    pushes: [{ id: "P", on: "lantern", direction: push, ...(open ? {} : { size }) }],
  }));

const places = (least: number, most: number): fc.Arbitrary<PlaceDocument> =>
  fc.record({ x: fc.integer({ min: -6, max: 6 }), y: fc.integer({ min: least, max: most }) });

/** A lantern at a place on one to three ropes that are tied to places. */
export const byPlaces: fc.Arbitrary<Plan> = fc
  .record({
    amount: amounts,
    at: fc.record({ x: fc.constantFrom(0, "1/2", 0.25), y: fc.constantFrom(0, "-1/3", 0.5) }),
    anchors: fc.oneof(
      { weight: 5, arbitrary: fc.array(places(1, 6), { minLength: 2, maxLength: 2 }) },
      { weight: 1, arbitrary: fc.array(places(-2, 6), { minLength: 1, maxLength: 3 }) },
    ),
  })
  .filter(({ at, anchors }) => anchors.every((a) => a.x !== at.x || a.y !== at.y))
  .map(({ amount, at, anchors }) => ({
    bodies: [{ ...lantern(amount), at }],
    ropes: anchors.map((anchor, i): RopeDocument => ({ id: `T${i + 1}`, on: "lantern", anchor })),
  }));

/** A lantern that hangs where one or two ropes of given lengths let it. */
export const byLengths: fc.Arbitrary<Plan> = fc
  .record({
    amount: amounts,
    anchors: fc.array(places(2, 5), { minLength: 1, maxLength: 2 }),
    lengths: fc.tuple(
      fc.oneof(fc.integer({ min: 1, max: 13 }), fc.constantFrom(2.5, 5, "7/2", 0.1)),
      fc.oneof(fc.integer({ min: 1, max: 13 }), fc.constantFrom(2.5, 5, "9/4", 0.1)),
    ),
  })
  .map(({ amount, anchors, lengths }) => ({
    bodies: [lantern(amount)],
    ropes: anchors.map((anchor, i): RopeDocument => ({
      id: `T${i + 1}`,
      on: "lantern",
      anchor,
      length: lengths[i] ?? 1,
    })),
  }));
