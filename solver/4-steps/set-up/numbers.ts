// Numbers once: each size worked out from its line, every letter in it replaced by its number and unit; then rounded.
import type { SetUp } from "../../1-bodies/types.ts";
import { asRational, isZero } from "../../../shared/exact/index.ts";
import { exact, isInteger, measured, quantity, some, symbol, ZERO } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { decimal, exactly } from "../../algebra/evaluate.ts";
import { isShort } from "../exact-lines.ts";
import type { Solved } from "../types.ts";
import type { AttemptValues } from "../values.ts";
import type { Writer } from "../writer.ts";
import { plusFirst } from "./order.ts";

/** The units of a set-up. */
export interface SetUpUnits {
  readonly force: string;
  readonly mass: string;
  readonly acceleration: string;
  readonly length: string;
}

/** The units that a problem is set in. */
export const unitsOf = (setUp: SetUp): SetUpUnits =>
  setUp.units === "SI"
    ? { force: "N", mass: "kg", acceleration: "m/s²", length: "m" }
    : { force: "lbf", mass: "slug", acceleration: "ft/s²", length: "ft" };

/** The unit of any letter of a set-up. */
export function unitOfLetter(setUp: SetUp, id: string): string {
  const units = unitsOf(setUp);
  if (id === "g" || id === "Ax" || id === "Ay") return units.acceleration;
  if (setUp.bodies.some((b) => b.letters.mass.kind === "symbol" && b.letters.mass.id === id)) return units.mass;
  if (isAcceleration(setUp, id)) return units.acceleration;
  if (setUp.contacts.some((c) => c.coefficients.static === id || c.coefficients.kinetic === id)) return "";
  return units.force;
}

/** Whether a letter is an acceleration of a body. */
export const isAcceleration = (setUp: SetUp, id: string): boolean =>
  setUp.bodies.some((b) =>
    [b.letters.acceleration, `${b.letters.acceleration}x`, `${b.letters.acceleration}y`].includes(id),
  );

/** The expression with every letter printed as its number and unit. */
function spelledOut(setUp: SetUp, e: Expr, found: ReadonlySet<string>, values: AttemptValues): Expr {
  const inner = (part: Expr): Expr => spelledOut(setUp, part, found, values);
  switch (e.kind) {
    case "symbol":
      return quantity(e, unitOfLetter(setUp, e.id), found.has(e.id) ? "working" : "given");
    case "product":
      return { kind: "product", factors: e.factors.map(inner) };
    case "sum":
      return plusFirst(e.terms.filter((t) => !isNothing(t, values)).map(inner));
    case "quotient":
      return { kind: "quotient", over: inner(e.over), under: inner(e.under) };
    case "negative":
      return { kind: "negative", of: inner(e.of) };
    default:
      return e;
  }
}

/** A term of a sum with a size in it that came out zero. */
const isNothing = (t: Expr, values: AttemptValues): boolean =>
  some(t, (part) => part.kind === "symbol" && values.symbols.get(part.id)?.decimal === 0) && decimal(t, values) === 0;

/** Works out every size in the order found, a line each; one that is zero or another letter alone has nothing to work out. */
export function writeSizes(writer: Writer, setUp: SetUp, solved: readonly Solved[], values: AttemptValues): void {
  const found = new Set<string>();
  for (const { unknown, expr, line } of solved) {
    found.add(unknown);
    // Terms that cancel have no figures left to print: the answer says that it is zero.
    const value = exactly(symbol(unknown), values);
    if (isInteger(expr, 0) || (value !== null && isZero(value) && expr.kind !== "symbol")) continue;
    const number = quantity(symbol(unknown), unitOfLetter(setUp, unknown), "working");
    const bare = expr.kind === "negative" ? expr.of : expr;
    const worked = bare.kind === "symbol" ? expr : spelledOut(setUp, expr, found, values);
    writer.line({
      id: `number.${unknown}`,
      sides: [symbol(unknown), worked, number],
      kind: "number",
      relation: "≈",
      status: "rounded",
      from: [line],
      reason: { kind: "work-out" },
    });
  }
  writer.passageIfAny("sizes", { kind: "sizes", unknowns: solved.map((s) => s.unknown) });
}

/** The answers: exactly where that is short and has a root, then rounded once. */
export function writeAnswers(writer: Writer, setUp: SetUp, solved: readonly Solved[], values: AttemptValues): void {
  for (const { unknown, expr, line } of solved) {
    const unit = unitOfLetter(setUp, unknown);
    const value = exactly(symbol(unknown), values);
    const zero = isInteger(expr, 0) || (value !== null && isZero(value));
    if (zero) {
      if (writer.isLast(line)) continue;
      writer.line({
        id: `answer.${unknown}`,
        sides: [symbol(unknown), ZERO],
        kind: "number",
        from: [line],
        reason: { kind: isInteger(expr, 0) || expr.kind === "symbol" ? "as-found" : "terms-cancel" },
      });
      continue;
    }
    if (value !== null && asRational(value) === null && isShort(value))
      writer.line({
        id: `exact.${unknown}`,
        sides: [symbol(unknown), measured(exact(value), unit)],
        kind: "number",
        from: [line],
        reason: { kind: "exact-newtons" },
      });
    writer.line({
      id: `answer.${unknown}`,
      sides: [symbol(unknown), quantity(symbol(unknown), unit, "answer")],
      kind: "number",
      relation: "≈",
      status: "rounded",
      from: [line],
      reason: { kind: "round" },
    });
  }
  writer.passage("answer", { kind: "all-answers", unknowns: solved.map((s) => s.unknown) });
}
