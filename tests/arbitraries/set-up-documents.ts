// Random problems of everything that format 1 has, all of which it accepts.
import fc from "fast-check";
import { rational } from "../../shared/exact/index.ts";
import {
  checkProblem,
  directionBetween,
  isPlainHanging,
  straightTo,
  writeProblem,
  ZERO_VECTOR,
} from "../../shared/problem/index.ts";
import type {
  Body,
  Load,
  Motion,
  Problem,
  ProblemDocument,
  Pull,
  Push,
  Rope,
  Surface,
  Vector,
} from "../../shared/problem/index.ts";
import { directions, loads, numbers } from "./problem.ts";

const ZERO = rational("0");
const vectors: fc.Arbitrary<Vector> = fc.record({ x: numbers(-20, 20), y: numbers(-20, 20) });
/** Few places, so that bodies meet now and then; the filter takes out what may not. */
const places: fc.Arbitrary<Vector> = fc
  .tuple(fc.integer({ min: -3, max: 3 }), fc.integer({ min: -3, max: 3 }))
  .map(([x, y]) => ({ x: rational(BigInt(x)), y: rational(`${y}/3`) }));
const often = <T>(value: T, other: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  fc.oneof({ weight: 2, arbitrary: fc.constant(value) }, { weight: 1, arbitrary: other });

const BODIES = ["lantern", "bell", "crate", "bucket", "sledge", "k1", "block"] as const;
const ROPES = ["T1", "T2", "S", "rope"] as const;
const SURFACES = ["N", "N1", "N22", "C"] as const;
const PUSHES = ["P", "F1"] as const;

const masses: fc.Arbitrary<Load> = fc
  .oneof({ weight: 6, arbitrary: loads }, { weight: 1, arbitrary: fc.constant(ZERO) })
  .map((mass) => ({ kind: "mass", mass }));
const weights: fc.Arbitrary<Load> = loads.map((weight) => ({ kind: "weight", weight }));
const noMass: Load = { kind: "mass", mass: ZERO };

const loaded: fc.Arbitrary<Pick<Body, "kind" | "load">> = fc.oneof(
  fc.record({ kind: fc.constant("load" as const), load: fc.oneof(masses, weights) }),
  fc.record({ kind: fc.constant("knot" as const), load: fc.constant(noMass) }),
  fc.record({ kind: fc.constant("pulley" as const), load: fc.oneof(fc.constant(noMass), masses, weights) }),
);

const lines: fc.Arbitrary<Motion> = fc.record({
  kind: fc.constant("line" as const),
  along: directions,
  acceleration: often(null, numbers(-20, 20)),
  going: fc.constantFrom(-1 as const, 0 as const, 1 as const),
  seenFrom: often<string | null>(null, fc.constantFrom(...BODIES)),
});
const motions: fc.Arbitrary<Motion> = fc.oneof(
  fc.constantFrom<Motion>({ kind: "unstated" }, { kind: "given" }, { kind: "free" }),
  lines,
);

function bodyCalled(id: string): fc.Arbitrary<Body> {
  const parts = fc.tuple(
    loaded,
    motions,
    vectors,
    often(null, places),
    fc.constantFrom(id, "iron bell", "燈", "Öllampe"),
  );
  return parts.map(([load, motion, acceleration, at, name]) => ({
    id,
    name,
    ...load,
    motion,
    acceleration: motion.kind === "given" ? acceleration : ZERO_VECTOR,
    at,
  }));
}

type Bodies = readonly [Body, ...Body[]];

function ropeCalled(id: string, bodies: Bodies): fc.Arbitrary<Rope> {
  const body = fc.constantFrom(...bodies);
  const bare = { id, further: [], anchor: null, length: null };
  const simple = fc
    .record({ on: body, direction: directions })
    .map(({ on, direction }): Rope => ({ ...bare, on: on.id, direction }));
  const joined = fc.tuple(body, body, directions).map(([on, to, given]): Rope => {
    const direction = on.at !== null && to.at !== null ? directionBetween(on.at, to.at) : given;
    return { ...bare, on: on.id, direction, further: [straightTo(to.id, direction)] };
  });
  const pull = fc.record({ on: body.map((one) => one.id), direction: directions });
  const long = fc.array(pull, { minLength: 2, maxLength: 4 }).map((pulls): Rope => {
    const [first, ...further] = pulls as [Pull, ...Pull[]];
    return { ...bare, ...first, further };
  });
  const others = fc.oneof(simple, joined, long);
  const placed = bodies.flatMap(({ id: on, at }) => (at === null ? [] : [{ on, at }]));
  if (placed.length === 0) return others;
  const tied = fc.tuple(fc.constantFrom(...placed), places).map(([{ on, at }, anchor]): Rope => {
    return { ...bare, on, direction: directionBetween(at, anchor), anchor };
  });
  return fc.oneof({ weight: 3, arbitrary: others }, { weight: 1, arbitrary: tied });
}

/** Nothing, one coefficient, or two of which kinetic is not the larger. */
const frictions: fc.Arbitrary<Surface["friction"]> = fc
  .tuple(often(null, numbers(0, 3)), often(null, numbers(0, 3)))
  .map(([one, other]) => {
    const swap = one !== null && other !== null && other.compare(one) > 0;
    return swap ? { static: other, kinetic: one } : { static: one, kinetic: other };
  });

function surfaceCalled(id: string, bodies: Bodies): fc.Arbitrary<Surface> {
  const body = fc.constantFrom(...bodies.map((one) => one.id));
  return fc.record({
    id: fc.constant(id),
    on: body,
    of: often<string | null>(null, body),
    lies: fc.record({ kind: fc.constantFrom("slope" as const, "normal" as const), direction: directions }),
    friction: frictions,
  });
}

function pushCalled(id: string, bodies: Bodies): fc.Arbitrary<Push> {
  const on = fc.constantFrom(...bodies.map((one) => one.id));
  return fc.record({ id: fc.constant(id), on, direction: directions, size: often(null, numbers(0, 100)) });
}

/** So many of a list of ids, each made into something. */
function some<T>(ids: readonly string[], most: number, make: (id: string) => fc.Arbitrary<T>): fc.Arbitrary<T[]> {
  return fc.shuffledSubarray([...ids], { maxLength: most }).chain((chosen) => fc.tuple<T[]>(...chosen.map(make)));
}

const everything: fc.Arbitrary<Problem> = fc
  .shuffledSubarray([...BODIES], { minLength: 1, maxLength: 4 })
  .chain((ids) => fc.tuple(...ids.map(bodyCalled)))
  .chain((list) => {
    const bodies = list as unknown as Bodies;
    return fc.record({
      format: fc.constant(1 as const),
      units: fc.constantFrom("SI" as const, "lbf-ft" as const),
      gravity: often(rational("9.8"), numbers(0, 40)),
      frame: often(ZERO_VECTOR, vectors),
      bodies: fc.constant(bodies),
      ropes: some(ROPES, 3, (id) => ropeCalled(id, bodies)),
      surfaces: some(SURFACES, 2, (id) => surfaceCalled(id, bodies)),
      pushes: some(PUSHES, 2, (id) => pushCalled(id, bodies)),
    });
  });

/** One load at rest on one or two ropes of given length. */
const hanging: fc.Arbitrary<Problem> = fc
  .tuple(fc.oneof(masses, weights), fc.array(fc.tuple(places, numbers(1, 9)), { minLength: 1, maxLength: 2 }))
  .map(([load, ropes]): Problem => ({
    format: 1,
    units: "SI",
    gravity: rational("9.8"),
    frame: ZERO_VECTOR,
    bodies: [
      {
        id: "bell",
        name: "bell",
        kind: "load",
        load,
        motion: { kind: "unstated" },
        acceleration: ZERO_VECTOR,
        at: null,
      },
    ],
    ropes: ropes.map(([anchor, length], index): Rope => {
      return { id: `T${index}`, on: "bell", direction: { kind: "hangs" }, further: [], anchor, length };
    }),
    surfaces: [],
    pushes: [],
  }));

/** What hangs on ropes alone has its acceleration given, if only as 0: see `problemFromDocument`. */
function asRead(problem: Problem): Problem {
  if (!isPlainHanging(problem)) return problem;
  return { ...problem, bodies: problem.bodies.map((body) => ({ ...body, motion: { kind: "given" } })) };
}

/** Whole problems that keep every rule: any bodies on any ropes and surfaces, pushed, at places, in motion, in any units. */
export const setUpProblems: fc.Arbitrary<Problem> = fc
  .oneof({ weight: 9, arbitrary: everything }, { weight: 1, arbitrary: hanging })
  .map(asRead)
  .filter((problem) => checkProblem(problem).length === 0);

/** The documents of such problems. */
export const setUpDocuments: fc.Arbitrary<ProblemDocument> = setUpProblems.map(writeProblem);
