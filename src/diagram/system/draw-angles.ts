// The given angles: of a rope at its support or at the body it pulls, of a slope at its foot.
import { angleMark } from "../angle-mark.ts";
import { angleRef, unitOf } from "../direction.ts";
import { textSize } from "../force-marks.ts";
import { along, distance, type Point } from "../geometry.ts";
import { words } from "../label.ts";
import { atAngle } from "../spots.ts";
import { avoid, type Sketch } from "../sketch.ts";
import type { SystemScene } from "../system-scene.ts";
import { lowEnd, type Face } from "./faces.ts";
import { cross, heading, plus, type Vec } from "./vector.ts";
import type { Part, SystemView } from "./view.ts";

/** Draws the angles of a part. */
export function drawAngles(sketch: Sketch, part: Part, scene: SystemScene, view: SystemView): void {
  for (const face of part.faces) if (face.kind === "wedge") slopeAngle(sketch, face, view);
  const marked = new Map<string, number>();
  for (const strand of part.layout.strands) {
    const rope = scene.ropes.find(({ id }) => id === strand.rope);
    const pull = rope?.pulls[strand.pulls[0] ?? 0];
    if (pull === undefined || pull.degreesText === null || followsSlope(part, strand)) continue;
    // A slack rope of known length hangs as it must; its direction says nothing.
    if (rope?.state === "slack" && rope.length !== null) continue;
    const tie = part.layout.ties.find(({ key }) => key === strand.to.at);
    const atSupport = tie?.kind === "beam" || tie?.kind === "ring";
    const before = marked.get(strand.from.at) ?? 0;
    if (!atSupport) marked.set(strand.from.at, before + 1);
    const line = atSupport
      ? { key: strand.key, centre: strand.end, tip: strand.start, degrees: strand.degrees + 180 }
      : { key: strand.key, centre: strand.start, tip: strand.end, degrees: strand.degrees };
    lineAngle(sketch, line, { text: pull.degreesText, ref: angleRef(pull.angleLetter), atSupport, before }, view);
  }
  for (const push of part.layout.pushes) {
    const body = part.layout.bodies.find(({ id }) => id === push.on);
    if (body === undefined || push.degreesText === null) continue;
    const { degrees } = push;
    if (followsSlope(part, { degrees, body: push.on, to: { at: "" } })) continue;
    const line = { key: push.id, centre: plus(body.at, push.tail), tip: plus(body.at, push.tip), degrees };
    lineAngle(
      sketch,
      line,
      { text: push.degreesText, ref: angleRef(push.angleLetter), atSupport: false, before: 0 },
      view,
    );
  }
}

/** A stretch of rope or a push, as far as its direction goes. */
interface Line {
  readonly degrees: number;
  readonly body: string;
  readonly to: { readonly at: string };
}

/** Whether a rope runs along a surface whose angle is marked anyway. */
function followsSlope({ faces }: Part, strand: Line): boolean {
  const direction = heading(strand.degrees);
  return faces.some(
    ({ kind, ground }) =>
      kind === "wedge" &&
      Math.abs(cross(direction, ground.along)) < 1e-6 &&
      ground.surfaces.some(({ on }) => on === strand.body || on === strand.to.at),
  );
}

interface Marked {
  readonly text: string;
  readonly ref: string;
  readonly atSupport: boolean;
  /** How many angles are marked at the same body already. */
  readonly before: number;
}

/** From the level line to a rope or a push, at one of its ends. */
function lineAngle(
  sketch: Sketch,
  line: { readonly key: string; readonly centre: Vec; readonly tip: Vec; readonly degrees: number },
  { text, ref, atSupport, before }: Marked,
  view: SystemView,
): void {
  const [centre, tip] = [view.at(line.centre), view.at(line.tip)];
  const from = nearestLevel(line.degrees);
  const radius = Math.min(24 + 7 * before, 0.45 * distance(centre, tip));
  if (!atSupport)
    sketch.lines(`level-${line.key}`, [centre, along(centre, unitOf(from), radius + 14)], "axis", avoid.helper);
  mark(sketch, line.key, ref, text, centre, radius, from, line.degrees);
}

/** The level direction, 0 or 180 and whole turns, from which an angle is acute. */
function nearestLevel(degrees: number): number {
  return Math.round(degrees / 180) * 180;
}

function slopeAngle(sketch: Sketch, face: Face, view: SystemView): void {
  const surface = face.ground.surfaces.find(({ degreesText }) => degreesText !== null);
  if (surface?.degreesText == null) return;
  const foot = view.at(lowEnd(face));
  const { along: way } = face.ground;
  const degrees = (Math.atan2(Math.abs(way.y), way.x) * 180) / Math.PI;
  const [from, to] = way.y > 0 ? [0, degrees] : [180, 180 - degrees];
  const length = distance(view.at(face.start), view.at(face.end));
  if (face.base < lowEnd(face).y - 1)
    sketch.lines(`level-${face.key}`, [foot, along(foot, unitOf(from), 40)], "axis", avoid.helper);
  mark(
    sketch,
    face.key,
    angleRef(surface.angleLetter),
    surface.degreesText,
    foot,
    Math.min(28, 0.3 * length),
    from,
    to,
  );
}

function mark(
  sketch: Sketch,
  key: string,
  ref: string,
  text: string,
  centre: Point,
  radius: number,
  from: number,
  to: number,
): void {
  angleMark(sketch, { key: `angle-${key}`, centre, radius, from, to, ref });
  sketch.label({
    key: `angle-${key}-label`,
    runs: [words(text)],
    size: textSize.angle,
    look: "angle-text",
    ref,
    spots: atAngle(centre, radius, from, to),
    home: along(centre, unitOf((from + to) / 2), radius),
  });
}
