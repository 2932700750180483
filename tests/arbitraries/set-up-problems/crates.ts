// Several crates: on top of each other, side by side, in a row on ropes.
import fc from "fast-check";
import type { RopeDocument, SurfaceDocument } from "../../../shared/problem/index.ts";
import { accelerations, amounts, direction, frictions, inclines, LEFT, RIGHT, rough, sizes } from "./parts.ts";
import type { Plan, Shape } from "./parts.ts";

const ids = (count: number): string[] => Array.from({ length: count }, (_, i) => `crate${i + 1}`);

/** Two or three crates on top of each other on the ground or a slope; one of them pushed. */
export const stacked: fc.Arbitrary<Plan> = fc
  .record({
    crates: fc.array(fc.record({ amount: amounts, friction: frictions }), { minLength: 2, maxLength: 3 }),
    incline: fc.option(inclines, { nil: null, freq: 3 }),
    pushed: fc.integer({ min: 1, max: 3 }),
    way: fc.constantFrom(RIGHT, LEFT),
    size: sizes,
  })
  .map(({ crates, incline, pushed, way, size }) => {
    const along = incline === null ? RIGHT : direction(incline);
    return {
      bodies: crates.map(({ amount }, i) => ({ id: `crate${i + 1}`, amount })),
      surfaces: crates.map(({ friction }, i): SurfaceDocument => ({
        id: `N${i + 1}`,
        on: `crate${i + 1}`,
        ...(i === 0 ? {} : { of: `crate${i}` }),
        slope: along,
        ...friction,
      })),
      pushes: [{ id: "P", on: `crate${Math.min(pushed, crates.length)}`, direction: way, size }],
    };
  });

/** A crate tied to a wall, on another one that is pulled out from under it. */
export const pulledOut: fc.Arbitrary<Plan> = fc
  .record({
    high: amounts,
    low: amounts,
    between: rough,
    below: frictions,
    acceleration: accelerations,
    known: fc.boolean(),
    size: sizes,
  })
  .map(({ high, low, between, below, acceleration, known, size }) => ({
    bodies: [
      { id: "high", amount: high },
      { id: "low", amount: low, motion: { along: RIGHT, going: "forwards", ...(known ? { acceleration } : {}) } },
    ],
    ropes: [{ id: "T", on: "high", direction: LEFT }],
    surfaces: [
      { id: "N1", on: "high", of: "low", slope: RIGHT, ...between },
      { id: "N2", on: "low", slope: RIGHT, ...below },
    ],
    pushes: [{ id: "P", on: "low", direction: RIGHT, ...(known ? {} : { size }) }],
  }));

/** Two or three crates side by side on the ground or a slope, the first one pushed against the others. */
export const sideBySide: fc.Arbitrary<Plan> = fc
  .record({
    crates: fc.array(amounts, { minLength: 2, maxLength: 3 }),
    friction: frictions,
    incline: fc.option(inclines, { nil: null, freq: 2 }),
    size: sizes,
  })
  .map(({ crates, friction, incline, size }) => {
    const along = incline === null ? RIGHT : direction(incline);
    const names = ids(crates.length);
    return {
      bodies: crates.map((amount, i): Shape => ({ id: names[i] ?? "", amount })),
      surfaces: [
        ...names.map((on, i): SurfaceDocument => ({ id: `N${i + 1}`, on, slope: along, ...friction })),
        ...names.slice(1).map((on, i): SurfaceDocument => ({ id: `C${i + 1}`, on, of: names[i], normal: along })),
      ],
      pushes: [{ id: "P", on: "crate1", direction: along, size }],
    };
  });

/** Two to four crates tied in a row on the ground or a slope, the last one pulled: by a given force, or at a given acceleration. */
export const inARow: fc.Arbitrary<Plan> = fc
  .record({
    crates: fc.oneof(
      { weight: 5, arbitrary: fc.array(amounts, { minLength: 2, maxLength: 3 }) },
      { weight: 1, arbitrary: fc.array(amounts, { minLength: 4, maxLength: 4 }) },
    ),
    friction: fc.oneof(fc.constant({}), frictions),
    incline: fc.option(inclines, { nil: null, freq: 2 }),
    how: fc.constantFrom("given", "at rest", "going"),
    acceleration: accelerations,
    size: sizes,
  })
  .map(({ crates: drawn, friction, incline, how, acceleration, size }) => {
    const along = incline === null ? RIGHT : direction(incline);
    // Four at rest could stick and slide in a thousand ways: two or three say as much.
    const crates = how === "at rest" ? drawn.slice(0, 3) : drawn;
    const names = ids(crates.length);
    const moves = how === "given" ? { acceleration, going: "forwards" as const } : { going: "forwards" as const };
    const motion = how === "at rest" ? {} : { motion: { along, ...moves } };
    return {
      bodies: crates.map((amount, i): Shape => ({ id: names[i] ?? "", amount, ...motion })),
      ropes: names
        .slice(1)
        .map((to, i): RopeDocument => ({ id: `T${i + 1}`, on: names[i] ?? "", direction: along, to })),
      surfaces: names.map((on, i): SurfaceDocument => ({ id: `N${i + 1}`, on, slope: along, ...friction })),
      pushes: [{ id: "P", on: names.at(-1) ?? "", direction: along, ...(how === "given" ? {} : { size }) }],
    };
  });
