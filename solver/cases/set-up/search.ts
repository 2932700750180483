// Assume, solve, check, and assume otherwise what failed: from the first hypothesis to one that holds, by the fewest changes.
import type { Contact, SetUp } from "../../1-bodies/index.ts";
import type { Rules, SetUpHypothesis } from "../../2-forces/index.ts";
import { apart } from "../../3-equations/index.ts";
import type { AxesChoice } from "../../3-equations/index.ts";
import { decimal } from "../../algebra/evaluate.ts";
import { allSliding, firstHypothesis, nextHypotheses, releasedHeld, withoutFriction } from "./hypotheses.ts";
import { judgeHypothesis } from "./judge.ts";
import type { Judged } from "./judge.ts";
import { restored, rivalOf } from "./resting.ts";

/** The hypotheses tried on the way to the one that holds, in order; without one that holds, only the first. */
export interface Search {
  readonly path: readonly Judged[];
  readonly holds: boolean;
  /** Another hypothesis that holds as well, where neither rests where the other does. */
  readonly rival: SetUpHypothesis | null;
}

const MOST_TRIED = 1500;
/** Nothing is wrong with the forces, but the body cannot be where the ropes would hold it. */
const NOWHERE = { kind: "no-solution", row: "" } as const;

interface Tried {
  readonly judged: Judged;
  readonly before: Tried | null;
}

/** Searches for a hypothesis that holds. `setUpFor` gives the set-up, which can depend on what is slack. */
export function search(setUpFor: (h: SetUpHypothesis | null) => SetUp, choice: AxesChoice, rules: Rules): Search {
  const start = setUpFor(null);
  const queue: { hypothesis: SetUpHypothesis; before: Tried | null }[] = [
    { hypothesis: firstHypothesis(start), before: null },
  ];
  const seen = new Set<string>();
  let first: Tried | null = null;
  for (let tried = 0; tried < MOST_TRIED; tried++) {
    const next = queue.shift();
    if (next === undefined) break;
    if (seen.has(next.hypothesis.id)) continue;
    seen.add(next.hypothesis.id);
    const setUp = setUpFor(next.hypothesis);
    const judged = judgeHypothesis(setUp, next.hypothesis, choice, rules);
    const here: Tried = { judged, before: next.before };
    first ??= here;
    if (judged.failures.length === 0 && fits(judged)) {
      const rested = restored(judged, choice, rules);
      const end: Tried = rested === null ? here : { judged: rested, before: here.before };
      return { path: pathTo(end), holds: true, rival: rivalOf(end.judged, choice, rules) };
    }
    const failures = judged.failures.length > 0 ? judged.failures : [NOWHERE];
    const stuck = failures.some((f) => f.kind === "no-solution");
    const candidates = [
      ...releasedHeld(setUp, judged.hypothesis),
      ...(stuck ? startsSliding(judged, choice, rules) : []),
      ...failures.flatMap((failure) => nextHypotheses(setUp, judged.hypothesis, failure)),
    ];
    for (const hypothesis of candidates) if (!seen.has(hypothesis.id)) queue.push({ hypothesis, before: here });
  }
  return { path: first === null ? [] : [first.judged], holds: false, rival: null };
}

/** Where nothing can be held still: everything slides, the way it would start if there were no friction. */
function startsSliding({ setUp, hypothesis }: Judged, choice: AxesChoice, rules: Rules): SetUpHypothesis[] {
  const smooth = judgeHypothesis(setUp, withoutFriction(setUp, hypothesis), choice, rules);
  if (smooth.solution.kind !== "one") return [];
  const { values, equations, point } = smooth;
  const value = (letter: string): number => point.get(letter) ?? values.symbols.get(letter)?.decimal ?? 0;
  const speed = (contact: Contact): number =>
    apart(setUp, equations.motions, contact, contact.tangent).reduce(
      (total, t) => total + t.sign * decimal(t.factor, values) * value(t.letter),
      0,
    );
  return [allSliding(setUp, hypothesis, speed)];
}

/** A body that hangs by lengths of ropes has to be somewhere, with no rope shorter than the distance it bridges. */
function fits({ setUp, hypothesis }: Judged): boolean {
  const { hanging } = setUp;
  if (hanging === null) return true;
  if (hanging.kind === "nowhere") return setUp.gravity.decimal === 0;
  if (hanging.kind !== "placed") return false;
  return hanging.bridges.every((b) => hypothesis.ropes[b.rope] !== "slack" || b.distance <= b.length * (1 + 1e-12));
}

function pathTo(last: Tried): Judged[] {
  const path: Judged[] = [];
  for (let at: Tried | null = last; at !== null; at = at.before) path.unshift(at.judged);
  return path;
}
