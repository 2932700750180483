// The surfaces: ground with strokes under it, tables on legs, slopes as wedges, walls. A rough one has teeth along it.
import { along, between, boxOf, distance, unitTo, type Point } from "../geometry.ts";
import { polyline } from "../path-text.ts";
import { avoid, type Sketch } from "../sketch.ts";
import { plinthOf, type Part, type SystemView } from "./view.ts";
import type { Face } from "./faces.ts";
import type { Vec } from "./vector.ts";

const hatch = { apart: 9, length: 7 };
const slab = 8;
const seam = 1;

/** Draws every surface of a part. */
export function drawFaces(sketch: Sketch, part: Part, view: SystemView): void {
  for (const face of part.faces) {
    const start = view.at(face.start);
    const end = view.at(face.end);
    const base = view.at({ x: face.start.x, y: face.base }).y;
    if (face.kind === "wedge") drawWedge(sketch, part, face, [start, end], base);
    else if (face.kind === "table") drawTable(sketch, part, face, start, end, base);
    else drawHatch(sketch, face.key, start, end, face.ground.normal.x, face.ground.normal.y);
    sketch.lines(face.key, [start, end], "surface", avoid.shaft);
    if (face.rough) drawTeeth(sketch, face, start, end);
  }
}

/** Oblique strokes on the side away from a surface's normal (which has y upwards). */
function drawHatch(sketch: Sketch, key: string, start: Point, end: Point, nx: number, ny: number): void {
  const ahead = unitTo(start, end);
  const inward = { x: 0 - nx, y: ny };
  const count = Math.max(1, Math.floor(distance(start, end) / hatch.apart));
  const strokes = Array.from({ length: count }, (_, i) => {
    const top = between(start, end, (i + 0.75) / count);
    const foot = along(along(top, inward, hatch.length), ahead, 0 - hatch.length * 0.7);
    return polyline([top, foot]);
  });
  sketch.path(`${key}-hatch`, strokes.join(""), "hatch");
  const box = boxOf([start, end, along(start, inward, hatch.length), along(end, inward, hatch.length)]);
  if (Math.min(box.width, box.height) <= hatch.length + 0.01) sketch.block(box);
}

/** A slope's solid. Where another slope begins at its ridge, the two are one solid and no line divides them. */
function drawWedge(sketch: Sketch, part: Part, face: Face, [start, end]: readonly [Point, Point], base: number): void {
  const corners = [start, end, { x: end.x, y: base }, { x: start.x, y: base }] as const;
  const shared = (place: Vec): boolean =>
    part.faces.some((other) => other !== face && [other.start, other.end].some((end) => apart(end, place) < 0.01));
  // A little over each other, so that no seam is seen between them.
  const over = { end: shared(face.end) ? seam : 0, start: shared(face.start) ? seam : 0 };
  const solid = [start, end, { x: end.x + over.end, y: base }, { x: start.x - over.start, y: base }];
  sketch.path(`${face.key}-solid`, polyline(solid, true), "solid bare");
  const sides = [
    ...(shared(face.end) ? [] : [[corners[1], corners[2]]]),
    [corners[2], corners[3]],
    ...(shared(face.start) ? [] : [[corners[3], corners[0]]]),
  ];
  sketch.path(`${face.key}-sides`, sides.map((side) => polyline(side)).join(""), "edge");
  for (const side of sides) sketch.keepOff(side, avoid.outline);
}

const apart = (a: Vec, b: Vec): number => Math.hypot(a.x - b.x, a.y - b.y);

/** A top on two legs; a block where the side of the table is a surface too. */
function drawTable(sketch: Sketch, part: Part, face: Face, start: Point, end: Point, base: number): void {
  const isBlock = part.faces.some(({ kind }) => kind === "wall");
  if (isBlock || base - start.y < 3 * slab || plinthOf(face) <= 0) {
    const corners = [start, end, { x: end.x, y: base }, { x: start.x, y: base }];
    sketch.path(`${face.key}-solid`, polyline(corners, true), "solid");
    return;
  }
  const box = (left: number, top: number, width: number, height: number): string =>
    polyline(
      [
        { x: left, y: top },
        { x: left + width, y: top },
        { x: left + width, y: top + height },
        { x: left, y: top + height },
      ],
      true,
    );
  sketch.path(`${face.key}-solid`, box(start.x, start.y, end.x - start.x, slab), "solid");
  for (const [name, left] of [
    ["left", start.x + 6],
    ["right", end.x - 12],
  ] as const) {
    sketch.path(`${face.key}-leg-${name}`, box(left, start.y + slab, 6, base - start.y - slab), "solid");
    sketch.keepOff(
      [
        { x: left + 3, y: start.y + slab },
        { x: left + 3, y: base },
      ],
      avoid.outline,
    );
  }
}

function drawTeeth(sketch: Sketch, { key, ground }: Face, start: Point, end: Point): void {
  const inward = { x: 0 - ground.normal.x, y: ground.normal.y };
  const count = Math.max(2, Math.round(distance(start, end) / 5));
  const points = Array.from({ length: 2 * count + 1 }, (_, i) => {
    const place = between(start, end, i / (2 * count));
    return i % 2 === 0 ? place : along(place, inward, 2.6);
  });
  sketch.path(`${key}-teeth`, polyline(points), "teeth");
}
