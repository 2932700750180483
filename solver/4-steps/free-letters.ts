// The size of a pull of unknown direction in letters: its two components under the root, and the mass taken out.
import { isInteger, product, root, square, sum, symbol, ZERO } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import type { Solved } from "./types.ts";
import type { Writer } from "./writer.ts";

/** Writes the size in letters and gives its final form. `parts` are its components as found. */
export function writeFreeLetters(writer: Writer, rope: string, parts: readonly Solved[], from: string): Expr {
  const sizes = parts.map((p) => positive(p.expr)).filter((e) => !isInteger(e, 0));
  const size = symbol(rope);
  const shared = { angles: "letters" } as const;
  const [only] = sizes;
  const from0 = [from, ...parts.map((p) => p.line)];
  if (only === undefined) return ZERO;
  if (sizes.length === 1) {
    // A single part may carry the sign of a given acceleration, so it stands as it was found.
    const found = parts.map((p) => p.expr).find((e) => !isInteger(e, 0)) ?? only;
    writer.line({
      id: `letters.${rope}.put`,
      sides: [size, found],
      from: from0,
      reason: { kind: "parts-in" },
      ...shared,
    });
    return found;
  }
  const put = root(sum(sizes.map(square)));
  const line = writer.line({
    id: `letters.${rope}.put`,
    sides: [size, put],
    from: from0,
    reason: { kind: "parts-in" },
    ...shared,
  });
  const perMass = sizes.map(withoutMass);
  if (perMass.some((e) => e === null)) return put;
  const form = product([symbol("m"), root(sum(perMass.map((e) => square(e ?? ZERO))))]);
  writer.line({
    id: `letters.${rope}.mass`,
    sides: [size, form],
    from: [line],
    reason: { kind: "mass-out" },
    ...shared,
  });
  return form;
}

const positive = (e: Expr): Expr => (e.kind === "negative" ? e.of : e);

/** m times something without its m; null where the mass is not a letter of its own. */
function withoutMass(e: Expr): Expr | null {
  if (e.kind !== "product") return null;
  const [first, ...rest] = e.factors;
  return first?.kind === "symbol" && first.id === "m" ? product(rest) : null;
}
