// Directions of ropes, as numbers for drawing.
import type { Point } from "./geometry.ts";
import type { Attempt, DiagramScene, SceneRope, Sign } from "./scene.ts";

/** A rope's pull, ready to be drawn. */
export interface Pull {
  readonly rope: SceneRope;
  /** Degrees anticlockwise from the x axis. */
  readonly degrees: number;
  /** The same direction in the drawing plane. */
  readonly unit: Point;
  readonly side: Sign;
  readonly rise: Sign;
  /** The acute angle with the level line: its letter, its print and the reference its elements carry. */
  readonly acute: { readonly degrees: number; readonly letter: string; readonly text: string; readonly ref: string };
}

const letterNames: Readonly<Record<string, string>> = { α: "alpha", β: "beta", γ: "gamma", δ: "delta", θ: "theta" };

/** The plain name of an angle's letter, for references. */
export function angleRef(letter: string): string {
  return letterNames[letter] ?? letter;
}

/** Degrees anticlockwise from the x axis to the direction in which a rope was given to pull: -90 to 270. */
export function givenDegrees(rope: Pick<SceneRope, "side" | "rise" | "degrees">): number {
  const up = rope.rise === -1 ? -rope.degrees : rope.degrees;
  return rope.side === -1 ? 180 - up : rope.side === 0 ? 90 * rope.rise : up;
}

/** A direction in the drawing plane. Level and upright ones are exact. */
export function unitOf(degrees: number): Point {
  const quarter = degrees / 90;
  const angle = (degrees * Math.PI) / 180;
  const exact = Number.isInteger(quarter);
  const x = exact && quarter % 2 !== 0 ? 0 : Math.cos(angle);
  const y = exact && quarter % 2 === 0 ? 0 : -Math.sin(angle);
  return { x: exact ? Math.round(x) : x, y: exact ? Math.round(y) : y };
}

/** The pulls a force picture shows. A rope on which the load hangs alone pulls along its found direction. */
export function pulls(scene: DiagramScene, attempt: Attempt): Pull[] {
  const shown = attempt === "assumed" ? scene.ropes : scene.ropes.filter((rope) => rope.state !== "slack");
  return shown.map((rope) => (attempt === "found" && rope.state === "free" ? freePull(scene, rope) : givenPull(rope)));
}

function givenPull(rope: SceneRope): Pull {
  const degrees = givenDegrees(rope);
  const acute = {
    degrees: rope.degrees,
    letter: rope.angleLetter,
    text: rope.degreesText,
    ref: angleRef(rope.angleLetter),
  };
  return { rope, degrees, unit: unitOf(degrees), side: rope.side, rise: rope.rise, acute };
}

function freePull(scene: DiagramScene, rope: SceneRope): Pull {
  const dx = rope.anchor.x - scene.position.x;
  const dy = rope.anchor.y - scene.position.y;
  const steep = Math.abs(dx) < 1e-9 * rope.length;
  const flat = Math.abs(dy) < 1e-9 * rope.length;
  const degrees = steep ? 90 * Math.sign(dy) : flat ? (dx > 0 ? 0 : 180) : (Math.atan2(dy, dx) * 180) / Math.PI;
  const acute = {
    degrees: scene.theta?.degrees ?? (Math.atan2(Math.abs(dy), Math.abs(dx)) * 180) / Math.PI,
    letter: "θ",
    text: scene.theta?.text ?? "",
    ref: "theta",
  };
  return { rope, degrees, unit: unitOf(degrees), side: steep ? 0 : signOf(dx), rise: flat ? 0 : signOf(dy), acute };
}

/**
 * How far to the left of its line an arrow is drawn (in units of the picture, 0 where it has its line to itself), so that two arrows in one
 * direction, or less than `within` degrees apart, are both seen.
 */
export function sideStep<Arrow extends { readonly degrees: number }>(
  arrow: Arrow,
  shown: readonly Arrow[],
  within = 2,
): number {
  const alike = shown.filter((other) => Math.abs(turnBetween(arrow.degrees, other.degrees)) < within);
  return (alike.indexOf(arrow) - (alike.length - 1) / 2) * 8;
}

/** The shorter way to turn from one direction to another, in degrees anticlockwise: -180 to 180. */
export function turnBetween(from: number, to: number): number {
  const turn = (((to - from) % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
}

function signOf(value: number): Sign {
  return value > 0 ? 1 : value < 0 ? -1 : 0;
}
