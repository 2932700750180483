// The names: of each rope beside its longest stretch, of each body with its mass, of each push; and the accelerations beside what has them.
import { doubleArrow, forceArrow } from "../arrow.ts";
import { textSize } from "../force-marks.ts";
import { along, between, boxOf, boxRound, distance, type Box, type Point } from "../geometry.ts";
import { measure, words, type Run } from "../label.ts";
import type { Spot } from "../label-place.ts";
import { beside, beyondTip } from "../spots.ts";
import type { Sketch } from "../sketch.ts";
import type { SystemBody, SystemScene } from "../system-scene.ts";
import type { PlacedBody } from "./layout.ts";
import { heading, plus, times } from "./vector.ts";
import { looseLine } from "./draw-ropes.ts";
import { cornersOf, type Part, type SystemView } from "./view.ts";

const longestName = 132;

/** The arrows of the pushes, with their letters. */
export function drawPushes(sketch: Sketch, { layout }: Part, view: SystemView): void {
  for (const push of layout.pushes) {
    const body = layout.bodies.find(({ id }) => id === push.on);
    if (body === undefined) continue;
    const from = view.at(plus(body.at, push.tail));
    const to = view.at(plus(body.at, push.tip));
    forceArrow(sketch, { key: `push-${push.id}`, from, to, paint: "push", ref: push.id });
    const outer = push.pulls ? to : from;
    const inner = push.pulls ? from : to;
    const length = Math.max(distance(inner, outer), 1);
    const away = { x: (outer.x - inner.x) / length, y: (outer.y - inner.y) / length };
    sketch.label({
      key: `push-${push.id}-label`,
      runs: push.text === null ? push.label : [...push.label, words(` = ${push.text}`)],
      size: textSize.angle,
      look: "symbol push",
      ref: push.id,
      spots: [...beside(from, to, 1, 5), ...beyondTip(outer, away)],
      home: along(inner, away, length / 2),
    });
  }
}

/** The letters of the ropes. */
export function nameRopes(sketch: Sketch, { layout }: Part, scene: SystemScene, view: SystemView): void {
  for (const rope of scene.ropes) {
    const strands = layout.strands
      .filter((strand) => strand.rope === rope.id)
      .map(({ start, end }) => [view.at(start), view.at(end)] as const)
      .sort((a, b) => distance(...b) - distance(...a));
    const [longest] = strands;
    if (longest === undefined) continue;
    const loose = layout.strands.find((strand) => strand.rope === rope.id && strand.loose !== null);
    const curve = loose === undefined ? null : looseLine(loose, view);
    const middle = curve?.[Math.floor(curve.length / 2)] ?? between(longest[0], longest[1], 0.5);
    sketch.label({
      key: `name-${rope.id}`,
      runs: rope.state === "slack" ? [...rope.label, words(", slack")] : rope.label,
      size: textSize.angle,
      look: "symbol",
      ref: rope.id,
      spots: [
        ...(curve === null ? [] : besideCurve(curve)),
        ...strands.flatMap(([a, b]) => beside(a, b, 1, rope.state === "slack" ? 7 : 4)),
      ],
      home: middle,
    });
  }
}

/** Over and under a hanging curve, at its middle first. */
function besideCurve(curve: readonly Point[]): Spot[] {
  return [0.5, 0.35, 0.65].flatMap((share) => {
    const at = curve[Math.floor(share * (curve.length - 1))];
    if (at === undefined) return [];
    return [-1, 1].map((down) => ({ at, away: { x: 0, y: down }, gap: 4 }));
  });
}

/** The names of the bodies of some kinds, each with its mass. */
export function nameBodies(
  sketch: Sketch,
  { layout }: Part,
  scene: SystemScene,
  view: SystemView,
  of: (kind: PlacedBody["shape"]["kind"]) => boolean,
): void {
  for (const placed of layout.bodies.filter(({ shape }) => of(shape.kind))) {
    const body = scene.bodies.find(({ id }) => id === placed.id);
    if (body === undefined) continue;
    const box = boxOf(cornersOf(placed).map((corner) => view.at(corner)));
    sketch.label({
      key: `name-${body.id}`,
      runs: bodyName(body),
      size: textSize.note,
      look: "note",
      ref: body.id,
      spots: spotsFor(placed, box, view),
      home: { x: box.x + box.width / 2, y: placed.shape.kind === "hanging" ? box.y + box.height : box.y },
    });
  }
}

/** Name and mass; the mass alone, or the beginning of the name, where that would be too long. */
function bodyName({ name, loadText }: SystemBody): Run[] {
  const full = [words(loadText === null ? name : `${name}, ${loadText}`)];
  if (measure(full, textSize.note).width <= longestName) return full;
  return loadText === null ? [words(name.slice(0, 18))] : [words(loadText)];
}

/** The places for a body's name, the best first: over a crate, in the way its lid looks; under what hangs; beside a ramp. */
function spotsFor({ shape, at }: PlacedBody, box: Box, view: SystemView): Spot[] {
  const [above, below, right, before, ...corners] = around(box);
  if (above === undefined || below === undefined || right === undefined || before === undefined) return [];
  if (shape.kind === "hanging") return [below, right, before, { ...below, gap: 24 }, above, ...corners];
  if (shape.kind === "ramp") return [before, right, below, ...corners];
  if (shape.kind === "knot") return [above, right, before, below, ...corners];
  const rows = [24, 43].map((gap) => ({ ...above, gap }));
  if (shape.kind !== "box" || shape.tilt === 0) return [above, right, before, ...rows, below, ...corners];
  const lid = heading(shape.tilt + 90);
  const side = view.at(plus(at, times(lid, shape.height / 2)));
  const overLid = { at: side, away: { x: lid.x, y: 0 - lid.y }, gap: 3, keep: "edge" as const };
  const ends = [1, -1].map((sign) => {
    const way = times(heading(shape.tilt), sign);
    const end = view.at(plus(at, times(way, shape.width / 2)));
    return { at: end, away: { x: way.x, y: 0 - way.y }, gap: 3, keep: "edge" as const };
  });
  return [above, overLid, ...ends, { ...overLid, gap: 14 }, right, before, ...corners, below];
}

function around(box: Box): Spot[] {
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const above = { at: { x: middle.x, y: box.y }, away: { x: 0, y: -1 }, gap: 3 };
  const below = { at: { x: middle.x, y: box.y + box.height }, away: { x: 0, y: 1 }, gap: 3 };
  const right = { at: { x: box.x + box.width, y: middle.y }, away: { x: 1, y: 0 }, gap: 4 };
  const before = { at: { x: box.x, y: middle.y }, away: { x: -1, y: 0 }, gap: 4 };
  const corners = [-1, 1].flatMap((up) =>
    [1, -1].map((side) => ({
      at: { x: side > 0 ? box.x + box.width : box.x, y: up < 0 ? box.y : box.y + box.height },
      away: { x: side * 0.9, y: up * 0.44 },
      gap: 2,
    })),
  );
  return [above, below, right, before, ...corners];
}

/** An acceleration in the freest of some places. */
export function accelerationNear(
  sketch: Sketch,
  mark: {
    readonly key: string;
    readonly x: number;
    readonly y: number;
    readonly runs: readonly Run[];
    readonly ref: string;
  },
  centres: readonly Point[],
): void {
  const size = Math.hypot(mark.x, mark.y);
  const [first] = centres;
  if (size === 0 || first === undefined) return;
  const costs = centres.map((centre) => sketch.cost(boxRound(centre, 24)));
  const centre = centres[costs.indexOf(Math.min(...costs))] ?? first;
  const ahead = { x: mark.x / size, y: 0 - mark.y / size };
  const [from, to] = [along(centre, ahead, -19), along(centre, ahead, 19)];
  doubleArrow(sketch, { key: mark.key, from, to, paint: "accel", ref: mark.ref });
  sketch.label({
    key: `${mark.key}-label`,
    runs: mark.runs,
    size: textSize.symbol,
    look: "symbol accel",
    ref: mark.ref,
    spots: [...beside(from, to, 1, 4, [0.5]), ...beyondTip(to, ahead)],
    home: centre,
  });
}
