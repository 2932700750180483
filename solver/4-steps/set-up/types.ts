// What the moves of one attempt at a set-up are made from, and what they give.
import type { SetUp } from "../../1-bodies/types.ts";
import type { SetUpForce, SetUpHypothesis } from "../../2-forces/types.ts";
import type { Equations } from "../../3-equations/types.ts";
import type { Value } from "../../algebra/evaluate.ts";
import type { Term } from "../../algebra/linear.ts";
import type { Passage, Solved } from "../types.ts";
import type { AttemptValues } from "../values.ts";

/** An inequality of a hypothesis that its own solution breaks. */
export interface Breach {
  readonly kind:
    "pushing-rope" | "pulling-surface" | "too-rough" | "parting-rope" | "sinking" | "wrong-way" | "no-solution";
  /** The rope or contact. */
  readonly id: string;
}

/** All that the moves of one attempt are made from. */
export interface SetUpInput {
  readonly setUp: SetUp;
  readonly hypothesis: SetUpHypothesis;
  readonly forces: readonly SetUpForce[];
  readonly equations: Equations;
  /** The numbers of the unknowns, by which leftover equations are read; empty where there is no solution. */
  readonly point: ReadonlyMap<string, number>;
  /** Unknowns that all equations together leave open. */
  readonly loose: ReadonlySet<string>;
  /** Those of them for which the inequalities leave a single value. */
  readonly settled: ReadonlySet<string>;
  /** Equations that contradict the others, by id: they are looked at last. */
  readonly excluded: readonly string[];
  /** What is wrong with the hypothesis; empty where it holds. */
  readonly breaches: readonly Breach[];
  readonly firstAxis: "vertical" | "horizontal";
  /** Keeps line ids of further attempts apart; "" for the first. */
  readonly prefix: string;
  /** A question of its own: a push or a mass at which static friction is at its largest. Null in an ordinary attempt. */
  readonly limit: Limit | null;
}

/** The size of a push or of a load at which a contact is on the point of slipping. */
export interface Limit {
  /** The letter of the push, or of the weight. */
  readonly letter: string;
  readonly contact: string;
  readonly end: "largest" | "smallest";
}

/** An equation while the elimination works on it. Unknowns may stand on both sides. */
export interface Equality {
  readonly name: string;
  /** "balance": the law of something without mass. */
  readonly kind: "law" | "balance" | "rope" | "touch" | "stick" | "friction";
  readonly left: readonly Term[];
  readonly right: readonly Term[];
  /** The line that shows its present form. */
  readonly line: string;
}

/** How the elimination of a set-up ended. */
export interface Elimination {
  readonly solved: readonly Solved[];
  /** Unknowns that stay open. */
  readonly open: readonly string[];
  /** The line that cannot be, where the equations contradict each other. */
  readonly contradiction: string | null;
}

/** One attempt at a set-up written out. */
export interface SetUpAttempt {
  /** What its passages and lines name as their attempt. */
  readonly id: string;
  readonly hypothesis: SetUpHypothesis;
  readonly limit: Limit | null;
  readonly setUp: SetUp;
  readonly holds: boolean;
  readonly breaches: readonly Breach[];
  readonly forces: readonly SetUpForce[];
  readonly equations: Equations;
  readonly passages: readonly Passage[];
  readonly solved: readonly Solved[];
  /** Unknowns that the equations leave open. */
  readonly open: readonly string[];
  /** Those of them that the inequalities settle all the same. */
  readonly settled: ReadonlySet<string>;
  readonly values: AttemptValues;
}

/** A value without an exact face. */
export const plainValue = (decimal: number): Value => ({ decimal, exact: null });
