// Crates on boards, on each other and on a wedge, for the engine.
import type { Body } from "planck";
import type { ProblemDocument } from "../../../shared/problem/index.ts";
import { along, at, board, crate, measure, plus, STEP, wedge, worldOf } from "./engine.ts";
import type { Pair } from "./engine.ts";
import { EXACT } from "./types.ts";
import type { RigidCase } from "./types.ts";

const G = 9.8;
const ORIGIN: Pair = [0, 0];
const friction = (mu: number) => (mu === 0 ? {} : { friction: { static: mu, kinetic: mu } });
const document = (rest: Omit<ProblemDocument, "format" | "gravity">): ProblemDocument => ({
  format: 1,
  gravity: G,
  ...rest,
});

/** One crate of 5 kg on a slope of so many degrees, by itself. */
const onSlope = (name: string, degrees: number, mu: number): RigidCase => ({
  name,
  document: document({
    bodies: [{ id: "crate", mass: 5 }],
    surfaces: [{ id: "N", on: "crate", slope: { angle: degrees }, ...friction(mu) }],
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const slipway = board(world, ORIGIN, degrees, mu);
    const body = crate(world, 5, plus(ORIGIN, at(degrees + 90), 0.5), mu, degrees);
    const m = measure(world);
    const touch = m.contact(slipway, body, at(degrees));
    return { N: touch.normal, ...(mu === 0 ? {} : { f: touch.friction }), a: along(m.acceleration(body), at(degrees)) };
  },
});

/** A crate on level ground, pushed by 60 N at so many degrees. */
const pushed = (name: string, degrees: number, mu: number): RigidCase => ({
  name,
  document: document({
    bodies: [{ id: "crate", mass: 5 }],
    surfaces: [{ id: "N", on: "crate", slope: { angle: 0 }, ...friction(mu) }],
    pushes: [{ id: "P", on: "crate", direction: { angle: degrees }, size: 60 }],
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const ground = board(world, ORIGIN, 0, mu);
    const body = crate(world, 5, [0, 0.5], mu);
    const m = measure(world, [{ body, force: plus(ORIGIN, at(degrees), 60) }]);
    const touch = m.contact(ground, body, [1, 0]);
    return { N: touch.normal, f: touch.friction, a: m.acceleration(body)[0] };
  },
});

/** Two crates on top of each other, the lower one pushed to the right. */
const stacked = (name: string, size: number, mu: number): RigidCase => ({
  name,
  document: document({
    bodies: [
      { id: "low", mass: 5 },
      { id: "high", mass: 2 },
    ],
    surfaces: [
      { id: "N1", on: "low", slope: { angle: 0 }, ...friction(0.2) },
      { id: "N2", on: "high", of: "low", slope: { angle: 0 }, ...friction(mu) },
    ],
    pushes: [{ id: "P", on: "low", direction: { angle: 0 }, size }],
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const ground = board(world, ORIGIN, 0, 0.2);
    const low = crate(world, 5, [0, 0.5], 0.2);
    const high = crate(world, 2, [0, 1.5], mu);
    // A contact's coefficient is the geometric mean of both bodies' unless it is set.
    world.on("pre-solve", (contact) => {
      const ids = [contact.getFixtureA().getBody(), contact.getFixtureB().getBody()];
      if (ids.includes(high)) contact.setFriction(mu);
    });
    // Only as long as the upper one still lies on the lower one with all of its base.
    const m = measure(world, [{ body: low, force: [size, 0] }], 10, 6);
    const [below, between] = [m.contact(ground, low, [1, 0]), m.contact(low, high, [1, 0])];
    return {
      N1: below.normal,
      f1: below.friction,
      N2: between.normal,
      f2: between.friction,
      a1: m.acceleration(low)[0],
      a2: m.acceleration(high)[0] - m.acceleration(low)[0],
    };
  },
});

/** Three crates in a row on the ground, the first one pushed against the others. */
const sideBySide: RigidCase = {
  name: "three crates side by side, pushed",
  document: document({
    bodies: [
      { id: "crate1", mass: 5 },
      { id: "crate2", mass: 2 },
      { id: "crate3", mass: 3 },
    ],
    surfaces: [
      ...["crate1", "crate2", "crate3"].map((on, i) => ({
        id: `N${i + 1}`,
        on,
        slope: { angle: 0 },
        ...friction(0.1),
      })),
      { id: "C1", on: "crate2", of: "crate1", normal: { angle: 0 } },
      { id: "C2", on: "crate3", of: "crate2", normal: { angle: 0 } },
    ],
    pushes: [{ id: "P", on: "crate1", direction: { angle: 0 }, size: 60 }],
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const ground = board(world, ORIGIN, 0, 0.1);
    const bodies = [5, 2, 3].map((mass, i) => crate(world, mass, [i, 0.5], 0.1));
    const [first, second, third] = bodies as [Body, Body, Body];
    world.on("pre-solve", (contact) => {
      const ids = [contact.getFixtureA().getBody(), contact.getFixtureB().getBody()];
      if (!ids.includes(ground)) contact.setFriction(0);
    });
    const m = measure(world, [{ body: first, force: [60, 0] }]);
    const answers: Record<string, number> = {
      C1: m.contact(first, second, [0, 1]).normal,
      C2: m.contact(second, third, [0, 1]).normal,
    };
    bodies.forEach((b, i) => {
      const touch = m.contact(ground, b, [1, 0]);
      Object.assign(answers, {
        [`N${i + 1}`]: touch.normal,
        [`f${i + 1}`]: touch.friction,
        [`a${i + 1}`]: m.acceleration(b)[0],
      });
    });
    return answers;
  },
};

/** A crate slides down a smooth wedge that slides away under it. */
const onWedge: RigidCase = {
  name: "a crate on a wedge that slides away",
  document: document({
    bodies: [
      { id: "wedge", mass: 6, motion: { along: { angle: 0 } } },
      { id: "crate", mass: 2 },
    ],
    surfaces: [
      { id: "N1", on: "wedge", slope: { angle: 0 } },
      { id: "N2", on: "crate", of: "wedge", slope: { angle: 30 } },
    ],
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const ground = board(world, ORIGIN, 0);
    const below = wedge(world, 6, ORIGIN, 100, 30);
    const middle: Pair = [50, 50 * Math.tan(Math.PI / 6)];
    const body = crate(world, 2, plus(middle, at(120), 0.5), 0, 30);
    const m = measure(world, [], 5, 20);
    const seen = plus(m.acceleration(body), m.acceleration(below), -1);
    return {
      N1: m.contact(ground, below, [1, 0]).normal,
      N2: m.contact(below, body, at(30)).normal,
      a1: m.acceleration(below)[0],
      a2: along(seen, at(30)),
    };
  },
};

/** A crate on the floor of a lift that speeds up or slows down. */
const inLift = (name: string, y: number): RigidCase => ({
  name,
  document: document({
    frame: { y },
    bodies: [{ id: "crate", mass: 5 }],
    surfaces: [{ id: "N", on: "crate", slope: { angle: 0 } }],
  }),
  within: EXACT,
  run() {
    const world = worldOf(G);
    const floor = board(world, ORIGIN, 0);
    floor.setKinematic();
    const body = crate(world, 5, [0, 0.5]);
    const m = measure(world, [], 30, 30, (step) => floor.setLinearVelocity({ x: 0, y: y * STEP * step }));
    return { N: m.contact(floor, body, [1, 0]).normal };
  },
});

/** All set-ups of crates. */
export const crateCases: readonly RigidCase[] = [
  onSlope("a crate on a smooth slope", 30, 0),
  onSlope("a crate that slides down a rough slope", 30, 0.3),
  onSlope("a crate that stays on a rough slope", 30, 0.7),
  onSlope("a crate on a steep smooth slope that rises to the right", 72.5, 0),
  pushed("a crate pushed down at an angle, sliding", -20, 0.4),
  pushed("a crate pulled up at an angle, sliding", 35, 0.4),
  pushed("a crate pushed steeply that stays", -70, 0.6),
  stacked("stacked crates that slide as one", 30, 0.5),
  stacked("stacked crates, the upper one left behind", 60, 0.3),
  sideBySide,
  onWedge,
  inLift("a crate in a lift that speeds up", 2.5),
  inLift("a crate in a lift that slows down", -4),
];
