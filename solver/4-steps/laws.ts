// The law along each axis: first with m·a, then with a = 0 or its value; and what that leaves unknown on the axis.
import type { World } from "../1-bodies/types.ts";
import type { AxisIndex } from "../2-forces/types.ts";
import type { AxisLaw } from "../3-equations/types.ts";
import { negative, product, quantity, quotient, symbol, ZERO } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { known, sideExpr } from "../algebra/linear.ts";
import type { Term } from "../algebra/linear.ts";
import type { AxisStanding } from "./types.ts";
import type { Writer } from "./writer.ts";

/** A law as it stands after its value of a is in: the terms left and right, the line that shows it, and what is unknown on it. */
export interface StandingLaw {
  readonly law: AxisLaw;
  readonly left: readonly Term[];
  readonly right: readonly Term[];
  readonly line: string;
  readonly standing: AxisStanding;
}

/** What one law leaves: whether its known part can be balanced by its components at all. */
function standingOf(law: AxisLaw): AxisStanding {
  if (law.components.length === 0) return "nothing";
  const signs = new Set(law.components.map((c) => c.sign));
  if (signs.size === 1 && law.needed !== 0 && !signs.has(law.needed)) return "cannot";
  if (law.components.length === 1) return law.needed === 0 ? "settles-zero" : "settles";
  if (law.needed === 0 && signs.size === 1) return "one-sided";
  return "stuck";
}

/** Writes the law of one axis and its second line. */
export function writeLawLines(writer: Writer, world: World, law: AxisLaw): StandingLaw {
  const left: Term[] = [
    ...law.components.map((c): Term => ({
      sign: c.sign === -1 ? -1 : 1,
      unknown: c.id,
      factor: { kind: "integer", value: 1 },
      ref: c.id,
    })),
    ...law.known,
  ];
  const standing = standingOf(law);
  const impossible = standing === "nothing" && law.needed !== 0;
  const stated = writer.line({
    id: `${law.name}.law`,
    sides: [sideExpr(left), law.massTimesAcceleration],
    kind: "law",
    reason: { kind: "second-law", axis: law.axis },
  });
  if (law.motion.kind === "none" && left.length === 0) return { law, left, right: [], line: stated, standing };
  if (law.motion.kind === "none") {
    const sides = [sideExpr(left), ZERO];
    const line = impossible
      ? writer.line({
          id: `${law.name}.given`,
          sides,
          kind: "law",
          from: [stated],
          status: "contradiction",
          reason: { kind: "zero-cannot-equal" },
        })
      : writer.line({
          id: `${law.name}.given`,
          sides,
          kind: "law",
          from: [stated],
          reason: { kind: "no-acceleration", axis: law.axis },
        });
    return { law, left, right: [], line, standing };
  }
  return writeAccelerated(writer, world, law, left, stated, impossible);
}

function writeAccelerated(
  writer: Writer,
  world: World,
  law: AxisLaw,
  left: readonly Term[],
  stated: string,
  impossible: boolean,
): StandingLaw {
  const standing = standingOf(law);
  const freeFall = law.motion.kind === "free-fall";
  const value = accelerationValue(world, law.axis, freeFall);
  const given = writer.line({
    id: `${law.name}.given`,
    sides: [sideExpr(left), value],
    kind: "law",
    from: [stated],
    ...(impossible ? { status: "contradiction" } : {}),
    reason: impossible
      ? { kind: "zero-cannot-equal" }
      : { kind: "given-acceleration", axis: law.axis, keepsLetter: !freeFall },
  });
  if (!freeFall || impossible)
    return { law, left, right: [known(1, law.massTimesAcceleration)], line: given, standing };
  const without = left.filter((t) => t.unknown !== null);
  const line = writer.line({
    id: `${law.name}.cancelled`,
    sides: [sideExpr(without), ZERO],
    from: [given],
    reason: { kind: "free-fall-cancels" },
    ...(without.length === 0 ? { status: "always" } : {}),
  });
  return { law, left: without, right: [], line, standing };
}

/** m·(a value): m · 2.5 m/s², or m·(−g) = −mg in free fall. */
function accelerationValue(world: World, axis: AxisIndex, freeFall: boolean): Expr {
  const weight = world.body.givenBy === "mass" ? product([symbol("m"), symbol("g")]) : symbol("W");
  if (freeFall) return negative(weight);
  const mass = world.body.givenBy === "mass" ? symbol("m") : quotient(symbol("W"), symbol("g"));
  return { kind: "product", factors: [mass, quantity(symbol(axis === 0 ? "axGiven" : "ayGiven"), "m/s²", "given")] };
}
