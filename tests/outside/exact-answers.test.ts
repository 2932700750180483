// The exact face of the solver's answers against a general-purpose algebra library: @cortex-js/compute-engine 0.140. Of the libraries
// tried it is the one whose own solving of such a system stays exact: whole numbers and roots, however nested, and no decimal.
import { ComputeEngine } from "@cortex-js/compute-engine";
import type { MathJsonExpression } from "@cortex-js/compute-engine";
import { describe, expect, it } from "vitest";
import { solve } from "../../solver/index.ts";
import type { ExactFace } from "../../solver/index.ts";
import { opposite, problemOf } from "../solver/set-ups.ts";

const engine = new ComputeEngine();
const DIGITS = 50;
/** Both sides are worked out to 50 digits; they may differ in the last ones only. */
const CLOSE = 1e-44;
engine.precision = DIGITS;

type Term = ExactFace["newtons"]["terms"][number];
type Tree = MathJsonExpression;

const termTree = ({ coefficient: { n, d, s }, radicand }: Term): Tree => [
  "Multiply",
  ["Rational", Number(s * n), Number(d)],
  ["Sqrt", Number(radicand)],
];

/** Our exact value as the library's expression. */
const tree = (value: ExactFace["newtons"]): Tree =>
  value.terms.length === 0
    ? 0
    : value.terms.length === 1
      ? (value.terms.map(termTree)[0] ?? 0)
      : ["Add", ...value.terms.map(termTree)];

/** How far an expression of ours is from one of the library's, by the library, at 50 digits. */
function difference(ours: Tree, theirs: Tree): number {
  return Math.abs(Number(engine.expr(["Subtract", ours, theirs]).N().toString()));
}

const cos = (degrees: number): Tree => ["Cos", ["Degrees", degrees]];
const sin = (degrees: number): Tree => ["Sin", ["Degrees", degrees]];
const FIFTEENS = Array.from({ length: 24 }, (_, i) => 15 * i - 165);
const PAIRS = FIFTEENS.flatMap((a) => FIFTEENS.map((b): [number, number] => [a, b]));

describe("all pairs of directions that are multiples of 15°", () => {
  it("have the library's multiples of the weight wherever both ropes hold, to 44 decimals", () => {
    const wrong: string[] = [];
    let taut = 0;
    for (const [a, b] of PAIRS) {
      const { kind, answers } = solve(problemOf({ ropes: [a, b] }));
      if (kind !== "taut") continue;
      taut++;
      // T1 along a and T2 along b make one upward unit: T1 = −cos b / sin(b − a), T2 = cos a / sin(b − a).
      const parts: readonly Tree[] = [["Negate", cos(b)], cos(a)];
      parts.forEach((over, i) => {
        const perWeight = answers[i]?.exact?.perWeight;
        const off = perWeight ? difference(tree(perWeight), ["Divide", over, sin(b - a)]) : NaN;
        if (!(off < CLOSE)) wrong.push(`T${i + 1} at ${a}° and ${b}° is ${off} off`);
      });
    }
    expect(wrong.slice(0, 5)).toEqual([]);
    expect(taut).toBeGreaterThan(150);
  });

  it("have newtons that are the multiple times the weight, and hang by just the weight where one rope is slack", () => {
    const wrong: string[] = [];
    for (const [a, b] of PAIRS) {
      const { kind, slack, answers } = solve(problemOf({ ropes: [a, b] }));
      if (kind !== "taut" && kind !== "slack") continue;
      for (const { id, exact, decimal } of answers) {
        if (exact?.perWeight == null) wrong.push(`${id} at ${a}° and ${b}° has no exact face`);
        else if (difference(tree(exact.newtons), ["Multiply", tree(exact.perWeight), ["Rational", 1029, 25]]) >= CLOSE)
          wrong.push(`${id} at ${a}° and ${b}°: newtons and multiple of the weight differ`);
        if (kind === "slack" && decimal !== (slack.includes(id) ? 0 : 41.16)) wrong.push(`${id} at ${a}° and ${b}°`);
      }
    }
    expect(wrong.slice(0, 5)).toEqual([]);
  });
});

const STEPS = [15, 30, 45, 60, 75];
const SPREAD = STEPS.flatMap((a) => STEPS.map((b): [number, number] => [a, b]));

/** The two balances in newtons as the library reads and solves them. */
function solvedByLibrary(a: number, b: number): readonly { readonly json: unknown; readonly value: Tree }[] {
  const system = engine.parse(
    `\\begin{cases}-x\\cos(${a}\\degree)+y\\cos(${b}\\degree)=0\\\\x\\sin(${a}\\degree)+y\\sin(${b}\\degree)=\\frac{4116}{100}\\end{cases}`,
  );
  const solution: unknown = system.solve(["x", "y"]);
  if (typeof solution !== "object" || solution === null || Array.isArray(solution)) throw new Error("no solution");
  const { x, y } = solution as Record<string, { readonly json: unknown }>;
  return [x, y].map((v) => ({ json: v?.json, value: v?.json as Tree }));
}

describe("ropes on opposite sides, solved by the library from the two balances", () => {
  it.each(SPREAD)("%i° and %i°: its solution is exact, and ours is the same number", (a, b) => {
    const { answers } = solve(problemOf({ ropes: opposite(a, b) }));
    solvedByLibrary(a, b).forEach(({ json, value }, i) => {
      expect(JSON.stringify(json)).not.toMatch(/\d\.\d|num|NaN/);
      const newtons = answers[i]?.exact?.newtons;
      expect(newtons && difference(tree(newtons), value)).toBeLessThan(100 * CLOSE);
    });
  });
});
