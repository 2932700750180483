// Assume, solve, check, and if the check fails take the other case. The one module that runs the stages more than once; stages never loop.
import { buildWorld } from "../1-bodies/index.ts";
import type { World } from "../1-bodies/index.ts";
import { listForces } from "../2-forces/index.ts";
import type { Hypothesis, RopeState, Rules } from "../2-forces/index.ts";
import { writeLaws } from "../3-equations/index.ts";
import { fails, writeAttempt } from "../4-steps/index.ts";
import type { FirstAxis } from "../4-steps/index.ts";
import type { Problem } from "../../shared/problem/index.ts";
import { judge } from "./judge.ts";
import { settle } from "./settled.ts";
import type { CaseResult, ImpossibleReason } from "./types.ts";

export type { CaseKind, CaseResult, ImpossibleReason, SetUpKind, SetUpResult } from "./types.ts";
export { runSetUp } from "./set-up/index.ts";
export type { SetUpChoices } from "./set-up/index.ts";

/** Runs the stages under one hypothesis after another until one holds or none is left. */
export function runCases(problem: Problem, firstAxis: FirstAxis, rules: Rules): CaseResult {
  const world = buildWorld(problem);
  const { verdict, signs, keep } = judge(world);
  const straight = hypothesisOf(world, world.ropes.length === 1 ? "taut" : "both-taut", () => "taut");
  const forces = listForces(world, straight, rules);
  const first = writeAttempt({
    world,
    hypothesis: straight,
    forces,
    laws: writeLaws(world, forces),
    verdict,
    pullSigns: signs,
    firstAxis,
    prefix: "",
    bridge: null,
  });
  const origin = { x: 0, y: 0 };
  const result = { world, attempts: [first], position: origin, impossible: null };
  if (verdict.kind === "combination") return { ...result, kind: "under-determined", slack: [] };
  if (verdict.kind === "all-zero") return { ...result, kind: "slack", slack: world.ropes.map((r) => r.id) };
  if (!fails(verdict)) return { ...result, kind: "taut", slack: [] };
  const kept = world.ropes.find((r) => r.id === keep);
  const loose = world.ropes.find((r) => r.id !== keep);
  if (kept === undefined || loose === undefined)
    return { ...result, kind: "impossible", slack: [], impossible: reasonOf(world, verdict.kind) };
  const settled = settle(world, kept, loose);
  const alone = hypothesisOf(world, `${loose.id}-slack`, (id) => (id === kept.id ? "free" : "slack"));
  const left = listForces(world, alone, rules);
  const second = writeAttempt({
    world,
    hypothesis: alone,
    forces: left,
    laws: writeLaws(world, left),
    verdict: { kind: "holds" },
    pullSigns: [],
    firstAxis,
    prefix: "alone.",
    bridge: { rope: loose.id, dx: settled.dx, dy: settled.dy },
  });
  return { ...result, kind: "slack", slack: [loose.id], attempts: [first, second], position: settled.position };
}

function reasonOf(world: World, verdict: string): ImpossibleReason {
  if (verdict === "off-line") return "off-line";
  return world.body.lift < 0 && world.ropes.every((r) => r.rise >= 0) ? "outrun" : "must-push";
}

function hypothesisOf(world: World, id: string, state: (rope: string) => RopeState): Hypothesis {
  return { id, ropes: Object.fromEntries(world.ropes.map((r) => [r.id, state(r.id)])) };
}
