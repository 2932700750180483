// The pull of a rope: one size all along it, wherever it pulls.
import type { SetUp } from "../../1-bodies/types.ts";
import { symbol } from "../../algebra/expr.ts";
import type { SetUpForce, SetUpHypothesis } from "../types.ts";

/** The pulls of taut ropes on a body; a rope that runs round it pulls twice. */
export function tensions(setUp: SetUp, hypothesis: SetUpHypothesis, body: string): SetUpForce[] {
  return setUp.ropes
    .filter((rope) => hypothesis.ropes[rope.id] === "taut")
    .flatMap((rope) =>
      rope.pulls
        .filter((pull) => pull.on === body)
        .map(({ toward }) => ({
          ref: rope.id,
          kind: "tension",
          on: body,
          toward,
          unknown: rope.id,
          size: symbol(rope.id),
          from: rope.id,
          by: null,
        })),
    );
}
