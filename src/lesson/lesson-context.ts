// What a lesson's cells share while the page is built: the start, its derivation, and the questions beside the handles.
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { gravityChoices, writeProblem } from "../../shared/problem/index.ts";
import { readProblem } from "../../shared/problem/schema.ts";
import type { Derivation } from "../../solver/index.ts";
import { toExactText } from "../../shared/exact/index.ts";
import { controlValues } from "./control-values.ts";
import type { ControlValues } from "./control-values.ts";
import { derivationOf, startOf } from "./scene-state.svelte.ts";

/** The lesson a cell stands in. */
export interface LessonContext {
  /** The scene's id: one derivation a lesson. */
  readonly scene: string;
  readonly document: ProblemDocument;
  readonly derivation: Derivation;
  readonly questions: Readonly<Record<string, string>>;
  /** The values of the controls at the start, and the values of g they offer. */
  readonly controls: ControlValues;
  readonly gravities: readonly { readonly label: string; readonly value: string }[];
}

/** Raised where a lesson's problem.json has faults: the build stops and names them. */
export class LessonProblemError extends Error {}

/** Reads a lesson's problem and derives its start. Throws LessonProblemError with every fault. */
export function openLesson(scene: string, text: string, questions: Readonly<Record<string, string>>): LessonContext {
  const reading = readProblem(text);
  if (!reading.ok)
    throw new LessonProblemError(
      `lessons/${scene}/problem.json: ${reading.faults.map((f) => `${f.path}: found ${f.found}, accepted: ${f.accepted}`).join("; ")}`,
    );
  const document = writeProblem(reading.problem);
  const start = startOf(document);
  const gravities = gravityChoices.map((g) => ({ label: g.label, value: toExactText(g.value) }));
  return {
    scene,
    document,
    derivation: derivationOf(start),
    questions,
    controls: controlValues(start, start),
    gravities,
  };
}
