// Numbers once: each size worked out from its expression, with units; then rounded.
import { isInteger, product, quantity, quotient, sum, symbol, ONE, ZERO } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import type { Solved } from "./types.ts";
import type { Writer } from "./writer.ts";

const GIVEN = new Set(["m", "g", "W", "ax", "ay"]);
const UNITS: Readonly<Record<string, string>> = { m: "kg", g: "m/s²", W: "N", ax: "m/s²", ay: "m/s²" };

/** Whether an expression holds nothing but givens: mg, m(g + ay), m ax. */
function isGiven(e: Expr): boolean {
  switch (e.kind) {
    case "symbol":
      return GIVEN.has(e.id);
    case "product":
      return e.factors.every(isGiven);
    case "sum":
      return e.terms.every(isGiven);
    case "quotient":
      return isGiven(e.over) && isGiven(e.under);
    case "negative":
      return isGiven(e.of);
    case "integer":
      return true;
    default:
      return false;
  }
}

/** The expression with every given letter printed as its number and unit: 4.2 kg · 9.8 m/s². */
export function spelled(e: Expr): Expr {
  switch (e.kind) {
    case "symbol":
      return quantity(e, UNITS[e.id] ?? "", "given");
    case "product":
      return { kind: "product", factors: e.factors.map(spelled) };
    case "sum":
      return { kind: "sum", terms: e.terms.map(spelled) };
    case "quotient":
      return { kind: "quotient", over: spelled(e.over), under: spelled(e.under) };
    case "negative":
      return { kind: "negative", of: spelled(e.of) };
    default:
      return e;
  }
}

/** A force as a number times a pure number: the parts of an expression that a person would put into a calculator. */
interface Split {
  readonly force: Expr | null;
  readonly pure: Expr;
}

function split(e: Expr): Split {
  if (e.kind === "negative") {
    const inner = split(e.of);
    return {
      force: inner.force === null ? null : { kind: "negative", of: inner.force },
      pure: inner.force === null ? { kind: "negative", of: inner.pure } : inner.pure,
    };
  }
  if (isGiven(e) && e.kind !== "integer") return { force: e, pure: ONE };
  if (e.kind === "symbol") return { force: e, pure: ONE };
  if (e.kind === "sum" && e.terms.some((t) => split(t).force !== null)) return { force: e, pure: ONE };
  if (e.kind === "product") {
    const force = e.factors.filter((f) => isForce(f));
    const pure = e.factors.filter((f) => !isForce(f));
    return { force: force.length === 0 ? null : product(force), pure: product(pure) };
  }
  if (e.kind === "quotient") {
    const over = split(e.over);
    return { force: over.force, pure: quotient(over.pure, e.under) };
  }
  return { force: null, pure: e };
}

const isForce = (e: Expr): boolean =>
  e.kind === "symbol" ||
  (e.kind !== "integer" && isGiven(e)) ||
  (e.kind === "sum" && e.terms.some((t) => split(t).force !== null));

/** The value of a force in newtons, to be printed with guard figures. */
const newtons = (e: Expr): Expr => quantity(e, "N", "working");

/** Writes what the givens make together: mg = 4.2 kg · 9.8 m/s² = 41.16 N. One line for each such product, `done` remembers them. */
function writeGivens(writer: Writer, e: Expr, done: Set<string>): void {
  if (e.kind === "symbol" || !isGiven(e)) {
    if (e.kind === "sum")
      e.terms.forEach((t) => split(t).force !== null && writeGivens(writer, split(t).force ?? ZERO, done));
    return;
  }
  const bare = e.kind === "negative" ? e.of : e;
  const name = nameOf(bare);
  if (bare.kind === "symbol" || done.has(name)) return;
  done.add(name);
  writer.line({
    id: `number.${name}`,
    sides: [bare, spelled(bare), newtons(bare)],
    kind: "number",
    relation: "≈",
    status: "rounded",
    reason: { kind: "work-out" },
  });
}

/** A stable name for a product of givens, for its line id. */
function nameOf(e: Expr): string {
  if (e.kind === "symbol") return e.id;
  if (e.kind === "product") return e.factors.map(nameOf).join("");
  if (e.kind === "sum") return e.terms.map(nameOf).join("");
  if (e.kind === "quotient") return `${nameOf(e.over)}${nameOf(e.under)}`;
  return e.kind === "integer" ? String(e.value) : "";
}

/** Writes a size as a number, and says whether it did. Nothing is written for a size that is zero or another letter alone, since there is nothing to work out. */
export function writeNumber(writer: Writer, solved: Solved, done: Set<string>): boolean {
  const { unknown, expr, line } = solved;
  if (isInteger(expr, 0) || (expr.kind === "symbol" && expr.id !== "W")) return false;
  const { force, pure } = split(expr);
  if (force !== null) writeGivens(writer, force, done);
  const size = symbol(unknown);
  const rounded = {
    kind: "number",
    relation: "≈",
    status: "rounded",
    from: [line],
    reason: { kind: "work-out" },
  } as const;
  if (force === null || isInteger(pure, 1)) {
    const shown = force?.kind === "sum" ? [sumOfNumbers(force)] : [];
    writer.line({ id: `number.${unknown}`, sides: [size, ...shown, newtons(expr)], ...rounded });
    return true;
  }
  if (force.kind === "sum")
    writer.line({ id: `number.${unknown}.over`, sides: [force, sumOfNumbers(force), newtons(force)], ...rounded });
  const divides = expr.kind === "quotient" && isInteger(split(expr.over).pure, 1);
  const number = divides ? expr.under : pure;
  if (number.kind !== "integer")
    writer.line({ id: `number.${unknown}.factor`, sides: [number, quantity(number, "", "working")], ...rounded });
  const shownNumber = number.kind === "integer" ? number : quantity(number, "", "working");
  const worked: Expr = divides
    ? { kind: "quotient", over: newtons(force), under: shownNumber }
    : { kind: "product", factors: [newtons(force), shownNumber] };
  writer.line({ id: `number.${unknown}`, sides: [size, worked, newtons(size)], ...rounded });
  return true;
}

/** Each term of a sum of forces as a number. */
export const sumOfNumbers = (e: Expr): Expr =>
  e.kind === "sum"
    ? sum(e.terms.map((t) => (t.kind === "negative" ? { kind: "negative", of: newtons(t.of) } : newtons(t))))
    : newtons(e);

/** Writes the answer of a size, rounded once. */
export function writeAnswer(writer: Writer, unknown: string, zero: boolean, from: string): void {
  // A zero found on the very line before is not said twice.
  if (zero && writer.isLast(from)) return;
  const sides = zero ? [symbol(unknown), ZERO] : [symbol(unknown), quantity(symbol(unknown), "N", "answer")];
  writer.line({
    id: `answer.${unknown}`,
    sides,
    kind: "number",
    from: [from],
    ...(zero ? {} : { relation: "≈", status: "rounded" }),
    reason: { kind: zero ? "as-found" : "round" },
  });
}
