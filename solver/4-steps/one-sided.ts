// Laws that settle the matter by their signs alone: every component pulls the same way, and nothing balances them.
import { negative, sum, symbol, ZERO } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { opposite, sideExpr, termExpr } from "../algebra/linear.ts";
import { decomposeMass } from "./mass.ts";
import type { StandingLaw } from "./laws.ts";
import type { Live } from "./live.ts";
import type { Writer } from "./writer.ts";

/** The common sign of all components along an axis, 0 if they differ or there are none. */
export function commonSign(standing: StandingLaw): -1 | 0 | 1 {
  const signs = new Set(standing.law.components.map((c) => c.sign));
  const [only] = signs;
  return signs.size === 1 && only !== undefined ? only : 0;
}

/** The law whose components all point one way while the other way is needed, if there is one. */
export const findImpossible = (laws: readonly StandingLaw[]): StandingLaw | undefined =>
  laws.find((l) => commonSign(l) !== 0 && commonSign(l) === -l.law.needed);

/** The law that forces every pull to zero (all one way, sum zero) while the other law needs a force. */
export function findZeroing(laws: readonly StandingLaw[]): readonly [StandingLaw, StandingLaw] | null {
  for (const law of laws) {
    const other = laws.find((l) => l !== law);
    if (other === undefined || commonSign(law) === 0 || law.law.needed !== 0 || other.law.needed === 0) continue;
    const covered = new Set(law.law.components.map((c) => c.force));
    if (law.law.components.length > 1 && other.law.components.every((c) => covered.has(c.force))) return [law, other];
  }
  return null;
}

/** Shows that a sum of pulls would have to be negative: brings the pulls to one side, and names the line that cannot be. */
export function writeImpossible(writer: Writer, standing: StandingLaw): void {
  const { law, left, right } = standing;
  const pulls = left.filter((t) => t.unknown !== null);
  const others = left.filter((t) => t.unknown === null);
  const flipped = commonSign(standing) < 0;
  const rest = flipped ? [...others, ...right.map(opposite)] : [...others.map(opposite), ...right];
  const mine = flipped ? pulls.map(opposite) : pulls;
  let line = standing.line;
  if (others.length > 0 || flipped) {
    line = writer.line({
      id: `${law.name}.gather`,
      sides: [sideExpr(mine), sideExpr(rest)],
      from: [line],
      reason: { kind: "gather", moved: (flipped ? pulls : others).map(termExpr), flipped },
    });
  }
  const joined = decomposeMass(rest);
  if (joined !== null)
    line = writer.line({
      id: `${law.name}.factor`,
      sides: [sideExpr(mine), joined],
      from: [line],
      reason: { kind: "factor-mass" },
    });
  writer.line({
    id: `${law.name}.pull`,
    relation: ">",
    sides: [sideExpr(mine), ZERO],
    from: [line],
    status: "contradiction",
    reason: { kind: "cannot-be-negative" },
  });
  writer.passage("one-sided", {
    kind: "one-sided",
    line: standing.line,
    axis: law.axis,
    verdict: "cannot-be-negative",
  });
}

/** Shows that all pulls are zero by one law, and that the other law then cannot hold. */
export function writeZeroThenContradiction(writer: Writer, zeroing: StandingLaw, other: StandingLaw): void {
  writer.line({
    id: `${other.law.name}.empty`,
    sides: [sideExpr(other.law.known), sideExpr(other.right)],
    from: [zeroing.line, other.line],
    status: "contradiction",
    reason: { kind: "zero-cannot-equal" },
  });
  writer.passage("one-sided", {
    kind: "one-sided",
    line: zeroing.line,
    axis: zeroing.law.axis,
    verdict: "zero-then-contradiction",
  });
}

/** Writes each unknown of a one-signed sum that is zero as zero. Gives the lines by unknown, or null if the equation is not of that kind. */
export function writeEachZero(writer: Writer, live: Live): ReadonlyMap<string, string> | null {
  const signs = new Set(live.left.map((t) => t.sign));
  if (signs.size !== 1 || live.right.length > 0 || live.left.some((t) => t.unknown === null)) return null;
  const lines = new Map<string, string>();
  for (const t of live.left) {
    if (t.unknown !== null)
      lines.set(
        t.unknown,
        writer.line({
          id: `zero.${t.unknown}`,
          sides: [symbol(t.unknown), ZERO],
          from: [live.line],
          reason: { kind: "each-is-zero", unknown: t.unknown },
        }),
      );
  }
  writer.passage("one-sided", { kind: "one-sided", line: live.line, axis: live.axis, verdict: "all-zero" });
  return lines;
}

/** A sum of sizes with signs: T1 + T2, T1 − T2. */
export const combinationExpr = (first: string, second: string, sense: "sum" | "difference"): Expr =>
  sum([symbol(first), sense === "sum" ? symbol(second) : negative(symbol(second))]);
