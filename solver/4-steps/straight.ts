// An attempt in which every rope is straight along its given direction.
import type { Component } from "../3-equations/types.ts";
import type { Expr } from "../algebra/expr.ts";
import type { Value } from "../algebra/evaluate.ts";
import { writeAngles, writeComponents, writeSubstituted } from "./components.ts";
import { eliminate } from "./eliminate.ts";
import { failedValues, pullValues } from "./trial-values.ts";
import type { AttemptInput } from "./attempt-input.ts";
import { writeLawLines } from "./laws.ts";
import type { StandingLaw } from "./laws.ts";
import type { Live } from "./live.ts";
import {
  findImpossible,
  findZeroing,
  writeEachZero,
  writeImpossible,
  writeZeroThenContradiction,
} from "./one-sided.ts";
import { writeCombination, writeOffLine } from "./one-line.ts";
import { writeEnding, writeEvidence } from "./ending.ts";
import type { Solved } from "./types.ts";
import { addComponents, addSolved, givenValues, valueOfExpr } from "./values.ts";
import type { AttemptValues } from "./values.ts";
import type { Writer } from "./writer.ts";

/** What an attempt found. */
export interface Found {
  readonly solved: readonly Solved[];
  readonly values: AttemptValues;
  readonly letters: ReadonlyMap<string, Expr>;
  readonly combination: { readonly id: string; readonly expr: Expr } | null;
}

/** Writes the laws in the reader's order, a passage each. */
export function writeLawPassages(writer: Writer, input: AttemptInput): StandingLaw[] {
  const [x, y] = input.laws;
  const order = input.firstAxis === "vertical" ? [y, x] : [x, y];
  return order.map((law, i) => {
    const standing = writeLawLines(writer, input.world, law);
    const because =
      i > 0 ? "remaining" : input.firstAxis === "vertical" && law.known.length > 0 ? "known-force" : "readers-choice";
    writer.passage(law.name, {
      kind: "law",
      axis: law.axis,
      place: i === 0 ? "first" : "second",
      because,
      components: law.components,
      without: law.without,
      standing: standing.standing,
    });
    return standing;
  });
}

/** Writes the attempt from its laws to its answers or its contradiction. */
export function writeStraight(writer: Writer, input: AttemptInput): Found {
  const values = givenValues(input.world);
  const standings = writeLawPassages(writer, input);
  const components = input.laws.flatMap((l) => l.components);
  const { verdict } = input;
  if (verdict.kind === "off-line" || verdict.kind === "push-line")
    return writeLineFailure(writer, input, standings, values);
  if (verdict.kind === "negative") {
    const impossible = findImpossible(standings);
    const zeroing = findZeroing(standings);
    if (impossible !== undefined) writeImpossible(writer, impossible);
    else if (zeroing !== null) writeZeroThenContradiction(writer, ...zeroing);
    if ((impossible !== undefined || zeroing !== null) && !verdict.evidence) {
      pullValues(input.world, values, components);
      return { solved: [], values, letters: new Map(), combination: null };
    }
    const lives = writeResolved(writer, input, standings, components);
    return writeNegative(writer, input, lives, components, values, impossible === undefined && zeroing === null);
  }
  const lives = writeResolved(writer, input, standings, components);
  if (verdict.kind === "combination") return writeCombined(writer, input, lives, components, values, verdict.sense);
  return writeSolved(writer, input, lives, components, values);
}

/** Count, angles, components, substitution: what stands between the laws and the algebra. */
function writeResolved(
  writer: Writer,
  input: AttemptInput,
  standings: readonly StandingLaw[],
  components: readonly Component[],
): Live[] {
  const stuck = standings.some((s) => ["stuck", "one-sided", "cannot"].includes(s.standing));
  const forces = new Set(components.map((c) => c.force));
  const equationCount = standings.filter((s) => s.law.components.length > 0).length;
  writer.passage("count", {
    kind: "count",
    componentCount: components.length,
    sizeCount: forces.size,
    equationCount,
    stuck,
  });
  writeAngles(writer, input.world.ropes);
  const zero = (force: string): boolean =>
    input.verdict.kind === "all-zero" ||
    input.verdict.kind === "combination" ||
    input.pullSigns.some((s) => s.rope === force && s.sign === 0);
  const lines = writeComponents(writer, components, (force) => !zero(force));
  const lives = standings.map((s) => writeSubstituted(writer, s, lines));
  writer.passageIfAny("substitution", { kind: "substitution", unknownCount: forces.size, equationCount });
  return lives;
}

function writeSolved(
  writer: Writer,
  input: AttemptInput,
  lives: readonly Live[],
  components: readonly Component[],
  values: AttemptValues,
): Found {
  const allZero = input.verdict.kind === "all-zero";
  const zeroLines = allZero ? writeZeros(writer, lives) : null;
  const covers = zeroLines !== null && [...new Set(components.map((c) => c.force))].every((f) => zeroLines.has(f));
  const solved: readonly Solved[] = covers
    ? [...zeroLines].map(([unknown, line]) => ({ unknown, expr: { kind: "integer", value: 0 }, line }))
    : eliminate(writer, lives, eliminationOptions(input)).solved;
  addSolved(values, solved, input.pullSigns);
  const forces = [...new Set(components.map((c) => c.force))];
  // A one-line pair that nothing calls on keeps no single size: both are taken as zero, since nothing pulls.
  for (const f of forces)
    if (!values.symbols.has(f)) values.symbols.set(f, valueOfExpr({ kind: "integer", value: 0 }, values));
  addComponents(values, components);
  const letters = writeEnding(writer, input, lives, solved, values);
  return { solved, values, letters, combination: null };
}

/** The zeros by the first law that gives them: a second one would only say the same again. Null if none does. */
function writeZeros(writer: Writer, lives: readonly Live[]): ReadonlyMap<string, string> | null {
  for (const live of lives) {
    const lines = live.left.length > 1 ? writeEachZero(writer, live) : null;
    if (lines !== null) return lines;
  }
  return null;
}

/** The letter for equal sizes, and whether mirror symmetry makes them so. */
function eliminationOptions(input: AttemptInput): { commonLetter: string; mirror: boolean } {
  const ids = new Set([...input.world.ropes.map((r) => r.id), input.world.body.id]);
  return { commonLetter: ids.has("T") ? "S" : "T", mirror: input.world.body.push === 0 };
}

function writeNegative(
  writer: Writer,
  input: AttemptInput,
  lives: readonly Live[],
  components: readonly Component[],
  values: AttemptValues,
  namesContradiction: boolean,
): Found {
  const { solved } = eliminate(writer, lives, eliminationOptions(input));
  addSolved(values, solved, input.pullSigns);
  addComponents(values, components);
  const negative = solved.filter((s) => sizeOf(values, s.unknown) < 0).map((s) => s.unknown);
  writeEvidence(writer, solved, negative, namesContradiction);
  return { solved, values, letters: new Map(), combination: null };
}

const sizeOf = (values: AttemptValues, id: string): number => values.symbols.get(id)?.decimal ?? 0;

function writeLineFailure(
  writer: Writer,
  input: AttemptInput,
  standings: readonly StandingLaw[],
  values: AttemptValues,
): Found {
  const [rope] = input.world.ropes;
  const said = standings.some((s) => s.standing === "nothing" && s.law.needed !== 0);
  failedValues(input, values);
  if (input.verdict.kind === "push-line") {
    const impossible = findImpossible(standings);
    if (impossible !== undefined) writeImpossible(writer, impossible);
    writer.passage("one-line", { kind: "one-line", verdict: "push", combination: null });
  } else {
    if (!said && rope !== undefined)
      writeOffLine(
        writer,
        rope,
        input.laws,
        standings.map((s) => s.line),
      );
    writer.passage("one-line", { kind: "one-line", verdict: "impossible", combination: null });
  }
  return { solved: [], values, letters: new Map(), combination: null };
}

function writeCombined(
  writer: Writer,
  input: AttemptInput,
  lives: readonly Live[],
  components: readonly Component[],
  values: AttemptValues,
  sense: "sum" | "difference",
): Found {
  const [a, b] = input.world.ropes;
  if (a === undefined || b === undefined) throw new Error("a combination needs two ropes");
  const expr = writeCombination(writer, lives, [a.id, b.id], sense);
  writer.passage("one-line", {
    kind: "one-line",
    verdict: sense,
    combination: `${a.id}${sense === "sum" ? "+" : "-"}${b.id}`,
  });
  const total: Value = valueOfExpr(expr, values);
  const half = (x: number): Value => ({ decimal: x, exact: null });
  // One of the many pairs that fit, so that every line can be evaluated; the answers themselves stay open.
  values.symbols.set(
    a.id,
    half(sense === "sum" ? total.decimal / 2 : Math.max(total.decimal, 0) + Math.abs(total.decimal)),
  );
  values.symbols.set(
    b.id,
    half(sense === "sum" ? total.decimal / 2 : Math.max(-total.decimal, 0) + Math.abs(total.decimal)),
  );
  addComponents(values, components);
  return {
    solved: [],
    values,
    letters: new Map(),
    combination: { id: `${a.id}${sense === "sum" ? "+" : "-"}${b.id}`, expr },
  };
}
