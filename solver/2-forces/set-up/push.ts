// A push or pull by hand: of given size, or to be found.
import type { SetUp } from "../../1-bodies/types.ts";
import { symbol } from "../../algebra/expr.ts";
import type { SetUpForce } from "../types.ts";

/** The pushes on a body. */
export function pushForces(setUp: SetUp, body: string): SetUpForce[] {
  return setUp.pushes
    .filter((push) => push.on === body)
    .map(({ id, toward, size }) => ({
      ref: id,
      kind: "push",
      on: body,
      toward,
      unknown: size === null ? id : null,
      size: symbol(id),
      from: id,
      by: null,
    }));
}
