// The diagram drawn again once the sizes are known.
import { symbol } from "../../algebra/expr.ts";
import { decimal } from "../../algebra/evaluate.ts";
import type { Speech } from "../speech.ts";
import { listed, say } from "../sentence.ts";
import type { Sentence } from "../types.ts";

/** What is to be seen in the diagram to scale. */
export function scaleSentences(s: Speech): Sentence[] {
  const pulling = s.world.ropes.filter((r) => decimal(symbol(r.id), s.values) > 0);
  const lengths =
    pulling.length === 0
      ? say`No rope pulls, so no arrow${s.world.body.weight.decimal === 0 ? "" : " but the weight"} is left.`
      : say`The same diagram once more, with every arrow as long as its force is large: ${listed(pulling.map((r) => say`${s.letter(r.id)} is ${s.number(symbol(r.id), "N", r.id)}`))}.`;
  const check = say`It is one more check, by eye: lay the arrows head to tail in your mind. Do they leave ${s.world.body.push === 0 && s.world.body.acceleration.y.decimal === 0 ? "nothing over" : "just the mass times the acceleration"}?`;
  return [lengths, check];
}
