// Ropes, for the engine: distance joints stay straight, rope joints may go slack, pulley joints run over pulleys.
import { DistanceJoint, PulleyJoint, RopeJoint } from "planck";
import type { Body, Joint } from "planck";
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { along, at, board, crate, measure, plus, vec, worldOf } from "./engine.ts";
import type { Field, Pair } from "./engine.ts";
import { EXACT, SUNK } from "./types.ts";
import type { RigidCase } from "./types.ts";

const G = 9.8;
const ORIGIN: Pair = [0, 0];
const UP = { angle: 90 };
const document = (rest: Omit<ProblemDocument, "format" | "gravity">): ProblemDocument => ({
  format: 1,
  gravity: G,
  ...rest,
});

/** The rope that ties a body at the origin to a beam, three metres away. */
const tied = (world: Field, beam: Body, body: Body, degrees: number): Joint =>
  made(world.createJoint(new DistanceJoint({}, beam, body, vec(plus(ORIGIN, at(degrees), 3)), vec(ORIGIN))));

/** Where the pulleys of a rope hang: far off, so that its directions stay what they are while bodies move. */
const FAR = 10_000;

const overPulleys = (world: Field, a: Body, b: Body, fromA: Pair, fromB: Pair, ratio = 1): Joint => {
  const above = (body: Body, way: Pair): Pair => plus([body.getPosition().x, body.getPosition().y], way, FAR);
  const [p, q] = [vec(above(a, fromA)), vec(above(b, fromB))];
  return made(world.createJoint(new PulleyJoint({}, a, b, p, q, a.getPosition(), b.getPosition(), ratio)));
};

function made(joint: Joint | null): Joint {
  if (joint === null) throw new Error("the engine made no joint");
  return joint;
}

/** A lantern at rest on ropes to a beam, at so many degrees each. */
const hanging = (name: string, degrees: readonly number[]): RigidCase => ({
  name,
  document: document({
    bodies: [{ id: "lantern", mass: 4.2 }],
    ropes: degrees.map((angle, i) => ({ id: `T${i + 1}`, on: "lantern", direction: { angle } })),
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const beam = world.createBody();
    const lantern = crate(world, 4.2, ORIGIN);
    const ropes = degrees.map((d) => tied(world, beam, lantern, d));
    const m = measure(world);
    return Object.fromEntries(ropes.map((rope, i) => [`T${i + 1}`, m.joint(rope)]));
  },
});

/** A lantern held aside on one rope and let go: the first moment of its swing. */
const letGo: RigidCase = {
  name: "a lantern on one rope at the moment it is let go",
  document: document({
    bodies: [{ id: "lantern", mass: 4.2, motion: { along: { angle: -30 } } }],
    ropes: [{ id: "T", on: "lantern", direction: { angle: 60 } }],
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const beam = world.createBody();
    const lantern = crate(world, 4.2, ORIGIN);
    const rope = tied(world, beam, lantern, 60);
    const m = measure(world, [], 0, 1);
    return { T: m.joint(rope), a: along(m.acceleration(lantern), at(-30)) };
  },
};

/** A lantern on two ropes of given lengths, of which the longer one hangs slack. */
const oneSlack: RigidCase = {
  name: "a lantern on two ropes of given lengths, one slack",
  document: document({
    bodies: [{ id: "lantern", mass: 4.2 }],
    ropes: [
      { id: "T1", on: "lantern", anchor: { x: 0, y: 3 }, length: 3 },
      { id: "T2", on: "lantern", anchor: { x: 2, y: 3 }, length: 5 },
    ],
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const beam = world.createBody();
    const lantern = crate(world, 4.2, ORIGIN);
    const rope = (x: number, maxLength: number): Joint => {
      const ends = { bodyA: beam, localAnchorA: vec([x, 3]), bodyB: lantern, localAnchorB: vec(ORIGIN) };
      return made(world.createJoint(new RopeJoint({ ...ends, maxLength })));
    };
    const ropes = [rope(0, 3), rope(2, 5)] as const;
    const m = measure(world);
    return { T1: m.joint(ropes[0]), T2: m.joint(ropes[1]) };
  },
};

/** Two loads on one rope over a pulley; with `strands` the first one hangs on so many. */
const hoist = (name: string, first: number, second: number, strands: number): RigidCase => ({
  name,
  document: document({
    bodies: [
      { id: "block", ...(strands > 1 ? { kind: "pulley" as const } : {}), mass: first, motion: { along: UP } },
      { id: "bucket", mass: second, motion: { along: UP } },
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          ...Array.from({ length: strands }, () => ({ on: "block", direction: UP })),
          { on: "bucket", direction: UP },
        ],
      },
    ],
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const block = crate(world, first, ORIGIN);
    const bucket = crate(world, second, [10, 0]);
    // The engine multiplies the second body's rope: that is the one on several strands.
    const rope = overPulleys(world, bucket, block, [0, 1], [0, 1], strands);
    const m = measure(world);
    return { T: m.joint(rope), a1: m.acceleration(block)[1], a2: m.acceleration(bucket)[1] };
  },
});

/** A crate on a table or a slope of so many degrees, a bucket on its rope over the upper edge. */
const overEdge = (name: string, degrees: number, mu: number, bucketMass: number): RigidCase => ({
  name,
  document: document({
    bodies: [
      { id: "crate", mass: 5 },
      { id: "bucket", mass: bucketMass, motion: { along: { angle: -90 } } },
    ],
    ropes: [
      {
        id: "T",
        pulls: [
          { on: "crate", direction: { angle: degrees } },
          { on: "bucket", direction: UP },
        ],
      },
    ],
    surfaces: [{ id: "N", on: "crate", slope: { angle: degrees }, friction: { static: mu, kinetic: mu } }],
  }),
  within: SUNK,
  run() {
    const world = worldOf(G);
    const table = board(world, ORIGIN, degrees, mu);
    const body = crate(world, 5, plus(ORIGIN, at(degrees + 90), 0.5), mu, degrees);
    const bucket = crate(world, bucketMass, [20, -20]);
    table.setPosition(vec(plus(ORIGIN, at(degrees + 90), -0.5)));
    const rope = overPulleys(world, body, bucket, at(degrees), [0, 1]);
    const m = measure(world);
    const touch = m.contact(table, body, at(degrees));
    return {
      T: m.joint(rope),
      N: touch.normal,
      f: touch.friction,
      a1: along(m.acceleration(body), at(degrees)),
      a2: -m.acceleration(bucket)[1],
    };
  },
});

/** All set-ups with ropes. */
export const ropeCases: readonly RigidCase[] = [
  hanging("a lantern at rest on two ropes", [115, 40]),
  hanging("a lantern at rest on two ropes, one of them level", [125, 0]),
  hanging("a lantern on one rope", [90]),
  letGo,
  oneSlack,
  hoist("a hoist of two loads", 5, 2, 1),
  hoist("a movable pulley on two strands", 5, 2, 2),
  hoist("a movable pulley on three strands", 5, 2, 3),
  overEdge("a crate on a table, a bucket over its edge", 0, 0.2, 2),
  overEdge("the same, when the bucket is too light", 0, 0.6, 2),
  overEdge("a crate hauled up a slope by a bucket", 25, 0.15, 4),
  overEdge("a crate that lets itself down a slope and lifts a bucket", 50, 0.1, 1),
];
