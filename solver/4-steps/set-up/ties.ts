// What ropes and surfaces ask of the motion, and the law of friction, as lines and as equalities for the elimination.
import type { FrictionLaw, MotionTerm, Tie } from "../../3-equations/types.ts";
import { ONE, symbol } from "../../algebra/expr.ts";
import { isPlain, known, opposite } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import type { Reason } from "../types.ts";
import type { Writer } from "../writer.ts";
import { ordered, sideExpr } from "./order.ts";
import type { Equality, SetUpInput } from "./types.ts";

const termOf = ({ letter, unknown, sign, factor }: MotionTerm): Term =>
  unknown ? { sign, unknown: letter, factor } : known(sign, ordered([symbol(letter), factor]));

/** Writes a line for each tie: what comes in on one side goes out on the other. */
export function writeTies(writer: Writer, input: SetUpInput): Equality[] {
  const ties = input.equations.equations.filter(
    (e): e is Tie => e.kind === "rope" || e.kind === "touch" || e.kind === "stick",
  );
  const equalities = ties.map((tie): Equality => {
    const terms = joined(tie.terms.map(termOf));
    const sides = sidesOf(terms);
    const line = writer.line({
      id: tie.id,
      sides: [sideExpr(sides.left), sideExpr(sides.right)],
      kind: "law",
      reason: reasonOf(tie),
    });
    return { name: tie.id, kind: tie.kind, ...sides, line };
  });
  writer.passageIfAny("ties", { kind: "ties", ties });
  return equalities;
}

/** What one side takes in, the other gives out: a2 = 2 a1, a1 = −a2, a1 + a2 = 2 a3; a letter that stands alone on the left. */
function sidesOf(terms: readonly Term[]): { readonly left: readonly Term[]; readonly right: readonly Term[] } {
  const plus = terms.filter((t) => t.sign > 0);
  const minus = terms.filter((t) => t.sign < 0).map(opposite);
  const [left, right] = plus.length === 0 || (!isAlone(plus) && isAlone(minus)) ? [minus, plus] : [plus, minus];
  const [first, second] = left;
  if (right.length > 0 || left.length !== 2 || first === undefined || second === undefined) return { left, right };
  return isAlone([second])
    ? { left: [second], right: [opposite(first)] }
    : { left: [first], right: [opposite(second)] };
}

/** Whether terms are one letter to be found, with nothing before it. */
const isAlone = ([only, ...others]: readonly Term[]): boolean =>
  others.length === 0 && only?.unknown != null && isPlain(only);

/** a + a is 2 a. */
function joined(terms: readonly Term[]): Term[] {
  const made: Term[] = [];
  for (const t of terms) {
    const at = made.findIndex(
      (o) =>
        o.unknown !== null &&
        o.unknown === t.unknown &&
        o.sign === t.sign &&
        o.factor.kind === "integer" &&
        t.factor.kind === "integer",
    );
    const twin = made[at];
    if (twin?.factor.kind === "integer" && t.factor.kind === "integer")
      made[at] = { ...twin, factor: { kind: "integer", value: twin.factor.value + t.factor.value } };
    else made.push(t);
  }
  return made;
}

function reasonOf(tie: Tie): Reason {
  if (tie.kind === "rope") return { kind: "keeps-length", rope: tie.of };
  return tie.kind === "touch" ? { kind: "stays-on", contact: tie.of } : { kind: "does-not-slide", contact: tie.of };
}

/** Writes f = μ N for each contact that slides, and for one at its limit. */
export function writeFrictionLaws(writer: Writer, input: SetUpInput): Equality[] {
  const laws = input.equations.equations.filter((e): e is FrictionLaw => e.kind === "friction");
  const equalities = laws.map((law): Equality => {
    const limit = input.limit?.contact === law.contact;
    const left: Term[] = [{ sign: 1, unknown: law.friction, factor: ONE }];
    const right: Term[] = [{ sign: 1, unknown: law.normal, factor: symbol(law.coefficient) }];
    const line = writer.line({
      id: law.id,
      sides: [sideExpr(left), sideExpr(right)],
      kind: "law",
      reason: { kind: limit ? "largest-friction" : "kinetic-friction", contact: law.contact },
    });
    return { name: law.id, kind: "friction", left, right, line };
  });
  writer.passageIfAny("friction-laws", {
    kind: "friction-laws",
    contacts: laws.map((l) => l.contact),
    limit: input.limit !== null,
  });
  return equalities;
}
