// The checks of an attempt that holds: the sizes put back into each law, and the conditions it rests on; or, of one that fails, what breaks it.
import type { Contact, SetUp } from "../../1-bodies/types.ts";
import { decimal } from "../../algebra/evaluate.ts";
import { isInteger, negative, product, quantity, symbol, ZERO } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { AttemptValues } from "../values.ts";
import type { Writer } from "../writer.ts";
import { unitsOf } from "./numbers.ts";
import { plusFirst, sideExpr, termExpr } from "./order.ts";
import type { Breach, Equality, SetUpInput } from "./types.ts";
import { cleanValue } from "./values.ts";

/** Puts the sizes back into each law: the forces along the axis on one side, m·a on the other. */
export function writeLawChecks(writer: Writer, setUp: SetUp, laws: readonly Equality[], values: AttemptValues): void {
  const unit = unitsOf(setUp).force;
  for (const law of laws) {
    // Forces that came out zero add nothing, and a law without any other says nothing.
    const [terms, other] = law.left.length < 2 ? [law.right, law.left] : [law.left, law.right];
    const acting = terms.map(termExpr).filter((e) => cleanValue(e, values).decimal !== 0);
    if (terms.length < 2 || acting.length === 0) continue;
    const numbers = plusFirst(acting.map((e) => inNumbers(e, unit)));
    const right = sideExpr(other);
    const total = cleanValue(right, values).decimal === 0 ? ZERO : quantity(right, unit, "working");
    writer.line({
      id: `check.${law.name}`,
      sides: [sideExpr(terms), numbers, total],
      kind: "number",
      relation: "≈",
      status: "rounded",
      from: [law.line],
      reason: isInteger(right, 0) ? { kind: "put-back" } : { kind: "put-back-law", right },
    });
  }
  writer.passageIfAny("check.laws", { kind: "check-laws" });
}

/** A term as a number. */
const inNumbers = (t: Expr, unit: string): Expr =>
  t.kind === "negative" ? negative(quantity(t.of, unit, "working")) : quantity(t, unit, "working");

/** Static friction beside its largest value, for each contact that sticks. */
export function writeConditions(writer: Writer, input: SetUpInput, values: AttemptValues): void {
  const { setUp, hypothesis } = input;
  const sticking = setUp.contacts.filter((c) => {
    const state = hypothesis.contacts[c.id];
    return state?.touch === "touching" && state.grip === "sticks" && input.limit?.contact !== c.id;
  });
  for (const contact of sticking) {
    const most = writeLargest(writer, setUp, contact, `largest.${contact.friction}`);
    const apart = decimal(most, values) - decimal(symbol(contact.friction), values);
    const just = Math.abs(apart) <= 1e-9 * Math.abs(decimal(most, values));
    writer.line({
      id: `within.${contact.friction}`,
      sides: [symbol(contact.friction), most],
      relation: just ? "=" : "<",
      ...(just ? { relation: "≈" as const, status: "rounded" as const } : {}),
      reason: { kind: "within-friction", contact: contact.id },
    });
  }
  writer.passageIfAny("check.conditions", { kind: "check-conditions", contacts: sticking.map((c) => c.id) });
}

/** The largest that static friction can be, in letters and as a number. */
function writeLargest(writer: Writer, setUp: SetUp, contact: Contact, id: string): Expr {
  const most = product([symbol(contact.coefficients.static), symbol(contact.id)]);
  writer.line({
    id,
    sides: [most, quantity(most, unitsOf(setUp).force, "working")],
    kind: "number",
    relation: "≈",
    status: "rounded",
    reason: { kind: "largest-friction", contact: contact.id },
  });
  return most;
}

/** What breaks a hypothesis, each breach a passage: the line that ought to hold and does not. */
export function writeBreaches(writer: Writer, input: SetUpInput): void {
  // Where a surface would have to pull, it is idle to ask how much friction it could give.
  const pulls = (id: string): boolean => input.breaches.some((b) => b.kind === "pulling-surface" && b.id === id);
  for (const breach of input.breaches) {
    if (breach.kind === "too-rough" && pulls(breach.id)) continue;
    const contact = breach.kind === "too-rough" ? input.setUp.contacts.find((c) => c.id === breach.id) : undefined;
    if (contact !== undefined) writeLargest(writer, input.setUp, contact, `breach.largest.${contact.friction}`);
    const line = breachLine(input, breach);
    if (line !== null) writer.line(line);
    writer.passage(`breach.${breach.kind}.${breach.id === "" ? "equations" : breach.id}`, {
      kind: "breach",
      breach: breach.kind,
      of: breach.id,
    });
  }
}

function breachLine({ setUp }: SetUpInput, { kind, id }: Breach): Parameters<Writer["line"]>[0] | null {
  const base = { id: `breach.${kind}.${id}`, status: "contradiction" } as const;
  if (kind === "pushing-rope")
    return { ...base, sides: [symbol(id), ZERO], relation: ">", reason: { kind: "must-pull", rope: id } };
  if (kind === "pulling-surface")
    return { ...base, sides: [symbol(id), ZERO], relation: ">", reason: { kind: "must-push", contact: id } };
  const contact = setUp.contacts.find((c) => c.id === id);
  if (kind !== "too-rough" || contact === undefined) return null;
  const most = product([symbol(contact.coefficients.static), symbol(id)]);
  return {
    ...base,
    sides: [symbol(contact.friction), most],
    relation: "<",
    reason: { kind: "within-friction", contact: id },
  };
}
