// Comparisons and limiting cases for the check, each with the condition under which it is true.
import { integer, product, quotient, sum, symbol, trig, ZERO } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { WorldRope } from "../../1-bodies/types.ts";
import type { Claim, Condition } from "../claim.ts";
import type { Speech } from "../speech.ts";
import { say } from "../sentence.ts";

const more = (left: Expr, right: Expr): Condition => ({ left, relation: ">", right });
const equalTo = (left: Expr, right: Expr): Condition => ({ left, relation: "=", right });
const AX = symbol("ax");
const AY = symbol("ay");
const G = symbol("g");
const atRest = [equalTo(AX, ZERO), equalTo(AY, ZERO)];
/** g + ay > 0: the ropes together pull up. */
const lifted = more(sum([G, AY]), ZERO);
const rope = (r: WorldRope): Expr => symbol(r.id);
const sine = (r: WorldRope): Expr => (r.side === 0 ? integer(1) : r.rise === 0 ? ZERO : trig("sin", r.ownAngle));
const cosine = (r: WorldRope): Expr => (r.side === 0 ? ZERO : r.rise === 0 ? integer(1) : trig("cos", r.ownAngle));

/** The weight in letters. */
export const weightExpr = (s: Speech): Expr =>
  s.world.body.givenBy === "mass" ? product([symbol("m"), G]) : symbol("W");

/** Whether both ropes rise obliquely on opposite sides: the usual picture. */
export const isSpread = (a: WorldRope | undefined, b: WorldRope | undefined): boolean =>
  a !== undefined && b !== undefined && a.rise === 1 && b.rise === 1 && a.side !== 0 && a.side === -b.side;

/** Which pull is larger, and why where the reason is plain. */
function comparisons(s: Speech, a: WorldRope, b: WorldRope): Claim[] {
  const steeper = (p: WorldRope, q: WorldRope): Claim => ({
    id: `harder.${p.id}`,
    when: [more(rope(p), rope(q)), more(cosine(q), cosine(p)), equalTo(AX, ZERO), more(rope(q), ZERO)],
    sentence: () =>
      say`${s.Rope(p.id)} pulls harder than ${s.rope(q.id)}: it is the steeper one. The sideways parts are equal, and the steeper rope has the smaller share of its pull to spend sideways.`,
  });
  const harder = (p: WorldRope, q: WorldRope): Claim => ({
    id: `harder-moving.${p.id}`,
    when: [more(rope(p), rope(q)), more(product([AX, AX]), ZERO)],
    sentence: () => say`${s.Rope(p.id)} pulls harder than ${s.rope(q.id)}.`,
  });
  return [
    steeper(a, b),
    steeper(b, a),
    harder(a, b),
    harder(b, a),
    {
      id: "equal",
      when: [equalTo(rope(a), rope(b)), more(rope(a), ZERO)],
      sentence: () => say`Both ropes pull equally hard.`,
    },
  ];
}

/** The two pulls together against the weight, and how the weight is shared. */
function sizes(s: Speech, a: WorldRope, b: WorldRope): Claim[] {
  const together = sum([rope(a), rope(b)]);
  const weight = weightExpr(s);
  const share = (r: WorldRope): Expr => product([integer(100), quotient(product([rope(r), sine(r)]), weight)]);
  const total = () => s.number(together, "N");
  const load = () => s.number(weight, "N", "weight");
  const claims: Claim[] = [
    {
      id: "sum-more-rest",
      when: [more(together, weight), ...atRest],
      sentence: () =>
        say`The two pulls together, ${total()}, come to more than the weight, ${load()}: part of each pull is spent sideways, against the other.`,
    },
    {
      id: "sum-equal",
      when: [equalTo(together, weight)],
      sentence: () => say`The two pulls together come to just the weight, ${load()}.`,
    },
    {
      id: "sum-more-moving",
      when: [more(together, weight), more(weight, ZERO), more(sum([product([AX, AX]), product([AY, AY])]), ZERO)],
      sentence: () => say`The two pulls together, ${total()}, come to more than the weight, ${load()}.`,
    },
    {
      id: "sum-less",
      when: [more(weight, together)],
      sentence: () => say`The two pulls together, ${total()}, come to less than the weight, ${load()}.`,
    },
  ];
  if (isSpread(a, b)) {
    claims.push({
      id: "share",
      when: [...atRest, more(weight, ZERO), more(rope(a), ZERO), more(rope(b), ZERO)],
      sentence: () =>
        say`Of the weight, ${s.rope(a.id)} holds ${s.number(share(a), "%")} and ${s.rope(b.id)} ${s.number(share(b), "%")}: these are the upward parts.`,
    });
    for (const r of [a, b]) {
      const heavy = [more(rope(r), weight), ...atRest];
      // The sine of about 33°: no angle that is usual lies on it, so one of the two is always said.
      const small = quotient(integer(11), integer(20));
      claims.push(
        {
          id: `more-than-weight.${r.id}`,
          when: [...heavy, more(small, sine(r))],
          sentence: () =>
            say`${s.Rope(r.id)} pulls harder than the whole weight. That is no mistake: a shallow rope has to pull hard for a small upward part.`,
        },
        {
          // On a steep rope the upward part is not small; what comes on top of it is the sideways part.
          id: `more-than-weight-sideways.${r.id}`,
          when: [...heavy, more(sine(r), small)],
          sentence: () =>
            say`${s.Rope(r.id)} pulls harder than the whole weight. That is no mistake: besides its share of the weight it has to balance the sideways part of the other pull.`,
        },
      );
    }
  }
  return claims;
}

/** Limiting cases: what the result must do when a given goes to an extreme. */
function limits(s: Speech, a: WorldRope, b: WorldRope): Claim[] {
  if (!isSpread(a, b)) return [];
  const base =
    s.world.body.acceleration.y.decimal === 0 ? s.math(weightExpr(s)) : s.math(product([symbol("m"), sum([G, AY])]));
  const taut = [lifted, more(rope(a), ZERO), more(rope(b), ZERO)];
  const steady = [...taut, equalTo(AX, ZERO)];
  const upright = (steep: WorldRope, other: WorldRope): Claim => ({
    id: `limit-upright.${steep.id}`,
    when: steady,
    sentence: () =>
      say`Make ${s.rope(steep.id)} ever steeper, up to the vertical: ${s.letter(steep.id)} goes to ${s.world.body.givenBy === "mass" || s.world.body.acceleration.y.decimal === 0 ? base : "the whole load"} and ${s.letter(other.id)} to zero, since nothing is left to balance a sideways part of ${s.rope(other.id)}.`,
  });
  return [
    upright(b, a),
    {
      id: "limit-flat",
      when: steady,
      sentence: () =>
        say`Make both ropes flatter and flatter: in the end both pulls grow without bound, since almost nothing of them points up.`,
    },
    { id: "limit-exchange", when: steady, sentence: () => say`Exchange the two angles: the two pulls change places.` },
    {
      id: "limit-fall",
      when: steady,
      sentence: () => say`Let the support fall freely, ${s.math(AY)} = −${s.math(G)}: both pulls are zero.`,
    },
  ];
}

/** One pull against the weight. */
function pullAgainstWeight(s: Speech, r: WorldRope): Claim[] {
  const weight = weightExpr(s);
  const load = () => s.number(weight, "N", "weight");
  return [
    {
      id: "pull-equal",
      when: [equalTo(rope(r), weight)],
      sentence: () => say`The pull is just the weight, ${load()}.`,
    },
    {
      id: "pull-more",
      when: [more(rope(r), weight), more(weight, ZERO)],
      sentence: () => say`The pull is more than the weight, ${load()}.`,
    },
    {
      id: "pull-less",
      when: [more(weight, rope(r))],
      sentence: () => say`The pull is less than the weight, ${load()}.`,
    },
  ];
}

/** From which sideways acceleration on a rope goes slack. */
function slackLimit(s: Speech, a: WorldRope, b: WorldRope): Claim[] {
  if (!isSpread(a, b)) return [];
  // With ax to the side of `kept`, the other rope's pull vanishes at (g + ay)/tan(angle of kept): the net force then points along `kept`.
  return [a, b].map((kept): Claim => {
    const loose = kept === a ? b : a;
    const limit = quotient(product([sum([G, AY]), cosine(kept)]), sine(kept));
    return {
      id: `limit-slack.${loose.id}`,
      when: [lifted, more(limit, ZERO)],
      sentence: () =>
        say`Accelerate the support ${kept.side > 0 ? "to the right" : "to the left"}: from ${s.number(limit, "m/s²")} on, ${s.rope(loose.id)} is slack.`,
    };
  });
}

/** All claims of the check for two ropes. */
export function claimsFor(s: Speech): readonly Claim[] {
  const [a, b] = s.world.ropes;
  if (a === undefined) return [];
  if (b === undefined) return pullAgainstWeight(s, a);
  if (s.result.kind === "slack") {
    const loose = s.result.slack[0] ?? "";
    const kept = a.id === loose ? b : a;
    return [
      ...pullAgainstWeight(s, kept),
      ...slackLimit(s, a, b).filter((c) => c.id.endsWith(`.${loose}`)),
      {
        id: "mass-alone",
        when: [more(weightExpr(s), ZERO)],
        sentence: () => say`Double the mass: the pull doubles, and its direction stays as it is.`,
      },
    ];
  }
  return [
    ...comparisons(s, a, b),
    ...sizes(s, a, b),
    ...limits(s, a, b),
    ...slackLimit(s, a, b),
    {
      id: "mass",
      when: [lifted, more(weightExpr(s), ZERO)],
      sentence: () => say`Double the mass: both pulls double, and their ratio stays as it is.`,
    },
  ];
}
