// Stage 1 for any number of bodies: problem to set-up. Directions get their letters, bodies their mass, weight and freedom to move.
import { isZeroRational, surd } from "../../../shared/exact/index.ts";
import type { Rational } from "../../../shared/exact/index.ts";
import { frictionId } from "../../../shared/problem/index.ts";
import type { Body, Direction, Problem, Surface } from "../../../shared/problem/index.ts";
import type { Value } from "../../algebra/evaluate.ts";
import { quarterTurn } from "../../algebra/turned.ts";
import type { Turned } from "../../algebra/turned.ts";
import type { Contact, Freedom, Heading, SetUp, SetUpBody, SetUpRope } from "../set-up-types.ts";
import { lettersOf } from "./letters.ts";
import { countAngles, Headings } from "./headings.ts";
import { hangingPlace } from "./hanging.ts";
import type { HangingPlace } from "./hanging.ts";

const valueOf = (x: Rational): Value => ({ decimal: x.valueOf(), exact: surd(x) });
const straight = (heading: Heading): Turned => ({ heading, quarters: 0 });

/** Builds the set-up of a checked problem. `loose` are ropes given by their lengths that are taken to hang slack. */
export function buildSetUp(problem: Problem, loose: ReadonlySet<string> = new Set()): SetUp {
  const slopes = problem.surfaces.map((s) => s.lies.direction);
  const headings = new Headings(countAngles(slopes));
  const place = hangingPlace(problem, loose);
  const rough = problem.surfaces.filter(isRough);
  const contacts = problem.surfaces.map((s) => contactOf(s, headings, rough.length > 1 ? rough.indexOf(s) + 1 : 0));
  const ropes = problem.ropes.map((rope, i): SetUpRope => ({
    id: rope.id,
    number: i + 1,
    pulls: [{ on: rope.on, direction: rope.direction }, ...rope.further].map(({ on, direction }) => ({
      on,
      toward: toward(rope.id, direction, headings, place),
    })),
    anchor: rope.anchor === null ? null : { x: rope.anchor.x.valueOf(), y: rope.anchor.y.valueOf() },
    length: rope.length === null ? null : valueOf(rope.length),
  }));
  const pushes = problem.pushes.map((push) => ({
    id: push.id,
    on: push.on,
    toward: straight(headings.read(push.direction, "other")),
    size: push.size === null ? null : valueOf(push.size),
  }));
  const bodies = problem.bodies.map((body, i) => bodyOf(problem, body, i + 1, contacts, headings));
  return {
    units: problem.units,
    gravity: valueOf(problem.gravity),
    frame: { x: valueOf(problem.frame.x), y: valueOf(problem.frame.y) },
    bodies,
    ropes,
    contacts,
    pushes,
    angles: headings.angles,
    hanging: place?.hanging ?? null,
  };
}

function toward(rope: string, direction: Direction, headings: Headings, place: HangingPlace | null): Turned {
  if (direction.kind !== "hangs") return straight(headings.read(direction, "other"));
  const read = place?.directions.get(rope);
  if (read === undefined) throw new Error(`the rope ${rope} hangs, but it has no anchor and length`);
  return straight(headings.letter(read, "other"));
}

/** `number` tells its coefficients from those of other rough surfaces; 0 where there are none. */
function contactOf(surface: Surface, headings: Headings, number: number): Contact {
  const given = straight(headings.read(surface.lies.direction, "slope"));
  const { heading } = given;
  // A slope is read the way it was given; its upper side is a quarter turn to the left of a direction that runs right, to the right of one that runs left.
  const upper = heading.side > 0 ? 1 : 3;
  const tangent = surface.lies.kind === "slope" ? given : quarterTurn(given, 3);
  return {
    id: surface.id,
    friction: frictionId(surface.id),
    on: surface.on,
    of: surface.of,
    normal: surface.lies.kind === "slope" ? quarterTurn(given, upper) : given,
    tangent,
    coefficients: { static: `mus${number === 0 ? "" : number}`, kinetic: `muk${number === 0 ? "" : number}` },
    ...frictionOf(surface),
  };
}

/** Coefficients that are there; one alone stands for both, and 0 is as good as none. */
function frictionOf(surface: Surface): Pick<Contact, "staticFriction" | "kineticFriction"> {
  const { friction } = surface;
  const most = friction.static ?? friction.kinetic;
  const sliding = friction.kinetic ?? friction.static;
  if (!isRough(surface) || most === null || sliding === null) return { staticFriction: null, kineticFriction: null };
  return { staticFriction: valueOf(most), kineticFriction: valueOf(sliding) };
}

/** Whether any coefficient is given that is not 0. */
const isRough = ({ friction }: Surface): boolean =>
  [friction.static, friction.kinetic].some((c) => c !== null && !isZeroRational(c));

function bodyOf(
  problem: Problem,
  body: Body,
  number: number,
  contacts: readonly Contact[],
  headings: Headings,
): SetUpBody {
  const { load } = body;
  const mass = load.kind === "mass" ? load.mass : load.weight.div(problem.gravity);
  const weight = load.kind === "mass" ? load.mass.mul(problem.gravity) : load.weight;
  return {
    id: body.id,
    name: body.name,
    number,
    kind: body.kind,
    givenBy: load.kind,
    mass: valueOf(mass),
    weight: valueOf(weight),
    massless: isZeroRational(mass),
    freedom: freedomOf(body, contacts, headings),
    acceleration: { x: valueOf(body.acceleration.x), y: valueOf(body.acceleration.y) },
    at: body.at === null ? null : { x: body.at.x.valueOf(), y: body.at.y.valueOf() },
    letters: lettersOf(problem, number),
  };
}

/** Of the two directions along a surface the one that points up, or to the right where it is level. */
function upOrRight(tangent: Turned): Turned {
  const degrees = (((tangent.heading.degrees + 90 * tangent.quarters) % 360) + 360) % 360;
  return degrees < 180 - 1e-9 ? tangent : quarterTurn(tangent, 2);
}

function freedomOf(body: Body, contacts: readonly Contact[], headings: Headings): Freedom {
  const { motion } = body;
  switch (motion.kind) {
    case "given":
      return { kind: "given" };
    case "free":
      return { kind: "free" };
    case "line":
      return {
        kind: "line",
        along: straight(headings.read(motion.along, "other")),
        value: motion.acceleration === null ? null : valueOf(motion.acceleration),
        going: motion.going,
        seenFrom: motion.seenFrom,
        stated: true,
      };
    case "unstated": {
      const under = contacts.find((c) => c.on === body.id);
      if (under === undefined) return { kind: "rest" };
      return {
        kind: "line",
        along: upOrRight(under.tangent),
        value: null,
        going: 0,
        seenFrom: under.of,
        stated: false,
      };
    }
  }
}
