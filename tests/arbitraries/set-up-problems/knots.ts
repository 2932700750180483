// Ropes that meet in knots, and strings of lanterns.
import fc from "fast-check";
import type { DirectionDocument, RopeDocument } from "../../../shared/problem/index.ts";
import { amounts, anyDirection, direction, DOWN, inclines, overhead, RIGHT, sizes } from "./parts.ts";
import type { Plan, Shape } from "./parts.ts";

/** A knot on two ropes, a lantern below it. */
export const oneKnot: fc.Arbitrary<Plan> = fc
  .record({
    amount: amounts,
    left: inclines,
    right: fc.oneof(
      { weight: 3, arbitrary: inclines.map((i) => direction(i)) },
      { weight: 1, arbitrary: anyDirection },
    ),
  })
  .map(({ amount, left, right }) => ({
    bodies: [
      { id: "k1", kind: "knot" },
      { id: "lantern", amount },
    ],
    ropes: [
      { id: "T1", on: "k1", direction: direction(left, "up", "left") },
      { id: "T2", on: "k1", direction: right },
      { id: "T3", on: "k1", direction: DOWN, to: "lantern" },
    ],
  }));

/**
 * Two to four knots: the first one holds a lantern, each hangs on a rope to a support and is pulled aside by another one, which goes on to
 * the next knot; the last one's goes to a support.
 */
export const knots: fc.Arbitrary<Plan> = fc
  .tuple(
    amounts,
    fc.oneof(
      { weight: 12, arbitrary: fc.tuple(meeting(), meeting()) },
      { weight: 6, arbitrary: fc.tuple(meeting(), meeting(), meeting()) },
      { weight: 1, arbitrary: fc.tuple(meeting(), meeting(), meeting(), meeting()) },
    ),
    fc.boolean(),
  )
  .map(([amount, given, ordered]) => {
    // Ropes that go on less and less steeply are in balance.
    const steep = (a: { readonly aside: DirectionDocument }): number => Number("angle" in a.aside ? a.aside.angle : 0);
    const list = ordered ? [...given].sort((a, b) => steep(b) - steep(a)) : given;
    const bodies: Shape[] = [{ id: "lantern", amount }];
    const ropes: RopeDocument[] = [{ id: "T", on: "k1", direction: DOWN, to: "lantern" }];
    list.forEach(({ held, aside }, i) => {
      const knot = `k${i + 1}`;
      const last = i === list.length - 1;
      bodies.push({ id: knot, kind: "knot" });
      ropes.push(
        { id: `A${i + 1}`, on: knot, direction: held },
        { id: `B${i + 1}`, on: knot, direction: aside, ...(last ? {} : { to: `k${i + 2}` }) },
      );
    });
    return { bodies, ropes };
  });

/** The two ropes of a knot: mostly up to the left and aside to the right, so that they can be in balance. */
function meeting(): fc.Arbitrary<{ readonly held: DirectionDocument; readonly aside: DirectionDocument }> {
  return fc.oneof(
    {
      weight: 6,
      arbitrary: fc.tuple(inclines, fc.integer({ min: -60, max: 60 })).map(([held, angle]) => ({
        held: direction(held, "up", "left"),
        aside: { angle },
      })),
    },
    { weight: 1, arbitrary: fc.record({ held: overhead, aside: anyDirection }) },
  );
}

/**
 * A string of two to five lanterns between two supports. Its ropes are given by run and rise, so that it is in balance: with the same level
 * pull everywhere, each lantern takes away from the rise in proportion to its mass.
 */
export const string: fc.Arbitrary<Plan> = fc
  .record({
    amounts: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 5 }),
    run: fc.constantFrom(2, 5, 8, 12),
    start: fc.integer({ min: -3, max: 14 }),
    off: fc.constantFrom(0, 0, 0, 1),
  })
  .map(({ amounts: masses, run, start, off }) => {
    const ropes: RopeDocument[] = [{ id: "T1", on: "l1", direction: { run: -run, rise: start } }];
    let rise = start;
    masses.forEach((mass, i) => {
      rise -= mass;
      const last = i === masses.length - 1;
      // Towards the next lantern on the right; now and then a string that cannot be in balance.
      const way: DirectionDocument = { run, rise: -rise + (last ? off : 0) };
      ropes.push({ id: `T${i + 2}`, on: `l${i + 1}`, direction: way, ...(last ? {} : { to: `l${i + 2}` }) });
    });
    return { bodies: masses.map((amount, i) => ({ id: `l${i + 1}`, amount })), ropes };
  });

/** Two lanterns at places, a rope between them, and the level pull that keeps them there. */
export const stringByPlaces: fc.Arbitrary<Plan> = fc
  .record({
    amounts: fc.tuple(amounts, amounts),
    drop: fc.integer({ min: 1, max: 5 }),
    span: fc.integer({ min: 1, max: 6 }),
    pulled: fc.boolean(),
    size: sizes,
  })
  .map(({ amounts: [first, second], drop, span, pulled, size }) => ({
    bodies: [
      { id: "lantern", amount: first, at: { x: 0, y: 0 } },
      { id: "bell", amount: second, at: { x: span, y: -drop } },
    ],
    ropes: [
      { id: "T1", on: "lantern", anchor: { x: -1, y: 4 } },
      { id: "T2", on: "lantern", to: "bell" },
    ],
    pushes: [
      { id: "P1", on: "lantern", direction: RIGHT },
      { id: "P2", on: "bell", direction: RIGHT, ...(pulled ? { size } : {}) },
    ],
  }));
