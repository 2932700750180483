// What a layout has to keep to: ropes in their directions, bodies on their surfaces, places that are given; and how long ropes are wished.
import type { SystemScene, SystemSurface } from "../system-scene.ts";
import type { Hold, Plan } from "./plan.ts";
import type { Bodies } from "./pulleys.ts";
import type { Shape } from "./shapes.ts";
import type { FixedPulley, Rigging, Strand } from "./strands.ts";
import { mountKind, tieKind, type Ground } from "./supports.ts";
import { dot, heading, left, reach, times, type Vec } from "./vector.ts";

/** Everything that a layout is made of, before it has places. */
export interface Kit {
  readonly scene: SystemScene;
  readonly bodies: Bodies;
  readonly rigging: Rigging;
  readonly grounds: readonly Ground[];
  /** Units of the layout for one of the lengths that the problem gives. */
  readonly perLength: number;
  /** Whether all ropes that rise are tied to one beam. */
  readonly oneBeam: boolean;
}

/** A body that is pushed off its surface is drawn this far above it. */
export const liftedBy = 9;
/** No two given places are further apart in the layout. */
const furthest = 1500;
const up: Vec = { x: 0, y: 1 };

/** A place itself. */
export const point = (at: string): Hold => ({ at, offset: { x: 0, y: 0 } });

/** Where the mount of a fixed pulley is, by name. */
export const mountOf = (pulley: FixedPulley): string => `mount-${pulley.key}`;

/** The degrees of the two stretches of rope at a fixed pulley. */
export function degreesAt(scene: SystemScene, pulley: FixedPulley): [number, number] {
  const rope = scene.ropes.find(({ id }) => id === pulley.rope);
  return [rope?.pulls[pulley.pulls[0]]?.degrees ?? 90, rope?.pulls[pulley.pulls[1]]?.degrees ?? 90];
}

/** Asks all of it of a plan. */
export function demand(plan: Plan, kit: Kit): void {
  kit.rigging.strands.forEach((strand, index) => {
    demandStrand(plan, kit, strand, index);
  });
  for (const tie of kit.rigging.ties) {
    const anchored = kit.scene.ropes.find((rope) => rope.id === tie.rope)?.anchor ?? null;
    if (anchored === null && kit.oneBeam && tieKind(kit.grounds, tie) === "beam")
      plan.onLine(point(tie.key), "beam", up);
  }
  for (const pulley of kit.rigging.fixed) demandMount(plan, kit, pulley);
  for (const surface of kit.scene.surfaces) demandContact(plan, kit, surface);
  demandPlaces(plan, kit);
}

function demandStrand(plan: Plan, kit: Kit, strand: Strand, index: number): void {
  const along = heading(strand.degrees);
  const hidden = strand.hidden[0] + strand.hidden[1];
  plan.exactly(strand.from, strand.to, left(along), 0);
  plan.atLeast(strand.from, strand.to, along, hidden + shortest(kit, strand));
  const wished = usualLength(kit, strand, index);
  plan.wish(strand.from, strand.to, along, hidden + wished, (60 / wished) ** 2);
}

function shortest(kit: Kit, strand: Strand): number {
  if (strand.to.at.startsWith("end-")) return 26;
  return isAlongGround(kit, strand) ? 22 : strand.to.at.startsWith("pulley-") ? 20 : 24;
}

function usualLength(kit: Kit, strand: Strand, index: number): number {
  const { y } = heading(strand.degrees);
  const tie = kit.rigging.ties.find(({ key }) => key === strand.to.at);
  if (tie !== undefined) {
    const kind = tieKind(kit.grounds, tie);
    return kind === "beam" ? Math.min(150, 66 / y) : kind === "wall" ? 78 : kind === "ring" ? 52 : 44;
  }
  if (isAlongGround(kit, strand)) return 50;
  if (strand.to.at.startsWith("pulley-")) return 64 + 20 * (index % 2);
  return Math.abs(y) > 0.99 ? 36 : 66;
}

function isAlongGround(kit: Kit, { body, degrees }: Strand): boolean {
  return kit.scene.surfaces.some(
    ({ on, normal }) => on === body && Math.abs(dot(heading(normal), heading(degrees))) < 1e-6,
  );
}

function demandMount(plan: Plan, kit: Kit, pulley: FixedPulley): void {
  if (mountKind(kit.grounds, pulley, degreesAt(kit.scene, pulley)) !== "beam") return;
  const mount = point(mountOf(pulley));
  const axle = point(pulley.key);
  plan.exactly(axle, mount, { x: 1, y: 0 }, 0);
  plan.atLeast(axle, mount, up, pulley.radius + 8);
  plan.wish(axle, mount, up, pulley.radius + 14, 2);
  if (kit.oneBeam) plan.onLine(mount, "beam", up);
}

function demandContact(plan: Plan, kit: Kit, surface: SystemSurface): void {
  const normal = heading(surface.normal);
  const shape = kit.bodies.shapes.get(surface.on);
  if (shape === undefined) return;
  const foot = reach(shape.outline, times(normal, -1)) + (surface.touching ? 0 : liftedBy);
  if (surface.of === null) {
    const ground = kit.grounds.find((one) => one.surfaces.includes(surface));
    plan.onLine({ at: surface.on, offset: times(normal, 0 - foot) }, ground?.key ?? surface.id, normal);
    return;
  }
  const under = kit.bodies.shapes.get(surface.of);
  if (under === undefined) return;
  const along = left(normal);
  plan.exactly(point(surface.of), point(surface.on), normal, reach(under.outline, normal) + foot);
  plan.wish(point(surface.of), point(surface.on), along, dot(middleOf(under, normal), along), 0.3);
}

/** The middle of the side of a shape that looks in a direction. */
function middleOf({ outline }: Shape, normal: Vec): Vec {
  const most = reach(outline, normal);
  const side = outline.filter((corner) => dot(corner, normal) > most - 0.5);
  const sum = side.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }), { x: 0, y: 0 });
  return times(sum, 1 / Math.max(1, side.length));
}

function demandPlaces(plan: Plan, { scene, rigging, perLength }: Kit): void {
  for (const body of scene.bodies) if (body.at !== null) plan.fix(body.id, times(body.at, perLength));
  for (const tie of rigging.ties) {
    const anchor = scene.ropes.find(({ id }) => id === tie.rope)?.anchor ?? null;
    if (anchor !== null) plan.fix(tie.key, times(anchor, perLength));
  }
}

/** Units of the layout for one of the problem's lengths: so that the shortest rope between given places, and the way between bodies, are long enough to see. */
export function unitsPerLength(scene: SystemScene): number {
  const bodies = scene.bodies.flatMap((body) => (body.at === null ? [] : [[body.id, body.at] as const]));
  const places = new Map(bodies);
  const spans = scene.ropes.flatMap((rope) => {
    const [a, b] = rope.pulls.map((pull) => places.get(pull.on));
    return lengthBetween(a, b ?? rope.anchor);
  });
  const ways = bodies.flatMap(([, at], index) =>
    bodies.slice(index + 1).flatMap(([, other]) => lengthBetween(at, other)),
  );
  const all = [...spans, ...ways];
  if (all.length === 0) return 1;
  const wanted = Math.max(48 / Math.min(...all), 150 / Math.max(...all));
  return Math.min(wanted, furthest / Math.max(...all));
}

function lengthBetween(a: Vec | undefined, b: Vec | null): number[] {
  if (a === undefined || b === null) return [];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return length > 0 ? [length] : [];
}
