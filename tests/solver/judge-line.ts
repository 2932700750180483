// Judges a line by a program that is not ours: mathjs evaluates its sides.
import * as math from "mathjs";
import type { MathNode } from "mathjs";
import type { ExportedLine } from "./exported.ts";

const RESIDUAL = 1e-9;
const compiled = new Map<string, MathNode>();

function parse(side: string): MathNode {
  const known = compiled.get(side);
  if (known !== undefined) return known;
  const node = math.parse(side);
  compiled.set(side, node);
  return node;
}

/** The value of one side at some symbol values. */
export function valueOf(side: string, scope: Readonly<Record<string, number>>): number {
  const value: unknown = parse(side)
    .compile()
    .evaluate({ ...scope });
  if (typeof value !== "number") throw new Error(`${side} is no number but ${String(value)}`);
  return value;
}

/** The sum of the sizes of a side's terms, also of those inside a bracket or above a bar. */
function termsSize(node: MathNode, scope: Readonly<Record<string, number>>): number {
  if (math.isOperatorNode(node) && (node.op === "+" || node.op === "-"))
    return node.args.reduce((total, arg) => total + termsSize(arg, scope), 0);
  if (math.isParenthesisNode(node)) return termsSize(node.content, scope);
  if (math.isOperatorNode(node) && node.args.length === 2 && (node.op === "*" || node.op === "/")) {
    const [a = 0, b = 0] = node.args.map((arg, i) =>
      node.op === "/" && i === 1 ? sizeOf(arg, scope) : termsSize(arg, scope),
    );
    return node.op === "*" ? a * b : a / b;
  }
  return sizeOf(node, scope);
}

function sizeOf(node: MathNode, scope: Readonly<Record<string, number>>): number {
  const value: unknown = node.compile().evaluate({ ...scope });
  return typeof value === "number" ? Math.abs(value) : 0;
}

/** Half a unit of the last figure printed on a line, in the line's own unit. */
function halfUnit(line: ExportedLine): number {
  for (const side of [...line.plain.sides].reverse()) {
    const numbers = side.replaceAll(/sqrt\(|\bpi\/180\b|\^2|\b\d+ deg/g, " ").match(/\d+(?:\.\d+)?(?:e-?\d+)?/g) ?? [];
    const last = side === "0" ? undefined : numbers.at(-1);
    if (last === undefined) continue;
    const [digits = "", power = "0"] = last.split("e");
    const decimals = digits.split(".")[1]?.length ?? 0;
    return 0.5 * 10 ** (Number(power) - decimals) * (side.includes("pi/180") ? Math.PI / 180 : 1);
  }
  return 0;
}

/** Whether a line holds at some symbol values: equalities to 1e-9 of the sum of the sizes of their terms, rounded ones to half a unit of their last figure. */
export function holds(line: ExportedLine, scope: Readonly<Record<string, number>>): boolean {
  const { relation, sides } = line.plain;
  const values = sides.map((s) => valueOf(s, scope));
  const pairs = values.slice(1).map((v, i) => [values[i] ?? NaN, v] as const);
  if (relation === ">") return pairs.every(([a, b]) => a > b);
  if (relation === "<") return pairs.every(([a, b]) => a < b);
  const size = sides.reduce((total, s) => total + termsSize(parse(s), scope), 0);
  const rounding = line.status === "rounded" ? halfUnit(line) * (1 + 1e-6) + size * 1e-12 : 0;
  return pairs.every(([a, b]) => Math.abs(a - b) <= Math.max(RESIDUAL * size, rounding));
}
