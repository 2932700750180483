// The weight: the one force that acts from afar.
import type { SetUpBody } from "../../1-bodies/types.ts";
import { axisDirection, quarterTurn } from "../../algebra/turned.ts";
import type { SetUpForce } from "../types.ts";

/** The weight of a body, straight down; none for what has no mass, or where g is zero. */
export function weightOf(body: SetUpBody): SetUpForce[] {
  if (body.weight.decimal === 0) return [];
  return [
    {
      ref: `weight${body.number}`,
      kind: "weight",
      on: body.id,
      toward: quarterTurn(axisDirection(1), 2),
      unknown: null,
      size: body.letters.weight,
      from: "",
      by: null,
    },
  ];
}
