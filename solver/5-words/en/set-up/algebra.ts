// Passages of the elimination for any number of equations.
import { say, listed } from "../../sentence.ts";
import { symbol } from "../../../algebra/expr.ts";
import { Capital, capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import type { SetUpSpeaker } from "./passage.ts";

/** An equation by what it says: "the law for the crate along x", "what rope 1 asks". */
export function equationName(s: SetUpSpeech, id: string): string {
  const [head = "", of = ""] = id.split(".");
  if (head === "rope") return `the tie by ${s.rope(of)}`;
  if (head === "touch" || head === "stick") return `the tie at ${s.surface(of)}`;
  if (head === "friction") return "the law of friction";
  return `the law for ${s.body(head)} along ${of}`;
}

/** Solving an equation with one unknown. */
export const settleSize: SetUpSpeaker<"settle-size"> = (d, p, s) => {
  const collected = p.steps.some((l) => l.reason.kind === "collect");
  const name = equationName(s, d.equation);
  return {
    part: "algebra",
    heading: d.zero ? "Nothing there" : "Solve",
    before: [
      say`${Capital(name)} holds one unknown, ${s.letter(d.unknown)}: ${collected ? "collect its terms and divide" : "it can be solved"}.`,
    ],
    after: [],
    refers: [d.unknown],
  };
};

/** Isolating an unknown. */
export const isolateSize: SetUpSpeaker<"isolate-size"> = (d, _, s) => ({
  part: "algebra",
  heading: "Isolate",
  before: [say`No equation holds a single unknown. Isolate ${s.letter(d.unknown)} in ${equationName(s, d.equation)}.`],
  after: [],
  refers: [d.unknown],
});

/** A size that is zero leaves an equation. */
export const zeroSize: SetUpSpeaker<"zero-size"> = (d, _, s) => ({
  part: "algebra",
  heading: "Nothing there",
  before: [say`${s.letter(d.unknown)} is zero, so what it multiplies goes.`],
  after: [],
  refers: [d.unknown],
});

/** A size whose factor is zero. */
export const vanishing: SetUpSpeaker<"vanishing"> = (d, _, s) => ({
  part: "algebra",
  heading: "The unknown drops out",
  before: [
    say`What multiplies ${s.letter(d.unknown)} is zero at these angles, so this equation cannot give it; what is left of it holds or does not.`,
  ],
  after: [],
  refers: [d.unknown],
});

/** Substituting. */
export const eliminateSize: SetUpSpeaker<"eliminate-size"> = (d, p, s) => ({
  part: "algebra",
  heading: "Eliminate",
  before: [
    say`Put ${s.line(d.line)} in wherever ${s.letter(d.unknown)} stands${p.steps.filter((l) => l.reason.kind === "substitute").length > 1 ? ", in each equation" : ""}: then ${s.letter(d.unknown)} is gone from ${p.steps.filter((l) => l.reason.kind === "substitute").length > 1 ? "them" : "it"}.`,
  ],
  after: [],
  refers: [d.unknown],
});

/** The unit of a size, or of an acceleration. */
const unitOf = (s: SetUpSpeech, id: string): string => (/^a\d*[xy]?$/.test(id) ? s.units.acceleration : s.units.force);

/** Equations that were not needed. */
export const spare: SetUpSpeaker<"spare"> = (d, _, s) => ({
  part: "algebra",
  heading: "To spare",
  before: [
    say`${capital(listed(d.equations.map((id) => say`${equationName(s, id)}`)))} ${d.equations.length > 1 ? "were" : "was"} not needed: everything there is known by now, and it fits.`,
  ],
  after: [],
  refers: [],
});

/** More unknowns than equations. */
export const openSizes: SetUpSpeaker<"open-sizes"> = (d, _, s) => {
  const { attempt, result } = s;
  const names = listed(d.unknowns.map((u) => s.letter(u)));
  const settled = d.unknowns.filter((u) => attempt.settled.has(u));
  const open = d.unknowns.filter((u) => !attempt.settled.has(u));
  const spoken = { part: "algebra", refers: d.unknowns } as const;
  if (!attempt.holds)
    return {
      ...spoken,
      heading: "More unknowns than equations",
      before: [
        say`No equation is left that helps, and ${names} stay open. But they cannot be just anything: ropes pull, surfaces push, and static friction has its largest size.`,
      ],
      after: [closestWords(s, d.unknowns)],
    };
  const values = settled.map((u) => say`${s.letter(u)} is ${s.number(symbol(u), unitOf(s, u), u)}`);
  const found = settled.length === 0 ? [] : [say`${capital(listed(values))}.`];
  if (open.length === 0)
    return {
      ...spoken,
      heading: "Settled by what cannot be",
      before: [
        say`No equation is left that helps, and ${names} are still open. But ropes only pull, surfaces only push and static friction is bounded: only one choice of sizes is possible.`,
      ],
      after: found,
    };
  const between = result.ranges
    .filter((r) => open.includes(r.id))
    .map(
      (r) => say`${s.letter(r.id)} from ${s.figure(r.least, unitOf(s, r.id))} to ${s.figure(r.most, unitOf(s, r.id))}`,
    );
  const bounds =
    between.length === 0
      ? []
      : [
          say`Ropes only pull, surfaces only push and static friction is bounded, so ${between.length === open.length ? "each can only lie" : "some can only lie"} between two values: ${listed(between)}. Where it lies in between depends on how the thing was set up, or on how much ropes give.`,
        ];
  return {
    ...spoken,
    heading: "Stuck for good",
    before: [
      say`No equation is left that helps, and ${listed(open.map((u) => s.letter(u)))} ${open.length > 1 ? "are" : "is"} still open: forces and motion alone do not decide. The problem is not impossible; it is not determined.`,
    ],
    after: [
      ...(found.length === 0 ? [] : [say`What is possible at all leaves a single value of the rest.`, ...found]),
      ...bounds,
    ],
  };
};

/** In a failed attempt with something open: the choice that comes closest, at which what fails is then shown. */
function closestWords(s: SetUpSpeech, unknowns: readonly string[]): Sentence {
  const sizes = unknowns.map((u) => say`${s.letter(u)} = ${s.number(symbol(u), unitOf(s, u), u)}`);
  return say`The choice that comes closest is ${listed(sizes)}; whatever is chosen, something fails.`;
}

/** Accelerations that nothing decides. */
export const unmentioned: SetUpSpeaker<"unmentioned"> = (d, _, s) => ({
  part: "algebra",
  heading: "Not decided",
  before: [
    say`${capital(listed(d.unknowns.map((u) => s.letter(u))))} ${d.unknowns.length > 1 ? "stand" : "stands"} in no equation: what has no mass needs no force to speed up, so nothing decides how it does.`,
  ],
  after: [],
  refers: d.unknowns,
});

/** Equations that contradict each other. */
export const clash: SetUpSpeaker<"clash"> = (d, _, s) => ({
  part: "algebra",
  heading: "This cannot be",
  before: [
    say`Everything in ${equationName(s, d.equation)} is known by now, and it does not fit. So what was assumed of the motion cannot be: there is no set of forces that does it.`,
  ],
  after: [],
  refers: [],
});

/** What breaks a hypothesis. */
export const breach: SetUpSpeaker<"breach"> = (d, _, s) => {
  const words: Readonly<Record<string, () => Sentence>> = {
    "pushing-rope": () =>
      say`${Capital(s.rope(d.of))} would have to push, and a rope only pulls. So it cannot be straight and pulling as assumed.`,
    "pulling-surface": () =>
      say`${Capital(s.surface(d.of))} would have to pull ${s.body(s.contactOf(d.of).on)} towards itself, and a surface only pushes. So they do not stay in touch.`,
    "too-rough": () =>
      say`The friction needed to keep ${s.body(s.contactOf(d.of).on)} from sliding is more than static friction can give. So it slides.`,
    "parting-rope": () => say`The ends of ${s.rope(d.of)} would move apart, and so it is straight after all.`,
    sinking: () =>
      say`${Capital(s.body(s.contactOf(d.of).on))} would move into ${s.surface(d.of)}, and so they touch after all.`,
    "wrong-way": () =>
      say`${Capital(s.body(s.contactOf(d.of).on))} would slide the way its own friction points, and friction only acts against the sliding. So it does not slide that way.`,
    "no-solution": () =>
      say`No sizes of the forces fulfil all equations with every rope pulling, every surface pushing and every friction within its bounds. So not everything stays as assumed.`,
  };
  return {
    part: "case",
    heading: "The assumption fails",
    before: [words[d.breach]?.() ?? say`The assumption fails.`],
    after: [],
    refers: d.of === "" ? [] : [d.of],
  };
};
