// The equations of a set-up as a general-purpose symbolic library reads them: numbers as fractions, sines and cosines left to it.
import { toExactText, asRational } from "../../shared/exact/index.ts";
import type { Problem } from "../../shared/problem/index.ts";
import { decimal, exactly } from "../../solver/algebra/evaluate.ts";
import type { Expr } from "../../solver/algebra/expr.ts";
import { deriveSystem } from "../../solver/index.ts";
import type { SetUpResult } from "../../solver/index.ts";

/** One letter an unknown, since longer names are read as products. */
const LETTERS = "x y z u v w p q r s t a b c d".split(" ");

/** The system in TeX, and the letters to be found. */
export interface PeerSystem {
  readonly tex: string;
  readonly letters: readonly string[];
}

type Equation = SetUpResult["inForce"]["equations"]["equations"][number];
interface Term {
  readonly sign: number;
  readonly unknown: string | null;
  readonly factors: readonly Expr[];
}

/** The equations of the case in force; null where they have no single solution. */
export function peerSystem(problem: Problem): PeerSystem | null {
  const { system } = deriveSystem(problem);
  if (system.kind !== "determined" || system.inForce.open.length > 0) return null;
  const { equations, values } = system.inForce;
  const rows = equations.equations.map(termsOf);
  const unknowns = [...new Set(rows.flat().flatMap((t) => (t.unknown === null ? [] : [t.unknown])))];
  const letterOf = (id: string): string => LETTERS[unknowns.indexOf(id)] ?? "?";
  const texOf = (e: Expr): string => {
    if (e.kind === "trig") {
      const degrees = e.angle.map(({ sign, id }) => {
        const angle = values.angles.get(id);
        const own = angle?.degrees ?? null;
        return own === null ? null : own.mul(BigInt(sign));
      });
      const total = degrees.reduce((sum, d) => (sum === null || d === null ? null : sum.add(d)));
      if (total !== null) return `\\${e.fn}(${fraction(toExactText(total))}\\degree)`;
    }
    const exact = exactly(e, values);
    const ratio = exact === null ? null : asRational(exact);
    return fraction(ratio === null ? decimal(e, values).toFixed(12) : toExactText(ratio));
  };
  const lines = rows.map((terms) => {
    const shown = terms.map(({ sign, unknown, factors }) => {
      const parts = factors.map(texOf).map((t) => (t.startsWith("-") ? `(${t})` : t));
      return `${sign < 0 ? "-" : "+"}${[...parts, ...(unknown === null ? [] : [letterOf(unknown)])].join("\\cdot ")}`;
    });
    return `${shown.join("").replace(/^\+/, "")}=0`;
  });
  return { tex: `\\begin{cases}${lines.join("\\\\")}\\end{cases}`, letters: unknowns.map(letterOf) };
}

/** 4.2 as a fraction, so that the library stays exact. */
function fraction(text: string): string {
  const [whole = "", part = ""] = text.replace("-", "").split(".");
  const sign = text.startsWith("-") ? "-" : "";
  if (text.includes("/")) return `${sign}\\frac{${whole.split("/")[0] ?? ""}}{${whole.split("/")[1] ?? ""}}`;
  return part === "" ? sign + whole : `${sign}\\frac{${Number(whole + part)}}{${10 ** part.length}}`;
}

function termsOf(equation: Equation): Term[] {
  const symbol = (id: string): Expr => ({ kind: "symbol", id });
  switch (equation.kind) {
    case "law": {
      const { mass } = equation;
      const forces = equation.parts.map(({ sign, factor, force }): Term => ({
        sign,
        unknown: force.unknown,
        factors: force.unknown === null ? [force.size, factor] : [factor],
      }));
      const motion = mass === null ? [] : equation.motion;
      return [
        ...forces,
        ...motion.map(({ sign, letter, unknown, factor }): Term => ({
          sign: -sign,
          unknown: unknown ? letter : null,
          factors: [mass ?? symbol(letter), factor, ...(unknown ? [] : [symbol(letter)])],
        })),
      ];
    }
    case "friction":
      return [
        { sign: 1, unknown: equation.friction, factors: [] },
        { sign: -1, unknown: equation.normal, factors: [symbol(equation.coefficient)] },
      ];
    default:
      return equation.terms.map(({ sign, letter, unknown, factor }): Term => ({
        sign,
        unknown: unknown ? letter : null,
        factors: unknown ? [factor] : [factor, symbol(letter)],
      }));
  }
}
