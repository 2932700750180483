// How the parts of a situation stand beside each other, and how all of it is laid into its picture.
import { boxOf, type Box, type Point } from "../geometry.ts";
import { facesOf, lowEnd, type Face } from "./faces.ts";
import type { Layout, PlacedGround } from "./layout.ts";
import { dot, plus, ring, type Vec } from "./vector.ts";

/** A part of a situation with its surfaces and beams, moved to its place. */
export interface Part {
  readonly layout: Layout;
  readonly faces: readonly Face[];
  readonly beams: readonly Beam[];
}

/** A beam overhead: its lower side, from one end to the other. */
export interface Beam {
  readonly y: number;
  readonly left: number;
  readonly right: number;
}

/** From the layout's plane to the drawing plane. */
export interface SystemView {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly at: (place: Vec) => Point;
}

/** How wide every picture of a situation is, and how high it may be. */
export const systemWidth = 360;
const heights = [240, 290, 340, 400];
/** Where a frame speeds up, it is drawn round everything, with its acceleration beside it. */
const margins = { still: { x: 34, top: 34, bottom: 36 }, carried: { x: 70, top: 40, bottom: 44 } };
const largest = 1.8;
const betweenParts = 30;
const beamEnds = 20;

/** The parts, side by side: on one ground, or under one beam where they have none. */
export function arranged(layouts: readonly Layout[]): Part[] {
  const parts = layouts.map((layout) => ({ layout, faces: facesOf(layout), beams: beamsOf(layout) }));
  const overhead = Math.max(...parts.map((part) => topAboveFloor(part)));
  let right: number | null = null;
  return parts.map((part) => {
    const bounds = boundsOf(part);
    const floor = floorOf(part);
    const beam = part.beams[0]?.y ?? bounds.y + bounds.height;
    const dy = floor !== null ? 0 - floor : Number.isFinite(overhead) ? overhead - beam : 0 - beam;
    const dx = right === null ? 0 : right + betweenParts - bounds.x;
    right = bounds.x + dx + bounds.width;
    return moved(part, { x: dx, y: dy });
  });
}

function floorOf({ faces }: Pick<Part, "faces">): number | null {
  const floors = faces.filter(({ kind }) => kind !== "wall");
  return floors.length === 0 ? null : Math.min(...floors.map((face) => face.base));
}

/** How far a part with a floor reaches above it; where it has a beam, to that. */
function topAboveFloor(part: Part): number {
  const floor = floorOf(part);
  if (floor === null) return -Infinity;
  const bounds = boundsOf(part);
  return Math.max(bounds.y + bounds.height - floor, part.beams.length > 0 ? 0 : 110);
}

function beamsOf({ ties, fixed }: Layout): Beam[] {
  const held = [
    ...ties.filter(({ kind }) => kind === "beam").map(({ at }) => at),
    ...fixed.filter(({ mount }) => mount === "beam").map((pulley) => pulley.held),
  ];
  const rows: Vec[][] = [];
  for (const at of held) {
    const row = rows.find(([first]) => first !== undefined && Math.abs(first.y - at.y) < 0.5);
    if (row === undefined) rows.push([at]);
    else row.push(at);
  }
  return rows.map((row) => ({
    y: row[0]?.y ?? 0,
    left: Math.min(...row.map(({ x }) => x)) - beamEnds,
    right: Math.max(...row.map(({ x }) => x)) + beamEnds,
  }));
}

/** Everything that takes up room, as points of the layout. */
export function pointsOf({ layout, faces, beams }: Part): Vec[] {
  const bodies = layout.bodies.flatMap(({ at, shape }) => shape.outline.map((corner) => plus(at, corner)));
  const pushes = layout.pushes.flatMap(({ on, tail, tip }) => {
    const body = layout.bodies.find(({ id }) => id === on);
    return body === undefined ? [] : [plus(body.at, tail), plus(body.at, tip)];
  });
  return [
    ...bodies,
    ...pushes,
    ...layout.strands.flatMap(({ start, end, loose }) => [start, end, ...(loose ?? [])]),
    ...layout.ties.map(({ at }) => at),
    ...layout.fixed.flatMap(({ axle, radius, held }) => [...ring(axle, radius, 8), held]),
    ...faces.flatMap(({ start, end, base }) => [start, end, { x: start.x, y: base }, { x: end.x, y: base }]),
    ...beams.flatMap(({ y, left, right }) => [
      { x: left, y: y + 6 },
      { x: right, y: y + 6 },
    ]),
  ];
}

function boundsOf(part: Part): Box {
  return boxOf(pointsOf(part));
}

function moved(part: Part, by: Vec): Part {
  const { layout } = part;
  const shift = (at: Vec): Vec => plus(at, by);
  const settled = (ground: PlacedGround): PlacedGround => ({ ...ground, level: ground.level + dot(by, ground.normal) });
  return {
    layout: {
      ...layout,
      bodies: layout.bodies.map((body) => ({ ...body, at: shift(body.at) })),
      strands: layout.strands.map((one) => ({
        ...one,
        start: shift(one.start),
        end: shift(one.end),
        loose: one.loose?.map(shift) ?? null,
      })),
      fixed: layout.fixed.map((one) => ({ ...one, axle: shift(one.axle), held: shift(one.held) })),
      ties: layout.ties.map((one) => ({ ...one, at: shift(one.at) })),
      grounds: layout.grounds.map(settled),
    },
    faces: part.faces.map((face) => ({
      ...face,
      ground: settled(face.ground),
      start: shift(face.start),
      end: shift(face.end),
      base: face.base + by.y,
    })),
    beams: part.beams.map(({ y, left, right }) => ({ y: y + by.y, left: left + by.x, right: right + by.x })),
  };
}

/** The view in which all parts are as large as fits, in the lowest picture that costs them little. */
export function viewOf(parts: readonly Part[], frame: Vec): SystemView {
  const all = boxOf(parts.flatMap(pointsOf));
  const margin = frame.x === 0 && frame.y === 0 ? margins.still : margins.carried;
  const across = (systemWidth - 2 * margin.x) / Math.max(all.width, 1);
  const scales = heights.map((height) => {
    const down = (height - margin.top - margin.bottom) / Math.max(all.height, 1);
    return { height, scale: Math.min(largest, across, down) };
  });
  const most = Math.max(...scales.map(({ scale }) => scale));
  const { height, scale } = scales.find((one) => one.scale >= 0.93 * most) ?? { height: 400, scale: 1 };
  const middle = { x: all.x + all.width / 2, y: all.y + all.height / 2 };
  const centre = { x: systemWidth / 2, y: (margin.top + height - margin.bottom) / 2 };
  return {
    width: systemWidth,
    height,
    scale,
    at: (place) => ({ x: centre.x + scale * (place.x - middle.x), y: centre.y - scale * (place.y - middle.y) }),
  };
}

/** The corners of a body in its place. */
export function cornersOf({ at, shape }: Layout["bodies"][number]): Vec[] {
  return shape.outline.map((corner) => plus(at, corner));
}

/** How far down a face's solid reaches from its lower end. */
export const plinthOf = (face: Face): number => lowEnd(face).y - face.base;
