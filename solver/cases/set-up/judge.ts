// Judges one hypothesis by numbers: solves its equations and looks at its inequalities. Nothing is written down yet.
import type { SetUp } from "../../1-bodies/index.ts";
import type { Rules, SetUpForce, SetUpHypothesis } from "../../2-forces/index.ts";
import { listSetUpForces } from "../../2-forces/index.ts";
import { writeEquations } from "../../3-equations/index.ts";
import type { AxesChoice, Equations } from "../../3-equations/index.ts";
import { decimal } from "../../algebra/evaluate.ts";
import { setUpValues } from "../../4-steps/index.ts";
import type { AttemptValues } from "../../4-steps/index.ts";
import { inequalitiesOf } from "./checks.ts";
import type { Inequality } from "./checks.ts";
import { closestPoint, feasiblePoint, isSettled } from "./feasible.ts";
import type { Range } from "./feasible.ts";
import { rowsOf } from "./rows.ts";
import type { Row } from "./rows.ts";
import { solveRows } from "./solve-rows.ts";
import type { Solution } from "./solve-rows.ts";
import type { Failure } from "./types.ts";

/** A hypothesis with all that its stages made of it, its solution, and the inequalities it fails. */
export interface Judged {
  readonly hypothesis: SetUpHypothesis;
  readonly setUp: SetUp;
  readonly forces: readonly SetUpForce[];
  readonly equations: Equations;
  readonly values: AttemptValues;
  readonly solution: Solution;
  /** A solution of the equations, at which all inequalities hold if nothing failed; empty where there is none. */
  readonly point: ReadonlyMap<string, number>;
  /** Between which values unknowns can lie that the equations leave open. */
  readonly ranges: readonly Range[];
  /** Open unknowns for which the inequalities leave a single value. */
  readonly settled: ReadonlySet<string>;
  readonly failures: readonly Failure[];
  /** What fails at `point`, to be shown: the failures, or where no choice of open unknowns will do, what fails at the closest one. */
  readonly shown: readonly Failure[];
  /** Equations left out of `point` because they contradict the others. */
  readonly excluded: readonly string[];
}

/** A margin smaller than this beside the largest number of its kind is zero: the case is just on the edge, and holds. */
const EDGE = 1e-10;

/** Judges a hypothesis. */
export function judgeHypothesis(setUp: SetUp, wished: SetUpHypothesis, choice: AxesChoice, rules: Rules): Judged {
  const first = judgeOnce(setUp, wished, choice, rules);
  // Static friction is drawn the way it acts: where its number came out negative, the other way.
  const turned = Object.entries(wished.contacts).filter(([id, s]) => {
    const friction = setUp.contacts.find((c) => c.id === id)?.friction ?? "";
    return s.grip === "sticks" && (first.point.get(friction) ?? 0) < 0;
  });
  if (turned.length === 0) return first;
  const contacts = { ...wished.contacts };
  for (const [id, s] of turned) contacts[id] = { ...s, sense: s.sense > 0 ? -1 : 1 };
  return judgeOnce(setUp, { ...wished, contacts }, choice, rules);
}

function judgeOnce(setUp: SetUp, hypothesis: SetUpHypothesis, choice: AxesChoice, rules: Rules): Judged {
  const forces = listSetUpForces(setUp, hypothesis, rules);
  const equations = writeEquations(setUp, hypothesis, forces, choice);
  const values = setUpValues(setUp);
  const rows = rowsOf(equations.equations, values);
  const solution = solveRows(rows);
  const base = {
    hypothesis,
    setUp,
    forces,
    equations,
    values,
    solution,
    ranges: [],
    settled: new Set<string>(),
    excluded: [],
    shown: [],
  };
  if (solution.kind === "none") {
    const failures: Failure[] = [{ kind: "no-solution", row: solution.row }];
    const { point, excluded } = solvable(rows);
    return { ...base, point, excluded, shown: failures, failures };
  }
  const given = (letter: string): number => values.symbols.get(letter)?.decimal ?? 0;
  const inequalities = inequalitiesOf(setUp, hypothesis, equations, values);
  const holds = (q: Inequality, margin: number, at: (letter: string) => number): boolean =>
    margin >= -EDGE * scaleOf(q, base, at);
  if (solution.kind === "many") {
    const found = feasiblePoint(solution, inequalities, given, holds);
    if (found !== null) {
      const open = new Set(solution.free.flatMap((direction) => [...direction.keys()]));
      const fixed = [...solution.values.keys()].filter((id) => !open.has(id));
      const settled = new Set([...fixed, ...found.ranges.filter(isSettled).map((r) => r.id)]);
      return { ...base, ...found, settled, failures: [] };
    }
    const closest = closestPoint(solution, inequalities, given, holds);
    const shown = closest.broken.map((q) => q.failure);
    return { ...base, point: closest.point, shown, failures: [{ kind: "no-solution", row: "" }] };
  }
  const at = (letter: string): number => solution.values.get(letter) ?? given(letter);
  const failed = inequalities.filter((q) => !holds(q, q.margin(at), at));
  const failures = failed.map((q) => q.failure);
  return { ...base, point: solution.values, shown: failures, failures };
}

/** Where the rows contradict each other: a solution of the others, and the rows left out for it. */
function solvable(rows: readonly Row[]): { readonly point: ReadonlyMap<string, number>; readonly excluded: string[] } {
  const excluded: string[] = [];
  for (;;) {
    const solution = solveRows(rows.filter((r) => !excluded.includes(r.id)));
    if (solution.kind !== "none") return { point: solution.values, excluded };
    excluded.push(solution.row);
  }
}

/** What to measure an edge by: the largest force on the body that feels least, or the largest acceleration there is. */
function scaleOf(
  { of, bodies }: Inequality,
  { forces, setUp, equations, values }: Pick<Judged, "forces" | "setUp" | "equations" | "values">,
  at: (letter: string) => number,
): number {
  if (of === "force") {
    const size = (f: SetUpForce): number => Math.abs(f.unknown === null ? decimal(f.size, values) : at(f.unknown));
    const largest = (list: readonly SetUpForce[]): number => Math.max(0, ...list.map(size));
    const own = bodies.map((body) => largest(forces.filter((f) => f.on === body)));
    // Beside the largest of all forces, what rounding leaves of it is nothing.
    return Math.max(Math.min(...own), 1e-5 * largest(forces));
  }
  const letters = equations.motions.flatMap((m) => [...m.own, ...m.carried].map((p) => p.letter));
  return Math.max(setUp.gravity.decimal, ...letters.map((l) => Math.abs(at(l))), 0);
}
