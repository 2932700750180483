// Passages between the diagram and the answer: laws, count, angles, components, and each move of the elimination.
import type { AxisStanding, Passage, PassageData } from "../../4-steps/types.ts";
import type { Component } from "../../3-equations/types.ts";
import { product, quotient, sum, symbol } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { decimal } from "../../algebra/evaluate.ts";
import type { Speech } from "../speech.ts";
import { listed, say } from "../sentence.ts";
import type { Part, Sentence } from "../types.ts";

/** What is said of a passage. */
export interface SpokenPassage {
  readonly part: Part;
  readonly heading: string;
  readonly before: readonly Sentence[];
  readonly after: readonly Sentence[];
  readonly refers: readonly string[];
}

type Of<K extends PassageData["kind"]> = Extract<PassageData, { kind: K }>;
/** Speaks of one kind of passage. */
export type PassageSpeaker<K extends PassageData["kind"]> = (data: Of<K>, passage: Passage, s: Speech) => SpokenPassage;

const NUMBER_WORDS = ["no", "one", "two", "three", "four", "five", "six"];
/** A small count in words. */
export const countWord = (n: number): string => NUMBER_WORDS[n] ?? String(n);
const plural = (n: number, one: string, more: string): string => `${countWord(n)} ${n === 1 ? one : more}`;
const axisName = (axis: 0 | 1): string => (axis === 0 ? "horizontal" : "vertical");
const lastLine = (p: Passage): string => p.steps[p.steps.length - 1]?.id ?? "";

/** The law along one axis. */
export const law: PassageSpeaker<"law"> = (d, p, s) => {
  const before: Sentence[] = [];
  const letters = d.components.map((c) => s.letter(c.id));
  if (d.because === "known-force") before.push(say`Begin with the vertical axis: the one force whose size is known lies along it.`);
  else if (d.place === "first") before.push(say`Begin with the ${axisName(d.axis)} axis.`);
  else before.push(say`Now the ${axisName(d.axis)} axis.`);
  if (d.components.length > 0) before.push(say`${signWords(s, d.components, d.axis)}${d.axis === 1 && s.world.body.weight.decimal !== 0 ? " The weight points down: minus." : ""}`);
  for (const force of d.without) before.push(say`${s.Rope(force)} is ${d.axis === 0 ? "vertical" : "level"}: it has no ${d.axis === 0 ? "sideways" : "upward"} part, so ${s.letter(force)} does not appear here.`);
  return { part: "law", heading: `Newton's second law, ${d.axis === 0 ? "sideways" : "vertically"}`, before, after: standingWords(s, d.standing, letters, p, d), refers: [...d.components.map((c) => c.id), ...(d.axis === 1 ? ["weight"] : [])] };
};

function signWords(s: Speech, components: readonly Component[], axis: 0 | 1): Sentence {
  const [only] = components;
  if (only?.factor === null && (axis === 0 ? s.world.body.push : s.world.body.lift) === 0) return say`Should ${s.rope(only.force)} have a part along this axis, ${s.letter(only.id)}, it would be the only force there.`;
  const plus = components.filter((c) => c.sign > 0);
  const minus = components.filter((c) => c.sign < 0);
  const words = (list: readonly Component[], way: string, sign: string): Sentence => (list.length === 0 ? [] : say`${listed(list.map((c) => s.letter(c.id)))} ${list.length === 1 ? "points" : "point"} ${way}: ${sign}.`);
  const [up, down] = axis === 0 ? ["right", "left"] : ["up", "down"];
  const first = words(plus, up, "plus");
  const second = words(minus, down, "minus");
  return first.length > 0 && second.length > 0 ? say`${first} ${second}` : first.length > 0 ? first : second;
}

function standingWords(s: Speech, standing: AxisStanding, letters: readonly Parameters<typeof listed>[0][number][], p: Passage, d: Of<"law">): Sentence[] {
  if (standing === "stuck") {
    const again = d.place === "second" ? "Stuck again" : "Stuck";
    const meaning = d.axis === 0 && d.components.length === 2 && s.world.body.push === 0 && d.components[0]?.sign === -(d.components[1]?.sign ?? 0) ? say` Still, it says something: the two sideways parts are equal.` : say``;
    return [say`${again}: ${s.line(lastLine(p))} holds ${plural(letters.length, "unknown", "unknowns")}, ${listed(letters)}, and one equation gives one.${meaning}`];
  }
  const [only] = letters;
  if (standing === "one-sided") return [say`${listed(letters)} act the same way, with nothing against them. Sizes are never negative, so ${s.line(lastLine(p))} can only hold if each of them is zero.`];
  if (standing === "settles" && only !== undefined) return [say`Not stuck: ${only} is the only unknown on this axis, so this axis settles it.`];
  if (standing === "settles-zero" && only !== undefined) return [say`Not stuck: ${only} is the only unknown on this axis, and it has nothing to balance it. This axis settles it: ${only} is zero.`];
  return d.components.length === 0 && p.steps.every((l) => l.status !== "contradiction") ? [say`No force has a part along this axis, so there is nothing to find here.`] : [say`No pull acts along this axis, and yet something is needed there. So it cannot be.`];
}

/** Counting unknowns against equations. */
export const count: PassageSpeaker<"count"> = (d, _, s) => {
  const before: Sentence[] = [say`There ${d.componentCount === 1 ? "is" : "are"} ${plural(d.componentCount, "component size", "component sizes")} and ${plural(d.equationCount, "equation", "equations")}.`];
  if (d.componentCount > d.equationCount) before.push(say`Too few, as it stands. But a component is no unknown of its own: ${d.componentCount > d.sizeCount ? `those of one rope belong to one pull of known direction` : "each is a whole pull"}. So there ${d.sizeCount === 1 ? "is" : "are"} really ${plural(d.sizeCount, "unknown", "unknowns")}, ${listed(s.world.ropes.map((r) => s.letter(r.id)))}, for ${plural(d.equationCount, "equation", "equations")}${d.sizeCount <= d.equationCount ? ": enough" : ": one too many"}.`);
  else before.push(say`Enough, once each component is traced back to the pull it belongs to.`);
  if (d.stuck && d.sizeCount <= d.equationCount) before.push(say`When stuck, look for what has not been used yet: here it is the directions of the ropes.`);
  return { part: "count", heading: "Counting", before, after: [], refers: [] };
};

/** From the angles at the beam to the angles in the diagram. */
export const angles: PassageSpeaker<"angles"> = (_, __, s) => {
  const oblique = s.world.ropes.filter((r) => r.side !== 0 && r.rise !== 0);
  const beam = oblique.filter((r) => r.anchor.kind === "beam");
  const before: Sentence[] = [];
  if (beam.length > 0) before.push(say`${listed(beam.map((r, i) => say`${i === 0 ? s.Rope(r.id) : s.rope(r.id)} meets the level beam at ${s.angle(r)}`))}. The ${s.math(symbol("x"))} axis is parallel to the beam and the rope crosses both, so the same angle stands between the rope and the axis at the ${s.body}: alternate angles are equal.`);
  const posts = oblique.filter((r) => r.anchor.kind === "post");
  if (posts.length > 0) before.push(say`${listed(posts.map((r, i) => say`${i === 0 ? s.Rope(r.id) : s.rope(r.id)} leaves the ${s.body} at ${s.angle(r)} below the level line`))}, which is its angle with the ${s.math(symbol("x"))} axis.`);
  before.push(say`With that angle, each pull and its two parts make a right triangle: the pull is the hypotenuse.`);
  return { part: "angles", heading: "The angles, from the beam to the diagram", before, after: [], refers: oblique.map((r) => r.ownAngle) };
};

/** Each component by sine or cosine. */
export const components: PassageSpeaker<"components"> = (d, _, s) => {
  const whole = [...new Set(d.components.filter((c) => c.factor?.kind === "integer").map((c) => c.force))];
  const split = [...new Set(d.components.filter((c) => c.factor?.kind === "trig").map((c) => c.force))];
  const before: Sentence[] = [];
  if (split.length > 0) before.push(say`The side opposite the angle is the upright one, so the vertical part takes the sine; the side next to the angle lies along ${s.math(symbol("x"))}, so the horizontal part takes the cosine. A check: make the rope level, and the upright part must vanish, as the sine of 0° does.`);
  for (const force of whole) before.push(say`${s.Rope(force)} lies along an axis: there is no triangle, and its one part is the whole pull.`);
  const after = split.length === 0 ? [] : [say`From here on the parts stand for the ${split.length === 1 ? "pull" : "pulls"}, and ${listed(split.map((f) => s.letter(f)))} ${split.length === 1 ? "is" : "are"} struck out in the diagram, so that nothing is counted twice.`];
  return { part: "components", heading: "Components", before, after, refers: d.components.map((c) => c.id) };
};

/** Whole forces and angles in the laws. */
export const substitution: PassageSpeaker<"substitution"> = (d, _, s) => ({
  part: "components",
  heading: "Back into the laws",
  before: [say`Put the components into the laws.`],
  after: d.unknownCount <= d.equationCount ? [say`Now ${plural(d.equationCount, "equation holds", "equations hold")} ${plural(d.unknownCount, "unknown", "unknowns")}: ${listed(s.world.ropes.map((r) => s.letter(r.id)))}. The rest is algebra. ${s.math(s.world.body.givenBy === "mass" ? symbol("m") : symbol("W"))}, ${s.math(symbol("g"))} and the angles stay as they are until the end: what cancels then never has to be worked out, and each line can be checked.`] : [],
  refers: [],
});

/** Solving an equation with one unknown. */
export const settle: PassageSpeaker<"settle"> = (d, p, s) => {
  const collected = p.steps.some((l) => l.reason.kind === "collect");
  const unknown = s.letter(d.unknown);
  const isRope = s.world.ropes.some((r) => r.id === d.unknown);
  const before = collected ? [say`Only ${unknown} is left. Bring its terms to one side, collect them, and divide.`] : [say`Solve for ${unknown}.`];
  const after: Sentence[] = [];
  if (d.zero && isRope) after.push(say`${s.Rope(d.unknown)} is straight but carries nothing: any pull of it would have ${d.axis === 0 ? "a sideways" : "an upright"} part with nothing to balance it.`);
  return { part: "algebra", heading: d.zero ? "A pull that must be zero" : collected ? "Collect and divide" : "Solve", before, after, refers: [d.unknown] };
};

/** Equal pulls. */
export const equal: PassageSpeaker<"equal"> = (d) => ({
  part: "algebra",
  heading: "Equal pulls",
  before: [say`Begin with the equation that holds no known force: it ties the two pulls together.`],
  after: [say`Both ropes pull equally hard, so one letter serves for both.${d.mirror ? say` No wonder: seen in a mirror the picture is the same, left for right, so neither rope can pull harder.` : say``}`],
  refers: d.unknowns,
});

/** Isolating an unknown. */
export const isolate: PassageSpeaker<"isolate"> = (d, _, s) => {
  const before = [say`Isolate ${s.letter(d.unknown)} in the ${axisName(d.axis)} equation${d.withKnown ? say`, which holds no weight` : say`, which holds no known force: it gives one pull as a multiple of the other`}.`];
  const after: Sentence[] = [];
  if (d.other !== null && !d.withKnown) {
    const ratio = decimal(symbol(d.unknown), s.values) / decimal(symbol(d.other), s.values);
    if (Number.isFinite(ratio) && ratio > 0) after.push(say`Read it: ${s.rope(d.unknown)} pulls ${s.figure(ratio, "")} times as hard as ${s.rope(d.other)}, whatever the weight.`);
  }
  return { part: "algebra", heading: "Isolate", before, after, refers: [d.unknown, ...(d.other === null ? [] : [d.other])] };
};

/** Substituting, so that one unknown goes. */
export const eliminate: PassageSpeaker<"eliminate"> = (d, _, s) => ({
  part: "algebra",
  heading: "Eliminate",
  before: [say`Put that into the other equation, and ${s.letter(d.replaced)} is gone from it: what remains holds ${s.letter(d.unknown)} alone.`],
  after: [],
  refers: [d.unknown, d.replaced],
});

/** More unknowns than equations, and no way on. */
export const stuckForGood: PassageSpeaker<"stuck-for-good"> = (d, _, s) => ({
  part: "algebra",
  heading: "Stuck for good",
  before: [say`No equation is left, and ${listed(d.unknowns.map((u) => s.letter(u)))} are still open: forces alone do not decide.`],
  after: [],
  refers: d.unknowns,
});

/** The load on one rope of unknown direction. */
export const freeRope: PassageSpeaker<"free-rope"> = (d, p, s) => {
  const pythagoras = p.steps.some((l) => l.reason.kind === "pythagoras");
  const [x, y] = [s.letter(`${d.unknown}x`), s.letter(`${d.unknown}y`)];
  const hangs = s.world.body.push === 0 ? say`There is no sideways part, so the rope hangs straight ${s.world.body.lift > 0 ? "down from its support" : "up from its post"}.` : s.world.body.lift === 0 ? say`There is no upward part, so the rope trails level.` : say``;
  const before = pythagoras ? [say`${x} and ${y} are the sides of a right triangle with the pull as hypotenuse: Pythagoras gives its size, the tangent its direction. This is no elimination, since a direction is unknown.`] : [hangs];
  const theta = s.attempt.values.symbols.get("theta");
  const after = pythagoras && theta !== undefined ? [say`So ${s.rope(d.unknown)} settles at ${s.figure((theta.decimal * 180) / Math.PI, "°", "theta")} from the horizontal, not at the ${s.angle(s.ropeOf(d.unknown))} assumed at first.`] : [];
  return { part: "case", heading: "Size and direction", before, after: after.filter(() => differs(s, d.unknown)), refers: [d.unknown] };
};

/** Whether the settled angle prints differently from the assumed one. */
function differs(s: Speech, rope: string): boolean {
  const theta = s.attempt.values.symbols.get("theta")?.decimal ?? 0;
  const r = s.ropeOf(rope);
  return Math.abs(theta - r.acute.radians) > 0.002 || r.rise !== s.world.body.lift || r.side !== s.world.body.push;
}

/** A product of mass and acceleration for sentences. */
export const massTimes = (s: Speech, e: Expr): Expr => product([s.world.body.givenBy === "mass" ? symbol("m") : quotient(symbol("W"), symbol("g")), e]);
/** Sum of two letters for sentences. */
export const sumOf = (a: string, b: string): Expr => sum([symbol(a), symbol(b)]);
