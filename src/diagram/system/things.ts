// What a layout consists of as convex shapes, for keeping them apart.
import type { Kit } from "./demands.ts";
import type { Hold } from "./plan.ts";
import type { PlacedPush } from "./pushes.ts";
import type { Tie } from "./strands.ts";
import { tieKind } from "./supports.ts";
import { dot, heading, left, minus, reach, ring, times, unit, type Vec } from "./vector.ts";

/** A convex thing of the layout. A stiff one has all its corners at one place; a rope has two ends at two. */
export interface Thing {
  readonly key: string;
  readonly kind: "body" | "pulley" | "rope" | "end" | "push" | "under";
  readonly corners: readonly Hold[];
  /** Directions along which it may be parted from others: across its sides. */
  readonly across: readonly Vec[];
  /** What it is joined to, and so may touch. */
  readonly joined: ReadonlySet<string>;
}

/** How far the ground under a body is kept free of what hangs. */
const underground = { beside: 30, depth: 90 };

/** The things of a layout. */
export function thingsOf(kit: Kit, pushes: readonly PlacedPush[]): Thing[] {
  const bodies = kit.scene.bodies.flatMap((body): Thing[] => {
    const outline = kit.bodies.shapes.get(body.id)?.outline;
    if (outline === undefined) return [];
    const touching = kit.scene.surfaces.flatMap(({ on, of }) => (on === body.id && of !== null ? [of] : []));
    return [stiff(body.id, "body", body.id, outline, touching)];
  });
  const pulleys = kit.rigging.fixed.map((pulley) =>
    stiff(pulley.key, "pulley", pulley.key, ring({ x: 0, y: 0 }, pulley.radius), []),
  );
  const ends = kit.rigging.ties.map((tie) =>
    stiff(tie.key, "end", tie.key, supportOutline(kit, tie), besideTie(kit, tie)),
  );
  const ropes = kit.rigging.strands.map((strand): Thing => {
    const along = heading(strand.degrees);
    const [from, to] = [strand.from, strand.to];
    const near = kit.rigging.strands.filter(
      (other) => other.rope === strand.rope || shares(other.from.at, strand) || shares(other.to.at, strand),
    );
    return {
      key: `rope ${strand.key}`,
      kind: "rope",
      corners: [from, to],
      across: [left(along), along],
      joined: new Set([from.at, to.at, ...near.map(({ key }) => `rope ${key}`)]),
    };
  });
  const arrows = pushes.map((push) => stiff(`push ${push.id}`, "push", push.on, [push.tail, push.tip], [push.on]));
  return [...bodies, ...pulleys, ...ends, ...ropes, ...arrows, ...undergrounds(kit, ropes)];
}

/** Ropes that pull the same body the same way may share the support of one of them. */
function besideTie({ rigging }: Kit, tie: Tie): string[] {
  const alike = rigging.strands.filter(({ body, degrees }) => body === tie.body && degrees === tie.degrees);
  return alike.map(({ key }) => `rope ${key}`);
}

/** The room that the support of a rope's end takes up. */
function supportOutline({ grounds }: Kit, tie: Tie): Vec[] {
  const kind = tieKind(grounds, tie);
  const side = heading(tie.degrees).x > 0 ? 1 : -1;
  const [long, thick] = [18, 9];
  if (kind === "wall") return rectangle(Math.min(0, side * thick), Math.max(0, side * thick), -long, long);
  if (kind === "ring") return rectangle(-long, long, -thick, 0);
  return kind === "beam" ? rectangle(-5, 5, 0, thick) : ring({ x: 0, y: 0 }, 5, 4);
}

function rectangle(left: number, right: number, low: number, high: number): Vec[] {
  return [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ];
}

/** What is under each body on level ground: nothing may hang or run there. */
function undergrounds(kit: Kit, ropes: readonly Thing[]): Thing[] {
  return kit.grounds.flatMap((ground) => {
    if (ground.normal.y < 1 - 1e-9) return [];
    const on = ground.surfaces.map((surface) => surface.on);
    const own = ropes.filter((rope) => on.some((body) => rope.joined.has(body))).map(({ key }) => key);
    return on.flatMap((body): Thing[] => {
      const shape = kit.bodies.shapes.get(body);
      if (shape === undefined) return [];
      const foot = 0 - reach(shape.outline, { x: 0, y: -1 }) - 1;
      const half = reach(shape.outline, { x: 1, y: 0 }) + underground.beside;
      const outline = rectangle(0 - half, half, foot - underground.depth, foot);
      return [{ ...stiff(`under ${body}`, "under", body, outline, [...on, ...own]), across: [{ x: 1, y: 0 }] }];
    });
  });
}

const shares = (place: string, strand: { from: Hold; to: Hold }): boolean =>
  place === strand.from.at || place === strand.to.at;

function stiff(
  key: string,
  kind: Thing["kind"],
  at: string,
  outline: readonly Vec[],
  joined: readonly string[],
): Thing {
  const corners = outline.map((offset) => ({ at, offset }));
  const across = outline.map((corner, index) => {
    const next = outline[(index + 1) % outline.length] ?? corner;
    return times(left(unit(minus(next, corner))), -1);
  });
  return { key, kind, corners, across: axesOf(across), joined: new Set(joined) };
}

/** Level and upright first, then the sides' own that are not these. */
function axesOf(across: readonly Vec[]): Vec[] {
  const axes: Vec[] = [
    { x: 1, y: 0 },
    { x: 0, y: 1 },
  ];
  for (const one of across) {
    if (axes.every((other) => Math.abs(dot(one, other)) < 1 - 1e-6)) axes.push(one);
  }
  return axes;
}
