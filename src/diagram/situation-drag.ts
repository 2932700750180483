// One drag in the picture of the situation, from taking hold to letting go. Each step gives a new drag; nothing here knows a pointer event.
import { givenDegrees } from "./direction.ts";
import { loadDirections, ropeDirection } from "./drag.ts";
import { toScreen, type View } from "./fit-view.ts";
import type { Point } from "./geometry.ts";
import type { Handle } from "./picture.ts";
import type { DiagramScene } from "./scene.ts";
import { drawnEnds, viewWithEnds } from "./situation-view.ts";

/** A rope and the direction it now has, in degrees anticlockwise from the x axis. */
export interface Turn {
  readonly rope: string;
  readonly degrees: number;
}

/** What a drag asks for: one rope's direction, or those of all ropes because the load moved. */
export type SituationChange = Turn | { readonly load: readonly Turn[] };

/** A drag under way. */
export interface SituationDrag {
  /** The rope whose end is held, or null for the load. */
  readonly rope: string | null;
  /** From the point that moves to where it was taken hold of. */
  readonly grip: Point;
  /** Where the load's assumed place and the ropes' ends were drawn at the start, and under which view. */
  readonly load: Point;
  readonly ends: readonly Point[];
  readonly view: View;
  readonly start: readonly Turn[];
  readonly now: readonly Turn[];
  /** Where the point that moves is wished to be. */
  readonly wished: Point;
}

/** Takes hold of a handle at a point of the picture. */
export function beginDrag(
  scene: DiagramScene,
  view: View,
  handle: Pick<Handle, "rope" | "point">,
  at: Point,
): SituationDrag {
  const turns = scene.ropes.map((rope): Turn => ({ rope: rope.id, degrees: givenDegrees(rope) }));
  return {
    rope: handle.rope,
    grip: { x: at.x - handle.point.x, y: at.y - handle.point.y },
    load: toScreen(view, { x: 0, y: 0 }),
    ends: drawnEnds(scene, view),
    view,
    start: turns,
    now: turns,
    wished: handle.point,
  };
}

/** Moves to a point of the picture: the directions settle on whole degrees, or on tenths where `fine`. */
export function moveDrag(drag: SituationDrag, at: Point, fine: boolean): SituationDrag {
  const wished = { x: at.x - drag.grip.x, y: at.y - drag.grip.y };
  const before = drag.now.map((turn) => turn.degrees);
  const all = drag.rope === null ? loadDirections(drag.ends, wished, before, fine) : null;
  const now = drag.now.map((turn, index): Turn => {
    if (all !== null) return { rope: turn.rope, degrees: all[index] ?? turn.degrees };
    if (turn.rope !== drag.rope) return turn;
    return { rope: turn.rope, degrees: ropeDirection(drag.load, wished, turn.degrees, fine) };
  });
  return { ...drag, wished, now };
}

/** Whether two states of a drag ask for the same directions. */
export function sameTurns(a: readonly Turn[], b: readonly Turn[]): boolean {
  return a.every((turn, index) => Math.abs(turn.degrees - (b[index]?.degrees ?? NaN)) < 1e-6);
}

/** What to tell whoever owns the problem, for these directions. */
export function changeOf(drag: SituationDrag, turns: readonly Turn[]): SituationChange {
  if (drag.rope === null) return { load: turns };
  return turns.find((turn) => turn.rope === drag.rope) ?? { load: turns };
}

/** The view the picture should have while the drag lasts. */
export function viewDuring(drag: SituationDrag, scene: DiagramScene): View | null {
  return drag.rope === null ? viewWithEnds(scene, drag.ends, drag.wished) : drag.view;
}

/** Whether a scene shows these directions. */
export function shows(scene: DiagramScene, turns: readonly Turn[]): boolean {
  return (
    scene.ropes.length === turns.length &&
    sameTurns(
      scene.ropes.map((r) => ({ rope: r.id, degrees: givenDegrees(r) })),
      turns,
    )
  );
}
