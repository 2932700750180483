// Do all ropes pull, as they must? Decided from exact directions before an attempt is written, so that rounding never picks the case.
import { alongOneLine, forceAlong, turn } from "../1-bodies/index.ts";
import type { Side, World, WorldRope } from "../1-bodies/index.ts";
import type { PullSign, Verdict } from "../4-steps/index.ts";
import { rational } from "../../shared/exact/index.ts";
import type { Rational } from "../../shared/exact/index.ts";

/** The verdict on "every rope straight", with the sign of each pull where each is fixed. */
export interface Judgement {
  readonly verdict: Verdict;
  readonly signs: readonly PullSign[];
  /** The rope the load hangs on next, null if none can hold it. */
  readonly keep: string | null;
}

/** What the ropes together must give, divided by the mass: (ax, g + ay), exactly. */
function needed(world: World): readonly [Rational, Rational] {
  const part = (v: {
    readonly exact: { readonly terms: readonly { readonly coefficient: Rational }[] } | null;
  }): Rational => v.exact?.terms[0]?.coefficient ?? rational("0");
  const { x, y } = world.body.acceleration;
  return [part(x), part(world.gravity).add(part(y))];
}

/** Judges the attempt in which every rope is straight. */
export function judge(world: World): Judgement {
  const [fx, fy] = needed(world);
  const all = (sign: Side): PullSign[] => world.ropes.map((r) => ({ rope: r.id, sign }));
  if (fx.equals(0) && fy.equals(0)) return { verdict: { kind: "all-zero" }, signs: all(0), keep: null };
  if (world.lines === "one-line") return judgeOneLine(world, fx, fy);
  const [a, b] = world.ropes;
  if (a === undefined || b === undefined) throw new Error("ropes that are not along one line are two at least");
  const between = turnBetween(a, b);
  const signs: PullSign[] = [
    { rope: a.id, sign: timesSide(turn(fx, fy, b), between) },
    { rope: b.id, sign: timesSide(turn(fx, fy, a), -between) },
  ];
  if (signs.every((s) => s.sign >= 0)) return { verdict: { kind: "holds" }, signs, keep: null };
  return { verdict: { kind: "negative", evidence: keepOf(world, signs) !== null }, signs, keep: keepOf(world, signs) };
}

const timesSide = (a: number, b: number): Side => (a * b > 0 ? 1 : a * b < 0 ? -1 : 0);

/** Sign of ux·vy − uy·vx for two ropes' directions u and v. */
function turnBetween(u: WorldRope, v: WorldRope): number {
  return Math.sign(
    u.side * u.acute.cosine.decimal * v.rise * v.acute.sine.decimal -
      u.rise * u.acute.sine.decimal * v.side * v.acute.cosine.decimal,
  );
}

/** The rope that can hold the load alone once the one that would have to push is let go; ropes overhead cannot when the load would have to be pulled down. */
function keepOf(world: World, signs: readonly PullSign[]): string | null {
  const pushing = signs.filter((s) => s.sign < 0);
  const kept = signs.find((s) => s.sign >= 0);
  if (pushing.length !== 1 || kept === undefined) return null;
  const rope = world.ropes.find((r) => r.id === kept.rope);
  return world.body.lift < 0 && rope !== undefined && rope.rise >= 0 ? null : kept.rope;
}

function judgeOneLine(world: World, fx: Rational, fy: Rational): Judgement {
  const [a, b] = world.ropes;
  if (a === undefined) throw new Error("a problem has a rope: the schema lets none through without");
  const along = forceAlong(fx, fy, a);
  if (along === 0) return { verdict: { kind: "off-line" }, signs: [], keep: null };
  if (b === undefined)
    return {
      verdict: along > 0 ? { kind: "holds" } : { kind: "push-line" },
      signs: [{ rope: a.id, sign: along }],
      keep: null,
    };
  if (alongOneLine(a, b) < 0) return { verdict: { kind: "combination", sense: "difference" }, signs: [], keep: null };
  return { verdict: along > 0 ? { kind: "combination", sense: "sum" } : { kind: "push-line" }, signs: [], keep: null };
}
