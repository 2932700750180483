// Passages from the laws to the equations in whole forces: law, count, angles, components, substitution.
import type { AxisStanding, Passage, PassageData } from "../../4-steps/types.ts";
import type { Component } from "../../3-equations/types.ts";
import { symbol } from "../../algebra/expr.ts";
import type { Speech } from "../speech.ts";
import { listed, say } from "../sentence.ts";
import type { Sentence } from "../types.ts";
import { axisName, lastLine, plural } from "./passage.ts";
import type { PassageSpeaker } from "./passage.ts";

type Of<K extends PassageData["kind"]> = Extract<PassageData, { kind: K }>;

/** The law along one axis. */
export const law: PassageSpeaker<"law"> = (d, p, s) => {
  const before: Sentence[] = [];
  const letters = d.components.map((c) => s.letter(c.id));
  if (d.because === "known-force")
    before.push(say`Begin with the vertical axis: the one force whose size is known lies along it.`);
  else if (d.place === "first") before.push(say`Begin with the ${axisName(d.axis)} axis.`);
  else before.push(say`Now the ${axisName(d.axis)} axis.`);
  if (d.components.length > 0)
    before.push(
      say`${signWords(s, d.components, d.axis)}${d.axis === 1 && s.world.body.weight.decimal !== 0 ? " The weight points down: minus." : ""}`,
    );
  for (const force of d.without)
    before.push(
      say`${s.Rope(force)} is ${d.axis === 0 ? "vertical" : "level"}: it has no ${d.axis === 0 ? "sideways" : "upward"} part, so ${s.letter(force)} does not appear here.`,
    );
  return {
    part: "law",
    heading: `Newton's second law, ${d.axis === 0 ? "sideways" : "vertically"}`,
    before,
    after: standingWords(s, d.standing, letters, p, d),
    refers: [...d.components.map((c) => c.id), ...(d.axis === 1 ? ["weight"] : [])],
  };
};

function signWords(s: Speech, components: readonly Component[], axis: 0 | 1): Sentence {
  const [only] = components;
  if (only?.factor === null && (axis === 0 ? s.world.body.push : s.world.body.lift) === 0)
    return say`Should ${s.rope(only.force)} have a part along this axis, ${s.letter(only.id)}, it would be the only pull there.`;
  const plus = components.filter((c) => c.sign > 0);
  const minus = components.filter((c) => c.sign < 0);
  const words = (list: readonly Component[], way: string, sign: string): Sentence =>
    list.length === 0
      ? []
      : say`${listed(list.map((c) => s.letter(c.id)))} ${list.length === 1 ? "points" : "point"} ${way}: ${sign}.`;
  const [up, down] = axis === 0 ? ["right", "left"] : ["up", "down"];
  const first = words(plus, up, "plus");
  const second = words(minus, down, "minus");
  return first.length > 0 && second.length > 0 ? say`${first} ${second}` : first.length > 0 ? first : second;
}

function standingWords(
  s: Speech,
  standing: AxisStanding,
  letters: readonly Parameters<typeof listed>[0][number][],
  p: Passage,
  d: Of<"law">,
): Sentence[] {
  if (standing === "stuck") {
    const again = d.place === "second" ? "Stuck again" : "Stuck";
    const meaning =
      d.axis === 0 &&
      d.components.length === 2 &&
      s.world.body.push === 0 &&
      d.components[0]?.sign === -(d.components[1]?.sign ?? 0)
        ? say` Still, it says something: the two sideways parts are equal.`
        : say``;
    return [
      say`${again}: ${s.line(lastLine(p))} holds ${plural(letters.length, "unknown", "unknowns")}, ${listed(letters)}, and one equation gives one.${meaning}`,
    ];
  }
  if (standing === "cannot") return [say`But look at the signs in ${s.line(lastLine(p))}.`];
  const [only] = letters;
  if (standing === "one-sided")
    return [
      say`${listed(letters)} act the same way, with nothing against them. Sizes are never negative, so ${s.line(lastLine(p))} can only hold if each of them is zero.`,
    ];
  if (standing === "settles" && only !== undefined)
    return [say`Not stuck: ${only} is the only unknown on this axis, so this axis settles it.`];
  if (standing === "settles-zero" && only !== undefined)
    return [
      say`Not stuck: ${only} is the only unknown on this axis, and it has nothing to balance it. This axis settles it: ${only} is zero.`,
    ];
  return d.components.length === 0 && p.steps.every((l) => l.status !== "contradiction")
    ? [say`No force has a part along this axis, so there is nothing to find here.`]
    : [say`No pull acts along this axis, and yet something is needed there. So it cannot be.`];
}

/** Counting unknowns against equations. */
export const count: PassageSpeaker<"count"> = (d, _, s) => {
  const before: Sentence[] = [
    say`There ${d.componentCount === 1 ? "is" : "are"} ${plural(d.componentCount, "component size", "component sizes")} and ${plural(d.equationCount, "equation", "equations")}.`,
  ];
  if (d.componentCount > d.equationCount)
    before.push(
      say`Too few, as it stands. But a component is no unknown of its own: ${d.componentCount > d.sizeCount ? `those of one rope belong to one pull of known direction` : "each is a whole pull"}. So there ${d.sizeCount === 1 ? "is" : "are"} really ${plural(d.sizeCount, "unknown", "unknowns")}, ${listed(s.world.ropes.map((r) => s.letter(r.id)))}, for ${plural(d.equationCount, "equation", "equations")}${d.sizeCount <= d.equationCount ? ": enough" : ": one too many"}.`,
    );
  else before.push(say`Enough, once each component is traced back to the pull it belongs to.`);
  if (d.stuck && d.sizeCount <= d.equationCount)
    before.push(say`When stuck, look for what has not been used yet: here it is the directions of the ropes.`);
  return { part: "count", heading: "Counting", before, after: [], refers: [] };
};

/** From the angles at the beam to the angles in the diagram. */
export const angles: PassageSpeaker<"angles"> = (_, __, s) => {
  const oblique = s.world.ropes.filter((r) => r.side !== 0 && r.rise !== 0);
  const beam = oblique.filter((r) => r.anchor.kind === "beam");
  const before: Sentence[] = [];
  if (beam.length > 0)
    before.push(
      say`${listed(beam.map((r, i) => say`${i === 0 ? s.Rope(r.id) : s.rope(r.id)} meets the level beam at ${s.angle(r)}`))}. The ${s.math(symbol("x"))} axis is parallel to the beam and the rope crosses both, so the same angle stands between the rope and the axis at the ${s.body}: alternate angles are equal.`,
    );
  const posts = oblique.filter((r) => r.anchor.kind === "post");
  if (posts.length > 0)
    before.push(
      say`${listed(posts.map((r, i) => say`${i === 0 ? s.Rope(r.id) : s.rope(r.id)} leaves the ${s.body} at ${s.angle(r)} below the level line`))}, which is its angle with the ${s.math(symbol("x"))} axis.`,
    );
  before.push(say`With that angle, each pull and its two parts make a right triangle: the pull is the hypotenuse.`);
  return {
    part: "angles",
    heading: "The angles, from the beam to the diagram",
    before,
    after: [],
    refers: oblique.map((r) => r.ownAngle),
  };
};

/** Each component by sine or cosine. */
export const components: PassageSpeaker<"components"> = (d, _, s) => {
  const whole = [...new Set(d.components.filter((c) => c.factor?.kind === "integer").map((c) => c.force))];
  const split = [...new Set(d.components.filter((c) => c.factor?.kind === "trig").map((c) => c.force))];
  const before: Sentence[] = [];
  if (split.length > 0)
    before.push(
      say`The side opposite the angle is the upright one, so the vertical part takes the sine; the side next to the angle lies along ${s.math(symbol("x"))}, so the horizontal part takes the cosine. A check: make the rope level, and the upright part must vanish, as the sine of 0° does.`,
    );
  for (const force of whole)
    before.push(say`${s.Rope(force)} lies along an axis: there is no triangle, and its one part is the whole pull.`);
  const after =
    split.length === 0
      ? []
      : [
          say`From here on the parts stand for the ${split.length === 1 ? "pull" : "pulls"}, and ${listed(split.map((f) => s.letter(f)))} ${split.length === 1 ? "is" : "are"} struck out in the diagram, so that nothing is counted twice.`,
        ];
  return { part: "components", heading: "Components", before, after, refers: d.components.map((c) => c.id) };
};

/** Whole forces and angles in the laws. */
export const substitution: PassageSpeaker<"substitution"> = (d, _, s) => ({
  part: "components",
  heading: "Back into the laws",
  before: [say`Put the components into the laws.`],
  after:
    d.unknownCount <= d.equationCount
      ? [
          say`Now ${plural(d.equationCount, "equation holds", "equations hold")} ${plural(d.unknownCount, "unknown", "unknowns")}: ${listed(s.world.ropes.map((r) => s.letter(r.id)))}. The rest is algebra. ${s.math(s.world.body.givenBy === "mass" ? symbol("m") : symbol("W"))}, ${s.math(symbol("g"))} and the angles stay as they are until the end: what cancels then never has to be worked out, and each line can be checked.`,
        ]
      : [],
  refers: [],
});
