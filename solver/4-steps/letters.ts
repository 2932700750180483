// The result in letters, by lines of its own: tangents taken apart, the fraction cleared, sines joined.
import { isInteger, negative, product, quotient, same, some, sum, symbol, trig } from "../algebra/expr.ts";
import type { AngleSum, Expr } from "../algebra/expr.ts";
import type { WorldRope } from "../1-bodies/types.ts";
import type { Reason, Solved } from "./types.ts";
import type { Writer } from "./writer.ts";

/** The angle letter whose tangent stands in an expression, or null. */
function tangentLetter(e: Expr): string | null {
  let found: string | null = null;
  some(e, (p) => {
    if (p.kind === "trig" && p.fn === "tan") found = p.angle[0]?.id ?? null;
    return found !== null;
  });
  return found;
}

/** Rebuilds an expression with each tangent of `id` written as sine over cosine. */
function apart(e: Expr, id: string): Expr {
  if (e.kind === "trig" && e.fn === "tan" && e.angle[0]?.id === id) return quotient(trig("sin", id), trig("cos", id));
  if (e.kind === "sum") return sum(e.terms.map((t) => apart(t, id)));
  if (e.kind === "product") return product(e.factors.map((f) => apart(f, id)));
  if (e.kind === "quotient") return quotient(apart(e.over, id), apart(e.under, id));
  return e.kind === "negative" ? negative(apart(e.of, id)) : e;
}

/** A sum times cos id, term by term, tangents turning into sines. */
function timesCosine(e: Expr, id: string): Expr {
  if (e.kind === "sum") return sum(e.terms.map((t) => timesCosine(t, id)));
  if (e.kind === "negative") return negative(timesCosine(e.of, id));
  const factors = e.kind === "product" ? e.factors : [e];
  const tangent = factors.findIndex((f) => f.kind === "trig" && f.fn === "tan" && f.angle[0]?.id === id);
  return tangent < 0
    ? product([...factors, trig("cos", id)])
    : product(factors.map((f, i) => (i === tangent ? trig("sin", id) : f)));
}

/** ±sin a cos b ± cos a sin b as the sine of a sum or difference (addition theorem); null for anything else. */
export function joinedSine(e: Expr): Expr | null {
  if (e.kind !== "sum" || e.terms.length !== 2) return null;
  const pairs = e.terms.flatMap((t) => pairOf(t) ?? []);
  const [p, q] = pairs;
  if (p === undefined || q === undefined) return null;
  if (p.sine !== q.cosine || p.cosine !== q.sine) return null;
  const [first, second] = p.sign === q.sign || p.sign > 0 ? [p, q] : [q, p];
  const joins = first.sign === second.sign;
  const [leading, following] =
    joins && first.cosine < first.sine ? [first.cosine, first.sine] : [first.sine, first.cosine];
  const angle: AngleSum = [
    { sign: 1, id: leading },
    { sign: joins ? 1 : -1, id: following },
  ];
  const sine: Expr = { kind: "trig", fn: "sin", angle };
  return first.sign < 0 ? negative(sine) : sine;
}

function pairOf(e: Expr): { sign: 1 | -1; sine: string; cosine: string } | null {
  const body = e.kind === "negative" ? e.of : e;
  if (body.kind !== "product" || body.factors.length !== 2) return null;
  const of = (fn: "sin" | "cos"): string | undefined =>
    body.factors.flatMap((f) => (f.kind === "trig" && f.fn === fn ? [f.angle[0]?.id ?? ""] : []))[0];
  const sine = of("sin");
  const cosine = of("cos");
  return sine === undefined || cosine === undefined ? null : { sign: e.kind === "negative" ? -1 : 1, sine, cosine };
}

/** Writes one size in letters; gives its final form. `known` holds the final forms of sizes already written. */
export function writeLetters(writer: Writer, solved: Solved, known: Map<string, Expr>): Expr {
  const size = symbol(solved.unknown);
  const name = `letters.${solved.unknown}`;
  const shared = { angles: "letters" } as const;
  let line = writer.line({
    id: `${name}.start`,
    sides: [size, solved.expr],
    from: [solved.line],
    reason: { kind: "in-letters" },
    ...shared,
  });
  let form = solved.expr;
  const inner = [...known].find(([id]) => some(form, (p) => p.kind === "symbol" && p.id === id));
  if (inner !== undefined) {
    form = putIn(form, inner[0], inner[1]);
    line = writer.line({
      id: `${name}.put`,
      sides: [size, form],
      from: [line],
      reason: { kind: "letters-in" },
      ...shared,
    });
    const shorter = cancelled(form);
    if (shorter !== null) {
      form = shorter.form;
      line = writer.line({
        id: `${name}.cancel`,
        sides: [size, form],
        from: [line],
        reason: shorter.reason,
        ...shared,
      });
    }
  }
  form = clear(writer, name, size, form, line);
  known.set(solved.unknown, form);
  return form;
}

function clear(writer: Writer, name: string, size: Expr, start: Expr, before: string): Expr {
  const shared = { angles: "letters" } as const;
  const id = start.kind === "quotient" ? tangentLetter(start.under) : null;
  if (start.kind !== "quotient" || id === null || start.under.kind !== "sum") return start;
  let line = writer.line({
    id: `${name}.apart`,
    sides: [size, apart(start, id)],
    from: [before],
    reason: { kind: "tangent-apart" },
    ...shared,
  });
  const by = trig("cos", id);
  let form = quotient(timesCosine(start.over, id), timesCosine(start.under, id));
  line = writer.line({
    id: `${name}.clear`,
    sides: [size, form],
    from: [line],
    reason: { kind: "clear-fraction", by },
    ...shared,
  });
  const joined = form.kind === "quotient" ? joinedSine(form.under) : null;
  if (joined !== null && form.kind === "quotient") {
    form = joined.kind === "negative" ? quotient(negative(form.over), joined.of) : quotient(form.over, joined);
    writer.line({
      id: `${name}.joined`,
      sides: [size, form],
      from: [line],
      reason: { kind: "sine-of-sum" },
      ...shared,
    });
  }
  return form;
}

/** Puts the letters of a size in its place, a fraction of a fraction written as one. */
function putIn(e: Expr, id: string, form: Expr): Expr {
  if (e.kind === "symbol") return e.id === id ? form : e;
  if (e.kind === "quotient") return quotient(putIn(e.over, id, form), e.under);
  if (e.kind === "product") return product(e.factors.map((f) => putIn(f, id, form)));
  if (e.kind === "sum") return sum(e.terms.map((t) => putIn(t, id, form)));
  return e.kind === "negative" ? negative(putIn(e.of, id, form)) : e;
}

/** A shorter form, and why it is the same. */
export interface Cancelled {
  readonly form: Expr;
  readonly reason: Reason;
}

/** Cancels a factor that stands above and below: (mg cos β / sin(α+β)) cos α / cos β, or mg cos β / sin β as mg / tan β. Null if nothing cancels. */
export function cancelled(e: Expr): Cancelled | null {
  if (e.kind === "sum") {
    const found = e.terms.map((t) => (t.kind === "negative" ? null : cancelled(t)));
    const at = found.findIndex((c) => c !== null);
    const one = found[at];
    return one ? { form: sum(e.terms.map((t, i) => (i === at ? one.form : t))), reason: one.reason } : null;
  }
  const flat = flatten(e);
  // Equal factors first; a cosine over its sine only where nothing else cancels.
  for (const what of flat.under) {
    const at = flat.over.findIndex((f) => same(f, what));
    if (at >= 0) {
      const over = flat.over.filter((_, i) => i !== at);
      const under = flat.under.filter((f) => f !== what);
      return { form: quotient(product(over), product(under)), reason: { kind: "cancel", what } };
    }
  }
  for (const what of flat.under) {
    const partner =
      what.kind === "trig" && what.fn === "sin" && what.angle.length === 1
        ? flat.over.findIndex((f) => f.kind === "trig" && f.fn === "cos" && f.angle[0]?.id === what.angle[0]?.id)
        : -1;
    if (partner >= 0 && what.kind === "trig") {
      const over = flat.over.filter((_, i) => i !== partner);
      const under = flat.under.map((f): Expr => (f === what ? { kind: "trig", fn: "tan", angle: what.angle } : f));
      return { form: quotient(product(over), product(under)), reason: { kind: "over-tangent" } };
    }
  }
  return null;
}

/** All factors above and below the bars of nested fractions. */
function flatten(e: Expr): { over: Expr[]; under: Expr[] } {
  if (e.kind === "quotient") {
    const top = flatten(e.over);
    const bottom = flatten(e.under);
    return { over: [...top.over, ...bottom.under], under: [...top.under, ...bottom.over] };
  }
  if (e.kind === "product") {
    const parts = e.factors.map(flatten);
    return { over: parts.flatMap((p) => p.over), under: parts.flatMap((p) => p.under) };
  }
  return { over: isInteger(e, 1) ? [] : [e], under: [] };
}

/** The textbook form for two ropes that are neither level nor upright, any sides: a size by the sine of the angle between them. */
export function crossForm(
  ropes: readonly [WorldRope, WorldRope],
  which: 0 | 1,
  up: readonly Expr[],
  sideways: Expr | null,
): Expr {
  const [a, b] = ropes;
  const other = which === 0 ? b : a;
  const lead = which === 0 ? 1 : -1;
  const signed = (sign: number, e: Expr): Expr => (sign < 0 ? negative(e) : e);
  // F × u(other) over u1 × u2, each written with acute angles and the sides' signs.
  const over = [
    ...(sideways === null ? [] : [signed(lead * other.rise, product([sideways, trig("sin", other.ownAngle)]))]),
    ...up.map((f) => signed(-lead * other.side, product([f, trig("cos", other.ownAngle)]))),
  ];
  const under = joinedSine(
    sum([
      signed(a.side * b.rise, product([trig("cos", a.ownAngle), trig("sin", b.ownAngle)])),
      signed(-a.rise * b.side, product([trig("sin", a.ownAngle), trig("cos", b.ownAngle)])),
    ]),
  );
  if (under === null) throw new Error("two oblique ropes have a sine of the angle between them");
  const numerator = under.kind === "negative" ? over.map(negative) : over;
  const plusFirst = [
    ...numerator.filter((t) => t.kind !== "negative"),
    ...numerator.filter((t) => t.kind === "negative"),
  ];
  return quotient(sum(plusFirst), under.kind === "negative" ? under.of : under);
}
