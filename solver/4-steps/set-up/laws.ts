// The laws of each body: first with m·a, then with what is known of the motion; and the equality each leaves once whole forces stand in it.
import type { BodyLaw, ForcePart, MotionTerm } from "../../3-equations/types.ts";
import { ONE, product, symbol, ZERO } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { known } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import type { MotionHow } from "../types.ts";
import type { Writer } from "../writer.ts";
import { ordered, sideExpr } from "./order.ts";
import type { Equality, SetUpInput } from "./types.ts";

/** A law as written: the line that shows it last, and the terms of m·a. */
export interface WrittenLaw {
  readonly law: BodyLaw;
  readonly line: string;
  readonly right: readonly Term[];
}

/** Writes the laws body by body, the reader's axis first. */
export function writeBodyLaws(writer: Writer, input: SetUpInput): WrittenLaw[] {
  const laws = input.equations.equations.filter((e) => e.kind === "law");
  return input.setUp.bodies.flatMap((body) => {
    const own = laws.filter((law) => law.body === body.id);
    if (own.length === 0) return [];
    const ordered = input.firstAxis === "vertical" ? [...own].reverse() : own;
    const written = ordered.map((law) => writeLaw(writer, input, law));
    writer.passage(`law.${body.id}`, { kind: "body-law", body: body.id, laws: ordered.map((l) => l.id) });
    return written;
  });
}

/** The forces along the axis by their parts' letters. */
const partTerm = ({ force, id, sign }: ForcePart): Term =>
  id === force.ref && force.unknown === null
    ? known(sign, force.size, force.ref)
    : { sign, unknown: id, factor: ONE, ref: id };

function writeLaw(writer: Writer, input: SetUpInput, law: BodyLaw): WrittenLaw {
  const left = joinTwins(law.parts.map(partTerm));
  const right = inertia(law);
  const name = `${law.id}.law`;
  const reason = { kind: "law-of", body: law.body, axis: law.axis, massless: law.mass === null } as const;
  const base = { kind: "law", reason } as const;
  if (law.mass === null) return { law, right, line: writer.line({ ...base, id: name, sides: [sideExpr(left), ZERO] }) };
  const how = howItMoves(input, law);
  const whole = product([law.mass, symbol(law.letter)]);
  // Where m·a is already the whole of what is known, there is no second line.
  const short = isShort(law);
  const stated = writer.line({ ...base, id: name, sides: [sideExpr(left), short ? sideExpr(right) : whole] });
  if (short) return { law, right, line: stated };
  const line = writer.line({
    id: `${law.id}.motion`,
    sides: [sideExpr(left), sideExpr(right)],
    kind: "law",
    from: [stated],
    reason: { kind: "motion-along", body: law.body, axis: law.axis, how },
  });
  return { law, right, line };
}

/** Two strands of one rope at a pulley pull together: T + T is 2 T. */
export function joinTwins(terms: readonly Term[]): Term[] {
  const made: Term[] = [];
  for (const t of terms) {
    const at = made.findIndex((o) => o.unknown !== null && o.unknown === t.unknown && o.sign === t.sign);
    const twin = made[at];
    if (twin === undefined) made.push(t);
    else made[at] = { ...twin, factor: product([{ kind: "integer", value: countOf(twin.factor) + 1 }]) };
  }
  return made;
}

const countOf = (e: Expr): number => (e.kind === "integer" ? e.value : 1);

/** m·a is m times one unknown letter along the axis. */
const isShort = (law: BodyLaw): boolean => {
  const [only] = law.motion;
  return law.motion.length === 1 && only?.factor.kind === "integer";
};

/** The terms of m·a. */
export function inertia(law: BodyLaw): Term[] {
  const { mass } = law;
  if (mass === null) return [];
  return law.motion.map((m) => inertiaTerm(m, mass));
}

const inertiaTerm = ({ letter, unknown, sign, factor }: MotionTerm, mass: Expr): Term =>
  unknown
    ? { sign, unknown: letter, factor: ordered([mass, factor]) }
    : { sign, unknown: null, factor: ordered([mass, symbol(letter), factor]) };

function howItMoves(input: SetUpInput, law: BodyLaw): MotionHow {
  const motion = input.equations.motions.find((m) => m.body === law.body);
  if (law.motion.length === 0) return "rest";
  if (motion?.own.some((p) => p.unknown) === true) return "line";
  return (motion?.carried.length ?? 0) > 0 ? "carried" : "given";
}

/** The law in whole forces and angles. */
export function wholeEquality({ law, right }: WrittenLaw, line: string): Equality {
  const left = law.parts.map(({ force, sign, factor, id }): Term =>
    force.unknown === null
      ? known(sign, product([force.size, factor]), id)
      : { sign, unknown: force.unknown, factor, ref: id },
  );
  return { name: law.id, kind: law.mass === null ? "balance" : "law", left: twinsByFactor(left), right, line };
}

/** T cos α + T cos α is 2 T cos α. */
function twinsByFactor(terms: readonly Term[]): Term[] {
  const plain = terms.filter((t) => t.factor.kind === "integer");
  return [...joinTwins(plain), ...terms.filter((t) => t.factor.kind !== "integer")].sort(
    (a, b) => indexOf(terms, a) - indexOf(terms, b),
  );
}

const indexOf = (terms: readonly Term[], t: Term): number =>
  terms.findIndex((o) => o.unknown === t.unknown && o.ref === t.ref && o.sign === t.sign);
