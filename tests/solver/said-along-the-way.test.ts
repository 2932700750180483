// Sentences before the checks that state a fact of the problem: directions, ratios, whose pull, which way a rope leans. Each is held
// against the set-up or against the solver at a changed one.
import { describe, expect, it } from "vitest";
import { derive, solve } from "../../solver/index.ts";
import { seeded, setUp } from "../arbitraries/set-ups.ts";
import { exported, scopeOf } from "./exported.ts";
import type { Exported } from "./exported.ts";
import { problemOf } from "./set-ups.ts";
import type { SetUp } from "./set-ups.ts";

const PROBLEMS = 1500;
/** Printed numbers are to three figures. */
const PRINTED = 0.006;
const near = (a: number, b: number, relative: number): boolean =>
  Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b));

const g = (set: SetUp): number => set.gravity ?? 9.8;
const lift = (set: SetUp): number => g(set) + (set.ay ?? 0);
const ax = (set: SetUp): number => set.ax ?? 0;
const degrees = (set: SetUp, rope: string | undefined): number => Number(set.ropes[Number(rope ?? 1) - 1]);
const across = (angle: number): number => Math.round(1e9 * Math.cos((angle * Math.PI) / 180));
const upwards = (angle: number): number => Math.round(1e9 * Math.sin((angle * Math.PI) / 180));
const acute = (angle: number): number =>
  (Math.atan2(Math.abs(upwards(angle)), Math.abs(across(angle))) * 180) / Math.PI;

/** T1 and T2 at a set-up. */
const pulls = (set: SetUp): readonly [number, number] => {
  const [a, b] = solve(problemOf(set)).answers;
  return [a?.decimal ?? NaN, b?.decimal ?? NaN];
};

/** Whether T1 is to T2 at one set-up as at another; a pull of zero is one at both. */
function sameRatio(one: SetUp, other: SetUp): boolean {
  const [a, b] = pulls(one);
  const [c, d] = pulls(other);
  return near(a * d, b * c, 1e-9);
}

/** The same with twice the load; W stands for the mass where the weight is given. */
const doubled = (set: SetUp): SetUp =>
  set.weight === undefined
    ? { ...set, mass: Number((2 * (set.mass ?? 4.2)).toPrecision(12)) }
    : { ...set, weight: 2 * set.weight };

const LEADS: Readonly<Record<string, (angle: number) => boolean>> = {
  "straight up": (a) => across(a) === 0 && upwards(a) > 0,
  "straight down": (a) => across(a) === 0 && upwards(a) < 0,
  "level, to the left": (a) => upwards(a) === 0 && across(a) < 0,
  "level, to the right": (a) => upwards(a) === 0 && across(a) > 0,
  "up and to the left": (a) => upwards(a) > 0 && across(a) < 0,
  "up and to the right": (a) => upwards(a) > 0 && across(a) > 0,
  "down and to the left": (a) => upwards(a) < 0 && across(a) < 0,
  "down and to the right": (a) => upwards(a) < 0 && across(a) > 0,
};
const POINTS: Readonly<Record<string, (angle: number) => boolean>> = {
  left: (a) => across(a) < 0,
  right: (a) => across(a) > 0,
  up: (a) => upwards(a) > 0,
  down: (a) => upwards(a) < 0,
};

/** An acceleration in words: sizes and ways, no sign. */
function accelerated(set: SetUp): string {
  const ay = set.ay ?? 0;
  const parts = [
    ax(set) === 0 ? "" : `${Math.abs(ax(set))} m/s² to the ${ax(set) < 0 ? "left" : "right"}`,
    ay === 0 ? "" : `${Math.abs(ay)} m/s² ${ay < 0 ? "downwards" : "upwards"}`,
  ];
  return parts.filter((p) => p !== "").join(" and ");
}

type Judge = (found: RegExpExecArray, set: SetUp, data: Exported) => boolean;

/** What may be said on the way, and whether it is so. Looked for in every paragraph but the check of size, which has its own test. */
const JUDGES: readonly (readonly [RegExp, Judge])[] = [
  [
    /pull of (?:rope (\d)|the rope) on the lantern: along the rope, (.+?)\. Its size/,
    ([, rope, way = ""], set) => LEADS[way]?.(degrees(set, rope)) === true,
  ],
  // A free rope's parts follow the load, so only ropes of given direction are asked here.
  [
    /^T(\d)[xy] points (left|right|up|down): /,
    ([, rope, way = ""], set, data) => data.case === "slack" || POINTS[way]?.(degrees(set, rope)) === true,
  ],
  [/^Weight, the pull of the Earth/, (_, set) => g(set) > 9.7 && g(set) <= 10],
  [/^Weight, the pull of gravity/, (_, set) => g(set) < 9.7 && g(set) > 0],
  [/^No weight: g is zero/, (_, set) => g(set) === 0],
  [/^Take x to the right and y upwards: the weight/, (_, set) => g(set) > 0],
  [/^Take x to the right and y upwards: the angles/, (_, set) => g(set) === 0],
  [/no arrow but the weight is left/, (_, set) => g(set) > 0 && lift(set) === 0 && ax(set) === 0],
  [/no arrow is left/, (_, set) => g(set) === 0],
  [
    /The check comes back to that\.$/,
    (_, __, data) =>
      data.paragraphs.some((p) => p.sentences.some((s) => s.includes("And so is one axis across rope 1"))),
  ],
  [
    /^Read it: rope (\d) pulls ([\d.]+) times as hard as rope \d, whatever the weight/,
    ([, rope, times], set) => {
      const [a, b] = pulls(set);
      return near(rope === "1" ? a / b : b / a, Number(times), PRINTED) && sameRatio(set, doubled(set));
    },
  ],
  [
    /^Read it: rope (\d) would pull ([\d.]+) times as hard as rope \d, whatever the weight/,
    ([, rope, times], _, data) => {
      const failed = data.attempts[0];
      const { T1 = NaN, T2 = NaN } = scopeOf(data, failed?.id ?? "");
      return failed?.holds === false && near(rope === "1" ? T1 / T2 : T2 / T1, Number(times), PRINTED);
    },
  ],
  [
    /it sets the size of both pulls and not their ratio; the angles alone set the ratio/,
    (_, set) =>
      sameRatio(set, doubled(set)) &&
      sameRatio(set, { ...set, ay: Number(((set.ay ?? 0) + lift(set)).toPrecision(12)) }),
  ],
  [/angles and accelerations set the ratio/, (_, set) => sameRatio(set, doubled(set))],
  [
    /the two sideways parts are equal/,
    (_, __, data) => {
      const { T1x = NaN, T2x = NaN } = scopeOf(data, data.attempts[0]?.id ?? "");
      return near(Math.abs(T1x), Math.abs(T2x), 1e-9) || (T1x === 0 && T2x === 0);
    },
  ],
  [
    /seen in a mirror the picture is the same/,
    (_, set) =>
      ax(set) === 0 &&
      across(degrees(set, "1")) === -across(degrees(set, "2")) &&
      upwards(degrees(set, "1")) === upwards(degrees(set, "2")),
  ],
  [
    /^T(\d) comes out as −/,
    ([, rope], _, data) => (scopeOf(data, data.attempts[0]?.id ?? "")[`T${rope ?? ""}`] ?? NaN) < 0,
  ],
  [
    /settles at ([\d.]+)° from the horizontal, not at the ([\d.]+)° assumed/,
    ([, found, assumed], set, data) => {
      const kept = data.slack[0] === "T1" ? "2" : "1";
      const settled = (Math.atan2(Math.abs(lift(set)), Math.abs(ax(set))) * 180) / Math.PI;
      return near(Number(found), settled, PRINTED) && near(Number(assumed), acute(degrees(set, kept)), 1e-6);
    },
  ],
  [/the rope leans to the (left|right), since/, ([, way], set) => (way === "left") === ax(set) < 0 && ax(set) !== 0],
  [/swings until it hangs straight (down|up)/, ([, way], set) => ax(set) === 0 && (way === "down") === lift(set) > 0],
  [/trails level behind the support/, (_, set) => lift(set) === 0 && ax(set) !== 0],
  [/The weight is the only force on it, and it falls with its support/, (_, set) => g(set) > 0 && lift(set) === 0],
  [/No force acts on it at all/, (_, set) => g(set) === 0 && ax(set) === 0 && (set.ay ?? 0) === 0],
  [
    /It falls with g at most, and the support outruns it/,
    (_, set) => lift(set) < 0 && set.ropes.every((r) => upwards(Number(r)) >= 0),
  ],
  [
    /^These angles have exact sines and cosines/,
    (_, set) => set.ropes.every((r) => Number.isInteger(Number(r)) && Number(r) % 15 === 0),
  ],
  [/Not all angles here are of that kind/, (_, set) => set.ropes.some((r) => Number(r) % 15 !== 0)],
  [/^The rope is longer than the distance/, (_, __, data) => lengthSays(data, "<")],
  [/^The rope is just as long as the distance/, (_, __, data) => lengthSays(data, "=")],
  [/^The rope is shorter than the distance/, (_, __, data) => lengthSays(data, ">")],
  [
    /^(Checked that|Compared:) rope \d is (.+) the distance it has to bridge/,
    ([, verb, relation], _, data) =>
      (relation === "longer than" && verb === "Checked that" && lengthSays(data, "<")) ||
      (relation === "just as long as" && verb === "Compared:" && lengthSays(data, "=")) ||
      (relation === "shorter than" && verb === "Compared:" && lengthSays(data, ">")),
  ],
  [/The lantern is at rest and stays at rest/, (_, set) => ax(set) === 0 && (set.ay ?? 0) === 0],
  [/accelerates? at (.+?)(?:: ax|, seen from the ground)/, ([, said], set) => said === accelerated(set)],
];

/** Whether the comparison of the slack rope's length with its distance is this one, by the values of both. */
function lengthSays(data: Exported, relation: "<" | "=" | ">"): boolean {
  const scope = scopeOf(data, data.attempts.at(-1)?.id ?? "");
  const d = scope.d ?? NaN;
  const [, length = NaN] = Object.entries(scope).find(([id]) => /^L\d$/.test(id)) ?? [];
  const close = near(d, length, 1e-9);
  return relation === "=" ? close : !close && (relation === "<" ? d < length : d > length);
}

describe(`what ${PROBLEMS} random derivations say on the way`, () => {
  it("is true of each of them", () => {
    const random = seeded(161803);
    const wrong: string[] = [];
    const seen = new Set<number>();
    for (let i = 0; i < PROBLEMS; i++) {
      const set = setUp(random);
      const data = exported(derive(problemOf(set)));
      for (const sentence of data.paragraphs.flatMap((p) => (p.id === "check.size" ? [] : p.sentences)))
        JUDGES.forEach(([pattern, judge], kind) => {
          const found = pattern.exec(sentence.replaceAll("\u00a0", " "));
          if (found === null) return;
          seen.add(kind);
          if (!judge(found, set, data)) wrong.push(`${sentence} at ${JSON.stringify(set)}`);
        });
    }
    expect(wrong.slice(0, 6)).toEqual([]);
    // Each has been said somewhere, so that none passes unheard; a rope too short is rare, and its own test has it.
    const unheard = JUDGES.flatMap(([pattern], i) => (seen.has(i) ? [] : [pattern.source]));
    expect(unheard.filter((source) => !source.includes("shorter"))).toEqual([]);
  });
});
