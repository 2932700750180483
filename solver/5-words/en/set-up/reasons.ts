// The reasons of lines that only set-ups of several bodies, surfaces and pushes have.
import { negative, product, sum, symbol } from "../../../algebra/expr.ts";
import type { Expr } from "../../../algebra/expr.ts";
import type { Reason, Step } from "../../../4-steps/types.ts";
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";

/** The kinds of reason that speak of a set-up. */
export type SetUpReasonKind =
  | "law-of"
  | "motion-along"
  | "keeps-length"
  | "stays-on"
  | "does-not-slide"
  | "kinetic-friction"
  | "largest-friction"
  | "part-along"
  | "other-way-round"
  | "change-signs"
  | "add-up"
  | "both-sides"
  | "times-both"
  | "cancelled"
  | "terms-cancel"
  | "squares-add-up"
  | "put-back-law"
  | "laws-added"
  | "cancel-and-squares"
  | "factor-vanishes"
  | "does-not-fit"
  | "must-pull"
  | "must-push"
  | "within-friction";

type Of<K extends SetUpReasonKind> = Extract<Reason, { kind: K }>;
const axisWord = (axis: 0 | 1): string => (axis === 0 ? "x" : "y");

/** A sum, terms with a plus first. */
const plusFirst = (parts: readonly Expr[]): Expr =>
  sum([...parts.filter((p) => p.kind !== "negative"), ...parts.filter((p) => p.kind === "negative")]);

/** What each says. */
export const SET_UP_REASONS: {
  readonly [K in SetUpReasonKind]: (reason: Of<K>, step: Step, s: SetUpSpeech) => Sentence;
} = {
  "law-of": (r, _, s) =>
    r.massless
      ? say`forces on ${s.body(r.body)} along ${axisWord(r.axis)}: with no mass they add up to zero`
      : say`Newton's second law for ${s.body(r.body)} along ${axisWord(r.axis)}`,
  "motion-along": (r, _, s) => {
    const letter = s.letter(`${s.bodyOf(r.body).letters.acceleration}${axisWord(r.axis)}`);
    if (r.how === "rest") return say`${letter} = 0: no acceleration along ${axisWord(r.axis)}`;
    const law = s.attempt.equations.equations.find((e) => e.kind === "law" && e.body === r.body && e.axis === r.axis);
    const motion = law?.kind === "law" ? law.motion : [];
    const parts = motion.map((m) => {
      const part = product([symbol(m.letter), m.factor]);
      return m.sign < 0 ? negative(part) : part;
    });
    const equal = s.relation(
      "=",
      [symbol(`${s.bodyOf(r.body).letters.acceleration}${axisWord(r.axis)}`), plusFirst(parts)],
      "degrees",
    );
    if (r.how === "carried") return say`${equal}: it moves with the supports`;
    return say`${equal}: ${motion.length > 1 ? "all parts" : "the part"} of its acceleration along ${axisWord(r.axis)}`;
  },
  "keeps-length": (r, _, s) => say`${s.rope(r.rope)} keeps its length`,
  "stays-on": () => say`they stay in touch`,
  "does-not-slide": () => say`they do not slide on each other`,
  "kinetic-friction": () => say`kinetic friction is the coefficient times the normal force`,
  "largest-friction": () => say`the largest that static friction can be`,
  "part-along": (r) =>
    r.fn === "sin" ? say`the part opposite the angle: the sine` : say`the part next to the angle: the cosine`,
  "other-way-round": () => say`read from right to left`,
  "factor-vanishes": (r, _, s) => say`the factor of ${s.letter(r.unknown)} is zero at these angles`,
  "add-up": () => say`like terms added up`,
  "both-sides": (r, _, s) => {
    const terms = (list: readonly Expr[]): Sentence => listed(list.map((e) => s.math(e, "degrees")));
    const parts = [
      ...(r.plus.length > 0 ? [say`add ${terms(r.plus)} to both sides`] : []),
      ...(r.minus.length > 0 ? [say`take ${terms(r.minus)} from both sides`] : []),
    ];
    return listed(parts);
  },
  "times-both": (r, _, s) =>
    say`multiply both sides by ${s.math(r.by, "degrees")}${r.opens ? " and open the bracket" : ", to clear the fraction"}`,
  "terms-cancel": (_, step, s) => say`in numbers, the terms of ${s.line(step.from[0] ?? "")} cancel`,
  cancelled: () => say`what stands above and below cancels`,
  "squares-add-up": () => say`the squares of sine and cosine of one angle add up to 1`,
  "laws-added": (r, _, s) =>
    say`${r.by.flatMap(({ line, sign, by }, i) => say`${i === 0 ? (sign < 0 ? "less " : "") : sign < 0 ? " less " : " plus "}${s.line(line)} times ${s.math(by, "degrees")}`)}`,
  "cancel-and-squares": () =>
    say`what stands with both signs cancels, and the squares of sine and cosine of one angle add up to 1`,
  "put-back-law": (r, step, s) =>
    say`the sizes put back into ${s.line(step.from[0] ?? "")}: just what ${s.math(r.right, "degrees")} comes to`,
  "change-signs": () => say`the opposite of both sides`,
  "does-not-fit": () => say`this would have to hold, and with what is known it does not`,
  "must-pull": (r, _, s) =>
    say`this ought to hold, since a rope only pulls, but ${s.math(symbol(r.rope))} came out negative`,
  "must-push": (r, _, s) =>
    say`this ought to hold, since a surface only pushes, but ${s.math(symbol(r.contact))} came out negative`,
  "within-friction": (r, step, s) =>
    step.status === "contradiction"
      ? say`this ought to hold, for static friction is never larger, but it does not`
      : step.relation === "<"
        ? say`less than the largest, so ${s.body(s.contactOf(r.contact).on)} does not slide`
        : say`just the largest: on the point of sliding`,
};
