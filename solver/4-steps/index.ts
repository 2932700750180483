// Stage 4: equations to moves. One attempt, under one hypothesis, with the verdict its inequalities have.
import type { AttemptInput } from "./attempt-input.ts";
import { Writer } from "./writer.ts";
import { writeStraight } from "./straight.ts";
import { writeFree } from "./free.ts";
import type { Attempt } from "./types.ts";
import { fails } from "./verdict.ts";

export type {
  Attempt,
  AxisStanding,
  NonZero,
  Outcome,
  Passage,
  PassageData,
  HangingPassageData,
  SetUpPassageData,
  Reason,
  Relation,
  Solved,
  Status,
  Step,
  StepKind,
} from "./types.ts";
export type { PullSign, Verdict } from "./verdict.ts";
export type { AttemptInput, FirstAxis } from "./attempt-input.ts";
export { fails } from "./verdict.ts";
export { baseForce, isShort } from "./exact-lines.ts";
export { eliminate } from "./eliminate.ts";
export type { Live } from "./live.ts";
export { valueOfExpr } from "./values.ts";
export { Writer } from "./writer.ts";

/** Writes one attempt. */
export function writeAttempt(input: AttemptInput): Attempt {
  const writer = new Writer(input.hypothesis.id, input.prefix, fails(input.verdict));
  const free = Object.values(input.hypothesis.ropes).includes("free");
  const written = free ? writeFree(writer, input) : writeStraight(writer, input);
  return {
    hypothesis: input.hypothesis,
    verdict: input.verdict,
    holds: !fails(input.verdict),
    forces: input.forces,
    laws: input.laws,
    passages: writer.passages,
    ...written,
  };
}
export { isAcceleration, setUpValues, unitOfLetter, unitsOf, writeSetUpAttempt } from "./set-up/index.ts";
export type { Breach, Equality, Limit, SetUpAttempt, SetUpInput, SetUpUnits } from "./set-up/index.ts";
export type { AttemptValues } from "./values.ts";
