// The angles of the situation: those given, at the support, and the one found, at the load.
import { angleMark } from "./angle-mark.ts";
import { angleRef, givenDegrees, pulls, unitOf } from "./direction.ts";
import { textSize } from "./force-marks.ts";
import { along, type Point } from "./geometry.ts";
import { letter, words } from "./label.ts";
import type { DiagramScene, SceneRope } from "./scene.ts";
import { avoid, type Sketch } from "./sketch.ts";
import { atAngle } from "./spots.ts";

/** The given angle, from the beam (or the level line at a post) to the rope as it was given. */
export function angleAtSupport(sketch: Sketch, rope: SceneRope, end: Point, radius: number): void {
  const from = rope.side === 1 ? 180 : 0;
  const target = givenDegrees(rope) + (rope.side === 1 ? 180 : -180);
  const ref = angleRef(rope.angleLetter);
  const post = rope.anchor.kind === "post";
  if (post) sketch.lines(`level-${rope.id}`, [end, along(end, unitOf(from), 46)], "axis", avoid.helper);
  // Ropes with equal angles share a letter, so the rope is part of the key.
  const key = `${ref}-${rope.id}`;
  angleMark(sketch, { key: `${key}-arc`, centre: end, radius, from, to: target, ref });
  sketch.label({
    key: `${key}-label`,
    runs: [words(rope.degreesText)],
    size: textSize.angle,
    look: "angle-text",
    ref,
    spots: atAngle(end, radius, from, target),
    home: along(end, unitOf((from + target) / 2), radius),
  });
}

/** The angle of the rope on which the load hangs alone, at the load, from the level line. */
export function angleAtLoad(sketch: Sketch, scene: DiagramScene, load: Point): void {
  const pull = pulls(scene, "found").find((one) => one.rope.state === "free");
  if (pull === undefined || pull.side === 0) return;
  const from = pull.side === 1 ? 0 : 180;
  sketch.lines("level-load", [load, along(load, unitOf(from), 52)], "axis", avoid.helper);
  angleMark(sketch, { key: "theta-arc", centre: load, radius: 34, from, to: pull.degrees, ref: "theta" });
  sketch.label({
    key: "theta-label",
    runs: [letter("θ"), words(` = ${pull.acute.text}`)],
    size: textSize.angle,
    look: "angle-text",
    ref: "theta",
    spots: atAngle(load, 34, from, pull.degrees),
    home: along(load, unitOf((from + pull.degrees) / 2), 34),
  });
}
