// The solver's public face: a validated problem in, a whole derivation out. Pure; no page, no file, no clock.
import { isPlainHanging } from "../shared/problem/index.ts";
import type { Problem } from "../shared/problem/index.ts";
import type { World } from "./1-bodies/index.ts";
import { standardRules } from "./2-forces/index.ts";
import type { ForceList, Rules } from "./2-forces/index.ts";
import { answersOf, setUpAnswers } from "./results/index.ts";
import type { Answer } from "./results/index.ts";
import { runCases, runSetUp } from "./cases/index.ts";
import type { CaseKind, CaseResult, SetUpKind, SetUpResult } from "./cases/index.ts";
import { speak, speakSetUp } from "./5-words/index.ts";
import type { Paragraph, Sentence } from "./5-words/index.ts";

export type { Anchor, Point, Side, World, WorldBody, WorldRope } from "./1-bodies/index.ts";
export type { Rules } from "./2-forces/index.ts";
export { standardRules } from "./2-forces/index.ts";
export type { Answer, ExactFace } from "./results/index.ts";
export type { CaseKind, CaseResult, SetUpKind, SetUpResult } from "./cases/index.ts";
export type { Line, Paragraph, Part, PlainLine, Run, Sentence, SlottedTex } from "./5-words/index.ts";
export { FIRST_SLOT, plainSentence } from "./5-words/index.ts";

/** What a reader may choose about a derivation. */
export interface Settings {
  /** Significant figures of answers, 2 to 6. */
  readonly figures: number;
  /** The axis the law is written along first. */
  readonly firstAxis: "vertical" | "horizontal";
  /** Whether a body on a slope gets axes along and across it, or level and upright ones. */
  readonly axes: "along" | "level";
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
  axes: "along",
  route: "components",
  language: "en",
  mark: ".",
};

/** What every derivation has. */
interface Derived {
  readonly problem: Problem;
  readonly settings: Settings;
  /** Ids of the ropes that carry nothing because they are slack. */
  readonly slack: readonly string[];
  readonly answers: readonly Answer[];
  readonly paragraphs: readonly Paragraph[];
  /** What it comes to, in one sentence. */
  readonly outcome: Sentence;
}

/** One load on one or two ropes, whose place may change when a rope goes slack. */
export interface HangingDerivation extends Derived {
  readonly model: "hanging";
  readonly kind: CaseKind;
  readonly world: World;
  /** The forces of the attempt in force. */
  readonly forces: ForceList;
  /** All attempts, for exports and tests. */
  readonly result: CaseResult;
}

/** Any number of bodies, ropes, surfaces and pushes. */
export interface SystemDerivation extends Derived {
  readonly model: "system";
  readonly kind: SetUpKind;
  readonly system: SetUpResult;
}

/** A whole derivation. */
export type Derivation = HangingDerivation | SystemDerivation;

/** Whether a problem is one load on one or two ropes to supports. */
export const isHanging = (problem: Problem): boolean =>
  isPlainHanging(problem) && problem.bodies.every(({ load }) => load.kind === "weight" || load.mass.compare(0) > 0);

/** Derives everything a page shows of a problem: case, answers, paragraphs. Rules other than the standard ones are learners' slips. */
export function derive(
  problem: Problem,
  settings: Settings = defaultSettings,
  rules: Rules = standardRules,
): Derivation {
  return isHanging(problem) ? deriveHanging(problem, settings, rules) : deriveSystem(problem, settings, rules);
}

/** Derives one load on one or two ropes. Throws where the problem is another. */
export function deriveHanging(
  problem: Problem,
  settings: Settings = defaultSettings,
  rules: Rules = standardRules,
): HangingDerivation {
  if (!isHanging(problem)) throw new Error("this problem is not one load on one or two ropes");
  const result = runCases(problem, settings.firstAxis, rules);
  const last = result.attempts[result.attempts.length - 1];
  if (last === undefined) throw new Error("a derivation has an attempt");
  return {
    model: "hanging",
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

/** Derives any problem as a set-up of bodies, ropes, surfaces and pushes. */
export function deriveSystem(
  problem: Problem,
  settings: Settings = defaultSettings,
  rules: Rules = standardRules,
): SystemDerivation {
  const system = runSetUp(problem, settings, rules);
  return {
    model: "system",
    problem,
    settings,
    kind: system.kind,
    slack: slackIn(system),
    answers: setUpAnswers(system),
    ...speakSetUp(system, settings),
    system,
  };
}

/** The case and the answers alone, without words. */
export interface Solution {
  readonly kind: CaseKind | SetUpKind;
  readonly slack: readonly string[];
  readonly answers: readonly Answer[];
  /** Null for one load on one or two ropes. */
  readonly system: SetUpResult | null;
}

/** The case and the answers alone, without words: the cheap part, for tests, batches and number choice. */
export function solve(problem: Problem, rules: Rules = standardRules): Solution {
  if (isHanging(problem)) {
    const result = runCases(problem, defaultSettings.firstAxis, rules);
    return { kind: result.kind, slack: result.slack, answers: answersOf(result), system: null };
  }
  const system = runSetUp(problem, defaultSettings, rules);
  return { kind: system.kind, slack: slackIn(system), answers: setUpAnswers(system), system };
}

const slackIn = ({ inForce }: SetUpResult): string[] =>
  Object.entries(inForce.hypothesis.ropes).flatMap(([id, state]) => (state === "slack" ? [id] : []));
