// The elimination as a person does it: settle an axis that holds one unknown, else isolate one and put it into the other equation.
// General in the number of unknowns over the two equations of one body; nothing here knows how many ropes there are. A third equation
// would need terms collected before a second isolation, and line ids of its own.
import { isInteger, negative, product, sum, symbol } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { sideExpr, termExpr } from "../algebra/linear.ts";
import type { Term } from "../algebra/linear.ts";
import { chooseUnknown, equalPair, isolate, termsFor, writtenIn } from "./isolate.ts";
import type { Isolated } from "./isolate.ts";
import { openUnknowns } from "./live.ts";
import type { Live } from "./live.ts";
import { settle } from "./settle.ts";
import type { Outcome, Solved } from "./types.ts";
import type { Writer } from "./writer.ts";

/** What the elimination needs to know besides the equations. */
export interface EliminationOptions {
  /** The letter for two equal sizes: "T" unless the problem uses it. */
  readonly commonLetter: string;
  /** Whether equal sizes come from mirror symmetry. */
  readonly mirror: boolean;
}

/** Solves the equations for all their unknowns, as far as they go. */
export function eliminate(writer: Writer, equations: readonly Live[], options: EliminationOptions): Outcome {
  const solved: Solved[] = [];
  const pending: Isolated[] = [];
  const found = new Map<string, Expr>();
  let open: Live[] = [...equations];
  for (;;) {
    open = open.filter((e) => openUnknowns(e, found).length > 0);
    if (open.length === 0) break;
    const ready = open.find((e) => openUnknowns(e, found).length === 1);
    if (ready !== undefined) {
      const answer = settleNext(writer, ready, found, pending);
      solved.push(answer);
      found.set(answer.unknown, answer.expr);
      open = open.filter((e) => e !== ready);
      continue;
    }
    const source = leastKnown(open);
    if (source === undefined || open.length === 1) {
      const left = [...new Set(open.flatMap((e) => openUnknowns(e, found)))];
      writer.passage("stuck-for-good", { kind: "stuck-for-good", unknowns: left });
      return { kind: "under-determined", solved, left };
    }
    open = isolateNext(writer, source, open, found, pending, options);
  }
  return { kind: "solved", solved: [...solved, ...putBack(pending, solved)] };
}

function settleNext(
  writer: Writer,
  live: Live,
  found: ReadonlyMap<string, Expr>,
  pending: readonly Isolated[],
): Solved {
  const unknown = openUnknowns(live, found)[0] ?? "";
  const name = pending.length > 0 ? "eliminate" : `settle.${unknown}`;
  const dropped = dropZeros(writer, live, found, name);
  const answer = settle(writer, dropped, unknown, name);
  const kind = pending.length > 0 ? "collect" : `settle.${unknown}`;
  writer.passageIfAny(kind, { kind: "settle", unknown, axis: live.axis, zero: answer.expr.kind === "integer" });
  return answer;
}

/** Terms of sizes already found to be zero leave the equation, in a line of their own. */
function dropZeros(writer: Writer, live: Live, found: ReadonlyMap<string, Expr>, name: string): Live {
  const zero = live.left.find((t) => t.unknown !== null && isZeroSize(found.get(t.unknown)));
  if (zero?.unknown == null) return live;
  const left = live.left.filter((t) => t.unknown !== zero.unknown);
  const line = writer.line({
    id: `${name}.zero`,
    sides: [sideExpr(left), sideExpr(live.right)],
    from: [live.line],
    reason: { kind: "zero-drops", unknown: zero.unknown },
  });
  return dropZeros(writer, { ...live, left, line }, found, name);
}

const isZeroSize = (e: Expr | undefined): boolean => e !== undefined && isInteger(e, 0);

/** The equation about which most is known: the one with the fewest known forces beside its unknowns. */
function leastKnown(open: readonly Live[]): Live | undefined {
  const count = (e: Live): number => e.left.filter((t) => t.unknown === null).length;
  return [...open].sort((a, b) => count(a) - count(b))[0];
}

function isolateNext(
  writer: Writer,
  source: Live,
  open: readonly Live[],
  found: ReadonlyMap<string, Expr>,
  pending: Isolated[],
  options: EliminationOptions,
): Live[] {
  const pair = equalPair(source);
  const unknown = pair === null ? chooseUnknown(source, openUnknowns(source, found)) : pair[1];
  const isolated = isolate(writer, source, unknown);
  const rest = open.filter((e) => e !== source);
  const others = writtenIn(isolated);
  if (pair !== null) {
    const as = options.commonLetter;
    const line = writer.line({
      id: "isolate.both",
      sides: [symbol(pair[0]), symbol(pair[1]), symbol(as)],
      from: [isolated.line],
      reason: { kind: "call-both", as },
    });
    writer.passage("isolate", { kind: "equal", unknowns: pair, as, mirror: options.mirror });
    for (const one of [pair[1], pair[0]])
      pending.push({ ...isolated, unknown: one, terms: [], expr: symbol(as), line });
    return rest.map((e) => renameBoth(writer, e, pair, as, line));
  }
  pending.push(isolated);
  writer.passage("isolate", {
    kind: "isolate",
    unknown,
    other: others[0] ?? null,
    axis: source.axis,
    withKnown: isolated.terms.some((t) => t.unknown === null),
  });
  return rest.map((e) => substitute(writer, e, isolated));
}

function renameBoth(writer: Writer, live: Live, pair: readonly [string, string], as: string, from: string): Live {
  const rename = (t: Term): Term => (t.unknown === pair[0] || t.unknown === pair[1] ? { ...t, unknown: as } : t);
  const left = live.left.map(rename);
  const line = writer.line({
    id: "eliminate.substitute",
    sides: [sideExpr(left), sideExpr(live.right)],
    from: [from, live.line],
    reason: { kind: "substitute", unknown: as },
  });
  writer.passage("eliminate", { kind: "eliminate", unknown: as, replaced: pair[1] });
  return { ...live, left, line };
}

/** Puts the isolated unknown into another equation: first as it stands, then with sine over cosine joined, then multiplied out. */
function substitute(writer: Writer, live: Live, isolated: Isolated): Live {
  const hit = live.left.find((t) => t.unknown === isolated.unknown);
  if (hit === undefined) return live;
  const signed = (t: Term, e: Expr): Expr => (t.sign < 0 ? negative(e) : e);
  const inPlace = (replaced: Expr): Expr => sum(live.left.map((t) => (t === hit ? signed(t, replaced) : termExpr(t))));
  const right = sideExpr(live.right);
  const numerator = sideExpr(isolated.terms);
  const put = writer.line({
    id: "eliminate.substitute",
    sides: [inPlace(product([isolated.expr, hit.factor])), right],
    from: [isolated.line, live.line],
    reason: { kind: "substitute", unknown: isolated.unknown },
  });
  const left = live.left.flatMap((t) => (t === hit ? termsFor(t, isolated) : [t]));
  let line = put;
  const tangent = tangentOf(hit.factor, isolated.divisor);
  if (tangent !== null && isolated.terms.length > 1) {
    line = writer.line({
      id: "eliminate.tangent",
      sides: [inPlace(product([numerator, tangent])), right],
      from: [line],
      reason: { kind: "tangent" },
    });
    line = writer.line({
      id: "eliminate.multiply",
      sides: [sideExpr(left), right],
      from: [line],
      reason: { kind: "multiply-out" },
    });
  } else
    line = writer.line({
      id: "eliminate.tangent",
      sides: [sideExpr(left), right],
      from: [line],
      reason: { kind: tangent === null ? "multiply-out" : "tangent" },
    });
  const others = writtenIn(isolated);
  writer.passage("eliminate", { kind: "eliminate", unknown: others[0] ?? "", replaced: isolated.unknown });
  return { ...live, left, line };
}

/** sin β over cos β as tan β; null for other pairs. */
function tangentOf(by: Expr, divisor: Expr): Expr | null {
  const fits =
    by.kind === "trig" &&
    divisor.kind === "trig" &&
    by.fn === "sin" &&
    divisor.fn === "cos" &&
    by.angle[0]?.id === divisor.angle[0]?.id;
  return fits ? { kind: "trig", fn: "tan", angle: by.angle } : null;
}

/** The isolated unknowns in the order they can be worked out, now that the others are known. */
function putBack(pending: readonly Isolated[], solved: readonly Solved[]): Solved[] {
  const known = new Set(solved.map((s) => s.unknown));
  return pending
    .filter((p) => !known.has(p.unknown))
    .map(({ unknown, expr, line }) => ({ unknown, expr, line }))
    .reverse();
}
