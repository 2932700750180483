// With level axes on a slope everything that acts along it or at right angles to it stands in both laws. Multiplied by sine and cosine of the
// slope's angle and added, they become the law along the slope, without the normal force, and the one at right angles, without friction and motion.
import type { Contact } from "../../1-bodies/types.ts";
import { axisDirection, cosineBetween } from "../../algebra/turned.ts";
import type { Turned } from "../../algebra/turned.ts";
import { opposite } from "../../algebra/linear.ts";
import type { Term } from "../../algebra/linear.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { Writer } from "../writer.ts";
import { added, isShorter, squaresJoined } from "./like.ts";
import { sideExpr } from "./order.ts";
import { ratioOf, scaled } from "./ratio.ts";
import { openIn } from "./terms.ts";
import type { Equality, SetUpInput } from "./types.ts";

/** The equalities with those of each body on a slope turned, where its axes are level and neither of its laws can be solved as it stands. */
export function turnLaws(writer: Writer, input: SetUpInput, equalities: readonly Equality[]): Equality[] {
  const turned = new Map<string, Equality[]>();
  for (const { body, kind } of input.equations.axes) {
    const slope = kind === "level" ? slopeUnder(input, body) : undefined;
    const [x, y] = ["x", "y"].map((axis) => equalities.find((e) => e.name === `${body}.${axis}`));
    if (slope === undefined || x === undefined || y === undefined || !areStuck(input, [x, y])) continue;
    turned.set(x.name, [
      combine(writer, input, [x, y], slope.tangent, `${body}.along`),
      combine(writer, input, [x, y], slope.normal, `${body}.across`),
    ]);
    turned.set(y.name, []);
    writer.passage(`turned.${body}`, { kind: "turned-laws", body });
  }
  return equalities.flatMap((e) => turned.get(e.name) ?? [e]);
}

/** The slanting surface that a body is on. */
const slopeUnder = ({ setUp, hypothesis }: SetUpInput, body: string): Contact | undefined =>
  setUp.contacts.find(
    (c) =>
      c.on === body &&
      c.tangent.heading.side !== 0 &&
      c.tangent.heading.rise !== 0 &&
      hypothesis.contacts[c.id]?.touch === "touching",
  );

/** Whether each law holds more than one unknown, and none is to be looked at last. */
const areStuck = ({ excluded }: SetUpInput, laws: readonly Equality[]): boolean =>
  laws.every((e) => openIn(e, new Set()).length > 1 && !excluded.includes(e.name));

/** Both laws times the cosines of a direction, added: the law along it. */
function combine(
  writer: Writer,
  { setUp }: SetUpInput,
  [x, y]: readonly [Equality, Equality],
  toward: Turned,
  name: string,
): Equality {
  const parts = [y, x].flatMap((law) => {
    const cosine = cosineBetween(axisDirection(law === x ? 0 : 1), toward, setUp.angles);
    if (cosine.sign === 0 || cosine.trig === null) return [];
    const by: Expr = { kind: "trig", ...cosine.trig };
    return [{ law, sign: cosine.sign, by }];
  });
  const side = (of: "left" | "right"): readonly Term[] =>
    parts.flatMap(({ law, sign, by }) =>
      law[of].map((t): Term => {
        const made: Term = { sign: t.sign, unknown: t.unknown, factor: scaled(t.factor, ratioOf(by)) };
        return sign < 0 ? opposite(made) : made;
      }),
    );
  let [left, right] = [side("left"), side("right")];
  let line = writer.line({
    id: `${name}.sum`,
    sides: [sideExpr(left), sideExpr(right)],
    from: parts.map((p) => p.law.line),
    reason: { kind: "laws-added", by: parts.map((p) => ({ line: p.law.line, sign: p.sign, by: p.by })) },
  });
  const short = [squaresJoined(added(left)), squaresJoined(added(right))] as const;
  if (isShorter(left, short[0]) || isShorter(right, short[1])) {
    [left, right] = short;
    line = writer.line({
      id: `${name}.short`,
      sides: [sideExpr(left), sideExpr(right)],
      from: [line],
      reason: { kind: "cancel-and-squares" },
    });
  }
  return { name, kind: x.kind, left, right, line };
}
