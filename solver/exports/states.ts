// What each rope and surface turned out to do, by the names of the public format.
import type { SystemDerivation } from "../index.ts";

/** The state of a rope or a surface in the case in force. */
export interface ExportedState {
  readonly id: string;
  readonly state:
    "taut" | "slack" | "touching" | "smooth" | "lifted" | "stuck" | "slides forwards" | "slides backwards";
  /** The way friction acts on the body that touches the surface; only where there is friction. */
  readonly friction?: "forwards" | "backwards";
}

/** States in the order of the document. "forwards" is along the surface's own slope direction. */
export function statesOf({ system }: Pick<SystemDerivation, "system">): readonly ExportedState[] {
  const { setUp, inForce } = system;
  const ropes = setUp.ropes.map(({ id }) => ({ id, state: inForce.hypothesis.ropes[id] ?? "taut" }));
  const contacts = setUp.contacts.map(({ id }): ExportedState => {
    const state = inForce.hypothesis.contacts[id];
    if (state === undefined) return { id, state: "touching" };
    if (state.touch === "lifted") return { id, state: "lifted" };
    if (state.grip === "smooth" || state.grip === "held") return { id, state: "smooth" };
    const friction = state.sense > 0 ? "forwards" : "backwards";
    if (state.grip === "sticks") return { id, state: "stuck", friction };
    return { id, state: state.sense < 0 ? "slides forwards" : "slides backwards", friction };
  });
  return [...ropes, ...contacts];
}
