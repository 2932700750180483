// Passages of the elimination for any number of equations.
import { symbol } from "../../../algebra/expr.ts";
import { listed, say } from "../../sentence.ts";
import { Capital, capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import type { SetUpSpeaker } from "./passage.ts";

/** An equation by what it says: "the law for the crate along x", "the tie by rope 1". */
export function equationName(s: SetUpSpeech, id: string): string {
  const dot = id.indexOf(".");
  const [head, of] = [id.slice(0, dot), id.slice(dot + 1)];
  if (head === "rope") return `the tie by ${s.rope(of)}`;
  if (head === "touch" || head === "stick") return `the tie of ${s.body(s.contactOf(of).on)} to ${s.surface(of)}`;
  if (head === "friction") return `the law of friction`;
  if (of === "across") return `the law for ${s.body(head)} at right angles to the slope`;
  return `the law for ${s.body(head)} along ${of === "along" ? "the slope" : of}`;
}

/** Solving an equation with one unknown. */
export const settleSize: SetUpSpeaker<"settle-size"> = (d, p, s) => {
  const collected = p.steps.some((l) => l.reason.kind === "collect");
  return {
    part: "algebra",
    heading: "Solve",
    before: [
      say`${Capital(equationName(s, d.equation))} holds no unknown but ${s.letter(d.unknown)}${collected ? ": collect its terms and divide" : ""}.`,
    ],
    after: [],
    refers: [d.unknown],
  };
};

/** Isolating an unknown. */
export const isolateSize: SetUpSpeaker<"isolate-size"> = (d, p, s) => {
  const isFirst = s.attempt.passages.find((one) => one.data.kind === "isolate-size") === p;
  return {
    part: "algebra",
    heading: "Isolate",
    before: [
      say`${isFirst ? "No equation is left with a single unknown, so write one unknown by means of the others. " : ""}Isolate ${s.letter(d.unknown)} in ${equationName(s, d.equation)}.`,
    ],
    after: [],
    refers: [d.unknown],
  };
};

/** A size that is zero leaves an equation. */
export const zeroSize: SetUpSpeaker<"zero-size"> = (d, _, s) => ({
  part: "algebra",
  heading: "What is zero goes",
  before: [say`${s.letter(d.unknown)} is zero, so its term goes.`],
  after: [],
  refers: [d.unknown],
});

/** A size whose factor is zero. */
export const vanishing: SetUpSpeaker<"vanishing"> = (d, _, s) => ({
  part: "algebra",
  heading: "The unknown drops out",
  before: [
    say`What multiplies ${s.letter(d.unknown)} is zero with these numbers, so this equation cannot give it; what is left of it holds or does not.`,
  ],
  after: [],
  refers: [d.unknown],
});

/** Substituting. */
export const eliminateSize: SetUpSpeaker<"eliminate-size"> = (d, p, s) => {
  const into = p.steps.filter((l) => l.reason.kind === "substitute").length;
  return {
    part: "algebra",
    heading: "Eliminate",
    before: [
      into > 1
        ? say`Put ${s.line(d.line)} into the other equations that hold ${s.letter(d.unknown)}; that removes it from each.`
        : say`Put ${s.line(d.line)} into the other equation that holds ${s.letter(d.unknown)}; that removes it.`,
    ],
    after: [],
    refers: [d.unknown],
  };
};

/** Equations that were not needed. */
export const spare: SetUpSpeaker<"spare"> = (d, _, s) => {
  const [were, them] = d.equations.length > 1 ? ["were", "them"] : ["was", "it"];
  return {
    part: "algebra",
    heading: "To spare",
    before: [
      say`${capital(listed(d.equations.map((id) => equationName(s, id))))} ${were} not needed: everything in ${them} is known by now, and it fits.`,
    ],
    after: [],
    refers: [],
  };
};

/** A unit by letter: accelerations begin with a. */
const unitOf = (s: SetUpSpeech, id: string): string => (/^a\d*[xy]?$/.test(id) ? s.units.acceleration : s.units.force);

/** What is not possible, whatever the equations leave open. */
function boundedWords({ setUp }: SetUpSpeech): string {
  const all = [
    ...(setUp.ropes.length > 0 ? ["ropes only pull"] : []),
    ...(setUp.contacts.length > 0 ? ["surfaces only push"] : []),
    ...(setUp.contacts.some((c) => c.staticFriction !== null) ? ["static friction has its largest size"] : []),
  ];
  return all.length < 2
    ? (all[0] ?? "whatever exerts a force has its bounds")
    : `${all.slice(0, -1).join(", ")} and ${all.at(-1) ?? ""}`;
}

/** More unknowns than equations. */
export const openSizes: SetUpSpeaker<"open-sizes"> = (d, _, s) => {
  const { attempt } = s;
  const names = (list: readonly string[]): Sentence => listed(list.map((u) => s.letter(u)));
  const are = (list: readonly string[]): string => (list.length > 1 ? "are" : "is");
  const settled = d.unknowns.filter((u) => attempt.settled.has(u));
  const open = d.unknowns.filter((u) => !attempt.settled.has(u));
  const base = { part: "algebra", refers: d.unknowns } as const;
  const bounded = boundedWords(s);
  if (!attempt.holds)
    return {
      ...base,
      heading: "More unknowns than equations",
      before: [
        say`No equation is left that helps, and ${names(d.unknowns)} ${are(d.unknowns)} still open. But not everything is possible: ${bounded}.`,
      ],
      after: [closestWords(s, d.unknowns)],
    };
  const values = settled.map((u) => say`${s.letter(u)} is ${s.amount(symbol(u), unitOf(s, u), u)}`);
  const found = settled.length === 0 ? [] : [capital(say`${listed(values)}.`)];
  if (open.length === 0)
    return {
      ...base,
      heading: "Settled by what cannot be",
      before: [
        say`No equation is left that helps, and ${names(d.unknowns)} ${are(d.unknowns)} still open. But ${bounded}: that leaves a single choice.`,
      ],
      after: found,
    };
  return {
    ...base,
    heading: "Stuck for good",
    before: [
      say`No equation is left that helps, and ${names(open)} ${are(open)} still open: the laws of motion alone do not decide. The problem is not impossible; it is not determined.`,
    ],
    after: [
      ...(found.length === 0 ? [] : [say`Still, ${bounded}, and that leaves a single value of the rest.`, ...found]),
      ...rangeWords(s, open, found.length === 0 ? `Still, ${bounded}, which keeps` : "The same keeps"),
    ],
  };
};

/** Between what the open sizes can lie. */
function rangeWords(s: SetUpSpeech, open: readonly string[], start: string): Sentence[] {
  const ranges = open.flatMap((u) => s.result.ranges.filter((r) => r.id === u));
  const between = ranges.map((r) => {
    const unit = unitOf(s, r.id);
    return say`${s.letter(r.id)} from ${s.size(r.least, unit)} to ${s.size(r.most, unit)}`;
  });
  if (between.length === 0) return [];
  const which = between.length < open.length ? "some of them" : between.length > 1 ? "each" : "it";
  return [
    say`${start} ${which} between bounds: ${listed(between)}. What it is in between depends on how everything was set up, and on how much ropes and bodies give.`,
  ];
}

/** In a failed attempt with something open: the choice that comes closest, at which what fails is then shown. */
function closestWords(s: SetUpSpeech, unknowns: readonly string[]): Sentence {
  const value = (u: string): number => s.values.symbols.get(u)?.decimal ?? 0;
  const largest = Math.max(...unknowns.map((u) => Math.abs(value(u))));
  // What is next to nothing beside the others is what rounding left of zero.
  const clean = (x: number): number => (Math.abs(x) <= 1e-10 * largest ? 0 : x);
  const sizes = unknowns.map((u) => say`${s.letter(u)} = ${s.size(clean(value(u)), unitOf(s, u), u)}`);
  return say`Whatever is chosen, something fails; the choice that comes closest is ${listed(sizes)}.`;
}

/** Accelerations that nothing decides. */
export const unmentioned: SetUpSpeaker<"unmentioned"> = (d, _, s) => ({
  part: "algebra",
  heading: "Not decided",
  before: [
    capital(
      say`${listed(d.unknowns.map((u) => s.letter(u)))} ${d.unknowns.length > 1 ? "stand" : "stands"} in no equation: what has no mass needs no force to speed up, so nothing decides how it does.`,
    ),
  ],
  after: [],
  refers: d.unknowns,
});

/** Equations that contradict each other. */
export const clash: SetUpSpeaker<"clash"> = (d, _, s) => ({
  part: "algebra",
  heading: "This cannot be",
  before: [
    say`Everything in ${equationName(s, d.equation)} is known by now, and it does not fit: no forces along these directions make the bodies move as was assumed.`,
  ],
  after: [],
  refers: [],
});

/** What breaks a hypothesis. */
export const breach: SetUpSpeaker<"breach"> = (d, _, s) => {
  const contact = () => s.contactOf(d.of);
  const words: Readonly<Record<string, () => Sentence>> = {
    "pushing-rope": () => say`${Capital(s.rope(d.of))} would have to push, and a rope only pulls.`,
    "pulling-surface": () =>
      say`${Capital(s.surface(d.of))} would have to pull ${s.body(contact().on)} towards itself, and a surface only pushes.`,
    "too-rough": () =>
      say`To keep ${s.body(contact().on)} from sliding takes more friction than static friction can give.`,
    "parting-rope": () =>
      say`The two ends of ${s.rope(d.of)} would move apart, which a rope of fixed length does not allow.`,
    sinking: () => say`${Capital(s.body(contact().on))} would move into ${s.surface(d.of)}.`,
    "wrong-way": () =>
      say`${Capital(s.body(contact().on))} would slide the very way its kinetic friction points, and kinetic friction only acts against the sliding.`,
    "no-solution": () =>
      say`No sizes of the forces fulfil all equations with every rope pulling, every surface pushing and every static friction within its largest size.`,
  };
  return {
    part: "case",
    heading: "The assumption fails",
    before: [words[d.breach]?.() ?? say`What was assumed does not hold.`],
    after: [],
    refers: d.of === "" ? [] : [d.of],
  };
};
