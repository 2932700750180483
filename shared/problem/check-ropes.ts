import { equalDirections, directionBetween, opposite } from "./direction.ts";
import { quote } from "./fault.ts";
import type { Fault } from "./fault.ts";
import { joinedBody, pullsOf } from "./rope.ts";
import type { Body, Problem, Pull, Rope, Vector } from "./types.ts";

/** What places, lengths and the order of pulls have to do with each other. */
export function checkRopes(problem: Problem): Fault[] {
  return problem.ropes.flatMap((rope, index) => {
    const path = `/ropes/${index}`;
    // A body that is not there is told elsewhere, and nothing more can be said of the rope.
    if (pullsOf(rope).some(({ on }) => bodyOf(problem, on) === undefined)) return [];
    return rope.anchor === null
      ? [...checkStraight(problem, rope, path), ...checkTurns(problem, rope, path)]
      : checkTied(problem, rope, rope.anchor, path);
  });
}

function bodyOf(problem: Problem, id: string): Body | undefined {
  return problem.bodies.find((body) => body.id === id);
}

function checkTied(problem: Problem, rope: Rope, anchor: Vector, path: string): Fault[] {
  const at = bodyOf(problem, rope.on)?.at ?? null;
  const body = quote(rope.on);
  if (rope.length === null && at === null) {
    const accepted = `a length as well, where ${body} hangs freely; or "at", the place of ${body}`;
    return [{ path: `${path}/anchor`, found: `an anchor, while ${body} has no place`, accepted }];
  }
  if (rope.length !== null && at !== null) {
    const accepted = `no length, because "at" of ${body} and the anchor give it; or no "at", where ${body} hangs freely`;
    return [{ path: `${path}/length`, found: `a length, while ${body} has a place`, accepted }];
  }
  if (at === null || !isNowhere(directionBetween(at, anchor))) return [];
  return [
    { path: `${path}/anchor`, found: `the place of ${body} itself`, accepted: `a place other than that of ${body}` },
  ];
}

function checkStraight(problem: Problem, rope: Rope, path: string): Fault[] {
  const to = joinedBody(rope);
  if (to === null) return [];
  if (to === rope.on) {
    const found = `a rope from ${quote(to)} straight to ${quote(to)}`;
    return [{ path, found, accepted: "a rope to another body or to a support" }];
  }
  const from = bodyOf(problem, rope.on)?.at ?? null;
  const end = bodyOf(problem, to)?.at ?? null;
  if (from === null || end === null) {
    if (rope.direction.kind !== "hangs") return [];
    const accepted = `a direction; or "at" of both ${quote(rope.on)} and ${quote(to)}`;
    return [{ path, found: "neither a direction nor both places", accepted }];
  }
  const between = directionBetween(from, end);
  if (isNowhere(between)) {
    const found = `${quote(to)}, which is at the same place as ${quote(rope.on)}`;
    return [{ path: `${path}/to`, found, accepted: "a body at another place" }];
  }
  if (equalDirections(rope.direction, between)) return [];
  const accepted = `"to" without a direction, because both bodies have places ("at")`;
  return [{ path: `${path}/direction`, found: "a direction beside two places", accepted }];
}

/** Two pulls in a row on one body: a rope runs round it. */
function checkTurns(problem: Problem, rope: Rope, path: string): Fault[] {
  if (joinedBody(rope) !== null) return [];
  return rope.further.flatMap((pull, index): Fault[] => {
    const before = index === 0 ? rope : rope.further[index - 1];
    if (before?.on !== pull.on) return [];
    if (bodyOf(problem, pull.on)?.kind !== "pulley") {
      const found = `${quote(pull.on)} twice in a row, which is no pulley`;
      return [
        { path: `${path}/pulls/${index + 1}/on`, found, accepted: 'another body; or a body of the kind "pulley"' },
      ];
    }
    return passesBy(before, pull)
      ? [
          {
            path: `${path}/pulls/${index + 1}/direction`,
            found: "the opposite of the pull before it on the same pulley",
            accepted: "a direction in which the rope runs round the pulley",
          },
        ]
      : [];
  });
}

function passesBy(before: Pull, pull: Pull): boolean {
  return equalDirections(pull.direction, opposite(before.direction));
}

function isNowhere(direction: ReturnType<typeof directionBetween>): boolean {
  return direction.kind === "slope" && direction.run.n === 0n && direction.rise.n === 0n;
}
