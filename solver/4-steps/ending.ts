// After the algebra: exact faces, numbers, answers, checks and letters; or, in a failed attempt, the size that cannot be.
import { isRational } from "../../shared/exact/index.ts";
import { integer, product, quotient, some, sum, symbol, trig, ZERO } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { writeBalance, writePolygon } from "./checks.ts";
import { baseForce, writeExact, writeExactAnswer } from "./exact-lines.ts";
import type { WorldRope } from "../1-bodies/types.ts";
import type { AttemptInput } from "./attempt-input.ts";
import { crossForm, writeLetters } from "./letters.ts";
import type { Live } from "./live.ts";
import { writeAnswer, writeNumber } from "./numbers.ts";
import type { Solved } from "./types.ts";
import type { AttemptValues } from "./values.ts";
import type { Writer } from "./writer.ts";

/** Writes everything from the exact face to the result in letters; gives the letters by unknown. */
export function writeEnding(
  writer: Writer,
  input: AttemptInput,
  lives: readonly Live[],
  solved: readonly Solved[],
  values: AttemptValues,
): ReadonlyMap<string, Expr> {
  writeExactPassage(writer, input, solved, values);
  const answers = solved.filter((s) => input.world.ropes.some((r) => r.id === s.unknown));
  const done = new Set<string>();
  let isFirst = true;
  for (const s of solved) {
    if (!writeNumber(writer, s, done)) continue;
    writer.passage(
      isFirst ? "numbers" : `put-back.${s.unknown}`,
      isFirst ? { kind: "numbers", unknowns: [s.unknown] } : { kind: "put-back", unknown: s.unknown },
    );
    isFirst = false;
  }
  const base = baseForce(input.world);
  const ordered = [...answers].sort((p, q) => ropeNumber(input, p.unknown) - ropeNumber(input, q.unknown));
  for (const s of ordered) {
    if (s.expr.kind !== "integer") writeExactAnswer(writer, s.unknown, base, values);
    writeAnswer(writer, s.unknown, s.expr.kind === "integer", s.line);
  }
  writer.passage("answer", { kind: "answer", unknowns: ordered.map((s) => s.unknown) });
  if (input.verdict.kind !== "all-zero") writeBalance(writer, lives, (id) => values.symbols.get(id)?.decimal === 0);
  writePolygon(writer, input.world, base, input.verdict.kind !== "all-zero");
  return writeLettersPassage(writer, input, solved);
}

const ropeNumber = (input: AttemptInput, id: string): number => input.world.ropes.find((r) => r.id === id)?.number ?? 0;

function writeExactPassage(
  writer: Writer,
  input: AttemptInput,
  solved: readonly Solved[],
  values: AttemptValues,
): void {
  const base = baseForce(input.world);
  const allExact = input.world.ropes.every((r) => r.acute.sine.exact !== null);
  const known = new Map<string, Expr>();
  let rooted = false;
  if (base !== null && allExact) {
    for (const s of solved) {
      const k = writeExact(writer, s, base, values, known);
      rooted ||= k !== null && !isRational(k);
    }
  }
  const hasAngles = solved.some((s) => some(s.expr, (e) => e.kind === "trig"));
  const state = !hasAngles ? "none-needed" : base === null ? "sideways" : allExact ? "special" : "ordinary";
  writer.passage("exact", { kind: "exact", state, unknowns: rooted ? [...known.keys()] : [] });
}

function writeLettersPassage(
  writer: Writer,
  input: AttemptInput,
  solved: readonly Solved[],
): ReadonlyMap<string, Expr> {
  const letters = new Map<string, Expr>();
  const sideways = input.world.body.push !== 0;
  const [a, b] = input.world.ropes;
  const oblique = a !== undefined && b !== undefined && [a, b].every((r) => r.side !== 0 && r.rise !== 0);
  const equalAngles = oblique && a.angle === b.angle;
  for (const s of solved) {
    const direct = s.expr.kind === "integer" || (s.expr.kind === "symbol" && s.expr.id !== "W");
    if (direct) {
      letters.set(s.unknown, s.expr.kind === "symbol" ? (letters.get(s.expr.id) ?? s.expr) : s.expr);
      continue;
    }
    if (sideways && oblique && letters.size > 0 && s.unknown === b.id) {
      const form = crossForm([a, b], 1, upward(input), sidewaysForce(input));
      writer.line({
        id: `letters.${s.unknown}.joined`,
        sides: [symbol(s.unknown), form],
        angles: "letters",
        from: [s.line],
        reason: { kind: "same-way" },
      });
      letters.set(s.unknown, form);
    } else writeLetters(writer, s, letters);
  }
  if (equalAngles && !sideways && solved.length > 2 && input.verdict.kind === "holds")
    writeGeneral(writer, input, solved);
  if (oblique && a.side !== b.side && a.rise === 1 && b.rise === 1) writeSideways(writer, input, [a, b]);
  writer.passageIfAny("letters", { kind: "letters", unknowns: [...letters.keys()], equalAngles });
  return letters;
}

/** With equal angles: the general form beside the short one. */
function writeGeneral(writer: Writer, input: AttemptInput, solved: readonly Solved[]): void {
  const [a, b] = input.world.ropes;
  if (a === undefined || b === undefined) return;
  const form = crossForm([a, b], 0, upward(input), null);
  writer.line({
    id: `letters.${a.id}.general`,
    sides: [symbol(a.id), form],
    angles: "letters",
    from: solved.slice(0, 1).map((s) => s.line),
    reason: { kind: "general-form" },
  });
}

/** The sideways part that both ropes share: what the upward parts have to make, over the sum of the tangents. */
function writeSideways(writer: Writer, input: AttemptInput, [a, b]: readonly [WorldRope, WorldRope]): void {
  const base = baseForce(input.world);
  if (base === null || input.verdict.kind !== "holds") return;
  const tangents =
    a.angle === b.angle
      ? product([integer(2), trig("tan", a.angle)])
      : sum([trig("tan", a.angle), trig("tan", b.angle)]);
  writer.line({
    id: "letters.sideways",
    sides: [
      product([symbol(a.id), trig("cos", a.angle)], `${a.id}x`),
      product([symbol(b.id), trig("cos", b.angle)], `${b.id}x`),
      quotient(base, tangents),
    ],
    angles: "letters",
    reason: { kind: "shared-sideways" },
  });
}

function upward(input: AttemptInput): Expr[] {
  const y = input.laws[1];
  return [...y.known.map((t) => t.factor), ...(y.motion.kind === "none" ? [] : [y.massTimesAcceleration])];
}

const sidewaysForce = (input: AttemptInput): Expr | null =>
  input.laws[0].motion.kind === "none" ? null : input.laws[0].massTimesAcceleration;

/** In a failed attempt: works out what would come, and names the size that cannot be, unless an earlier line named the contradiction. */
export function writeEvidence(
  writer: Writer,
  solved: readonly Solved[],
  negative: readonly string[],
  namesContradiction: boolean,
): void {
  const done = new Set<string>();
  for (const s of solved) writeNumber(writer, s, done);
  const [worst] = negative;
  if (worst === undefined) return;
  if (namesContradiction) {
    const from = solved.filter((s) => s.unknown === worst).map((s) => s.line);
    writer.line({
      id: `evidence.${worst}`,
      relation: ">",
      sides: [symbol(worst), ZERO],
      status: "contradiction",
      from,
      reason: { kind: "cannot-push", unknown: worst },
    });
  }
  writer.passage("evidence", { kind: "evidence", unknown: worst });
}
