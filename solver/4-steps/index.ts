// Stage 4: equations to moves. One attempt, under one hypothesis, with the verdict its inequalities have.
import type { Hypothesis, ForceList } from "../2-forces/types.ts";
import type { AxisLaw } from "../3-equations/types.ts";
import type { Expr } from "../algebra/expr.ts";
import type { Values } from "../algebra/evaluate.ts";
import type { AttemptInput } from "./attempt-input.ts";
import { Writer } from "./writer.ts";
import { writeStraight } from "./straight.ts";
import { writeFree } from "./free.ts";
import type { Passage, Solved } from "./types.ts";
import { fails } from "./verdict.ts";
import type { Verdict } from "./verdict.ts";

export type { AxisStanding, NonZero, Outcome, Passage, PassageData, Reason, Relation, Solved, Status, Step, StepKind } from "./types.ts";
export type { PullSign, Verdict } from "./verdict.ts";
export type { AttemptInput, FirstAxis } from "./attempt-input.ts";
export { fails } from "./verdict.ts";
export { baseForce, isShort } from "./exact-lines.ts";
export { eliminate } from "./eliminate.ts";
export type { Live } from "./live.ts";
export { Writer } from "./writer.ts";

/** One attempt written out. */
export interface Attempt {
  readonly hypothesis: Hypothesis;
  readonly verdict: Verdict;
  readonly holds: boolean;
  readonly forces: ForceList;
  readonly laws: readonly [AxisLaw, AxisLaw];
  readonly passages: readonly Passage[];
  readonly solved: readonly Solved[];
  readonly values: Values;
  /** The final forms in letters, by unknown. */
  readonly letters: ReadonlyMap<string, Expr>;
  /** The combination that is fixed where the sizes are not. */
  readonly combination: { readonly id: string; readonly expr: Expr } | null;
}

/** Writes one attempt. */
export function writeAttempt(input: AttemptInput): Attempt {
  const writer = new Writer(input.hypothesis.id, input.prefix, fails(input.verdict));
  const free = Object.values(input.hypothesis.ropes).includes("free");
  const written = free ? writeFree(writer, input) : writeStraight(writer, input);
  return { hypothesis: input.hypothesis, verdict: input.verdict, holds: !fails(input.verdict), forces: input.forces, laws: input.laws, passages: writer.passages, ...written };
}
