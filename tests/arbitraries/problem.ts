import fc from "fast-check";
import { rational } from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";
import { angleDirection, checkProblem, verticalDirection, ZERO_VECTOR } from "../../shared/problem/index.ts";
import type { Body, Direction, Problem, Rope } from "../../shared/problem/index.ts";

/** Decimals of up to six places between two whole numbers, and some fractions that never end. */
export function numbers(minimum: number, maximum: number): fc.Arbitrary<Rational> {
  const decimals = fc
    .tuple(fc.integer({ min: minimum, max: maximum - 1 }), fc.integer({ min: 0, max: 6 }), fc.nat(999_999))
    .map(([whole, places, part]) => rational(BigInt(whole)).add(rational(`${part % 10 ** places}e-${places}`)));
  const thirds = fc.integer({ min: 3 * minimum + 1, max: 3 * maximum }).map((n) => rational(`${n}/3`));
  return fc.oneof({ weight: 5, arbitrary: decimals }, { weight: 1, arbitrary: thirds });
}

/** A number larger than 0: everyday sizes, and the ends of what is accepted. */
export const loads: fc.Arbitrary<Rational> = fc.oneof(
  { weight: 6, arbitrary: numbers(1, 500) },
  { weight: 1, arbitrary: fc.constantFrom("0.000000001", "1000000000", "0.123456789012345678901").map(rational) },
);

/** Degrees from −360 to 360. */
export const degrees: fc.Arbitrary<Rational> = numbers(-360, 360);

/** Directions in every way to write them. */
export const directions: fc.Arbitrary<Direction> = fc.oneof(
  degrees.map(angleDirection),
  fc
    .tuple(numbers(0, 180), fc.constantFrom("left" as const, "right" as const))
    .map(([angle, side]) => verticalDirection(angle, side)),
  fc
    .tuple(numbers(-50, 50), numbers(-50, 50))
    .filter(([run, rise]) => run.n !== 0n || rise.n !== 0n)
    .map(([run, rise]): Direction => ({ kind: "slope", run, rise })),
);

const bodies: fc.Arbitrary<Body> = fc.record({
  kind: fc.constant("load" as const),
  motion: fc.constant({ kind: "given" as const }),
  at: fc.constant(null),
  id: fc.constantFrom("lantern", "bell", "crate1"),
  name: fc.constantFrom("brass lantern", "Glocke", "lumière", 'crate "7" <b>', "燈"),
  load: fc.oneof(
    loads.map((mass) => ({ kind: "mass" as const, mass })),
    loads.map((weight) => ({ kind: "weight" as const, weight })),
  ),
  acceleration: fc.record({ x: numbers(-30, 30), y: numbers(-30, 30) }),
});

/** Whole problems that keep every rule: one body on one or two ropes. */
export const problems: fc.Arbitrary<Problem> = fc
  .tuple(numbers(0, 30), bodies, fc.array(directions, { minLength: 1, maxLength: 2 }))
  .map(([gravity, body, ways]): Problem => ({
    format: 1,
    units: "SI",
    gravity,
    frame: ZERO_VECTOR,
    bodies: [body],
    ropes: ways.map((direction, index): Rope => ({
      id: `T${index + 1}`,
      on: body.id,
      direction,
      further: [],
      anchor: null,
      length: null,
    })),
    surfaces: [],
    pushes: [],
  }))
  .filter((problem) => checkProblem(problem).length === 0);
