// Stage 4 for any number of bodies: equations to moves, one attempt under one hypothesis.
import { decimal } from "../../algebra/evaluate.ts";
import type { Values } from "../../algebra/evaluate.ts";
import { negative, product, quotient, symbol } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Passage, Step } from "../types.ts";
import { valueOfExpr, ZERO_VALUE } from "../values.ts";
import type { AttemptValues } from "../values.ts";
import { Writer } from "../writer.ts";
import { writeBreaches, writeConditions, writeLawChecks } from "./checks.ts";
import { eliminateAll } from "./eliminate.ts";
import { writeBodyLaws } from "./laws.ts";
import type { WrittenLaw } from "./laws.ts";
import { writeAnswers, writeSizes } from "./numbers.ts";
import { writeGivenAngles, writeParts, writePartsIn } from "./parts.ts";
import { openIn } from "./terms.ts";
import { turnLaws } from "./turned-laws.ts";
import { writeFrictionLaws, writeTies } from "./ties.ts";
import type { Equality, SetUpAttempt, SetUpInput } from "./types.ts";
import { plainValue } from "./types.ts";
import { setUpValues, sizeOf } from "./values.ts";

export type { Breach, Elimination, Equality, Limit, SetUpAttempt, SetUpInput } from "./types.ts";
export { isAcceleration, unitOfLetter, unitsOf } from "./numbers.ts";
export type { SetUpUnits } from "./numbers.ts";
export { setUpValues } from "./values.ts";

/** Writes one attempt at a set-up, from its laws to its answers or to what breaks it. */
export function writeSetUpAttempt(input: SetUpInput): SetUpAttempt {
  const failed = input.breaches.length > 0;
  const writer = new Writer(input.prefix + input.hypothesis.id, input.prefix, failed);
  const values = setUpValues(input.setUp);
  if (input.limit !== null) values.symbols.delete(input.limit.letter);
  for (const [letter, x] of input.point)
    values.symbols.set(letter, input.settled.has(letter) && x === 0 ? ZERO_VALUE : plainValue(x));
  const laws = writeBodyLaws(writer, input);
  const ties = writeTies(writer, input);
  const frictions = writeFrictionLaws(writer, input);
  writeCount(writer, laws, [...ties, ...frictions]);
  writeGivenAngles(writer, input, values);
  const lines = writeParts(writer, laws, values);
  const equalities = writePartsIn(writer, laws, lines);
  addZeros(values, [...equalities, ...ties, ...frictions]);
  const { solved, contradiction, ...rest } = eliminateAll(
    writer,
    [...ties, ...frictions, ...turnLaws(writer, input, equalities)],
    values,
    input.loose,
    input.excluded,
  );
  const free = unmentioned(input, values);
  const open = [...rest.open, ...free];
  if (free.length > 0) writer.passage("unmentioned", { kind: "unmentioned", unknowns: free });
  addDerived(values, laws, input.excluded);
  if (solved.length > 0 && contradiction === null) {
    writeSizes(writer, input.setUp, solved, values);
    if (!failed) writeAnswers(writer, input.setUp, askedIn(input, solved), values);
  }
  if (failed) writeBreaches(writer, input);
  else {
    if (open.length === 0 && input.limit === null) writeLawChecks(writer, input.setUp, equalities, values);
    if (input.limit === null) writeConditions(writer, input, values);
  }
  return {
    id: writer.attempt,
    hypothesis: input.hypothesis,
    limit: input.limit,
    setUp: input.setUp,
    holds: !failed,
    breaches: input.breaches,
    forces: input.forces,
    equations: input.equations,
    passages: contradiction === null ? writer.passages : writer.passages.map((p) => marked(p, values)),
    solved,
    open,
    settled: input.settled,
    values,
  };
}

function writeCount(writer: Writer, laws: readonly WrittenLaw[], others: readonly Equality[]): void {
  const unknowns = new Set<string>();
  for (const { law, right } of laws) {
    for (const { force } of law.parts) if (force.unknown !== null) unknowns.add(force.unknown);
    for (const t of right) if (t.unknown !== null) unknowns.add(t.unknown);
  }
  for (const e of others) for (const u of openIn(e, new Set())) unknowns.add(u);
  const equationCount = laws.length + others.length;
  writer.passage("count", { kind: "count-all", unknowns: [...unknowns], equationCount });
}

/** Accelerations that no equation mentions: of what has no mass and is held by nothing. They are read as zero. */
function unmentioned({ equations }: SetUpInput, values: AttemptValues): string[] {
  const letters = equations.motions.flatMap((m) => m.own.flatMap((p) => (p.unknown ? [p.letter] : [])));
  const missing = [...new Set(letters)].filter((l) => !values.symbols.has(l));
  for (const l of missing) values.symbols.set(l, plainValue(0));
  return missing;
}

/** Where the equations have no solution, an unknown that no line gives is read as zero. */
function addZeros(values: AttemptValues, equalities: readonly Equality[]): void {
  for (const e of equalities)
    for (const u of openIn(e, new Set())) if (!values.symbols.has(u)) values.symbols.set(u, plainValue(0));
}

/** Parts of forces and accelerations along the axes, once the sizes are known. */
function addDerived(values: AttemptValues, laws: readonly WrittenLaw[], excluded: readonly string[]): void {
  for (const { law } of laws) {
    for (const { id, force, factor } of law.parts)
      if (id !== force.ref) values.symbols.set(id, valueOfExpr(product([force.size, factor]), values));
    if (law.mass === null || values.symbols.has(law.letter)) continue;
    if (excluded.includes(law.id)) {
      // The law itself holds of whatever acceleration these forces give; what cannot be is that it is the one assumed.
      const forces = law.parts.map((p) => signedPart(p.sign, product([p.force.size, p.factor])));
      values.symbols.set(law.letter, valueOfExpr(quotient({ kind: "sum", terms: forces }, law.mass), values));
      continue;
    }
    const sum = law.motion.map((m) => signedPart(m.sign, product([symbol(m.letter), m.factor])));
    values.symbols.set(law.letter, valueOfExpr({ kind: "sum", terms: sum }, values));
  }
}

/** At a limit only the push or load is asked for. */
const askedIn = (input: SetUpInput, solved: SetUpAttempt["solved"]): SetUpAttempt["solved"] =>
  input.limit === null ? answersIn(input, solved) : solved.filter((s) => s.unknown === input.limit?.letter);

const signedPart = (sign: 1 | -1, size: Expr): Expr => (sign < 0 ? negative(size) : size);

/** What is asked for, in the order of the set-up: ropes, surfaces, pushes, accelerations. */
function answersIn(input: SetUpInput, solved: SetUpAttempt["solved"]): SetUpAttempt["solved"] {
  const { setUp } = input;
  const order = [
    ...setUp.ropes.map((r) => r.id),
    ...setUp.contacts.flatMap((c) => [c.id, c.friction]),
    ...setUp.pushes.map((p) => p.id),
    ...setUp.bodies.flatMap((b) => {
      const a = b.letters.acceleration;
      return [a, `${a}x`, `${a}y`];
    }),
  ];
  const rank = (id: string): number => {
    const at = order.indexOf(id);
    return at < 0 ? order.length : at;
  };
  return [...solved].sort((a, b) => rank(a.unknown) - rank(b.unknown));
}

/** Where equations contradict each other some line must be false: those that are, are marked as such. */
function marked(passage: Passage, values: Values): Passage {
  const mark = (step: Step): Step =>
    step.status === "trial" && step.relation === "=" && !isTrue(step, values)
      ? { ...step, status: "contradiction" }
      : step;
  return { ...passage, steps: passage.steps.map(mark) };
}

function isTrue(step: Step, values: Values): boolean {
  const sides = step.sides.map((s) => decimal(s, values));
  const size = Math.max(...step.sides.map((s) => sizeOf(s, values)), Number.MIN_VALUE);
  return Math.max(...sides) - Math.min(...sides) <= 1e-9 * size;
}
