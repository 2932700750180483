// Where everything of a situation stands: places in the layout's own plane, y upwards, ropes in exactly their directions.
import { hangingCurve } from "../hanging-curve.ts";
import type { SystemScene } from "../system-scene.ts";
import { partOverlaps } from "./apart.ts";
import { degreesAt, demand, liftedBy, mountOf, unitsPerLength, type Kit } from "./demands.ts";
import { partsOf } from "./parts.ts";
import { holdAt, Plan } from "./plan.ts";
import { bodiesOf, type Sheave } from "./pulleys.ts";
import { pushesOf, type PlacedPush } from "./pushes.ts";
import { shapeOf, type Shape } from "./shapes.ts";
import { riggingOf, type FixedPulley, type Strand, type Tie } from "./strands.ts";
import {
  groundsOf,
  mountDirection,
  mountKind,
  tieKind,
  type Ground,
  type MountKind,
  type TieKind,
} from "./supports.ts";
import { dot, heading, plus, times, type Vec } from "./vector.ts";

/** A body in its place. */
export interface PlacedBody {
  readonly id: string;
  readonly shape: Shape;
  readonly at: Vec;
}

/** A stretch of rope between the points where it is seen to begin and to end. */
export interface PlacedStrand extends Strand {
  readonly start: Vec;
  readonly end: Vec;
  /** The curve of a slack one that hangs down between its ends; null where it is straight, or upright. */
  readonly loose: readonly Vec[] | null;
}

/** A fixed pulley with its axle and the point by which it is held. */
export interface PlacedPulley extends FixedPulley {
  readonly axle: Vec;
  readonly mount: MountKind;
  readonly held: Vec;
}

/** A rope's end at its support. */
export interface PlacedTie extends Tie {
  readonly at: Vec;
  readonly kind: TieKind;
}

/** A plane of a support: the part of the way along its normal at which it lies. */
export interface PlacedGround extends Ground {
  readonly level: number;
}

/** A part of the situation, or all of it. */
export interface Layout {
  readonly bodies: readonly PlacedBody[];
  readonly sheaves: readonly Sheave[];
  readonly strands: readonly PlacedStrand[];
  readonly fixed: readonly PlacedPulley[];
  readonly ties: readonly PlacedTie[];
  readonly grounds: readonly PlacedGround[];
  readonly pushes: readonly PlacedPush[];
  readonly perLength: number;
  /** How many overlaps could not be helped. */
  readonly overlaps: number;
  /** Whether all is as it is given: every rope in its direction and of some length, every body on its surface. */
  readonly faithful: boolean;
}

/** By how much a length may be shorter than it should be before the picture says that it is not as given. */
const bearable = 3;

/** The layout of each part of a scene that nothing joins to the others. */
export function layoutsOf(scene: SystemScene): Layout[] {
  return partsOf(scene).map((part) => layoutOf(part));
}

/** The layout of a scene of one part: with one beam and one ground if that goes, else with a support for each. */
export function layoutOf(scene: SystemScene): Layout {
  const variants = [
    { oneBeam: true, oneGround: true },
    { oneBeam: true, oneGround: false },
    { oneBeam: false, oneGround: true },
    { oneBeam: false, oneGround: false },
  ];
  let best: { layout: Layout; cost: number } | null = null;
  for (const { oneBeam, oneGround } of variants) {
    const kit = kitOf(scene, oneBeam, oneGround);
    if (best !== null && !differs(kit, oneBeam, oneGround)) continue;
    const { layout, missing, contradictions } = placed(kit);
    const size = sizeOf(layout);
    // Supports of their own for each are worth it only where much is gained.
    const split = (oneBeam ? 0 : 0.35) + (oneGround ? 0 : 0.35);
    const stretched = 0.15 * stretchOf(layout);
    const cost =
      stretched +
      1000 * contradictions +
      100 * layout.overlaps +
      (missing > bearable ? 50 + missing : 0) +
      size +
      split;
    if (best === null || cost < best.cost) best = { layout, cost };
    // As good as it gets: it fits, nothing overlaps, and no rope is out of proportion.
    if (cost <= 1) break;
  }
  if (best === null) throw new Error("there is always a first variant");
  return best.layout;
}

function kitOf(scene: SystemScene, oneBeam: boolean, oneGround: boolean): Kit {
  const plain = scene.bodies
    .filter((body) => body.kind !== "pulley")
    .map((body) => [body.id, shapeOf(scene, body)] as const);
  const bodies = bodiesOf(scene, new Map(plain));
  const rigging = riggingOf(scene, bodies);
  const grounds = groundsOf(scene, rigging, oneGround);
  return { scene, bodies, rigging, grounds, perLength: unitsPerLength(scene), oneBeam };
}

/** Whether a variant can come out otherwise than the first. */
function differs(kit: Kit, oneBeam: boolean, oneGround: boolean): boolean {
  const beams =
    kit.rigging.ties.filter((tie) => tieKind(kit.grounds, tie) === "beam").length +
    kit.rigging.fixed.filter((pulley) => mountKind(kit.grounds, pulley, degreesAt(kit.scene, pulley)) === "beam")
      .length;
  const together = groundsOf(kit.scene, kit.rigging, true).length;
  const apart = groundsOf(kit.scene, kit.rigging, false).length;
  return (oneBeam || beams > 1) && (oneGround || apart > together);
}

/** How large a layout is against the picture it goes into: 1 where it just fits. */
function sizeOf({ bodies, strands }: Layout): number {
  const points = [
    ...bodies.flatMap(({ at, shape }) => shape.outline.map((corner) => plus(at, corner))),
    ...strands.flatMap(({ start, end }) => [start, end]),
  ];
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return Math.max((Math.max(...xs) - Math.min(...xs)) / 300, (Math.max(...ys) - Math.min(...ys)) / 240);
}

/** How unequal the ropes are: the largest length against the middle one, in doublings beyond the second. */
function stretchOf({ strands }: Layout): number {
  const lengths = strands.map(({ start, end }) => Math.hypot(end.x - start.x, end.y - start.y)).sort((a, b) => a - b);
  const [middle, longest] = [lengths[Math.floor(lengths.length / 2)] ?? 1, lengths.at(-1) ?? 1];
  return Math.max(0, Math.log2(longest / Math.max(middle, 1)) - 1);
}

function placed(kit: Kit): { layout: Layout; missing: number; contradictions: number } {
  const { scene, bodies, rigging, grounds, perLength } = kit;
  const plan = new Plan();
  const pushes = pushesOf(scene, bodies.shapes);
  for (const body of scene.bodies) plan.place(body.id);
  demand(plan, kit);
  const { places, missing, contradictions, left: overlaps } = partOverlaps(plan, kit, pushes);
  const at = (name: string): Vec => places.get(name) ?? { x: 0, y: 0 };
  const strands = rigging.strands.map((strand): PlacedStrand => {
    const along = heading(strand.degrees);
    const [near, far] = strand.hidden;
    const start = plus(holdAt(places, strand.from), times(along, near));
    const end = plus(holdAt(places, strand.to), times(along, 0 - far));
    return { ...strand, start, end, loose: looseCurve(kit, strand, start, end) };
  });
  const fixed = rigging.fixed.map((pulley): PlacedPulley => {
    const degrees = degreesAt(scene, pulley);
    const mount = mountKind(grounds, pulley, degrees);
    const axle = at(pulley.key);
    const held =
      mount === "beam" ? at(mountOf(pulley)) : plus(axle, times(mountDirection(degrees), pulley.radius + 12));
    return { ...pulley, axle, mount, held };
  });
  const layout: Layout = {
    bodies: scene.bodies.flatMap((body) => {
      const shape = bodies.shapes.get(body.id);
      return shape === undefined ? [] : [{ id: body.id, shape, at: at(body.id) }];
    }),
    sheaves: bodies.sheaves,
    strands,
    fixed,
    ties: rigging.ties.map((tie) => ({ ...tie, at: at(tie.key), kind: tieKind(grounds, tie) })),
    grounds: grounds.map((ground) => ({ ...ground, level: levelOf(ground, kit, at) })),
    pushes,
    perLength,
    overlaps,
    faithful: contradictions === 0 && missing <= bearable,
  };
  return { layout, missing, contradictions };
}

/** The curve of a slack rope: of its length where that is known, else a little longer than the way. */
function looseCurve({ scene, perLength }: Kit, strand: Strand, start: Vec, end: Vec): readonly Vec[] | null {
  const rope = scene.ropes.find(({ id }) => id === strand.rope);
  if (rope?.state !== "slack") return null;
  const way = Math.hypot(end.x - start.x, end.y - start.y);
  if (rope.length === null && Math.abs(end.x - start.x) <= 0.25 * way) return null;
  const length = rope.length === null ? way * 1.06 : Math.max(rope.length * perLength, way);
  return hangingCurve(start, end, length, 24);
}

function levelOf(ground: Ground, { bodies }: Kit, at: (name: string) => Vec): number {
  const [surface] = ground.surfaces;
  if (surface === undefined) return 0;
  const shape = bodies.shapes.get(surface.on);
  const down = times(ground.normal, -1);
  const foot = shape === undefined ? 0 : Math.max(...shape.outline.map((corner) => dot(corner, down)));
  return dot(at(surface.on), ground.normal) - foot - (surface.touching ? 0 : liftedBy);
}
