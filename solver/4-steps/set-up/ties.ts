// What ropes and surfaces ask of the motion, and the law of friction, as lines and as equalities for the elimination.
import type { FrictionLaw, MotionTerm, Tie } from "../../3-equations/types.ts";
import { ONE, symbol } from "../../algebra/expr.ts";
import { known, opposite, sideExpr } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import type { Reason } from "../types.ts";
import type { Writer } from "../writer.ts";
import type { Equality, SetUpInput } from "./types.ts";

const termOf = ({ letter, unknown, sign, factor }: MotionTerm): Term =>
  unknown
    ? { sign, unknown: letter, factor }
    : known(sign, factor.kind === "integer" ? symbol(letter) : { kind: "product", factors: [symbol(letter), factor] });

/** Writes a line for each tie: what comes in on one side goes out on the other. */
export function writeTies(writer: Writer, input: SetUpInput): Equality[] {
  const ties = input.equations.equations.filter(
    (e): e is Tie => e.kind === "rope" || e.kind === "touch" || e.kind === "stick",
  );
  const equalities = ties.map((tie): Equality => {
    const terms = joined(tie.terms.map(termOf));
    const left = terms.filter((t) => t.sign > 0);
    const right = terms.filter((t) => t.sign < 0).map(opposite);
    // Terms of one sign only stay together: their sum is zero.
    const sides = left.length === 0 ? { left: right, right: left } : { left, right };
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
    const right: Term[] = [
      {
        sign: 1,
        unknown: law.normal,
        factor: symbol(law.coefficient),
        shown: { kind: "product", factors: [symbol(law.coefficient), symbol(law.normal)] },
      },
    ];
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
