// What a set-up turns out to be: the attempts in order, the last one in force, and how far its loads may go before something slips.
import { buildSetUp } from "../../1-bodies/index.ts";
import type { SetUp } from "../../1-bodies/index.ts";
import type { Rules, SetUpHypothesis } from "../../2-forces/index.ts";
import type { AxesChoice } from "../../3-equations/index.ts";
import { writeSetUpAttempt } from "../../4-steps/index.ts";
import type { Breach, SetUpAttempt } from "../../4-steps/index.ts";
import type { Problem } from "../../../shared/problem/index.ts";
import type { Judged } from "./judge.ts";
import { limitsOf } from "./limits.ts";
import { search } from "./search.ts";
import type { SetUpResult } from "../set-up-types.ts";

/** How the reader wants a set-up derived. */
export interface SetUpChoices {
  readonly axes: AxesChoice;
  readonly firstAxis: "vertical" | "horizontal";
}

/** Runs the stages under one hypothesis after another until one holds, and writes down those that a reader should see. */
export function runSetUp(problem: Problem, choices: SetUpChoices, rules: Rules): SetUpResult {
  const { path, holds, rival } = search((h) => buildSetUp(problem, looseIn(h)), choices.axes, rules);
  const last = path[path.length - 1];
  if (last === undefined) throw new Error("a search tries at least one hypothesis");
  const shown = path.filter((judged, i) => i === path.length - 1 || isWorthShowing(judged, path[i + 1]));
  const attempts = shown.map((judged, i) => write(judged, choices, i === 0 ? "" : `case${i + 1}.`));
  const inForce = attempts[attempts.length - 1];
  if (inForce === undefined) throw new Error("the last attempt is always shown");
  return {
    setUp: last.setUp,
    kind: !holds ? "impossible" : inForce.open.some((u) => !last.settled.has(u)) ? "under-determined" : "determined",
    attempts,
    inForce,
    limits: holds && last.solution.kind === "one" ? limitsOf(last, choices) : [],
    point: last.point,
    rival,
    ranges: last.ranges,
  };
}

const looseIn = (h: SetUpHypothesis | null): ReadonlySet<string> =>
  new Set(Object.entries(h?.ropes ?? {}).flatMap(([id, state]) => (state === "slack" ? [id] : [])));

/** A smooth surface that cannot hold what is tried at rest on it, or ropes that do not meet, are no case to work through. */
function isWorthShowing(judged: Judged, next: Judged | undefined): boolean {
  if (!isPlaced(judged.setUp)) return false;
  const letGo = judged.setUp.contacts.some(
    (c) => judged.hypothesis.contacts[c.id]?.grip === "held" && next?.hypothesis.contacts[c.id]?.grip === "smooth",
  );
  return !letGo;
}

const isPlaced = ({ hanging }: SetUp): boolean => hanging === null || hanging.kind === "placed";

function write(judged: Judged, choices: SetUpChoices, prefix: string): SetUpAttempt {
  const { setUp, hypothesis, forces, equations, point, excluded } = judged;
  return writeSetUpAttempt({
    setUp,
    hypothesis,
    forces,
    equations: isPlaced(setUp) ? equations : { ...equations, equations: [] },
    point,
    loose: looseUnknowns(judged),
    settled: judged.settled,
    breaches: breachesOf(judged),
    excluded,
    firstAxis: choices.firstAxis,
    prefix,
    limit: null,
  });
}

/** What is shown to fail, each thing once. */
function breachesOf({ failures, shown }: Judged): readonly Breach[] {
  const list = (shown.length > 0 ? shown : failures).map((f): Breach => ({ kind: f.kind, id: "id" in f ? f.id : "" }));
  return list.filter((b, i) => list.findIndex((o) => o.kind === b.kind && o.id === b.id) === i);
}

/** Unknowns that can be changed without breaking an equation. */
const looseUnknowns = ({ solution }: Judged): ReadonlySet<string> =>
  new Set(solution.kind === "many" ? solution.free.flatMap((direction) => [...direction.keys()]) : []);
