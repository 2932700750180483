// What random set-ups are made of: masses, coefficients, directions, accelerations, each nice, awkward or at an end of its range.
import fc from "fast-check";
import type {
  BodyDocument,
  DirectionDocument,
  ProblemDocument,
  PushDocument,
  RopeDocument,
  SurfaceDocument,
  WrittenNumber,
} from "../../../shared/problem/index.ts";

/** A number of so many decimals, as it would be written. */
const decimals = (minimum: number, maximum: number, places: number): fc.Arbitrary<number> =>
  fc
    .integer({ min: Math.round(minimum * 10 ** places), max: Math.round(maximum * 10 ** places) })
    .map((n) => Number((n / 10 ** places).toFixed(places)));

/** Kilograms or newtons: mostly everyday sizes, of which two are equal now and then; seldom very small or very large. */
export const amounts: fc.Arbitrary<WrittenNumber> = fc.oneof(
  { weight: 8, arbitrary: fc.constantFrom<WrittenNumber[]>(1, 2, 3, 4, 5, 8, 12, 2.5, 0.5, 20) },
  { weight: 5, arbitrary: decimals(0.05, 60, 2) },
  { weight: 1, arbitrary: fc.constantFrom<WrittenNumber[]>("1/3", "22/7", "4.2", 0.026) },
  { weight: 1, arbitrary: fc.constantFrom<WrittenNumber[]>(0.000001, 0.001, 1000, 1000000) },
);

/** Degrees from the level line, larger than 0 and smaller than 90. */
export const acute: fc.Arbitrary<number> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(15, 30, 45, 60, 75) },
  { weight: 3, arbitrary: fc.integer({ min: 10, max: 80 }) },
  { weight: 2, arbitrary: decimals(1, 89, 1) },
  { weight: 1, arbitrary: fc.constantFrom(5, 85, 0.5, 89.5) },
);

/** A slope by its two sides. */
const TRIANGLES: readonly (readonly [WrittenNumber, WrittenNumber])[] = [
  [4, 3],
  [12, 5],
  [3, 4],
  [1, 1],
  [2, 1],
  ["1/3", "1/7"],
];

/** How steep something is, to the right: given by degrees, from the vertical, or by two sides. */
export const inclines: fc.Arbitrary<Incline> = fc.oneof(
  { weight: 5, arbitrary: acute.map((degrees): Incline => ({ degrees, sides: null })) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(...TRIANGLES).map((sides): Incline => ({ degrees: null, sides })),
  },
);

/** An incline. */
export type Incline =
  | { readonly degrees: number; readonly sides: null }
  | { readonly degrees: null; readonly sides: readonly [WrittenNumber, WrittenNumber] };

const minus = (written: WrittenNumber): WrittenNumber =>
  typeof written === "number" ? -written : written.startsWith("-") ? written.slice(1) : `-${written}`;

/** Degrees to a tenth of a thousandth, without the tails of doubles. */
const tidy = (degrees: number): number => Number(degrees.toFixed(4));

/** Which way along an incline, or off it: up or down it if it rises to the right or to the left, away from it or into it. */
export function direction(
  incline: Incline,
  way: "up" | "down" | "away" | "into" = "up",
  rises: "right" | "left" = "right",
): DirectionDocument {
  const quarters = { up: 0, away: 1, down: 2, into: 3 }[way];
  if (incline.degrees !== null) {
    const degrees = 90 * quarters + incline.degrees;
    const turned = rises === "right" ? degrees : 180 - degrees;
    return { angle: tidy(turned > 180 ? turned - 360 : turned) };
  }
  let [run, rise] = incline.sides;
  for (let q = 0; q < quarters; q++) [run, rise] = [minus(rise), run];
  return { run: rises === "right" ? run : minus(run), rise };
}

/** A direction that is level or upright. */
export const RIGHT: DirectionDocument = { angle: 0 };
export const UP: DirectionDocument = { angle: 90 };
export const LEFT: DirectionDocument = { angle: 180 };
export const DOWN: DirectionDocument = { angle: -90 };

/** Any direction: degrees, from the vertical, or two sides. */
export const anyDirection: fc.Arbitrary<DirectionDocument> = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: -179, max: 180 }).map((angle) => ({ angle })) },
  { weight: 1, arbitrary: fc.constantFrom(RIGHT, UP, LEFT, DOWN) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(decimals(0, 180, 1), fc.constantFrom("left" as const, "right" as const))
      .map(([angle, side]): DirectionDocument => ({ angle, from: "vertical", side })),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }))
      .filter(([run, rise]) => run !== 0 || rise !== 0)
      .map(([run, rise]) => ({ run, rise })),
  },
);

/** A direction above the level line, to either side. */
export const overhead: fc.Arbitrary<DirectionDocument> = fc
  .tuple(inclines, fc.constantFrom("left" as const, "right" as const))
  .map(([incline, rises]) => direction(incline, "up", rises));

/** Coefficients of friction, kinetic never the larger; none now and then, or one alone. */
export const frictions: fc.Arbitrary<Pick<SurfaceDocument, "friction">> = fc.oneof(
  { weight: 1, arbitrary: fc.constant({}) },
  {
    weight: 6,
    arbitrary: fc.tuple(decimals(0, 1.2, 2), fc.integer({ min: 0, max: 100 })).map(([sticking, share]) => ({
      friction: { static: sticking, kinetic: Number(((sticking * share) / 100).toFixed(3)) },
    })),
  },
  { weight: 1, arbitrary: decimals(0, 1, 1).map((c) => ({ friction: { kinetic: c } })) },
);
/** Coefficients of which at least one is larger than 0. */
export const rough: fc.Arbitrary<Pick<SurfaceDocument, "friction">> = fc
  .tuple(decimals(0.05, 1.2, 2), fc.integer({ min: 20, max: 100 }))
  .map(([sticking, share]) => ({
    friction: { static: sticking, kinetic: Number(((sticking * share) / 100).toFixed(3)) },
  }));

/** Newtons of a push: from nothing to enough to move anything that is drawn. */
export const sizes: fc.Arbitrary<WrittenNumber> = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 1, max: 200 }) },
  { weight: 2, arbitrary: decimals(0.1, 600, 1) },
  { weight: 1, arbitrary: fc.constantFrom<WrittenNumber[]>(0, "100/3", 5000) },
);

/** m/s² along a line or of a frame, 0 now and then. */
export const accelerations: fc.Arbitrary<WrittenNumber> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom<WrittenNumber[]>(0, 1, 2, -3, 0.5, "10/3") },
  { weight: 2, arbitrary: decimals(-12, 12, 1) },
  { weight: 1, arbitrary: fc.constantFrom<WrittenNumber[]>(-9.8, 9.8) },
);

/** Whether a body that may move along a line already does. */
export const goings: fc.Arbitrary<{ readonly going?: "forwards" | "backwards" }> = fc.oneof(
  { weight: 3, arbitrary: fc.constant({}) },
  {
    weight: 1,
    arbitrary: fc.constantFrom<{ readonly going: "forwards" | "backwards" }[]>(
      { going: "forwards" },
      { going: "backwards" },
    ),
  },
);

/** A body without its load; `amount` is its mass or its weight, as the whole problem gives all of them. */
export type Shape = Omit<BodyDocument, "mass" | "weight"> & { readonly amount?: WrittenNumber };

/** A problem without its units, gravity and way of giving loads. */
export interface Plan {
  readonly frame?: ProblemDocument["frame"];
  readonly bodies: readonly Shape[];
  readonly ropes?: readonly RopeDocument[];
  readonly surfaces?: readonly SurfaceDocument[];
  readonly pushes?: readonly PushDocument[];
}

interface Setting {
  readonly units: "SI" | "lbf-ft";
  readonly gravity: WrittenNumber;
  readonly by: "mass" | "weight";
}

const settings: fc.Arbitrary<Setting> = fc
  .record({
    units: fc.constantFrom("SI" as const, "SI" as const, "SI" as const, "lbf-ft" as const),
    si: fc.oneof(
      { weight: 12, arbitrary: fc.constantFrom<WrittenNumber[]>(9.8, 9.8, 9.81, 10, 1.62, "9.80665") },
      { weight: 1, arbitrary: fc.constant<WrittenNumber>(0) },
    ),
    feet: fc.constantFrom<WrittenNumber[]>(32.2, 32, "32.174"),
    by: fc.constantFrom("mass" as const, "mass" as const, "weight" as const),
  })
  .map(({ units, si, feet, by }) => ({ units, gravity: units === "SI" ? si : feet, by }));

/** A plan in random units, gravity and way of giving loads. */
export const inSetting = (plans: fc.Arbitrary<Plan>): fc.Arbitrary<ProblemDocument> =>
  fc.tuple(plans, settings).map(([plan, { units, gravity, by }]) => ({
    format: 1,
    ...(units === "SI" ? {} : { units }),
    gravity,
    ...plan,
    bodies: plan.bodies.map(({ amount, ...body }) => {
      if (amount === undefined) return body;
      return Number(gravity) > 0 && by === "weight" && amount !== 0
        ? { ...body, weight: amount }
        : { ...body, mass: amount };
    }),
  }));
