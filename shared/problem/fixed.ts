import { isZeroRational } from "../exact/index.ts";
import type { ProblemChange } from "./change.ts";
import { equalDirections, opposite, turnedTo } from "./direction.ts";
import { quote } from "./fault.ts";
import type { Fault } from "./fault.ts";
import { isPlaced, joinedBody } from "./rope.ts";
import type { Problem, Rope } from "./types.ts";

/** Why a change cannot be made although its value is right: something else fixes what it would change. Null: nothing does. */
export function whyFixed(problem: Problem, change: ProblemChange): Omit<Fault, "path"> | null {
  switch (change.kind) {
    case "gravity":
      return null;
    case "mass":
    case "weight":
      return knotFixed(problem, change);
    case "acceleration":
      return motionFixed(problem, change.body);
    case "angle":
    case "slope":
      return directionFixed(problem, change);
  }
}

type LoadChange = Extract<ProblemChange, { readonly kind: "mass" | "weight" }>;

function knotFixed({ bodies }: Problem, { kind, body: id, value }: LoadChange): Omit<Fault, "path"> | null {
  const body = bodies.find((one) => one.id === id);
  if (body?.kind !== "knot" || (kind === "mass" && isZeroRational(value))) return null;
  return { found: `a ${kind} of the knot ${quote(id)}`, accepted: "no mass but 0, because a knot has none" };
}

function motionFixed({ bodies }: Problem, id: string): Omit<Fault, "path"> | null {
  const kind = bodies.find((body) => body.id === id)?.motion.kind;
  if (kind !== "line" && kind !== "free") return null;
  return {
    found: `an acceleration beside the motion of ${quote(id)}`,
    accepted: "at most one of acceleration and motion",
  };
}

type Turn = Extract<ProblemChange, { readonly kind: "angle" | "slope" }>;

function directionFixed(problem: Problem, change: Turn): Omit<Fault, "path"> | null {
  const rope = problem.ropes.find((one) => one.id === change.rope);
  if (rope === undefined) return null;
  if (isPlaced(rope, problem.bodies))
    return { found: `a direction of ${quote(rope.id)}, which places give`, accepted: "a rope given by its direction" };
  if (joinedBody(rope) !== null || !wouldBeStraight(rope, change)) return null;
  const found = "the opposite of the rope's other end, as if there were no pulley";
  return { found, accepted: "a direction that is not the opposite of the rope's other end" };
}

function wouldBeStraight(rope: Rope, change: Turn): boolean {
  const [other, ...rest] = rope.further;
  if (other === undefined || rest.length > 0) return false;
  const direction =
    change.kind === "angle"
      ? turnedTo(rope.direction, change.value)
      : ({ kind: "slope", run: change.run, rise: change.rise } as const);
  return equalDirections(other.direction, opposite(direction));
}
