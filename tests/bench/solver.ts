// The solver beside its peers in the same run: mathjs lusolve is the floor (decimals only), compute-engine a general-purpose exact solve.
import { ComputeEngine } from "@cortex-js/compute-engine";
import { lusolve } from "mathjs";
import { add, divide, exactCosine, exactSine, multiply, negate, rational, surd } from "../../shared/exact/index.ts";
import type { Surd } from "../../shared/exact/index.ts";
import type { Problem } from "../../shared/problem/index.ts";
import { exportDerivation } from "../../solver/exports/index.ts";
import { derive, solve } from "../../solver/index.ts";
import { opposite, problemOf } from "../solver/set-ups.ts";
import { ms, printTable } from "./table.ts";
import { time } from "./timing.ts";
import type { Timing } from "./timing.ts";

const DRAG = Array.from({ length: 66 }, (_, i): [number, number] => [20 + i, 45]);
const SPECIAL: [number, number][] = [15, 30, 45, 60, 75].flatMap((a) =>
  [15, 30, 45, 60, 75].map((b): [number, number] => [a, b]),
);
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The two-rope system in exact numbers, by the rule of determinants: the bare solve, without a derivation. */
function bareExact([a, b]: readonly [number, number]): readonly [Surd, Surd] {
  const part = (of: (degrees: ReturnType<typeof rational>) => Surd | null, degrees: number): Surd => {
    const value = of(rational(BigInt(degrees)));
    if (value === null) throw new Error("only multiples of 15° are exact");
    return value;
  };
  const [sa, ca, sb, cb] = [part(exactSine, a), part(exactCosine, a), part(exactSine, b), part(exactCosine, b)];
  const weight = surd(rational("41.16"));
  const between = add(multiply(sa, cb), multiply(ca, sb));
  return [divide(multiply(weight, cb), between), negate(divide(multiply(negate(weight), ca), between))];
}

function decimals([a, b]: readonly [number, number]): unknown {
  return lusolve(
    [
      [-Math.cos(radians(a)), Math.cos(radians(b))],
      [Math.sin(radians(a)), Math.sin(radians(b))],
    ],
    [[0], [41.16]],
  );
}

const engine = new ComputeEngine();
type System = ReturnType<typeof engine.parse>;

/** The same system as compute-engine reads it; reading is not timed. */
function system([a, b]: readonly [number, number]): System {
  const sine = (degrees: number): string => `\\sin(${degrees}\\degree)`;
  const cosine = (degrees: number): string => `\\cos(${degrees}\\degree)`;
  return engine.parse(
    `\\begin{cases}-x${cosine(a)}+y${cosine(b)}=0\\\\x${sine(a)}+y${sine(b)}=\\frac{4116}{100}\\end{cases}`,
  );
}

/** Throws unless the library's own solution holds no decimal: a peer that rounds would be no peer of an exact solve. */
function mustBeExact(solution: unknown): void {
  const found = JSON.stringify(solution);
  if (!found.includes("Sqrt") || /\d\.\d/.test(found)) throw new Error(`compute-engine is not exact here: ${found}`);
}

const row = (name: string, t: Timing, peers: readonly (readonly [string, Timing])[]): string[] => [
  name,
  ms(t.median),
  ms(t.p95),
  peers.map(([peer, p]) => `${(t.median / p.median).toPrecision(2)} × ${peer}`).join(", "),
];

/** Times the solver and prints its table. */
export function benchSolver(): void {
  const problems = DRAG.map(([a, b]): Problem => problemOf({ ropes: opposite(a, b) }));
  const usual = [problemOf({ ropes: opposite(65, 40) })];
  const floor = time(DRAG, decimals, 40);
  const library = time(SPECIAL.map(system), (s) => s?.solve(["x", "y"]), 4, 1);
  mustBeExact(system([15, 75])?.solve(["x", "y"]));
  const exact = time(SPECIAL, bareExact, 40);
  const whole = time(problems, (p) => derive(p), 20);
  const one = time(usual, (p) => derive(p), 400, 50);
  const exported = time(problems, (p) => JSON.stringify(exportDerivation(derive(p))), 10);
  const answers = time(problems, (p) => solve(p), 20);
  const peers = [
    ["compute-engine's exact solve", library],
    ["lusolve", floor],
  ] as const;
  printTable(
    "Solver, one process, warm (milliseconds)",
    ["what", "median", "p95", "ratio of medians"],
    [
      row("whole derivation, rope 1 at 20° … 85°, rope 2 at 45°", whole, peers),
      row("whole derivation, 65° and 40°", one, peers),
      row("whole derivation and its JSON, every line in two spellings", exported, peers),
      row("answers alone (moves, no words)", answers, peers),
      row("bare exact solve, multiples of 15°", exact, peers),
      row("peer: compute-engine 0.140, exact solve alone, multiples of 15°", library, []),
      row("peer: mathjs lusolve, decimals alone", floor, []),
    ],
  );
}
