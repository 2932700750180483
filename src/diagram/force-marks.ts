// What several force pictures share: the level line, angles at the dot, symbols at tips, the acceleration apart, remarks.
import { doubleArrow } from "./arrow.ts";
import { angleMark } from "./angle-mark.ts";
import type { Pull } from "./direction.ts";
import { along, type Point } from "./geometry.ts";
import { letter, words, type Run } from "./label.ts";
import type { DiagramScene } from "./scene.ts";
import { avoid, type Sketch } from "./sketch.ts";
import { atAngle, beyondTip } from "./spots.ts";

/** The font sizes of the pictures. */
export const textSize = { symbol: 18, angle: 15, note: 13 } as const;

/** The class that gives a rope's force its colour and line pattern. */
export function paintOf(pull: Pull): string {
  return `force-${((pull.rope.number - 1) % 3) + 1}`;
}

/** The symbol of the weight: mg, or W where the weight itself is given. */
export function weightRuns(scene: DiagramScene): Run[] {
  return [letter(scene.weightLabel)];
}

/** The dashed level line through a point, from which angles are measured. */
export function levelAxis(sketch: Sketch, centre: Point, reach: number): void {
  const ends = [
    { x: centre.x - reach, y: centre.y },
    { x: centre.x + reach, y: centre.y },
  ];
  sketch.lines("level", ends, "axis", avoid.helper);
}

/** The arc from the level line to a pull, with letter and value, kept from the arcs of others by its radius. */
export function angleAtDot(
  sketch: Sketch,
  centre: Point,
  pull: Pull,
  radius: number,
  said: "letter" | "value" = "value",
): void {
  if (pull.side === 0 || pull.rise === 0) return;
  const from = pull.side === 1 ? 0 : 180;
  const { ref, text, letter: name } = pull.acute;
  const key = `${ref}-${pull.rope.id}`;
  angleMark(sketch, { key: `${key}-arc`, centre, radius, from, to: pull.degrees, ref });
  sketch.label({
    key: `${key}-label`,
    runs: [letter(name), ...(text === "" || said === "letter" ? [] : [words(` = ${text}`)])],
    size: textSize.angle,
    look: "angle-text",
    ref,
    spots: atAngle(centre, radius, from, pull.degrees),
    home: along(centre, { x: pull.side, y: 0 }, radius),
  });
}

/** A symbol beyond an arrow's tip. */
export function tipLabel(
  sketch: Sketch,
  key: string,
  runs: readonly Run[],
  tip: Point,
  unit: Point,
  paint: string,
  ref = key,
): void {
  const spots = beyondTip(tip, unit);
  sketch.label({
    key: `${key}-label`,
    runs,
    size: textSize.symbol,
    look: `symbol ${paint}`,
    ref,
    spots,
    home: tip,
  });
}

/** The references of the acceleration's arrow: the whole and the components it has. */
export function accelerationRefs(scene: DiagramScene): string {
  const { x, y } = scene.acceleration;
  return ["a", ...(x === 0 ? [] : ["ax"]), ...(y === 0 ? [] : ["ay"])].join(" ");
}

/** The acceleration, in the upper left corner and in its own style; nothing where it is zero. */
export function accelerationApart(sketch: Sketch, scene: DiagramScene, centre?: Point): void {
  accelerationArrow(sketch, { ...scene.acceleration, runs: [letter("a")], ref: accelerationRefs(scene) }, centre);
}

/** An acceleration to be drawn: y upwards. */
export interface AccelerationSpec {
  readonly x: number;
  readonly y: number;
  readonly runs: readonly Run[];
  readonly ref: string;
}

/** An acceleration of any size as an arrow of one length, round a point; nothing where it is zero. */
export function accelerationArrow(sketch: Sketch, spec: AccelerationSpec, centre: Point = { x: 32, y: 30 }): void {
  const { x, y, runs, ref } = spec;
  const most = Math.hypot(x, y);
  if (most === 0) return;
  const unit = { x: x / most, y: -y / most };
  const to = along(centre, unit, 20);
  doubleArrow(sketch, { key: "a", from: along(centre, unit, -20), to, paint: "accel", ref });
  sketch.label({
    key: "a-label",
    runs,
    size: textSize.symbol,
    look: "symbol accel",
    ref,
    spots: [
      { at: centre, away: { x: 1, y: 0 }, gap: 8 + 16 * Math.abs(unit.x) },
      { at: centre, away: { x: 0, y: 1 }, gap: 8 + 16 * Math.abs(unit.y) },
    ],
    home: centre,
  });
}

/** A remark at the lower left edge. */
export function note(sketch: Sketch, key: string, text: string | readonly Run[], height: number, x = 8): void {
  const y = height - 14;
  sketch.label({
    key,
    runs: typeof text === "string" ? [words(text)] : text,
    size: textSize.note,
    look: "note",
    ref: null,
    spots: [
      { at: { x, y }, away: { x: 1, y: 0 }, gap: 0 },
      { at: { x: 360 - x, y }, away: { x: -1, y: 0 }, gap: 0 },
    ],
    home: { x, y },
  });
}
