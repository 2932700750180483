// Components and angles of a set-up: each part by sine or cosine, and the laws with whole forces in them.
import type { Turned } from "../../algebra/turned.ts";
import type { Heading } from "../../1-bodies/types.ts";
import { negative, product, quantity, quotient, sum, symbol, trig } from "../../algebra/expr.ts";
import { decimal } from "../../algebra/evaluate.ts";
import type { Expr } from "../../algebra/expr.ts";
import type { ForcePart } from "../../3-equations/types.ts";
import { QUARTER } from "../values.ts";
import type { AttemptValues } from "../values.ts";
import { givenAngle, givenNumber } from "../values.ts";
import type { Draft, Writer } from "../writer.ts";
import type { WrittenLaw } from "./laws.ts";
import { wholeEquality } from "./laws.ts";
import { sideExpr } from "./order.ts";
import type { Equality, SetUpInput } from "./types.ts";

/** Writes each angle that was given another way than it is used, once. Its numbers join the values. */
export function writeGivenAngles(writer: Writer, input: SetUpInput, values: AttemptValues): void {
  const seen = new Set<string>();
  for (const heading of headingsOf(input)) {
    const { angle, written } = heading;
    if (angle === "" || written.from === "horizontal" || seen.has(angle)) continue;
    seen.add(angle);
    const base = { id: `angle.${angle}`, kind: "geometry", status: "always", angles: "letters" } as const;
    if (written.from === "slope") {
      givenNumber(values, `${angle}run`, written.run.abs());
      givenNumber(values, `${angle}rise`, written.rise.abs());
      const ratio = quotient(
        quantity(symbol(`${angle}rise`), "", "given"),
        quantity(symbol(`${angle}run`), "", "given"),
      );
      writer.line({ ...base, sides: [trig("tan", angle), ratio], reason: { kind: "from-slope" } });
      continue;
    }
    givenAngle(values, `${angle}Vertical`, written.angle);
    const quarter = quantity(symbol(QUARTER), "°", "given");
    const given = quantity(symbol(`${angle}Vertical`), "°", "given");
    const turned = heading.rise > 0 ? sum([quarter, negative(given)]) : sum([given, negative(quarter)]);
    writer.line({
      ...base,
      sides: [symbol(angle), turned, quantity(symbol(angle), "°", "given")],
      reason: { kind: "from-vertical" },
    });
  }
  writer.passageIfAny("given-angles", { kind: "given-angles" });
}

function headingsOf({ setUp }: SetUpInput): Heading[] {
  const turned: Turned[] = [
    ...setUp.contacts.map((c) => c.tangent),
    ...setUp.ropes.flatMap((r) => r.pulls.map((p) => p.toward)),
    ...setUp.pushes.map((p) => p.toward),
    ...setUp.bodies.flatMap((b) => (b.freedom.kind === "line" ? [b.freedom.along] : [])),
  ];
  return turned.flatMap((t) => (isHeading(t.heading) ? [t.heading] : []));
}

const isHeading = (h: Turned["heading"]): h is Heading => "written" in h;

/** Writes every part that is not a whole force; gives the line of each by its letter. The smaller moves divide by the force, so they are there only where there is one. */
export function writeParts(
  writer: Writer,
  laws: readonly WrittenLaw[],
  values: AttemptValues,
): ReadonlyMap<string, string> {
  const lines = new Map<string, string>();
  for (const part of laws.flatMap((l) => l.law.parts)) {
    if (part.id === part.force.ref || lines.has(part.id) || part.factor.kind !== "trig") continue;
    const fn = part.factor.fn === "sin" ? "sin" : "cos";
    lines.set(
      part.id,
      writer.line({
        id: `part.${part.id}`,
        sides: [symbol(part.id), wholeTimes(part)],
        kind: "geometry",
        reason: { kind: "part-along", fn },
        smaller: isThere(part, values) ? smallerMoves(writer, part, fn) : [],
      }),
    );
  }
  writer.passageIfAny("parts", { kind: "parts", refs: [...lines.keys()] });
  return lines;
}

/** Whether a force has a size, and not zero. */
const isThere = ({ force }: ForcePart, values: AttemptValues): boolean =>
  (force.unknown === null || values.symbols.has(force.unknown)) && decimal(force.size, values) !== 0;

/** By definition sine or cosine is the part over the force; times the force, that is the part. */
function smallerMoves(writer: Writer, part: ForcePart, fn: "sin" | "cos"): Draft[] {
  const { force, factor, id } = part;
  const definition = `part.${id}.definition`;
  return [
    {
      id: definition,
      sides: [factor, quotient(symbol(id), force.size)],
      kind: "geometry",
      reason: { kind: "definition", fn },
    },
    {
      id: `part.${id}.times`,
      sides: [product([force.size, factor]), symbol(id)],
      from: [writer.idOf(definition)],
      reason: { kind: "times-hypotenuse", by: force.size },
    },
  ];
}

const wholeTimes = ({ force, factor, id }: ForcePart): Expr => product([force.size, factor], id);

/** Puts whole forces into each law that has parts; gives the equality that each law leaves. */
export function writePartsIn(
  writer: Writer,
  laws: readonly WrittenLaw[],
  lines: ReadonlyMap<string, string>,
): Equality[] {
  const equalities = laws.map((written) => {
    const { law, right } = written;
    const from = law.parts.flatMap((p) => lines.get(p.id) ?? []);
    const equality = wholeEquality(written, written.line);
    if (from.length === 0) return equality;
    const line = writer.line({
      id: `${law.id}.parts-in`,
      sides: [sideExpr(equality.left), sideExpr(right)],
      from: [...new Set(from), written.line],
      reason: { kind: "components-in" },
    });
    return { ...equality, line };
  });
  writer.passageIfAny("parts-in-laws", { kind: "parts-in-laws" });
  return equalities;
}
