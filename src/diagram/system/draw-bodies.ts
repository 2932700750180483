// The bodies: crates on surfaces, loads that hang, knots, balls, ramps; each blocks its place for labels.
import { boxOf, type Point } from "../geometry.ts";
import { loadGlyph } from "../load-glyph.ts";
import { circlePath, polyline } from "../path-text.ts";
import type { Sketch } from "../sketch.ts";
import type { SystemBody } from "../system-scene.ts";
import type { PlacedBody } from "./layout.ts";
import { glyphScale } from "./shapes.ts";
import { plus, spin, type Vec } from "./vector.ts";
import { cornersOf, type SystemView } from "./view.ts";

/** Draws the bodies of a part, pulleys apart. */
export function drawBodies(
  sketch: Sketch,
  placed: readonly PlacedBody[],
  bodies: readonly SystemBody[],
  view: SystemView,
): void {
  for (const one of placed) {
    const body = bodies.find(({ id }) => id === one.id);
    if (body !== undefined) drawBody(sketch, one, body, view);
  }
}

function drawBody(sketch: Sketch, placed: PlacedBody, body: SystemBody, view: SystemView): void {
  const { shape, at } = placed;
  const key = `body-${body.id}`;
  const corners = cornersOf(placed).map((corner) => view.at(corner));
  if (shape.kind === "knot") sketch.path(key, circlePath(view.at(at), 4), "dot", body.id);
  if (shape.kind === "ball")
    sketch.path(key, circlePath(view.at(at), (shape.width / 2) * view.scale), "glyph-light", body.id);
  if (shape.kind === "ramp") sketch.path(key, polyline(corners, true), "glyph-light", body.id);
  if (shape.kind === "box" || shape.kind === "centred") drawCrate(sketch, key, placed, corners, view);
  if (shape.kind === "hanging") {
    const scale = glyphScale * view.scale;
    for (const part of loadGlyph(body.name, view.at(at), scale))
      sketch.path(`${key}-${part.key}`, part.d, part.look, body.id);
  }
  if (shape.kind !== "pulley") blockShape(sketch, corners);
}

/** A crate with two slats, turned as its surface is. */
function drawCrate(
  sketch: Sketch,
  key: string,
  { id, shape, at }: PlacedBody,
  corners: readonly Point[],
  view: SystemView,
): void {
  sketch.path(key, polyline(corners, true), "glyph-light", id);
  const [x, y] = [shape.width / 2, shape.height / 6];
  const slat = (height: number): readonly Vec[] => [
    { x: 0 - x, y: height },
    { x, y: height },
  ];
  const slats = [slat(y), slat(0 - y)].map((ends) =>
    polyline(spin(ends, shape.tilt).map((end) => view.at(plus(at, end)))),
  );
  sketch.path(`${key}-slats`, slats.join(""), "slat", id);
}

/** Keeps labels off a body: off strips of it where it lies turned, so that its corners' empty places stay free. */
function blockShape(sketch: Sketch, corners: readonly Point[]): void {
  const box = boxOf(corners);
  const strips = Math.max(1, Math.round(box.height / 10));
  for (let i = 0; i < strips; i += 1) {
    const top = box.y + (box.height * i) / strips;
    const bottom = box.y + (box.height * (i + 1)) / strips;
    const inside = corners.flatMap((a, index) => {
      const b = corners[(index + 1) % corners.length] ?? a;
      return clipped(a, b, top, bottom);
    });
    if (inside.length > 0) sketch.block(boxOf(inside));
  }
}

/** The ends of the part of a line between two heights. */
function clipped(a: Point, b: Point, top: number, bottom: number): Point[] {
  const [high, low] = a.y <= b.y ? [a, b] : [b, a];
  if (low.y < top || high.y > bottom) return [];
  const at = (y: number): Point => {
    const share = low.y === high.y ? 0 : (y - high.y) / (low.y - high.y);
    return { x: high.x + share * (low.x - high.x), y };
  };
  return [at(Math.max(top, high.y)), at(Math.min(bottom, low.y)), ...(low.y === high.y ? [low] : [])];
}
