// What each body looks like: its outline about the point where the lines of its forces meet.
import { glyphSize } from "../load-glyph.ts";
import type { SystemBody, SystemScene, SystemSurface } from "../system-scene.ts";
import { heading, ring, spin, type Vec } from "./vector.ts";

/** How a body is drawn. */
export interface Shape {
  readonly kind: "box" | "hanging" | "centred" | "knot" | "pulley" | "ball" | "ramp";
  /** Degrees by which it lies turned; between -90 and 90. */
  readonly tilt: number;
  /** A convex outline, anticlockwise, about the point where its forces meet. */
  readonly outline: readonly Vec[];
  /** The size of an upright box, before it is turned. */
  readonly width: number;
  readonly height: number;
}

/** How much smaller than on its own a load's glyph is drawn. */
export const glyphScale = 0.85;
const boxSize = { width: 46, height: 28 };
const ballRadius = 17;
const knotRadius = 4;

/** The outline of a body other than a pulley. */
export function shapeOf(scene: SystemScene, body: SystemBody): Shape {
  if (body.kind === "knot") return round("knot", knotRadius);
  const contacts = scene.surfaces.filter((surface) => surface.on === body.id);
  const face = rampFace(scene, body, contacts);
  if (face !== null) return ramp(face, above(scene, body.id));
  if (isInNotch(contacts)) return round("ball", ballRadius);
  if (contacts.length > 0 || scene.surfaces.some((surface) => surface.of === body.id))
    return box(scene, body, contacts);
  return hangs(scene, body) ? hanging() : centred();
}

function round(kind: "knot" | "ball", radius: number): Shape {
  return { kind, tilt: 0, outline: ring({ x: 0, y: 0 }, radius), width: 2 * radius, height: 2 * radius };
}

function box(scene: SystemScene, body: SystemBody, contacts: readonly SystemSurface[]): Shape {
  const floor = contacts.find((surface) => !isUpright(surface.degrees));
  const tilt = floor === undefined ? 0 : tiltOf(floor.degrees);
  const width = boxSize.width + 10 * above(scene, body.id);
  const { height } = boxSize;
  return { kind: "box", tilt, outline: spin(rectangle(width, height), tilt), width, height };
}

function hanging(): Shape {
  const half = (glyphSize.width * glyphScale) / 2;
  const height = glyphSize.height * glyphScale;
  const outline = [
    { x: 0, y: 0 },
    { x: 0 - half, y: -9 },
    { x: 0 - half, y: 0 - height },
    { x: half, y: 0 - height },
    { x: half, y: -9 },
  ];
  return { kind: "hanging", tilt: 0, outline, width: 2 * half, height };
}

function centred(): Shape {
  const { width, height } = { width: 34, height: 26 };
  return { kind: "centred", tilt: 0, outline: rectangle(width, height), width, height };
}

function rectangle(width: number, height: number): Vec[] {
  const [x, y] = [width / 2, height / 2];
  return [
    { x: 0 - x, y: 0 - y },
    { x, y: 0 - y },
    { x, y },
    { x: 0 - x, y },
  ];
}

/** Whether a load can hang by its ring: what pulls it does so upwards, to the side or straight down. */
function hangs(scene: SystemScene, body: SystemBody): boolean {
  const pulls = scene.ropes.flatMap((rope) => rope.pulls.filter((pull) => pull.on === body.id));
  const ups = pulls.filter(({ degrees }) => heading(degrees).y > -0.02 || Math.abs(heading(degrees).x) < 1e-9);
  return ups.length === pulls.length;
}

const isUpright = (degrees: number): boolean => Math.abs(heading(degrees).x) < 1e-6;

function tiltOf(degrees: number): number {
  const turned = (((degrees % 180) + 180) % 180) + 0;
  return turned > 90 ? turned - 180 : turned;
}

/** Two surfaces of supports, neither along the other nor square to it. */
function isInNotch(contacts: readonly SystemSurface[]): boolean {
  const supports = contacts.filter((surface) => surface.of === null);
  const [one, other] = supports;
  if (one === undefined || other === undefined) return false;
  const apart = (((one.degrees - other.degrees) % 90) + 90) % 90;
  return Math.min(apart, 90 - apart) > 0.5;
}

/** How many bodies stand on each other above a body. */
function above(scene: SystemScene, id: string, depth = 0): number {
  if (depth > scene.bodies.length) return 0;
  const on = scene.surfaces.filter((s) => s.of === id && heading(s.normal).y > 0.1);
  return on.reduce((most, surface) => Math.max(most, 1 + above(scene, surface.on, depth + 1)), 0);
}

/** The slope that a body carries on its back for another one: degrees to its upper end, between 0 and 180. */
function rampFace(scene: SystemScene, body: SystemBody, contacts: readonly SystemSurface[]): number | null {
  const own = contacts.find((surface) => !isUpright(surface.degrees));
  const face = scene.surfaces.find((surface) => {
    if (surface.of !== body.id || isUpright(surface.degrees)) return false;
    return Math.abs(tiltOf(surface.degrees) - (own === undefined ? 0 : tiltOf(own.degrees))) > 0.05;
  });
  if (face === undefined) return null;
  const tilt = tiltOf(face.degrees);
  return tilt > 0 ? tilt : 180 + tilt;
}

function ramp(degrees: number, carried: number): Shape {
  const along = heading(degrees);
  const length = 96 + 10 * carried;
  const side = along.x > 0 ? 1 : -1;
  const [run, rise] = [Math.abs(along.x) * length, along.y * length];
  const base = Math.max(run, 26);
  // From the foot, mirrored where the slope rises to the left; the centre of a triangle is a third of the way from its upright side.
  const corners = [
    { x: 0, y: 0 },
    { x: base, y: 0 },
    { x: base, y: rise },
    ...(base > run ? [{ x: run, y: rise }] : []),
  ].map(({ x, y }) => ({ x: side * (x - base * 0.64), y: y - rise * 0.36 }));
  const outline = side > 0 ? corners : corners.reverse();
  return { kind: "ramp", tilt: 0, outline, width: base, height: rise };
}
