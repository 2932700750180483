// Angles, components and their substitution: from component sizes to whole forces and angles.
import type { WorldRope } from "../1-bodies/types.ts";
import type { Component } from "../3-equations/types.ts";
import { isInteger, negative, product, quantity, quotient, sum, symbol, trig } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import { sideExpr } from "../algebra/linear.ts";
import type { Term } from "../algebra/linear.ts";
import type { StandingLaw } from "./laws.ts";
import type { Live } from "./live.ts";
import { QUARTER, verticalOf } from "./values.ts";
import type { Draft, Writer } from "./writer.ts";

/** Writes the acute angle of each oblique rope, converting it where it was given another way. */
export function writeAngles(writer: Writer, ropes: readonly WorldRope[]): void {
  const seen = new Set<string>();
  for (const rope of ropes) {
    if (rope.side === 0 || rope.rise === 0) continue;
    const letter = symbol(rope.angle);
    const { written } = rope;
    const known = { id: `angle.${rope.id}`, kind: "geometry", status: "always", angles: "letters" } as const;
    if (written.from === "slope") {
      // The same slope on the other side would be the same line again; 8 over 6 after 4 over 3 is a line of its own.
      const slope = `${rope.angle}: ${written.rise.abs().toFraction()} over ${written.run.abs().toFraction()}`;
      if (seen.has(slope)) continue;
      seen.add(slope);
      const ratio = quotient(
        quantity({ kind: "symbol", id: `${rope.id}rise` }, "", "given"),
        quantity({ kind: "symbol", id: `${rope.id}run` }, "", "given"),
      );
      writer.line({ ...known, sides: [trig("tan", rope.angle), ratio], reason: { kind: "from-slope" } });
    } else if (!seen.has(rope.angle)) {
      writer.line({
        ...known,
        sides: [letter, ...converted(rope), quantity(letter, "°", "given")],
        reason: { kind: written.from === "vertical" ? "from-vertical" : "angle-given" },
      });
    }
    seen.add(rope.angle);
  }
  writer.passageIfAny("angles", { kind: "angles" });
}

/** For an angle given from the vertical, the quarter turn and that angle, one less the other; nothing for one given as it is used. */
function converted(rope: WorldRope): Expr[] {
  if (rope.written.from !== "vertical") return [];
  const quarter = quantity(symbol(QUARTER), "°", "given");
  const given = quantity(symbol(verticalOf(rope)), "°", "given");
  return [rope.rise > 0 ? sum([quarter, negative(given)]) : sum([given, negative(quarter)])];
}

/** Writes each component by sine or cosine. The smaller moves are there only where there is a pull, since they divide by it. */
export function writeComponents(
  writer: Writer,
  components: readonly Component[],
  carries: (force: string) => boolean,
): ReadonlyMap<string, string> {
  const lines = new Map<string, string>();
  for (const c of components) {
    if (c.factor === null) continue;
    const whole = symbol(c.force);
    const part = symbol(c.id);
    const id = `component.${c.id}`;
    if (c.factor.kind !== "trig") {
      lines.set(
        c.id,
        writer.line({
          id,
          sides: [part, product([whole, c.factor])],
          kind: "geometry",
          reason: { kind: "whole-component" },
        }),
      );
      continue;
    }
    const fn = c.factor.fn === "sin" ? "sin" : "cos";
    const smaller: Draft[] = carries(c.force)
      ? [
          {
            id: `${id}.definition`,
            sides: [c.factor, quotient(part, whole)],
            kind: "geometry",
            reason: { kind: "definition", fn },
          },
          {
            id: `${id}.times`,
            sides: [product([whole, c.factor]), part],
            from: [writer.idOf(`${id}.definition`)],
            reason: { kind: "times-hypotenuse", by: whole },
          },
        ]
      : [];
    lines.set(
      c.id,
      writer.line({
        id,
        sides: [part, product([whole, c.factor], c.id)],
        kind: "geometry",
        reason: { kind: "component", fn },
        smaller,
      }),
    );
  }
  writer.passageIfAny("components", { kind: "components", components });
  return lines;
}

/** Puts whole forces and angles into a law. An axis without components keeps its law as it is. */
export function writeSubstituted(
  writer: Writer,
  standing: StandingLaw,
  componentLines: ReadonlyMap<string, string>,
): Live {
  const { law } = standing;
  const byId = new Map(law.components.map((c) => [c.id, c]));
  const left = standing.left.map((t): Term => {
    const c = t.unknown === null ? undefined : byId.get(t.unknown);
    return c?.factor == null ? t : { sign: t.sign, unknown: c.force, factor: c.factor, ref: c.id };
  });
  const base = { name: law.name, axis: law.axis, left, right: standing.right };
  if (law.components.length === 0) return { ...base, line: standing.line };
  const from = [...law.components.flatMap((c) => componentLines.get(c.id) ?? []), standing.line];
  const line = writer.line({
    id: `${law.name}.substituted`,
    sides: [sideExpr(left), sideExpr(standing.right)],
    from,
    reason: { kind: "components-in" },
  });
  return { ...base, line };
}

/** Whether a factor is the whole force. */
export const isWhole = (factor: Expr | null): boolean => factor !== null && isInteger(factor, 1);
