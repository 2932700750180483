// A problem document as plain numbers, read here anew so that nothing of the solver has a part in what it is judged by.
import type {
  BodyDocument,
  DirectionDocument,
  ProblemDocument,
  RopeDocument,
  SurfaceDocument,
  WrittenNumber,
} from "../../../shared/problem/index.ts";

/** A pair of numbers: right and up. */
export type Pair = readonly [number, number];

/** A body. */
export interface ModelBody {
  readonly id: string;
  readonly mass: number;
  /** "rest": nothing is said of it; "given": its acceleration; "line": where it may move; "free": anywhere. */
  readonly kind: "rest" | "given" | "line" | "free";
  readonly acceleration: Pair;
  readonly along: Pair;
  /** Along the line; null: to be found. */
  readonly known: number | null;
  readonly going: -1 | 0 | 1;
  readonly seenFrom: string | null;
}

/** A rope with the places where it pulls. */
export interface ModelRope {
  readonly id: string;
  readonly pulls: readonly { readonly on: string; readonly toward: Pair }[];
}

/** A body on a surface. */
export interface ModelContact {
  readonly id: string;
  readonly friction: string;
  readonly on: string;
  readonly of: string | null;
  readonly normal: Pair;
  readonly tangent: Pair;
  /** Coefficients; null where it is smooth. */
  readonly rough: { readonly sticking: number; readonly sliding: number } | null;
}

/** A push. */
export interface ModelPush {
  readonly id: string;
  readonly on: string;
  readonly toward: Pair;
  readonly size: number | null;
}

/** A whole document. */
export interface Model {
  readonly gravity: number;
  readonly frame: Pair;
  readonly bodies: readonly ModelBody[];
  readonly ropes: readonly ModelRope[];
  readonly contacts: readonly ModelContact[];
  readonly pushes: readonly ModelPush[];
  /** Whether bodies that touch a surface, and of which nothing else is said, are taken to rest on it whatever happens. */
  readonly keptStill: boolean;
}

/** The double of a written number: a decimal or a fraction. */
export function numberOf(written: WrittenNumber): number {
  const [over = "", under = "1"] = String(written).split("/");
  return Number(over) / Number(under);
}

/** The unit vector of a direction. */
export function unitOf(direction: DirectionDocument): Pair {
  if ("run" in direction) {
    const run = numberOf(direction.run);
    const rise = numberOf(direction.rise);
    const length = Math.hypot(run, rise);
    return [run / length, rise / length];
  }
  const angle = numberOf(direction.angle);
  if ("from" in direction) return turn(direction.side === "left" ? 90 + angle : 90 - angle);
  return turn(angle);
}

/** Exact where the direction is level or upright, so that what is balanced stays balanced. */
function turn(degrees: number): Pair {
  const quarter = ((degrees % 360) + 360) % 360;
  if (quarter % 90 === 0) return QUARTERS[quarter / 90] ?? [1, 0];
  return [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
}
const QUARTERS: readonly Pair[] = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
];

/** The document in numbers. Ropes given by lengths have no directions here: see `hanging.ts`. */
export function modelOf(document: ProblemDocument): Model {
  const gravity = numberOf(document.gravity);
  return {
    gravity,
    frame: pairOf(document.frame),
    bodies: document.bodies.map((body) => bodyOf(body, gravity)),
    ropes: (document.ropes ?? []).map((rope) => ({ id: rope.id, pulls: pullsOf(rope, document.bodies) })),
    contacts: (document.surfaces ?? []).map(contactOf),
    pushes: (document.pushes ?? []).map(({ id, on, direction, size }) => ({
      id,
      on,
      toward: unitOf(direction),
      size: size === undefined ? null : numberOf(size),
    })),
    keptStill: false,
  };
}

const pairOf = (
  written: { readonly x?: WrittenNumber | undefined; readonly y?: WrittenNumber | undefined } = {},
): Pair => [numberOf(written.x ?? 0), numberOf(written.y ?? 0)];

function bodyOf(body: BodyDocument, gravity: number): ModelBody {
  const mass = body.weight === undefined ? numberOf(body.mass ?? 0) : numberOf(body.weight) / gravity;
  const made = {
    id: body.id,
    mass,
    kind: "rest" as ModelBody["kind"],
    acceleration: pairOf(body.acceleration),
    along: [1, 0] as Pair,
    known: null as number | null,
    going: 0 as -1 | 0 | 1,
    seenFrom: null as string | null,
  };
  if (body.acceleration !== undefined) return { ...made, kind: "given" };
  const { motion } = body;
  if (motion === undefined) return made;
  if (motion === "free") return { ...made, kind: "free" };
  return {
    ...made,
    kind: "line",
    along: unitOf(motion.along),
    known: motion.acceleration === undefined ? null : numberOf(motion.acceleration),
    going: motion.going === undefined ? 0 : motion.going === "forwards" ? 1 : -1,
    seenFrom: motion.seenFrom ?? null,
  };
}

function pullsOf(rope: RopeDocument, bodies: readonly BodyDocument[]): ModelRope["pulls"] {
  if ("pulls" in rope) return rope.pulls.map(({ on, direction }) => ({ on, toward: unitOf(direction) }));
  const place = (id: string): Pair => pairOf(bodies.find((b) => b.id === id)?.at);
  const between = ([x, y]: Pair, [u, v]: Pair): Pair => unitOf({ run: u - x, rise: v - y });
  if ("anchor" in rope) {
    if (rope.length !== undefined) return [];
    return [{ on: rope.on, toward: between(place(rope.on), pairOf(rope.anchor)) }];
  }
  const { to } = rope;
  const toward = rope.direction === undefined ? between(place(rope.on), place(to ?? "")) : unitOf(rope.direction);
  const back: Pair = [-toward[0], -toward[1]];
  return [{ on: rope.on, toward }, ...(to === undefined ? [] : [{ on: to, toward: back }])];
}

function contactOf({ id, on, of, slope, normal, friction }: SurfaceDocument): ModelContact {
  let tangent: Pair;
  let away: Pair;
  if (slope !== undefined) {
    tangent = unitOf(slope);
    const [x, y] = tangent;
    away = x > 0 ? [-y, x] : [y, -x];
  } else {
    away = unitOf(normal ?? { angle: 90 });
    tangent = [away[1], -away[0]];
  }
  const sticking = friction?.static ?? friction?.kinetic ?? 0;
  const sliding = friction?.kinetic ?? friction?.static ?? 0;
  const rough = numberOf(sticking) > 0 || numberOf(sliding) > 0;
  return {
    id,
    friction: /^N\d*$/.test(id) ? `f${id.slice(1)}` : `${id}f`,
    on,
    of: of ?? null,
    normal: away,
    tangent,
    rough: rough ? { sticking: numberOf(sticking), sliding: numberOf(sliding) } : null,
  };
}
