// The reason of each line, one entry a move. Kept short: it stands in the margin.
import type { Reason, Step } from "../../4-steps/types.ts";
import { symbol } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Wording } from "../wording.ts";
import { SetUpSpeech } from "../set-up/speech.ts";
import { SET_UP_REASONS } from "./set-up/reasons.ts";
import type { SetUpReasonKind } from "./set-up/reasons.ts";
import { listed, say } from "../sentence.ts";
import type { Sentence } from "../types.ts";

type Kind = Exclude<Reason["kind"], SetUpReasonKind>;
type Of<K extends Kind> = Extract<Reason, { kind: K }>;
type Speaker<K extends Kind> = (reason: Of<K>, step: Step, s: Wording) => Sentence;

const axisWord = (axis: 0 | 1): string => (axis === 0 ? "x" : "y");
const from = (step: Step, s: Wording, i = 0): Sentence => {
  const id = step.from[i];
  return id === undefined ? [] : [s.line(id)];
};
const degrees = (s: Wording, e: Expr) => s.math(e, "degrees");
const NON_ZERO: Readonly<Record<string, string>> = {
  "not-vertical": "not zero, since the rope is not vertical",
  "not-level": "not zero, since the rope is not level",
  "not-one-line": "not zero, since the ropes do not lie along one line",
  "same-factor": "the same on both sides, and not zero",
  number: "not zero",
  mass: "not zero",
  masses: "not zero, for masses are positive",
  bracket: "which is not zero, or no answer could be given",
  positive: "not zero, for every part of it is positive",
  "at-this-angle": "not zero at these angles",
};

/** What each reason says. A reason without an entry does not compile. */
const SPEAKERS: { readonly [K in Kind]: Speaker<K> } = {
  "second-law": (r) =>
    say`Newton's second law along ${axisWord(r.axis)}: all forces with their signs make mass times acceleration`,
  "no-acceleration": (r, _, s) =>
    say`${s.math(symbol(r.axis === 0 ? "ax" : "ay"))} = 0: no acceleration along ${axisWord(r.axis)}`,
  "given-acceleration": (r, _, s) =>
    say`${s.math(symbol(r.axis === 0 ? "ax" : "ay"))} is given${r.keepsLetter ? "; it stays a letter in the lines that follow" : say`, and is just −${s.math(symbol("g"))}`}`,
  "free-fall-cancels": (_, step, s) => say`the weight stands on both sides of ${from(step, s)}: add it to both`,
  "zero-cannot-equal": () => say`this cannot be: nothing along this axis makes up for it`,
  "from-vertical": () => say`given from the vertical: 90° less that angle`,
  "from-slope": () => say`given by rise over run`,
  "angle-given": () => say`given, and the same angle at the body by alternate angles`,
  definition: (r) =>
    say`${r.fn === "sin" ? "sine is the opposite side" : "cosine is the adjacent side"} over the hypotenuse`,
  "times-hypotenuse": (r, _, s) => say`multiply both sides by ${s.math(r.by)}`,
  component: (r) => say`${r.fn === "sin" ? "opposite the angle, so the sine" : "next to the angle, so the cosine"}`,
  "whole-component": () => say`the rope lies along this axis, so this is its whole pull`,
  "components-in": (_, step, s) =>
    say`the components from ${listed(step.from.slice(0, -1).map((id) => s.line(id)))} put into ${s.line(step.from[step.from.length - 1] ?? "")}`,
  "settles-component": () => say`the only unknown on this axis`,
  "nothing-along": (r) => say`no force has a component along ${axisWord(r.axis)}`,
  gather: (r, _, s) =>
    say`${r.flipped ? say`add ${listed(r.moved.map((e) => degrees(s, positive(e))))} to both sides and read from right to left` : moved(s, r.moved)}`,
  "factor-mass": () => say`common factor taken out`,
  divide: (r, step, s) =>
    say`divide ${from(step, s)} by ${r.by.kind === "sum" ? "the bracket" : degrees(s, r.by)}, ${NON_ZERO[r.why] ?? "not zero"}`,
  "divide-zero": (r, step, s) =>
    say`divide ${from(step, s)} by ${r.by.kind === "sum" ? "the bracket" : degrees(s, r.by)}, ${NON_ZERO[r.why] ?? "not zero"}`,
  "call-both": (_, __, s) => say`equal sizes, one letter: ${s.letter("T")}`,
  substitute: (_, step, s) => say`${from(step, s, 0)} put into ${from(step, s, 1)}`,
  "zero-drops": (r, _, s) => say`${s.letter(r.unknown)} is zero, so its term goes`,
  tangent: () => say`sine over cosine of one angle is its tangent`,
  "multiply-out": () => say`multiply out`,
  collect: (r, _, s) => say`collect the terms of ${s.letter(r.unknown)}`,
  "each-is-zero": () => say`sizes of one sign that add up to zero are each zero`,
  "cannot-be-negative": () => say`this ought to hold, since ropes only pull, but the line above makes it negative`,
  "cannot-push": (r, _, s) =>
    say`this ought to hold, since a rope only pulls, but ${s.letter(r.unknown)} came out negative`,
  "across-the-line": () =>
    say`this would have to hold for the pulls, all along one line, to make what is needed; it does not`,
  "only-combination": () => say`common factor taken out`,
  pythagoras: () => say`Pythagoras: the two components are at right angles`,
  "only-component": () => say`the other component is zero`,
  "tangent-of-direction": () => say`opposite side over adjacent side gives the direction`,
  "work-out": (_, step) => (step.relation === "=" ? say`numbers put in` : say`worked out, guard figures kept`),
  "slack-zero": () => say`a slack rope pulls on nothing`,
  "as-found": (_, step, s) => say`as found in ${from(step, s)}`,
  round: () => say`rounded once, at the end`,
  "exact-values": () => say`exact values of the special angles put in`,
  "exact-combine": () => say`simplify`,
  rationalise: (r, _, s) => say`multiply above and below by ${s.math(r.by)}, to clear the root from the denominator`,
  "exact-newtons": () => say`exactly`,
  "put-back": (_, step, s) => say`the sizes put back into ${from(step, s)}`,
  perpendicular: (r, _, s) => say`along an axis across ${s.rope(r.across)}, where its pull has no component`,
  "sine-rule": () => say`sine rule in the triangle of forces: each side over the sine of the angle opposite`,
  "in-letters": (_, step, s) => say`${from(step, s)} with its angles as letters`,
  "tangent-apart": () => say`the tangent as sine over cosine`,
  "clear-fraction": (r, _, s) => say`multiply above and below by ${s.math(r.by)}`,
  "sine-of-sum": () => say`sine of a sum or difference of angles`,
  "parts-in": () => say`its parts along the two axes put in`,
  "mass-out": (_, __, s) => say`${s.math(symbol("m"))} is a common factor under the root`,
  "letters-in": () => say`the result for the other rope put in`,
  cancel: (r, _, s) => say`cancel ${s.math(r.what)}`,
  "over-tangent": () => say`cosine over sine of one angle is one over its tangent`,
  "shared-sideways": () => say`the sideways part of both pulls: divide above and below by both cosines`,
  "same-way": () => say`the same steps, with the other rope isolated`,
  "general-form": () => say`the form for any two angles, true here as well`,
  "rope-length": () => say`how long this rope is, in multiples of the height of the beam above the assumed place`,
  distance: () => say`how far the load now is from the end of that rope, by Pythagoras`,
  "just-as-long": () => say`just as long as the rope: straight, and on the point of pulling`,
  "shorter-than-rope": () => say`shorter than the rope, so the rope is slack indeed`,
};

const positive = (e: Expr): Expr => (e.kind === "negative" ? e.of : e);

/** "add mg to both sides", "subtract T1 cos 65° from both sides". */
function moved(s: Wording, terms: readonly Expr[]): Sentence {
  const parts = terms.map((e) =>
    e.kind === "negative" ? say`add ${degrees(s, e.of)} to both sides` : say`take ${degrees(s, e)} from both sides`,
  );
  return listed(parts);
}

/** The reason of a step in words. */
export function reasonOf(step: Step, s: Wording): Sentence {
  const { kind } = step.reason;
  if (kind in SET_UP_REASONS) {
    if (!(s instanceof SetUpSpeech)) throw new Error(`the reason ${kind} speaks of a set-up`);
    const speak = SET_UP_REASONS[kind as SetUpReasonKind] as (r: Reason, step: Step, s: SetUpSpeech) => Sentence;
    return speak(step.reason, step, s);
  }
  const speaker = SPEAKERS[kind as Kind] as (r: Reason, step: Step, s: Wording) => Sentence;
  return speaker(step.reason, step, s);
}
