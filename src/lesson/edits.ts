// Edits of a problem from what a hand does or types. Numbers come as text, so that they stay exact.
import { gravityAtLatitude, normalisedDegrees } from "../../shared/problem/index.ts";
import type { ProblemChange } from "../../shared/problem/index.ts";
import { ExactError, rational } from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";
import type { Scene } from "./scene-state.svelte.ts";
import { sideOf } from "./control-values.ts";

const TENTHS = 10;

/** What a control can change. */
export type Quantity =
  { readonly kind: "load" | "gravity" | "latitude" | "ax" | "ay" } | { readonly kind: "rope"; readonly rope: string };

/** Directions dragged to, degrees anticlockwise to a tenth, as edits. */
export function turnsOf(turns: readonly { readonly rope: string; readonly degrees: number }[]): ProblemChange[] {
  return turns.map(({ rope, degrees }) => ({
    kind: "angle",
    rope,
    value: normalisedDegrees(rational(String(Math.round(degrees * TENTHS) / TENTHS))),
  }));
}

/** Takes a typed number for a quantity of a scene. Gives what is wrong with it, or null. */
export function takeText(scene: Scene, quantity: Quantity, text: string): string | null {
  const cleaned = text.trim().replace(",", ".").replace("−", "-");
  try {
    const [fault] = scene.edit([changeFor(scene, quantity, rational(cleaned))]);
    return fault === undefined ? null : `${fault.found} is not taken; accepted: ${fault.accepted}`;
  } catch (error) {
    if (error instanceof ExactError) return `“${text.slice(0, 20)}” is not a number such as 4.2`;
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}

function changeFor(scene: Scene, quantity: Quantity, value: Rational): ProblemChange {
  const { problem } = scene.page;
  const body = problem.bodies[0]?.id ?? "";
  switch (quantity.kind) {
    case "load":
      return { kind: problem.bodies[0]?.load.kind ?? "mass", body, value };
    case "gravity":
      return { kind: "gravity", value };
    case "latitude":
      return { kind: "gravity", value: gravityAtLatitude(value) };
    case "ax":
    case "ay":
      return { kind: "acceleration", body, axis: quantity.kind === "ax" ? "x" : "y", value };
    case "rope":
      return {
        kind: "angle",
        rope: quantity.rope,
        value:
          sideOf(scene.start.problem, quantity.rope) === "right"
            ? value
            : normalisedDegrees(rational("180").sub(value)),
      };
  }
}
