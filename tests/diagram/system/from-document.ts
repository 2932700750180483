/**
 * Scenes to draw, from problem documents and the answers of the crosscheck's oracle, so that the pictures are tested without the solver.
 * Prints are rounded here for looks only.
 */
import { readProblemDocument } from "../../../shared/problem/schema.ts";
import type { Body, Direction, Problem, ProblemDocument, Rope, Surface } from "../../../shared/problem/index.ts";
import {
  letter,
  type Run,
  type SystemBody,
  type SystemForce,
  type SystemPull,
  type SystemRope,
  type SystemScene,
  type SystemSurface,
} from "../../../src/diagram/index.ts";
import type { OracleAnswer } from "../../crosscheck/fixture.ts";
import { printed } from "../two-ropes.ts";
import { Angles, forcesOn, named, sizeOf, sumOf, withAngle, type Rest } from "./from-document-forces.ts";
import { hangingPlace } from "./hanging-place.ts";

type Vector = { readonly x: number; readonly y: number };

const rad = Math.PI / 180;
const number = (value: { valueOf(): number }): number => value.valueOf();

function degreesOf(direction: Direction, hung: Vector | null): number {
  if (direction.kind === "angle") return number(direction.degrees);
  const { x, y } =
    direction.kind === "slope" ? { x: number(direction.run), y: number(direction.rise) } : (hung ?? { x: 0, y: 1 });
  return Math.atan2(y, x) / rad;
}

/** The problem of a document that is known to be good. */
export function problemOf(document: ProblemDocument): Problem {
  const reading = readProblemDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.problem;
}

const unsolved: OracleAnswer = { case: "under-determined", states: {}, answers: {} };

/** The scene of a document, with the oracle's answers where there are any. */
export function sceneFromDocument(document: ProblemDocument, answer: OracleAnswer = unsolved): SystemScene {
  const problem = problemOf(document);
  const angles = new Angles();
  const hung = hangingPlace(problem);
  const places = new Map(problem.bodies.map((body) => [body.id, placeOf(body) ?? hung] as const));
  const ropes = problem.ropes.map((rope) => ropeOf(rope, places, angles, answer));
  const surfaces = problem.surfaces.map((surface) => surfaceOf(surface, angles, answer));
  const unit = problem.units === "SI" ? "N" : "lbf";
  const pushes = problem.pushes.map(({ id, on, direction, size }) => ({
    id,
    on,
    label: named(id, "P"),
    degrees: degreesOf(direction, null),
    ...angles.of(degreesOf(direction, null)),
    text: size === null ? null : `${printed(number(size))} ${unit}`,
  }));
  const scene = { ropes, surfaces, pushes, frame: { x: number(problem.frame.x), y: number(problem.frame.y) } };
  return {
    ...scene,
    bodies: problem.bodies.map((body, index) => bodyOf(problem, body, index, scene, places, answer, angles)),
    forceUnit: unit,
    solved: answer.case === "determined",
  };
}

const placeOf = ({ at }: Body): Vector | null => (at === null ? null : { x: number(at.x), y: number(at.y) });

function ropeOf(
  rope: Rope,
  places: ReadonlyMap<string, Vector | null>,
  angles: Angles,
  answer: OracleAnswer,
): SystemRope {
  const anchor = rope.anchor === null ? null : { x: number(rope.anchor.x), y: number(rope.anchor.y) };
  const pulls = [{ on: rope.on, direction: rope.direction }, ...rope.further].map(({ on, direction }): SystemPull => {
    const at = places.get(on) ?? { x: 0, y: 0 };
    const degrees = degreesOf(direction, anchor === null ? null : { x: anchor.x - at.x, y: anchor.y - at.y });
    return { on, degrees, ...angles.of(degrees) };
  });
  return {
    id: rope.id,
    label: named(rope.id),
    state: answer.states[rope.id] === "slack" ? "slack" : "taut",
    idle: sizeOf(answer, rope.id) === 0,
    pulls,
    anchor,
    length: rope.length === null ? null : number(rope.length),
  };
}

function surfaceOf({ id, on, of, lies, friction }: Surface, angles: Angles, answer: OracleAnswer): SystemSurface {
  const given = degreesOf(lies.direction, null);
  const degrees = lies.kind === "slope" ? given : given - 90;
  const upper = Math.cos(degrees * rad) >= 0 ? degrees + 90 : degrees - 90;
  return {
    id,
    on,
    of,
    degrees,
    normal: lies.kind === "slope" ? upper : given,
    ...angles.of(degrees),
    rough: friction.static !== null || friction.kinetic !== null,
    touching: answer.states[id] !== "lifted",
  };
}

function bodyOf(
  problem: Problem,
  body: Body,
  index: number,
  scene: Rest,
  places: ReadonlyMap<string, Vector | null>,
  answer: OracleAnswer,
  angles: Angles,
): SystemBody {
  const si = problem.units === "SI";
  const g = number(problem.gravity);
  const { load } = body;
  const mass = load.kind === "mass" ? number(load.mass) : g === 0 ? 0 : number(load.weight) / g;
  const weight = load.kind === "mass" ? mass * g : number(load.weight);
  const unit = si ? "N" : "lbf";
  const forces = forcesOn(body.id, scene, answer, unit);
  const own = problem.bodies.length > 1 ? String(index + 1) : "";
  const heavy: SystemForce[] =
    weight === 0
      ? []
      : [{ ref: "weight", kind: "weight", label: weightLabel(load.kind, own), degrees: -90, size: weight, text: `${printed(weight)} ${unit}`, given: true }]; // prettier-ignore
  const all = [...heavy, ...forces];
  const net = answer.case === "determined" && all.every(({ size }) => size !== null) ? sumOf(all) : null;
  const along = body.motion.kind === "line" ? degreesOf(body.motion.along, null) : null;
  const given =
    body.motion.kind === "given" && (number(body.acceleration.x) !== 0 || number(body.acceleration.y) !== 0);
  const acceleration = given
    ? { x: number(body.acceleration.x), y: number(body.acceleration.y) }
    : net === null || mass === 0
      ? null
      : { x: snap(net.x / mass, g), y: snap(net.y / mass, g) };
  const slope = scene.surfaces.find((s) => s.on === body.id && s.degreesText !== null);
  return {
    id: body.id,
    name: body.name,
    kind: body.kind,
    loadText: mass === 0 ? null : load.kind === "mass" ? `${printed(mass)} ${si ? "kg" : "slug"}` : `${printed(weight)} ${unit}`, // prettier-ignore
    at: places.get(body.id) ?? null,
    forces: all.map((force) => withAngle(force, slope?.degrees ?? 0, angles)),
    axes: slope === undefined ? { x: 0, y: 90 } : { x: slope.degrees, y: slope.normal },
    acceleration,
    accelerationLabel: named(`a${own}`),
    accelerationGiven: given,
    along,
    net:
      net === null
        ? null
        : { x: snap(net.x, weight), y: snap(net.y, weight), label: [...named(`m${own}`), ...named(`a${own}`)] },
  };
}

const snap = (value: number, size: number): number => (Math.abs(value) < 1e-9 * Math.max(1, size) ? 0 : value);

function weightLabel(kind: "mass" | "weight", own: string): Run[] {
  return kind === "mass" ? [...named(`m${own}`), letter("g")] : named(`W${own}`);
}
