// Stage 2: world and hypothesis to forces. Long-range first (the weight), then whatever touches the body (the ropes).
import type { Side, World, WorldRope } from "../1-bodies/types.ts";
import { ONE, ZERO } from "../algebra/expr.ts";
import type { Rules } from "./rules.ts";
import type { AbsentForce, Force, ForceList, Hypothesis } from "./types.ts";

export type { AbsentForce, AxisIndex, DirectionCosine, Force, ForceList, Hypothesis, RopeState } from "./types.ts";
export { standardRules } from "./rules.ts";
export type { Rules } from "./rules.ts";
export type * from "./set-up-types.ts";
export { listSetUpForces } from "./set-up/index.ts";

/** Lists the forces on the body under a hypothesis. A free rope leans to the side the body has to be pulled to, so its two sides are known. */
export function listForces(world: World, hypothesis: Hypothesis, rules: Rules): ForceList {
  const { body } = world;
  const acting: Force[] = [];
  const absent: AbsentForce[] = [];
  if (body.weight.decimal === 0) absent.push({ kind: "weight" });
  else
    acting.push({
      kind: "weight",
      id: "weight",
      on: body.id,
      cosines: [
        { sign: 0, factor: ZERO },
        { sign: -1, factor: ONE },
      ],
      size: rules.weight(body),
    });
  for (const rope of world.ropes) {
    const state = hypothesis.ropes[rope.id];
    if (state === "slack") absent.push({ kind: "slack-tension", rope: rope.id });
    else acting.push(state === "free" ? freeTension(world, rope) : tension(world, rope, rules));
  }
  absent.push({ kind: "normal" }, { kind: "friction" }, { kind: "push" });
  return { acting, absent };
}

function tension(world: World, rope: WorldRope, rules: Rules): Force {
  return {
    kind: "tension",
    id: rope.id,
    on: world.body.id,
    rope: rope.id,
    cosines: [rules.component(rope, 0), rules.component(rope, 1)],
  };
}

function freeTension(world: World, rope: WorldRope): Force {
  const sides: Side[] = [world.body.push, world.body.lift];
  return { kind: "free-tension", id: rope.id, on: world.body.id, rope: rope.id, sides };
}
