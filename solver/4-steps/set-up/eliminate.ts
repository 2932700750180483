// The elimination for any number of equations, as a person does it: solve what holds one unknown; else take the simplest tie between unknowns, put it
// into every other equation that holds it, and look again. Chosen by structure alone, so that a drag never swaps the algebra.
import type { Expr } from "../../algebra/expr.ts";
import { decimal } from "../../algebra/evaluate.ts";
import type { Value } from "../../algebra/evaluate.ts";
import { isInteger } from "../../algebra/expr.ts";
import type { Term } from "../../algebra/linear.ts";
import type { Solved } from "../types.ts";
import type { AttemptValues } from "../values.ts";
import type { Writer } from "../writer.ts";
import { isPlainIn, rankOf, standsAlone, vanishes, withoutLonely } from "./choice.ts";
import { isolateIn } from "./isolate.ts";
import type { IsolatedTerm } from "./isolate.ts";
import { sideExpr } from "./order.ts";
import { settleIn } from "./settle.ts";
import { substituteIn } from "./substitute.ts";
import { openIn } from "./terms.ts";
import type { Elimination, Equality } from "./types.ts";
import { cleanValue } from "./values.ts";

/**
 * Solves the equations as far as they go. `values` takes each size as it is found; `loose` are unknowns that all equations
 * together leave open: these are put in terms of others first, so that what is fixed all the same comes out.
 */
export function eliminateAll(
  writer: Writer,
  equations: readonly Equality[],
  values: AttemptValues,
  loose: ReadonlySet<string>,
  excluded: readonly string[],
): Elimination {
  const last = equations.find((e) => excluded.includes(e.name));
  const rest = equations.filter((e) => !excluded.includes(e.name));
  return new Eliminator(writer, rest, values, loose, last ?? null).run();
}

class Eliminator {
  private readonly writer: Writer;
  private readonly values: AttemptValues;
  private readonly solved: Solved[] = [];
  private readonly found = new Map<string, Expr>();
  private readonly pending: IsolatedTerm[] = [];
  private readonly loose: ReadonlySet<string>;
  /** An equation that contradicts the others, looked at when these are solved. */
  private readonly last: Equality | null;
  private open: Equality[];
  /** Every unknown there is. */
  private readonly all: readonly string[];
  private round = 0;
  /** Equations that were not needed and hold all the same. */
  private readonly spare: string[] = [];

  /** Takes the equations in the order in which a reader meets them. */
  constructor(
    writer: Writer,
    equations: readonly Equality[],
    values: AttemptValues,
    loose: ReadonlySet<string>,
    last: Equality | null,
  ) {
    this.writer = writer;
    this.last = last;
    this.values = values;
    this.loose = loose;
    this.open = [...equations];
    this.all = [...new Set(equations.flatMap((e) => openIn(e, new Set())))];
  }

  /** Solves until nothing is left to solve, or nothing helps. */
  run(): Elimination {
    for (;;) {
      const clash = this.dropSpent();
      if (clash !== null) return this.ended(clash);
      const ready = this.ready();
      if (ready !== undefined) this.settle(ready);
      else if (!this.isolate()) return this.ended(this.last === null ? null : this.contradict(this.last));
      this.putBack();
    }
  }

  /** An equation with one unknown: one that holds nothing found before first, else the earliest. */
  private ready(): Equality | undefined {
    const list = this.open.filter((e) => openIn(e, this.found).length === 1);
    return list.find((e) => openIn(e, new Set()).length === 1) ?? list[0];
  }

  /** Equations whose unknowns are all found say nothing new; one that they do not fulfil is a contradiction. */
  private dropSpent(): string | null {
    for (const e of this.open.filter((one) => openIn(one, this.found).length === 0)) {
      this.open = this.open.filter((one) => one !== e);
      if (!this.isFulfilled(e)) return this.contradict(e);
      if (e.left.length + e.right.length > 0) this.spare.push(e.name);
    }
    return null;
  }

  private isFulfilled(e: Equality): boolean {
    const sides = [sideExpr(e.left), sideExpr(e.right)] as const;
    const [left, right] = sides.map((s) => decimal(s, this.values)) as [number, number];
    const sizes = [...e.left, ...e.right].map((t) => Math.abs(decimal(sideExpr([t]), this.values)));
    return Math.abs(left - right) <= 1e-9 * Math.max(...sizes, Number.MIN_VALUE);
  }

  private contradict(e: Equality): string {
    const line = this.writer.line({
      id: `clash.${e.name}`,
      sides: [sideExpr(e.left), sideExpr(e.right)],
      status: "contradiction",
      from: [e.line],
      reason: { kind: "does-not-fit" },
    });
    this.writer.passage(`clash.${e.name}`, { kind: "clash", equation: e.name });
    return line;
  }

  private settle(e: Equality): void {
    const unknown = openIn(e, this.found)[0] ?? "";
    if (vanishes(e, unknown, this.values)) {
      this.vanish(e, unknown);
      return;
    }
    const answer = settleIn(this.writer, e, unknown, `settle.${unknown}`);
    this.writer.passageIfAny(`settle.${unknown}`, {
      kind: "settle-size",
      unknown,
      equation: e.name,
      zero: answer.expr.kind === "integer",
    });
    this.open = this.open.filter((one) => one !== e);
    this.take(answer);
  }

  /** The factor of the only unknown is zero: the equation says nothing of it, and holds or does not. */
  private vanish(e: Equality, unknown: string): void {
    const strip = (terms: readonly Term[]): Term[] => terms.filter((t) => t.unknown !== unknown);
    const left = strip(e.left);
    const right = strip(e.right);
    const line = this.writer.line({
      id: `vanish.${e.name}`,
      sides: [sideExpr(left), sideExpr(right)],
      from: [e.line],
      reason: { kind: "factor-vanishes", unknown },
    });
    this.writer.passage(`vanish.${e.name}`, { kind: "vanishing", unknown });
    this.open = this.open.map((one) => (one === e ? { ...e, left, right, line } : one));
  }

  /** The exact value of an answer; without one the decimal that all equations gave together, which loses less where the expression cancels. */
  private sharpest({ unknown, expr }: Solved): Value {
    const worked = cleanValue(expr, this.values);
    const known = this.values.symbols.get(unknown);
    if (worked.exact !== null || known === undefined) return worked;
    const apart = Math.abs(known.decimal - worked.decimal);
    return apart <= NEAR * Math.abs(worked.decimal) ? known : worked;
  }

  private take(answer: Solved): void {
    this.solved.push(answer);
    this.found.set(answer.unknown, answer.expr);
    this.values.symbols.set(answer.unknown, this.sharpest(answer));
    if (isInteger(answer.expr, 0)) this.open = this.open.map((e) => this.withoutZero(e, answer));
  }

  /** A size found to be zero leaves the equations it stands in. */
  private withoutZero(e: Equality, { unknown, line }: Solved): Equality {
    const isIt = (t: Term): boolean => t.unknown === unknown;
    if (![...e.left, ...e.right].some(isIt)) return e;
    const left = e.left.filter((t) => !isIt(t));
    const right = e.right.filter((t) => !isIt(t));
    const written = this.writer.line({
      id: `zero.${unknown}.${e.name}`,
      sides: [sideExpr(left), sideExpr(right)],
      from: [e.line, line],
      reason: { kind: "zero-drops", unknown },
    });
    this.writer.passage(`zero.${unknown}.${e.name}`, { kind: "zero-size", unknown });
    return { ...e, left, right, line: written };
  }

  /** Takes one tie between unknowns and puts it into all others. False where no equation helps another. */
  private isolate(): boolean {
    const active = this.loose.size > 0 ? this.open : withoutLonely(this.open, this.found);
    const choice = this.choose(active);
    if (choice === null) return false;
    const { equation, unknown } = choice;
    this.round++;
    const name = this.round === 1 ? "isolate" : `isolate.${this.round}`;
    const isolated = isolateIn(this.writer, equation, unknown, name);
    this.writer.passageIfAny(name, { kind: "isolate-size", unknown, equation: equation.name });
    this.pending.push(isolated);
    const step = this.round === 1 ? "eliminate" : `eliminate.${this.round}`;
    this.open = this.open
      .filter((e) => e !== equation)
      .map((e) => (active.includes(e) ? substituteIn(this.writer, e, isolated, `${step}.${e.name}`) : e));
    this.writer.passageIfAny(step, { kind: "eliminate-size", unknown, line: isolated.line });
    return true;
  }

  /** The equation and unknown to isolate: ties first, then what leaves the fewest unknowns; a plain factor before any other. */
  private choose(active: readonly Equality[]): { equation: Equality; unknown: string } | null {
    const shared = (u: string, e: Equality): boolean =>
      active.some((other) => other !== e && openIn(other, this.found).includes(u));
    const candidates = active.flatMap((equation) => {
      const eligible = openIn(equation, this.found).filter(
        (u) => shared(u, equation) && !vanishes(equation, u, this.values),
      );
      const undecided = eligible.filter((u) => this.loose.has(u));
      const unknowns = undecided.length > 0 ? undecided : eligible;
      const plain = unknowns.filter((u) => isPlainIn(equation, u));
      const alone = plain.find((u) => standsAlone(equation, u));
      const unknown = alone ?? plain[0] ?? unknowns[unknowns.length - 1];
      return unknown === undefined ? [] : [{ equation, unknown, rank: rankOf(equation, plain.length > 0, this.found) }];
    });
    candidates.sort((a, b) => a.rank - b.rank);
    return candidates[0] ?? null;
  }

  /** Gives the isolated unknowns whose line holds only what is found by now. */
  private putBack(): void {
    for (const p of [...this.pending].reverse()) {
      if (this.found.has(p.unknown)) continue;
      if (p.terms.some((t) => t.unknown !== null && !this.found.has(t.unknown))) continue;
      this.take({ unknown: p.unknown, expr: p.expr, line: p.line });
    }
  }

  private ended(contradiction: string | null): Elimination {
    const unknowns = new Set([
      ...this.all.filter((u) => !this.found.has(u)),
      ...this.open.flatMap((e) => openIn(e, this.found)),
      ...this.pending.flatMap((p) => [p.unknown, ...p.terms.flatMap((t) => (t.unknown === null ? [] : [t.unknown]))]),
    ]);
    const open = [...unknowns].filter((u) => !this.found.has(u));
    if (contradiction === null && this.spare.length > 0)
      this.writer.passage("spare", { kind: "spare", equations: this.spare });
    if (contradiction === null && open.length > 0)
      this.writer.passage("stuck-for-good", { kind: "open-sizes", unknowns: open });
    return { solved: this.solved, open, contradiction };
  }
}

/** Two decimals of one size are this near to each other. */
const NEAR = 1e-6;
