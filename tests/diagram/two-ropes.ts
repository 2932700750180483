/**
 * Scenes to draw: two ropes solved by Cramer's rule, so that the pictures are tested without the solver. Numbers are rounded for print
 * only; what the lesson says of them is tested elsewhere.
 */
import type { DiagramScene, SceneRope, Sign } from "../../src/diagram/index.ts";

/** A rope's direction, in degrees anticlockwise from the x axis: -90 to 270. */
export type Setting = {
  readonly ropes: readonly [number, number];
  readonly mass?: number;
  readonly g?: number;
  readonly ax?: number;
  readonly ay?: number;
  readonly name?: string;
  readonly byWeight?: boolean;
};

type Vector = { x: number; y: number };

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
const unit = (degrees: number): Vector => {
  const snap = (value: number): number => (Math.abs(value) < 1e-12 ? 0 : value);
  return { x: snap(Math.cos(rad(degrees))), y: snap(Math.sin(rad(degrees))) };
};

/** A number to three figures, as plain text with a true minus. */
export function printed(value: number): string {
  if (value === 0) return "0";
  const text =
    Math.abs(value) >= 1e-3 && Math.abs(value) < 1e6 ? String(Number(value.toPrecision(3))) : value.toExponential(2);
  return text.replace("-", "−");
}

const sign = (value: number): Sign => (value > 0 ? 1 : value < 0 ? -1 : 0);

function ropesOf(directions: readonly number[]): Omit<SceneRope, "state" | "tension" | "tensionText">[] {
  const units = directions.map(unit);
  const reach = 1 / (units.find((u) => u.y > 0)?.y ?? 1);
  return directions.map((direction, index) => {
    const u = units[index] ?? { x: 0, y: 1 };
    const degrees = Number(((Math.atan2(Math.abs(u.y), Math.abs(u.x)) * 180) / Math.PI).toFixed(6));
    const length = u.y > 0 ? 1 / u.y : reach;
    return {
      id: `T${index + 1}`,
      label: { letter: "T", sub: String(index + 1) },
      number: index + 1,
      angleLetter: index === 0 ? "α" : "β",
      degrees,
      degreesText: `${printed(degrees)}°`,
      side: sign(u.x),
      rise: sign(u.y),
      anchor: { kind: u.y > 0 ? "beam" : "post", x: u.x * length, y: u.y > 0 ? 1 : u.y * length },
      length,
      direction,
    };
  });
}

type Found = Pick<DiagramScene, "position" | "theta" | "solved"> & {
  readonly ropes: readonly Pick<SceneRope, "state" | "tension">[];
};

const still = { position: { x: 0, y: 0 }, theta: null };

function find(
  ropes: readonly Pick<SceneRope, "anchor" | "length">[],
  directions: readonly [number, number],
  need: Vector,
): Found {
  const [a, b] = [unit(directions[0]), unit(directions[1])];
  const determinant = a.x * b.y - a.y * b.x;
  const size = Math.hypot(need.x, need.y);
  if (size === 0) return { ...still, solved: true, ropes: [slack, slack] };
  const unsolved: Found = { ...still, solved: false, ropes: [undetermined, undetermined] };
  if (Math.abs(determinant) < 1e-9) return unsolved;
  const pulls = [(need.x * b.y - need.y * b.x) / determinant, (a.x * need.y - a.y * need.x) / determinant].map((t) =>
    Math.abs(t) < 1e-9 * size ? 0 : t,
  );
  const [first = 0, second = 0] = pulls;
  if (first >= 0 && second >= 0)
    return { ...still, solved: true, ropes: pulls.map((tension) => ({ state: "taut", tension })) };
  if ((first < 0 && second < 0) || need.y < 0) return unsolved;
  const free = first < 0 ? 1 : 0;
  const rope = ropes[free];
  if (rope === undefined) return unsolved;
  const along = { x: need.x / size, y: need.y / size };
  const degrees = (Math.atan2(along.y, Math.abs(along.x)) * 180) / Math.PI;
  return {
    position: { x: rope.anchor.x - along.x * rope.length, y: rope.anchor.y - along.y * rope.length },
    theta: { degrees, text: `${printed(degrees)}°` },
    solved: true,
    ropes: [0, 1].map((index) => (index === free ? { state: "free", tension: size } : slack)),
  };
}

const slack = { state: "slack", tension: 0 } as const;
const undetermined = { state: "taut", tension: null } as const;

/** The scene of a load on two ropes. */
export function twoRopes(setting: Setting): DiagramScene {
  const { mass = 4.2, g = 9.8, ax = 0, ay = 0, name = "brass lantern", byWeight = false } = setting;
  const ropes = ropesOf(setting.ropes);
  const found = find(ropes, setting.ropes, { x: mass * ax, y: mass * (g + ay) });
  return {
    bodyName: name,
    weight: mass * g,
    weightLabel: byWeight ? "W" : "mg",
    weightText: `${printed(mass * g)} N`,
    netForce: { x: mass * ax, y: mass * ay },
    acceleration: { x: ax, y: ay },
    position: found.position,
    theta: found.theta,
    solved: found.solved,
    ropes: ropes.map((rope, index) => {
      const { state, tension } = found.ropes[index] ?? undetermined;
      return { ...rope, state, tension, tensionText: tension === null ? null : `${printed(tension)} N` };
    }),
  };
}
