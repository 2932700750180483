// The solver's public face: a validated problem in, a whole derivation out. Pure; no page, no file, no clock.
import type { Problem } from "../shared/problem/index.ts";
import type { World } from "./1-bodies/index.ts";
import { standardRules } from "./2-forces/index.ts";
import type { ForceList, Rules } from "./2-forces/index.ts";
import { answersOf } from "./results/index.ts";
import type { Answer } from "./results/index.ts";
import { runCases } from "./cases/index.ts";
import type { CaseKind, CaseResult } from "./cases/index.ts";
import { speak } from "./5-words/index.ts";
import type { Paragraph, Sentence } from "./5-words/index.ts";

export type { Anchor, Point, Side, World, WorldBody, WorldRope } from "./1-bodies/index.ts";
export type { Rules } from "./2-forces/index.ts";
export { standardRules } from "./2-forces/index.ts";
export type { Answer, ExactFace } from "./results/index.ts";
export type { CaseKind, CaseResult } from "./cases/index.ts";
export type { Line, Paragraph, Part, PlainLine, Run, Sentence, SlottedTex } from "./5-words/index.ts";
export { FIRST_SLOT, plainSentence } from "./5-words/index.ts";

/** What a reader may choose about a derivation. */
export interface Settings {
  /** Significant figures of answers, 2 to 6. */
  readonly figures: number;
  /** The axis the law is written along first. */
  readonly firstAxis: "vertical" | "horizontal";
  /** The way to the answer; one so far. */
  readonly route: "components";
  /** The language of the sentences; one so far. */
  readonly language: "en";
  /** The decimal mark. */
  readonly mark: "." | ",";
}

/** The settings a reader starts with. */
export const defaultSettings: Settings = {
  figures: 3,
  firstAxis: "vertical",
  route: "components",
  language: "en",
  mark: ".",
};

/** A whole derivation. */
export interface Derivation {
  readonly problem: Problem;
  readonly settings: Settings;
  readonly kind: CaseKind;
  /** Ids of the ropes that carry nothing because they are slack. */
  readonly slack: readonly string[];
  readonly answers: readonly Answer[];
  readonly paragraphs: readonly Paragraph[];
  /** What it comes to, in one sentence. */
  readonly outcome: Sentence;
  readonly world: World;
  /** The forces of the attempt in force. */
  readonly forces: ForceList;
  /** All attempts, for exports and tests. */
  readonly result: CaseResult;
}

/** Derives everything a page shows of a problem: case, answers, paragraphs. Rules other than the standard ones are learners' slips. */
export function derive(
  problem: Problem,
  settings: Settings = defaultSettings,
  rules: Rules = standardRules,
): Derivation {
  const result = runCases(problem, settings.firstAxis, rules);
  const last = result.attempts[result.attempts.length - 1];
  if (last === undefined) throw new Error("a derivation has an attempt");
  return {
    problem,
    settings,
    kind: result.kind,
    slack: result.slack,
    answers: answersOf(result),
    ...speak(result, settings),
    world: result.world,
    forces: last.forces,
    result,
  };
}

/** The case and the answers alone, without words: the cheap part, for tests and number choice. */
export function solve(
  problem: Problem,
  rules: Rules = standardRules,
): { readonly kind: CaseKind; readonly slack: readonly string[]; readonly answers: readonly Answer[] } {
  const result = runCases(problem, defaultSettings.firstAxis, rules);
  return { kind: result.kind, slack: result.slack, answers: answersOf(result) };
}
