// Putting an isolated unknown into another equation: first as it stands, then cleared of its fraction, multiplied out and added up.
import { product, same, some } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { isPlain } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import { termsFor } from "../isolate.ts";
import type { Writer } from "../writer.ts";
import type { IsolatedTerm } from "./isolate.ts";
import { added, isShorter } from "./like.ts";
import { isOne, ordered, plusFirst, sideExpr, termExpr } from "./order.ts";
import { exprOf, inverse, ratioOf, reduced, residue, scaled, times } from "./ratio.ts";
import type { Ratio } from "./ratio.ts";
import type { Equality } from "./types.ts";

/** The equality with the isolated unknown replaced; itself where the unknown is not in it. */
export function substituteIn(writer: Writer, e: Equality, isolated: IsolatedTerm, name: string): Equality {
  const isIt = (t: Term): boolean => t.unknown === isolated.unknown;
  const hits = [...e.left, ...e.right].filter(isIt);
  if (hits.length === 0) return e;
  const put = (terms: readonly Term[]): Expr =>
    plusFirst(terms.map((t) => (isIt(t) ? inPlace(t, isolated) : termExpr(t))));
  let line = writer.line({
    id: `${name}.put`,
    sides: [put(e.left), put(e.right)],
    from: [isolated.line, e.line],
    reason: { kind: "substitute", unknown: isolated.unknown },
  });
  const clear = clearing(hits, isolated);
  const expand = (terms: readonly Term[]): Term[] =>
    terms.flatMap((t) => {
      if (isIt(t)) return clear === null ? replacements(t, isolated) : timesAll(t, isolated, clear);
      return clear === null ? [t] : [{ sign: t.sign, unknown: t.unknown, factor: scaled(t.factor, clear) }];
    });
  let left: readonly Term[] = expand(e.left);
  let right: readonly Term[] = expand(e.right);
  const opens = isolated.terms.length > 1;
  const write = (id: string, reason: Parameters<Writer["line"]>[0]["reason"]): void => {
    line = writer.line({ id: `${name}.${id}`, sides: [sideExpr(left), sideExpr(right)], from: [line], reason });
  };
  if (clear !== null) write("times", { kind: "times-both", by: exprOf(clear), opens });
  else if (needsMultiplying(hits, isolated)) write("multiply", { kind: opens ? "multiply-out" : "cancelled" });
  const sums = [added(left), added(right)] as const;
  if (isShorter(left, sums[0]) || isShorter(right, sums[1])) {
    [left, right] = sums;
    write("add", { kind: "add-up" });
  }
  return { ...e, left, right, line };
}

/** The isolated expression times the term's factor, sign included. */
function inPlace(t: Term, { expr }: IsolatedTerm): Expr {
  const negative = t.sign < 0 !== (expr.kind === "negative");
  const bare = expr.kind === "negative" ? expr.of : expr;
  const shown =
    bare.kind === "quotient" || bare.kind === "sum"
      ? product([...before(t.factor), bare, ...after(t.factor)])
      : ordered([t.factor, bare]);
  return negative ? { kind: "negative", of: shown } : shown;
}

const isTrig = (f: Expr): boolean => f.kind === "trig";
const before = (e: Expr): readonly Expr[] => (e.kind === "product" ? e.factors : [e]).filter((f) => !isTrig(f));
const after = (e: Expr): readonly Expr[] => (e.kind === "product" ? e.factors : [e]).filter(isTrig);

/** What both sides have to be multiplied by so that no fraction is left; null where there is none, or where a tangent or a plain number is as good. */
function clearing(hits: readonly Term[], isolated: IsolatedTerm): Ratio | null {
  if (isOne(isolated.divisor) || hits.every((t) => isTangent(t, isolated))) return null;
  const left = hits.map((t) => residue(t.factor, isolated.divisor));
  const all = left.reduce((known, r) => times(known, reduced(times(r, inverse(known)))));
  const many = isolated.terms.length > 1;
  return all.over.length === 0 && (all.whole === 1 || !many) ? null : { ...all, under: 1, below: [] };
}

/** Sine over cosine of one angle, where the angle does not stand in the isolated terms as well. */
function isTangent(t: Term, { divisor, terms }: IsolatedTerm): boolean {
  const { factor } = t;
  if (factor.kind !== "trig" || divisor.kind !== "trig" || factor.fn === divisor.fn || terms.length > 1) return false;
  const angle = { ...divisor, fn: "sin" } as const;
  const ofAngle = (e: Expr): boolean => e.kind === "trig" && same({ ...e, fn: "sin" }, angle);
  return ofAngle(factor) && !terms.some((one) => some(one.factor, ofAngle));
}

/** What comes for one term of the isolated unknown when both sides are multiplied by `clear`. */
const timesAll = (t: Term, isolated: IsolatedTerm, clear: Ratio): Term[] =>
  isolated.terms.map((one) => ({
    sign: one.sign === t.sign ? 1 : -1,
    unknown: one.unknown,
    factor: exprOf(
      reduced(times(times(ratioOf(one.factor), ratioOf(t.factor)), times(clear, inverse(ratioOf(isolated.divisor))))),
    ),
  }));

/** What comes for one term of the isolated unknown. */
function replacements(t: Term, isolated: IsolatedTerm): Term[] {
  if (isTangent(t, isolated)) return termsFor(t, isolated);
  return timesAll(t, isolated, { whole: 1, under: 1, over: [], below: [] });
}

/** One term in place of another needs no multiplying out, nor does a sum that just stands there with a plus. */
function needsMultiplying(hits: readonly Term[], isolated: IsolatedTerm): boolean {
  const whole = isOne(isolated.divisor);
  if (isolated.terms.length <= 1) return !whole && isolated.expr.kind !== "symbol";
  return !whole || hits.some((t) => t.sign < 0 || !isPlain(t));
}
