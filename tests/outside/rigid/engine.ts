// Set-ups for a rigid-body engine, and what it makes of them: accelerations from speeds, forces from the impulses of its contacts and joints.
import { Box, Polygon, Vec2, World } from "planck";
import type { Body, Contact, ContactImpulse, Joint } from "planck";

/** A step, seconds; the engine's own for games, though with many more rounds over its contacts and joints. */
export const STEP = 1 / 60;
const ROUNDS = 400;
/** Steps that are not measured: contacts and joints start from nothing and take up their load first. */
const FIRST = 30;
const MEASURED = 30;

/** A pair of numbers: right and up. */
export type Pair = readonly [number, number];

/** The engine's vector. */
export const vec = ([x, y]: Pair) => new Vec2(x, y);

/** The unit vector at so many degrees. */
export const at = (degrees: number): Pair => [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];

/** a + k·b */
export const plus = (a: Pair, b: Pair, k = 1): Pair => [a[0] + k * b[0], a[1] + k * b[1]];

/** The part of a pair along a direction. */
export const along = (a: Pair, direction: Pair): number => a[0] * direction[0] + a[1] * direction[1];

/** A world under gravity. */
export const worldOf = (gravity: number) =>
  new World({ gravity: new Vec2(0, -gravity), allowSleep: false, continuousPhysics: false });

/** A world. */
export type Field = ReturnType<typeof worldOf>;

/** A box that cannot turn, one metre wide and high, of a mass; `turned` in degrees. */
export function crate(world: Field, mass: number, centre: Pair, friction = 0, turned = 0): Body {
  const body = world.createBody({
    type: "dynamic",
    position: vec(centre),
    angle: (turned * Math.PI) / 180,
    fixedRotation: true,
  });
  body.createFixture({ shape: new Box(0.5, 0.5), density: mass, friction, restitution: 0 });
  return body;
}

/** A long board that does not move: its upper face goes through `point` at so many degrees. */
export function board(world: Field, point: Pair, degrees: number, friction = 0): Body {
  const body = world.createBody({
    type: "static",
    position: vec(plus(point, at(degrees + 90), -0.5)),
    angle: (degrees * Math.PI) / 180,
  });
  body.createFixture({ shape: new Box(2000, 0.5), density: 0, friction, restitution: 0 });
  return body;
}

/** A wedge that slides on level ground: its left lower corner, base, and the degrees of its face, which rises to the right. */
export function wedge(world: Field, mass: number, corner: Pair, base: number, degrees: number): Body {
  const high = base * Math.tan((degrees * Math.PI) / 180);
  const body = world.createBody({ type: "dynamic", position: vec(corner), fixedRotation: true });
  const corners = [new Vec2(0, 0), new Vec2(base, 0), new Vec2(base, high)];
  body.createFixture({ shape: new Polygon(corners), density: mass / ((base * high) / 2), friction: 0, restitution: 0 });
  return body;
}

/** What pushes a body all the time. */
export interface Push {
  readonly body: Body;
  readonly force: Pair;
}

/** What was measured. */
export interface Measured {
  /** m/s² of a body, over all measured steps. */
  readonly acceleration: (body: Body) => Pair;
  /** Newtons on the second of two bodies, away from the first and along a direction of the surface, the mean over all measured steps. */
  readonly contact: (a: Body, b: Body, tangent: Pair) => { readonly normal: number; readonly friction: number };
  /** Newtons of a joint on its second body. */
  readonly joint: (joint: Joint) => number;
}

/** Lets a world run, and measures it; `each` is called before every step, with its number from 1. */
export function measure(
  world: Field,
  pushes: readonly Push[] = [],
  first = FIRST,
  measured = MEASURED,
  each: (step: number) => void = () => undefined,
): Measured {
  const contacts: { readonly on: Body; readonly of: Body; readonly force: Pair; readonly normal: number }[] = [];
  const bodies: Body[] = [];
  for (let b = world.getBodyList(); b !== null; b = b.getNext()) bodies.push(b);
  const joints: Joint[] = [];
  for (let j = world.getJointList(); j !== null; j = j.getNext()) joints.push(j);
  let counting = false;
  world.on("post-solve", (contact: Contact, impulse: ContactImpulse) => {
    const seen = contact.getWorldManifold(null);
    if (!counting || seen == null) return;
    // The engine's normal points from the first body to the second, its tangent a quarter turn to the right of it.
    const { x, y } = seen.normal;
    const share = 1 / STEP / measured;
    let [normal, sideways] = [0, 0];
    for (let i = 0; i < contact.getManifold().pointCount; i++) {
      normal += (impulse.normalImpulses[i] ?? 0) * share;
      sideways += (impulse.tangentImpulses[i] ?? 0) * share;
    }
    contacts.push({
      of: contact.getFixtureA().getBody(),
      on: contact.getFixtureB().getBody(),
      force: [sideways * y, -sideways * x],
      normal,
    });
  });
  const pulls = new Map<Joint, number>();
  let step = 0;
  const run = (steps: number): void => {
    for (let i = 0; i < steps; i++) {
      each(++step);
      for (const { body, force } of pushes) body.applyForceToCenter(vec(force));
      world.step(STEP, ROUNDS, ROUNDS);
      if (counting)
        for (const j of joints) pulls.set(j, (pulls.get(j) ?? 0) + j.getReactionForce(1 / STEP).length() / measured);
    }
  };
  run(first);
  const before = bodies.map((b): Pair => [b.getLinearVelocity().x, b.getLinearVelocity().y]);
  counting = true;
  run(measured);
  return {
    acceleration: (body) => {
      const { x, y } = body.getLinearVelocity();
      const [u, v] = before[bodies.indexOf(body)] ?? [NaN, NaN];
      return [(x - u) / (measured * STEP), (y - v) / (measured * STEP)];
    },
    contact: (a, b, tangent) => {
      const between = contacts.filter((c) => (c.of === a && c.on === b) || (c.of === b && c.on === a));
      return {
        normal: between.reduce((total, c) => total + c.normal, 0),
        friction: between.reduce((total, c) => total + along(c.force, tangent) * (c.on === b ? 1 : -1), 0),
      };
    },
    joint: (joint) => pulls.get(joint) ?? NaN,
  };
}
