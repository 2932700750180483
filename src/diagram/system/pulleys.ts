// Movable pulleys: how many wheels each has, how large they are, and where each rope leaves them.
import type { SystemRope, SystemScene } from "../system-scene.ts";
import { ropePath, type Join } from "./rope-path.ts";
import type { Shape } from "./shapes.ts";
import { cross, heading, left, plus, reach, ring, times, type Vec } from "./vector.ts";

/** A wheel of a movable pulley, and the rope that runs round it. */
export interface Sheave {
  readonly body: string;
  readonly rope: string;
  /** The two pulls on its sides. */
  readonly first: number;
  readonly second: number;
  /** Its axle, seen from the body's point. */
  readonly axle: Vec;
  readonly radius: number;
  /** 1 where someone going along the rope turns left round it, -1 to the right. */
  readonly sense: 1 | -1;
}

/** Every shape of a scene and every wheel of its movable pulleys. */
export interface Bodies {
  readonly shapes: ReadonlyMap<string, Shape>;
  readonly sheaves: readonly Sheave[];
}

const least = 15;
/** From the outer wheel of a block to a rope that is tied to it beside its wheels. */
export const armLength = 14;
/** Between the outer edges of two things that hang side by side. */
export const sideGap = 9;

/** To which side a rope runs on the whole, from its first pull to its last: 1 to the right. */
export function flowOf(rope: SystemRope): 1 | -1 {
  const path = ropePath(rope);
  const x = (pull: number): number => heading(rope.pulls[pull]?.degrees ?? 90).x;
  const travelled = path.reduce((sum, join, index) => {
    if (join.kind === "wheel") return sum;
    if (join.kind === "tie") return sum + (index === 0 && path.length > 1 ? 0 - x(join.pull) : x(join.pull));
    return sum + x(join.first) - x(join.second);
  }, 0);
  return travelled < -0.02 ? -1 : 1;
}

/** On which side of the rope a wheel is that turns it from one direction into another: 1 on the left. */
export function senseOf(inward: Vec, outward: Vec, flow: 1 | -1): 1 | -1 {
  const turn = cross(inward, outward);
  if (Math.abs(turn) > 0.02) return turn > 0 ? 1 : -1;
  const side = left(inward);
  // Back the way it came: on to the next place in the rope's course, or down.
  const onward = Math.abs(side.x) > 0.02 ? side.x * flow : 0 - side.y;
  return onward > 0 ? 1 : -1;
}

/** The shapes of all bodies, movable pulleys as large as what hangs on them wants. */
export function bodiesOf(scene: SystemScene, plain: ReadonlyMap<string, Shape>): Bodies {
  const shapes = new Map(plain);
  const sheaves: Sheave[] = [];
  // From below: a pulley whose own ropes lead to other pulleys waits for these.
  const waiting = scene.bodies.filter((body) => body.kind === "pulley");
  while (waiting.length > 0) {
    const ready = waiting.findIndex((body) => below(scene, body.id).every((id) => shapes.has(id)));
    const [body] = waiting.splice(Math.max(ready, 0), 1);
    if (body === undefined) break;
    const own = wheelsOf(scene, body.id, shapes);
    sheaves.push(...own);
    shapes.set(
      body.id,
      pulleyShape(
        own,
        scene.surfaces.some((surface) => surface.on === body.id),
        isTiedBeside(scene, own),
      ),
    );
  }
  return { shapes, sheaves };
}

type Wheel = Extract<Join, { kind: "wheel" }>;

function turnsRound(scene: SystemScene, id: string): { rope: SystemRope; wheel: Wheel }[] {
  return scene.ropes.flatMap((rope) =>
    ropePath(rope).flatMap((join) =>
      join.kind === "wheel" && rope.pulls[join.first]?.on === id ? [{ rope, wheel: join }] : [],
    ),
  );
}

/** The body at the far end of a straight stretch of rope that leaves a pulley at one of its pulls. */
function straightFrom(rope: SystemRope, pull: number): string | null {
  for (const join of ropePath(rope)) {
    if (join.kind !== "straight") continue;
    if (join.first === pull) return rope.pulls[join.second]?.on ?? null;
    if (join.second === pull) return rope.pulls[join.first]?.on ?? null;
  }
  return null;
}

function below(scene: SystemScene, id: string): string[] {
  return scene.ropes.flatMap((rope) =>
    rope.pulls.flatMap((pull, index) => {
      const other = pull.on === id && heading(pull.degrees).y < -0.5 ? straightFrom(rope, index) : null;
      return other === null ? [] : [other];
    }),
  );
}

function wheelsOf(scene: SystemScene, id: string, shapes: ReadonlyMap<string, Shape>): Sheave[] {
  const turns = turnsRound(scene, id);
  const wanted = turns.map(({ rope, wheel }) => {
    const ends = [wheel.first, wheel.second].flatMap((pull) => straightFrom(rope, pull) ?? []);
    if (ends.length < 2) return least;
    return Math.max(least, (ends.reduce((sum, end) => sum + halfWidth(shapes.get(end)), 0) + sideGap) / 2);
  });
  const radius = Math.max(least, ...wanted);
  const pitch = 2 * radius + 16;
  return turns.map(({ rope, wheel }, index) => {
    const [a, b] = [wheel.first, wheel.second].map((pull) => heading(rope.pulls[pull]?.degrees ?? 90));
    const [first = { x: 0, y: 1 }, second = first] = [a, b];
    const flow = flowOf(rope);
    const across = times(left(first), -flow * (index - (turns.length - 1) / 2) * pitch);
    return {
      body: id,
      rope: rope.id,
      first: wheel.first,
      second: wheel.second,
      axle: across,
      radius,
      sense: senseOf(times(first, -1), second, flow),
    };
  });
}

/** How far a body reaches to a side. */
export function halfWidth(shape: Shape | undefined): number {
  return shape === undefined ? 0 : reach(shape.outline, { x: 1, y: 0 });
}

/** Whether a rope that runs round the wheels of a block is tied to the block as well. */
function isTiedBeside({ ropes }: SystemScene, own: readonly Sheave[]): boolean {
  return ropes.some(({ id, pulls }) => {
    const round = own.filter(({ rope }) => rope === id);
    return round.length > 1 && pulls.filter(({ on }) => on === round[0]?.body).length > 2 * round.length;
  });
}

function pulleyShape(sheaves: readonly Sheave[], onGround: boolean, tiedBeside: boolean): Shape {
  const radius = sheaves[0]?.radius ?? least;
  const far = Math.max(0, ...sheaves.map(({ axle }) => Math.hypot(axle.x, axle.y)));
  const size = radius + (onGround ? 8 : 2);
  if (far < 1) {
    return { kind: "pulley", tilt: 0, outline: ring({ x: 0, y: 0 }, size), width: 2 * size, height: 2 * size };
  }
  const [first] = sheaves;
  const along = first === undefined ? { x: 1, y: 0 } : times(first.axle, 1 / far);
  const across = left(along);
  const [near, beyond] = [far + size, far + size + (tiedBeside ? armLength : 0)];
  const corner = (x: number, y: number): Vec => plus(times(along, x), times(across, y * size));
  const outline = [corner(-near, -1), corner(beyond, -1), corner(beyond, 1), corner(-near, 1)];
  return { kind: "pulley", tilt: 0, outline, width: 2 * (far + size), height: 2 * size };
}
