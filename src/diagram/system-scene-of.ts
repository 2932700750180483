// From the derivation of a set-up to the scene that its pictures are drawn from: a change of form, nothing is worked out.
import { unitNames } from "../../shared/format/index.ts";
import type { SystemDerivation } from "../../solver/index.ts";
import { unitOf } from "./direction.ts";
import { symbol } from "./label.ts";
import { angleLetter, Prints, type GivenNumber } from "./prints.ts";
import { tensionLabel } from "./scene-of.ts";
import { degreesOf, isOblique, SystemForces, type Direction } from "./system-forces-of.ts";
import type { SystemBody, SystemPull, SystemPush, SystemRope, SystemScene, SystemSurface } from "./system-scene.ts";

type SetUp = SystemDerivation["system"]["setUp"];
type Body = SetUp["bodies"][number];

/** The scene of what is assumed first, before anything is known to fail: the forces that the first laws are written with. */
export function assumedSceneOf(d: SystemDerivation): SystemScene {
  const [first] = d.system.attempts;
  return systemSceneOf(first === undefined ? d : { ...d, system: { ...d.system, inForce: first } });
}

/** The scene of a set-up, numbers to the derivation's own figures. */
export function systemSceneOf(d: SystemDerivation): SystemScene {
  const { setUp, inForce } = d.system;
  const prints = new Prints(d.settings);
  const forces = new SystemForces(d, prints);
  const units = unitNames[setUp.units];
  return {
    bodies: setUp.bodies.map((body) => bodyOf(d, body, forces, prints)),
    ropes: setUp.ropes.map((rope): SystemRope => {
      const taut = inForce.hypothesis.ropes[rope.id] !== "slack";
      return {
        id: rope.id,
        label: symbol(tensionLabel(rope.id)),
        state: taut ? "taut" : "slack",
        idle: taut && forces.size(rope.id) === 0,
        pulls: rope.pulls.map(({ on, toward }): SystemPull => ({
          on,
          ...(bridging(setUp, rope) ?? directed(setUp, toward, prints)),
        })),
        anchor: rope.anchor,
        length: rope.length?.decimal ?? null,
      };
    }),
    surfaces: setUp.contacts.map((contact): SystemSurface => ({
      id: contact.id,
      on: contact.on,
      of: contact.of,
      ...directed(setUp, contact.tangent, prints),
      normal: degreesOf(contact.normal),
      rough: contact.staticFriction !== null,
      touching: inForce.hypothesis.contacts[contact.id]?.touch !== "lifted",
    })),
    pushes: d.problem.pushes.flatMap(({ id, size }): SystemPush[] => {
      const push = setUp.pushes.find((one) => one.id === id);
      if (push === undefined) return [];
      const text = size === null ? null : prints.given(size, units.force);
      return [{ id, on: push.on, label: symbol(tensionLabel(id)), ...directed(setUp, push.toward, prints), text }];
    }),
    frame: { x: setUp.frame.x.decimal, y: setUp.frame.y.decimal },
    forceUnit: setUp.units === "SI" ? "N" : "lbf",
    solved: d.kind === "determined",
  };
}

/** The way from the load to the anchor of a slack rope whose length is given: it is nobody's direction, and bears no print. */
function bridging({ hanging }: SetUp, { id, anchor }: SetUp["ropes"][number]): Omit<SystemPull, "on"> | null {
  if (hanging?.kind !== "placed" || anchor === null || !hanging.bridges.some(({ rope }) => rope === id)) return null;
  const degrees = (Math.atan2(anchor.y - hanging.at.y, anchor.x - hanging.at.x) * 180) / Math.PI;
  return { degrees, degreesText: null, angleLetter: "" };
}

/** A direction with the print of its acute angle from the level line. */
function directed(
  setUp: SetUp,
  toward: Direction,
  prints: Prints,
): Pick<SystemPull, "degrees" | "degreesText" | "angleLetter"> {
  const degrees = degreesOf(toward);
  const angle = setUp.angles.get(toward.heading.angle);
  if (!isOblique(toward) || angle === undefined) return { degrees, degreesText: null, angleLetter: "" };
  return { degrees, degreesText: prints.angle(angle), angleLetter: angleLetter(toward.heading.angle) };
}

function bodyOf(d: SystemDerivation, body: Body, forces: SystemForces, prints: Prints): SystemBody {
  const { setUp, inForce } = d.system;
  const axes = inForce.equations.axes.find((one) => one.body === body.id);
  const motion = motionOf(d, body, forces);
  const acceleration = motion.known ? motion.vector : null;
  const mass = body.mass.decimal;
  return {
    id: body.id,
    name: body.name,
    kind: body.kind,
    loadText: loadText(d, body, prints),
    at: body.at ?? (setUp.hanging?.kind === "placed" ? setUp.hanging.at : null),
    forces: forces.on(body),
    axes: axes === undefined ? { x: 0, y: 90 } : { x: degreesOf(axes.x), y: degreesOf(axes.y) },
    acceleration,
    accelerationLabel: symbol(tensionLabel(body.letters.acceleration)),
    accelerationGiven: motion.given && (motion.vector.x !== 0 || motion.vector.y !== 0),
    along: motion.along,
    net:
      acceleration === null || d.kind === "impossible"
        ? null
        : { x: mass * acceleration.x, y: mass * acceleration.y, label: forces.massTimesAcceleration(body) },
  };
}

interface Motion {
  readonly vector: { readonly x: number; readonly y: number };
  /** Whether every part of it is known, and whether none of it had to be found. */
  readonly known: boolean;
  readonly given: boolean;
  /** The positive sense of the one part that is to be found. */
  readonly along: number | null;
}

function motionOf(d: SystemDerivation, body: Body, forces: SystemForces): Motion {
  const motion = d.system.inForce.equations.motions.find((one) => one.body === body.id);
  const parts = motion === undefined ? [] : [...motion.own, ...motion.carried];
  const sizes = parts.map(({ letter }) => forces.size(letter));
  const vector = parts.reduce(
    (sum, { toward }, index) => {
      const { x, y } = unitOf(degreesOf(toward));
      const size = sizes[index] ?? 0;
      return { x: sum.x + size * x, y: sum.y - size * y };
    },
    { x: 0, y: 0 },
  );
  const open = parts.filter(({ unknown }) => unknown);
  const [one] = open;
  return {
    vector,
    known: sizes.every((size) => size !== null),
    given: open.length === 0,
    along: one === undefined || open.length > 1 ? null : degreesOf(one.toward),
  };
}

/** The mass as it is given, or the weight; null for what has none. */
function loadText(d: SystemDerivation, body: Body, prints: Prints): string | null {
  if (body.massless) return null;
  const units = unitNames[d.system.setUp.units];
  const load = d.problem.bodies.find(({ id }) => id === body.id)?.load;
  if (load === undefined) return null;
  const given: GivenNumber = load.kind === "mass" ? load.mass : load.weight;
  return prints.given(given, load.kind === "mass" ? units.mass : units.force);
}
