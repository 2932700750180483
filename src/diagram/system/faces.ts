// From planes without end to what is drawn of them: where each surface begins and ends, and what is under it.
import type { Layout, PlacedGround } from "./layout.ts";
import { dot, heading, plus, reach, times, type Vec } from "./vector.ts";

/** What a surface belongs to. */
export type FaceKind = "floor" | "table" | "wedge" | "wall";

/** A surface as it is drawn. */
export interface Face {
  readonly key: string;
  readonly kind: FaceKind;
  readonly ground: PlacedGround;
  readonly rough: boolean;
  /** Its two ends, in the direction of the ground's `along`. */
  readonly start: Vec;
  readonly end: Vec;
  /** The height down to which the solid under it reaches. */
  readonly base: number;
  /** Whether a rope leads over a fixed pulley at an end. */
  readonly pulleyAt: { readonly start: boolean; readonly end: boolean };
}

const margins = { level: 26, foot: 44, top: 16, wall: 22 };

/** Every surface of a layout with its ends. */
export function facesOf(layout: Layout): Face[] {
  const faces = layout.grounds.map((ground) => faceOf(layout, ground));
  const met = faces.map((face) =>
    faces.reduce((one, other) => (other === face ? one : meeting(layout, one, other)), face),
  );
  const sloping = met.filter(({ kind }) => kind === "wedge");
  const feet = sloping.map(lowEnd).map(({ y }) => y);
  const floors = met.filter(({ kind }) => kind === "floor").map(({ start }) => start.y);
  return met.map((face) => {
    const below = floors.filter((floor) => floor < lowEnd(face).y - 1);
    const lowest = face.kind === "table" && below.length > 0 ? Math.min(...below) : null;
    return { ...face, base: lowest ?? baseOf(face, feet, lowestBeside(layout, face.ground)) };
  });
}

/** The lower of a face's two ends. */
export const lowEnd = ({ start, end }: Face): Vec => (start.y <= end.y ? start : end);

function faceOf(layout: Layout, ground: PlacedGround): Face {
  const { along, normal, surfaces } = ground;
  const on = layout.bodies.filter(({ id }) => surfaces.some((surface) => surface.on === id));
  const kind = kindOf(layout, ground);
  const low = along.y >= 0 ? "start" : "end";
  const margin = (side: "start" | "end"): number =>
    kind === "wedge" ? (side === low ? margins.foot : margins.top) : kind === "wall" ? margins.wall : margins.level;
  let from =
    Math.min(...on.map(({ at, shape }) => dot(at, along) - reach(shape.outline, times(along, -1)))) - margin("start");
  let to = Math.max(...on.map(({ at, shape }) => dot(at, along) + reach(shape.outline, along))) + margin("end");
  const pulleyAt = { start: false, end: false };
  for (const { place, side, pulley } of endsOn(layout, ground)) {
    if (side > 0) to = place;
    else from = place;
    if (pulley) pulleyAt[side > 0 ? "end" : "start"] = true;
  }
  const at = (t: number): Vec => plus(times(along, t), times(normal, ground.level));
  return {
    key: ground.key,
    kind,
    ground,
    rough: surfaces.some((surface) => surface.rough),
    start: at(from),
    end: at(to),
    base: 0,
    pulleyAt,
  };
}

interface FaceEnd {
  readonly place: number;
  readonly side: number;
  readonly pulley: boolean;
}

/** Where ropes along a ground leave it: over a pulley at its edge, or to a post on it. */
function endsOn(layout: Layout, ground: PlacedGround): FaceEnd[] {
  const isOn = (body: string): boolean => ground.surfaces.some((surface) => surface.on === body);
  return layout.strands.flatMap((strand): FaceEnd[] => {
    const side = dot(heading(strand.degrees), ground.along);
    if (!isOn(strand.body) || Math.abs(Math.abs(side) - 1) > 1e-6) return [];
    const pulley = layout.fixed.find(({ key }) => key === strand.to.at);
    if (pulley?.mount === "edge")
      return [{ place: dot(pulley.axle, ground.along) - side * (pulley.radius + 6), side, pulley: true }];
    const tie = layout.ties.find(({ key }) => key === strand.to.at);
    return tie?.kind === "post" ? [{ place: dot(tie.at, ground.along) + side * 12, side, pulley: false }] : [];
  });
}

function kindOf(layout: Layout, { normal, level, surfaces }: PlacedGround): FaceKind {
  if (Math.abs(normal.y) < 1e-6 || normal.y < 0) return "wall";
  if (Math.abs(normal.x) > 1e-6) return "wedge";
  return lowestBeside(layout, { surfaces }) < level - 6 ? "table" : "floor";
}

/** How low anything of a layout hangs or stands that is not on a ground itself; Infinity where all is on it. */
function lowestBeside({ bodies, ties }: Layout, ground: Pick<PlacedGround, "surfaces">): number {
  const others = bodies.filter(({ id }) => !ground.surfaces.some((surface) => surface.on === id));
  return Math.min(
    ...others.map(({ at, shape }) => at.y - reach(shape.outline, { x: 0, y: -1 })),
    ...ties.flatMap(({ at, kind }) => (kind === "ring" ? [at.y] : [])),
  );
}

/** Two slopes meet in a ridge with a pulley, or in a notch with a body in it; a table ends at the wall that is its side. */
function meeting(layout: Layout, face: Face, other: Face): Face {
  const point = crossing(face, other);
  if (point === null) return face;
  const shared = face.ground.surfaces.some(({ on }) => other.ground.surfaces.some((surface) => surface.on === on));
  if (face.kind === "wedge" && other.kind === "wedge") {
    if (shared) return withEnd(face, point, face.start.y > face.end.y);
    const pulley = layout.fixed.find(
      ({ mount, bodies }) =>
        mount === "edge" && [face, other].every((one) => one.ground.surfaces.some(({ on }) => bodies.includes(on))),
    );
    return pulley === undefined ? face : withEnd(face, point, face.end.y > face.start.y);
  }
  if (face.kind === "table" && other.kind === "wall" && !shared) {
    const side = other.ground.normal.x > 0;
    return face.pulleyAt[side ? "end" : "start"] ? withEnd(face, point, side) : face;
  }
  if (
    face.kind === "wall" &&
    other.kind === "table" &&
    !shared &&
    other.pulleyAt[face.ground.normal.x > 0 ? "end" : "start"]
  )
    return withEnd(face, point, true);
  return face;
}

const withEnd = (face: Face, point: Vec, atEnd: boolean): Face =>
  atEnd ? { ...face, end: point } : { ...face, start: point };

function crossing(one: Face, other: Face): Vec | null {
  const [a, b] = [one.ground, other.ground];
  const across = a.normal.x * b.normal.y - a.normal.y * b.normal.x;
  if (Math.abs(across) < 1e-6) return null;
  return {
    x: (a.level * b.normal.y - b.level * a.normal.y) / across,
    y: (a.normal.x * b.level - b.normal.x * a.level) / across,
  };
}

function baseOf(face: Face, feet: readonly number[], lowest: number): number {
  if (face.kind === "floor" || face.kind === "wall") return lowEnd(face).y;
  return Math.min(lowest - 24, ...(face.kind === "wedge" ? [Math.min(...feet), lowEnd(face).y] : []));
}
