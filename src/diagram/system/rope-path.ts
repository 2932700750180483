// How a rope runs, read off the order of its pulls: what lies between one place where it pulls and the next.
import type { SystemRope } from "../system-scene.ts";
import { dot, heading } from "./vector.ts";

/** What joins two pulls in a row, or an end to its support. Pulls are numbered along the rope from 0. */
export type Join =
  /** Round a movable pulley. */
  | { readonly kind: "wheel"; readonly first: number; readonly second: number }
  /** Straight from body to body. */
  | { readonly kind: "straight"; readonly first: number; readonly second: number }
  /** Over a fixed pulley. */
  | { readonly kind: "turn"; readonly first: number; readonly second: number }
  /** To a support. */
  | { readonly kind: "tie"; readonly pull: number };

/**
 * The joins of a rope, in order. Stretches of rope and movable pulleys take turns; a rope that begins or ends with a
 * movable pulley is tied to a support there.
 */
export function ropePath(rope: SystemRope): Join[] {
  const { pulls } = rope;
  const last = pulls.length - 1;
  if (last === 0) return [{ kind: "tie", pull: 0 }];
  const round = wheelsOf(pulls.map((pull) => pull.on));
  const joins: Join[] = round[0] === true ? [{ kind: "tie", pull: 0 }] : [];
  for (let first = 0; first < last; first += 1) {
    const second = first + 1;
    if (round[first] === true) joins.push({ kind: "wheel", first, second });
    else joins.push({ kind: opposite(rope, first, second) ? "straight" : "turn", first, second });
  }
  if (round[last - 1] === true) joins.push({ kind: "tie", pull: last });
  return joins;
}

/** For each two neighbours whether the rope runs round a pulley between them. */
function wheelsOf(on: readonly string[]): boolean[] {
  const gaps = on.slice(1).map((body, index) => ({ same: body === on[index], index }));
  const span = gaps.find((gap) => !gap.same);
  // Without any span between two bodies the rope begins round its pulley.
  const parity = span === undefined ? 1 : span.index % 2;
  return gaps.map((gap) => gap.same && gap.index % 2 !== parity);
}

function opposite(rope: SystemRope, first: number, second: number): boolean {
  const [a, b] = [rope.pulls[first], rope.pulls[second]];
  return (
    a !== undefined && b !== undefined && a.on !== b.on && dot(heading(a.degrees), heading(b.degrees)) < -1 + 1e-12
  );
}
