// What a derivation is made of before it has words: passages of steps, each step a line that is true and says where it came from.
import type { AxisIndex, ForceList, Hypothesis } from "../2-forces/types.ts";
import type { AxisLaw, Component } from "../3-equations/types.ts";
import type { Values } from "../algebra/evaluate.ts";
import type { Expr } from "../algebra/expr.ts";
import type { SetUpPassageData } from "./set-up/passage-data.ts";
import type { Verdict } from "./verdict.ts";

export type { PullSign, Verdict } from "./verdict.ts";

/** The relation between two neighbouring sides of a line. */
export type Relation = "=" | "≈" | ">" | "<";

/** When a line holds: always; at the solution; at a failed attempt's own values; to its last printed figure; or not at all. */
export type Status = "always" | "solution" | "trial" | "rounded" | "contradiction";

/** What sort of move makes a line. */
export type StepKind = "law" | "geometry" | "algebra" | "number";

/** Why a line follows: one kind a move, with the letters and lines it speaks of. The words for it are made in the words stage. */
export type Reason =
  | { readonly kind: "second-law"; readonly axis: AxisIndex }
  | { readonly kind: "no-acceleration"; readonly axis: AxisIndex }
  | { readonly kind: "given-acceleration"; readonly axis: AxisIndex; readonly keepsLetter: boolean }
  | { readonly kind: "free-fall-cancels" }
  | { readonly kind: "zero-cannot-equal" }
  | { readonly kind: "from-vertical" }
  | { readonly kind: "from-slope" }
  | { readonly kind: "angle-given" }
  | { readonly kind: "definition"; readonly fn: "sin" | "cos" }
  | { readonly kind: "times-hypotenuse"; readonly by: Expr }
  | { readonly kind: "component"; readonly fn: "sin" | "cos" }
  | { readonly kind: "whole-component" }
  | { readonly kind: "components-in" }
  | { readonly kind: "settles-component" }
  | { readonly kind: "nothing-along"; readonly axis: AxisIndex }
  | { readonly kind: "gather"; readonly moved: readonly Expr[]; readonly flipped: boolean }
  | { readonly kind: "factor-mass" }
  | { readonly kind: "divide"; readonly by: Expr; readonly why: NonZero }
  | { readonly kind: "divide-zero"; readonly by: Expr; readonly why: NonZero }
  | { readonly kind: "call-both"; readonly as: string }
  | { readonly kind: "substitute"; readonly unknown: string }
  | { readonly kind: "zero-drops"; readonly unknown: string }
  | { readonly kind: "tangent" }
  | { readonly kind: "multiply-out" }
  | { readonly kind: "collect"; readonly unknown: string }
  | { readonly kind: "each-is-zero"; readonly unknown: string }
  | { readonly kind: "cannot-be-negative" }
  | { readonly kind: "cannot-push"; readonly unknown: string }
  | { readonly kind: "across-the-line" }
  | { readonly kind: "only-combination" }
  | { readonly kind: "pythagoras" }
  | { readonly kind: "only-component" }
  | { readonly kind: "tangent-of-direction" }
  | { readonly kind: "work-out" }
  | { readonly kind: "round" }
  | { readonly kind: "as-found" }
  | { readonly kind: "slack-zero" }
  | { readonly kind: "exact-values" }
  | { readonly kind: "exact-combine" }
  | { readonly kind: "rationalise"; readonly by: Expr }
  | { readonly kind: "exact-newtons" }
  | { readonly kind: "put-back" }
  | { readonly kind: "perpendicular"; readonly across: string }
  | { readonly kind: "sine-rule" }
  | { readonly kind: "in-letters" }
  | { readonly kind: "tangent-apart" }
  | { readonly kind: "clear-fraction"; readonly by: Expr }
  | { readonly kind: "sine-of-sum" }
  | { readonly kind: "letters-in" }
  | { readonly kind: "parts-in" }
  | { readonly kind: "mass-out" }
  | { readonly kind: "cancel"; readonly what: Expr }
  | { readonly kind: "over-tangent" }
  | { readonly kind: "shared-sideways" }
  | { readonly kind: "same-way" }
  | { readonly kind: "general-form" }
  | { readonly kind: "rope-length"; readonly rope: string }
  | { readonly kind: "distance" }
  | { readonly kind: "just-as-long"; readonly rope: string }
  | { readonly kind: "shorter-than-rope"; readonly rope: string }
  | { readonly kind: "law-of"; readonly body: string; readonly axis: AxisIndex; readonly massless: boolean }
  | { readonly kind: "motion-along"; readonly body: string; readonly axis: AxisIndex; readonly how: MotionHow }
  | { readonly kind: "keeps-length"; readonly rope: string }
  | { readonly kind: "stays-on"; readonly contact: string }
  | { readonly kind: "does-not-slide"; readonly contact: string }
  | { readonly kind: "kinetic-friction"; readonly contact: string }
  | { readonly kind: "largest-friction"; readonly contact: string }
  | { readonly kind: "part-along"; readonly fn: "sin" | "cos" }
  | { readonly kind: "other-way-round" }
  | { readonly kind: "change-signs" }
  | { readonly kind: "add-up" }
  | { readonly kind: "both-sides"; readonly plus: readonly Expr[]; readonly minus: readonly Expr[] }
  | { readonly kind: "times-both"; readonly by: Expr; readonly opens: boolean }
  | { readonly kind: "cancelled" }
  | { readonly kind: "terms-cancel" }
  | { readonly kind: "squares-add-up" }
  | { readonly kind: "cancel-and-squares" }
  | {
      readonly kind: "laws-added";
      readonly by: readonly { readonly line: string; readonly sign: 1 | -1; readonly by: Expr }[];
    }
  | { readonly kind: "put-back-law"; readonly right: Expr }
  | { readonly kind: "factor-vanishes"; readonly unknown: string }
  | { readonly kind: "does-not-fit" }
  | { readonly kind: "must-pull"; readonly rope: string }
  | { readonly kind: "must-push"; readonly contact: string }
  | { readonly kind: "within-friction"; readonly contact: string };

/** Why the acceleration along an axis is what the next line says. */
export type MotionHow = "rest" | "given" | "carried" | "line";

/** Why a divisor is not zero. */
export type NonZero =
  | "not-vertical"
  | "not-level"
  | "not-one-line"
  | "same-factor"
  | "number"
  | "mass"
  | "masses"
  | "bracket"
  | "positive"
  | "at-this-angle";

/** One line of the derivation. Two or more sides with a relation between neighbours. */
export interface Step {
  /** Stable: "vertical.law", "eliminate.divide". */
  readonly id: string;
  readonly relation: Relation;
  readonly sides: readonly Expr[];
  readonly kind: StepKind;
  readonly status: Status;
  readonly from: readonly string[];
  readonly reason: Reason;
  /** Whether angles are printed as degrees or as letters. */
  readonly angles: "degrees" | "letters";
  /** The smaller moves this line opens into. */
  readonly smaller?: readonly Step[];
}

/** What a passage about one body is about, with what its sentences need. */
export type HangingPassageData =
  | {
      readonly kind: "law";
      readonly axis: AxisIndex;
      readonly place: "first" | "second";
      readonly because: "known-force" | "readers-choice" | "remaining";
      readonly components: readonly Component[];
      readonly without: readonly string[];
      readonly standing: AxisStanding;
    }
  | {
      readonly kind: "count";
      readonly componentCount: number;
      readonly sizeCount: number;
      readonly equationCount: number;
      readonly stuck: boolean;
    }
  | {
      readonly kind: "one-sided";
      readonly line: string;
      readonly axis: AxisIndex;
      readonly verdict: "all-zero" | "contradiction" | "zero-then-contradiction" | "cannot-be-negative";
    }
  | { readonly kind: "angles" }
  | { readonly kind: "components"; readonly components: readonly Component[] }
  | { readonly kind: "substitution"; readonly unknownCount: number; readonly equationCount: number }
  | { readonly kind: "settle"; readonly unknown: string; readonly axis: AxisIndex; readonly zero: boolean }
  | {
      readonly kind: "equal";
      readonly unknowns: readonly [string, string];
      readonly as: string;
      readonly mirror: boolean;
    }
  | {
      readonly kind: "isolate";
      readonly unknown: string;
      readonly other: string | null;
      readonly axis: AxisIndex;
      readonly withKnown: boolean;
    }
  | { readonly kind: "eliminate"; readonly unknown: string; readonly replaced: string }
  | { readonly kind: "put-back"; readonly unknown: string }
  | { readonly kind: "stuck-for-good"; readonly unknowns: readonly string[] }
  | {
      readonly kind: "one-line";
      readonly verdict: "impossible" | "sum" | "difference" | "zero" | "settled" | "push";
      readonly combination: string | null;
    }
  | { readonly kind: "evidence"; readonly unknown: string }
  | { readonly kind: "free-rope"; readonly unknown: string; readonly kept: string }
  | {
      readonly kind: "exact";
      readonly state: "special" | "ordinary" | "sideways" | "none-needed";
      readonly unknowns: readonly string[];
    }
  | { readonly kind: "numbers"; readonly unknowns: readonly string[] }
  | { readonly kind: "answer"; readonly unknowns: readonly string[] }
  | { readonly kind: "check-balance" }
  | { readonly kind: "check-polygon" }
  | { readonly kind: "check-length"; readonly rope: string; readonly fit: "longer" | "just" | "shorter" }
  | { readonly kind: "letters"; readonly unknowns: readonly string[]; readonly equalAngles: boolean };

/** What a passage is about. */
export type PassageData = HangingPassageData | SetUpPassageData;

/** A passage: lines that belong together, for one attempt. */
export interface Passage {
  readonly id: string;
  readonly attempt: string;
  readonly data: PassageData;
  readonly steps: readonly Step[];
}

/** How a law leaves its axis: nothing unknown, one unknown (settled there), several of one sign that add up to zero, signs that cannot make what is needed, or stuck with more than one. */
export type AxisStanding = "nothing" | "settles" | "stuck" | "settles-zero" | "one-sided" | "cannot";

/** What an elimination found: sizes in letters, in the order found. */
export interface Solved {
  readonly unknown: string;
  readonly expr: Expr;
  /** The line that gives it. */
  readonly line: string;
}

/** How the elimination ended. */
export type Outcome =
  | { readonly kind: "solved"; readonly solved: readonly Solved[] }
  | { readonly kind: "under-determined"; readonly solved: readonly Solved[]; readonly left: readonly string[] }
  | { readonly kind: "inconsistent"; readonly solved: readonly Solved[]; readonly line: string };

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

export type { Breach, Limit, SetUpAttempt, SetUpInput } from "./set-up/types.ts";
export type { SetUpPassageData } from "./set-up/passage-data.ts";
