// Sentences that compare or go to a limit, held against the solver at changed settings: none may be false anywhere.
import { describe, expect, it } from "vitest";
import { derive, solve } from "../../solver/index.ts";
import { seeded, setUp } from "../arbitraries/set-ups.ts";
import { exported } from "./exported.ts";
import { problemOf } from "./set-ups.ts";
import type { SetUp } from "./set-ups.ts";

const PROBLEMS = 1500;
/** Printed numbers are to three figures. */
const THREE_FIGURES = 0.006;

interface Found {
  readonly kind: string;
  readonly slack: readonly string[];
  readonly pulls: readonly number[];
}

function solved(set: SetUp): Found {
  const { kind, slack, answers } = solve(problemOf(set));
  return { kind, slack, pulls: answers.map((a) => a.decimal ?? NaN) };
}

const near = (a: number, b: number, relative: number): boolean =>
  Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b)) + 1e-15;
const weightOf = (set: SetUp): number => set.weight ?? (set.mass ?? 4.2) * (set.gravity ?? 9.8);
const massOf = (set: SetUp): number =>
  set.weight === undefined ? (set.mass ?? 4.2) : set.weight / (set.gravity ?? 9.8);
/** m(g + ay): what the upward parts have to make. */
const liftOf = (set: SetUp): number => massOf(set) * ((set.gravity ?? 9.8) + (set.ay ?? 0));
const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
/** The first number with a unit in a sentence: 41.2 N, 3.25×10⁻⁴ m/s². */
function number(text: string): number {
  const [, digits = "", power = ""] =
    /(\d+(?:\.\d+)?)(?:×10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+))? (?:N|m\/s²|%)/.exec(text.replaceAll("\u00a0", " ")) ?? [];
  const exponent = power.replace(/./g, (c) => (c === "⁻" ? "-" : String(RAISED.indexOf(c))));
  return digits === "" ? NaN : Number(`${digits}e${exponent === "" ? "0" : exponent}`);
}
const angles = (set: SetUp): number[] => set.ropes.map(Number);
/** The direction of a rope turned to so many degrees above the level line, on its own side. */
const turned = (direction: number, degrees: number): number =>
  Number((direction > 90 ? 180 - degrees : degrees).toPrecision(12));
const acuteOf = (direction: number): number => Number((direction > 90 ? 180 - direction : direction).toPrecision(12));

type Judge = (match: RegExpExecArray, set: SetUp, now: Found) => boolean;

/** What each sentence claims. A sentence that fits none is a fault of its own. */
const JUDGES: readonly (readonly [RegExp, Judge])[] = [
  [
    /^Rope (\d) pulls harder than rope (\d)(: it is the steeper one)?/,
    ([, a, b, steeper], set, { pulls }) => {
      const [first, second] = [Number(a) - 1, Number(b) - 1];
      const steep = (i: number): number => Math.abs(Math.tan(((angles(set)[i] ?? 0) * Math.PI) / 180));
      const harder = (pulls[first] ?? NaN) > (pulls[second] ?? NaN);
      return harder && (steeper === undefined || ((set.ax ?? 0) === 0 && steep(first) > steep(second)));
    },
  ],
  [/^Both ropes pull equally hard/, (_, __, { pulls: [a = NaN, b = NaN] }) => near(a, b, 1e-9)],
  [
    /^The two pulls together, .*, come to more than/,
    ({ input }, set, { pulls }) => {
      const both = pulls.reduce((x, y) => x + y);
      return both > weightOf(set) && weightOf(set) > 0 && near(number(input), both, THREE_FIGURES);
    },
  ],
  [
    /^The two pulls together, .*, come to less than/,
    ({ input }, set, { pulls }) => {
      const both = pulls.reduce((x, y) => x + y);
      return both < weightOf(set) && near(number(input), both, THREE_FIGURES);
    },
  ],
  [
    /^The two pulls together come to just/,
    (_, set, { pulls }) =>
      near(
        pulls.reduce((x, y) => x + y),
        weightOf(set),
        1e-9,
      ),
  ],
  [
    /^Of the weight, rope 1 holds ([\d.]+).*rope 2 ([\d.]+)/,
    ([, a, b], set, { pulls }) =>
      pulls.every((pull, i) =>
        near(
          Number(i === 0 ? a : b),
          (100 * pull * Math.sin((acuteOf(angles(set)[i] ?? 0) * Math.PI) / 180)) / weightOf(set),
          THREE_FIGURES,
        ),
      ),
  ],
  [
    /^Rope (\d) pulls harder than the whole weight.*(a shallow rope|besides its share)/,
    ([, a, why], set, { pulls }) => {
      const pull = pulls[Number(a) - 1] ?? NaN;
      const up = pull * Math.sin((acuteOf(angles(set)[Number(a) - 1] ?? 0) * Math.PI) / 180);
      // A shallow rope's upward part is a small part of its pull; a steep one's is less than the weight all the same.
      return pull > weightOf(set) && up < weightOf(set) && (why === "a shallow rope") === up < 0.55 * pull;
    },
  ],
  [
    /^Make rope (\d) ever steeper/,
    ([, a], set) => {
      const steep = Number(a) - 1;
      const { pulls } = solved({ ...set, ropes: angles(set).map((d, i) => (i === steep ? turned(d, 89.999) : d)) });
      return near(pulls[steep] ?? NaN, liftOf(set), 0.02) && (pulls[1 - steep] ?? NaN) < 0.02 * liftOf(set);
    },
  ],
  [
    /^Make both ropes flatter/,
    (_, set) =>
      solved({ ...set, ropes: angles(set).map((d) => turned(d, acuteOf(d) / 10_000)) }).pulls.every(
        (p) => p > 20 * liftOf(set),
      ),
  ],
  [
    /^Exchange the two angles/,
    (_, set, { pulls }) => {
      const [a = 0, b = 0] = angles(set);
      const exchanged = solved({ ...set, ropes: [turned(a, acuteOf(b)), turned(b, acuteOf(a))] });
      return (
        near(exchanged.pulls[0] ?? NaN, pulls[1] ?? NaN, 1e-9) && near(exchanged.pulls[1] ?? NaN, pulls[0] ?? NaN, 1e-9)
      );
    },
  ],
  [
    /^Let the support fall freely/,
    (_, set) => solved({ ...set, ay: -(set.gravity ?? 9.8) }).pulls.every((p) => p === 0),
  ],
  [
    /^Accelerate the support to the (left|right): from .* on, rope (\d) is slack/,
    ({ input, 1: side, 2: rope }, set) => {
      const limit = number(input) * (side === "left" ? -1 : 1);
      const beyond = solved({ ...set, ax: Number((limit * 1.02).toPrecision(10)) });
      const before = solved({ ...set, ax: Number((limit * 0.98).toPrecision(10)) });
      return beyond.slack.includes(`T${rope ?? ""}`) && !before.slack.includes(`T${rope ?? ""}`);
    },
  ],
  [
    /^Double the mass/,
    (_, set, { pulls }) => {
      const double = solved(
        set.weight === undefined
          ? { ...set, mass: Number((2 * (set.mass ?? 4.2)).toPrecision(12)) }
          : { ...set, weight: 2 * set.weight },
      );
      return double.pulls.every((p, i) => near(p, 2 * (pulls[i] ?? NaN), 1e-9));
    },
  ],
  [/^The pull is more than/, (_, set, { pulls }) => Math.max(...pulls) > weightOf(set)],
  [/^The pull is less than/, (_, set, { pulls }) => Math.max(...pulls) < weightOf(set)],
  [/^The pull is just/, (_, set, { pulls }) => near(Math.max(...pulls), weightOf(set), 1e-9)],
];

describe(`the claims of ${PROBLEMS} random settings`, () => {
  it("are true, every one of them, and of a kind that is judged here", () => {
    const random = seeded(31415);
    const wrong: string[] = [];
    const seen = new Set<number>();
    for (let i = 0; i < PROBLEMS; i++) {
      const set = setUp(random);
      const data = exported(derive(problemOf(set)));
      const now = solved(set);
      for (const sentence of data.paragraphs.find((p) => p.id === "check.size")?.sentences ?? []) {
        const kind = JUDGES.findIndex(([pattern]) => pattern.test(sentence));
        const judge = JUDGES[kind];
        const match = judge?.[0].exec(sentence);
        if (judge === undefined || !match) wrong.push(`not judged: ${sentence}`);
        else if (!judge[1](match, set, now)) wrong.push(`${sentence} at ${JSON.stringify(set)}`);
        seen.add(kind);
      }
    }
    expect(wrong.slice(0, 6)).toEqual([]);
    // Every kind has been said somewhere, so that none passes unheard.
    expect(JUDGES.flatMap(([pattern], i) => (seen.has(i) ? [] : [pattern.source]))).toEqual([]);
  });
});
