// The TeX dialect. Digits of angles and quantities go into number slots, so that a drag patches text and leaves the form alone.
import { exactDecimal } from "../../../shared/format/index.ts";
import type { Rational, Surd } from "../../../shared/exact/index.ts";
import type { Values } from "../../algebra/evaluate.ts";
import type { AngleSum, TrigName } from "../../algebra/expr.ts";
import { letterOf } from "./letters.ts";
import type { Letter } from "./letters.ts";
import type { PrintedQuantity } from "./number.ts";
import type { Dialect, Factor } from "./render.ts";

/** The first slot's placeholder; slot i is this plus i, in braces. */
export const FIRST_SLOT = 900000000;

/** Where angles and letters of a line come from. */
export interface TexSettings {
  readonly values: Values;
  readonly components: ReadonlySet<string>;
  readonly letters?: ReadonlyMap<string, Letter> | undefined;
  readonly angles: "degrees" | "letters";
  readonly mark: "." | ",";
}

const UNITS: Readonly<Record<string, string>> = {
  N: "\\mathrm{N}",
  kg: "\\mathrm{kg}",
  m: "\\mathrm{m}",
  "m/s²": "\\mathrm{m/s^2}",
  lbf: "\\mathrm{lbf}",
  slug: "\\mathrm{slug}",
  ft: "\\mathrm{ft}",
  "ft/s²": "\\mathrm{ft/s^2}",
};
const REFS = /^[A-Za-z][A-Za-z0-9]*$/;

/** TeX with slots, collected in `slots` as it is written. */
export class TexDialect implements Dialect {
  readonly slots: string[] = [];
  readonly minus = " - ";
  readonly plus = " + ";
  readonly lead = "-";
  private readonly settings: TexSettings;

  /** `settings` say how angles and letters look. */
  constructor(settings: TexSettings) {
    this.settings = settings;
  }

  /** A whole number of the form. */
  integer(value: number): string {
    return String(value);
  }

  /** An exact value: (√6 − √2)/2. Roots belong to the form. */
  surd(value: Surd): string {
    return surdTex(value);
  }

  /** See the interface. */
  surdIsSum(value: Surd): boolean {
    return value.terms.length > 1 && commonDenominator(value) === 1n;
  }

  /** A letter; sizes and components can be pointed at. */
  symbol(id: string): string {
    const { tex } = letterOf(id, this.settings.components, this.settings.letters);
    const pointable = id.length > 1 || id === "W" || id === "T" || this.settings.letters?.has(id) === true;
    return pointable ? tagged(id, tex) : tex;
  }

  /** A sine of an angle in degrees, or of its letter. */
  trig(fn: TrigName, angle: AngleSum): string {
    return this.named(`\\${fn}`, angle);
  }

  /** See the interface. */
  trigPower(fn: TrigName, angle: AngleSum, power: number): string {
    return this.named(`\\${fn}^{${power}}`, angle);
  }

  private named(name: string, angle: AngleSum): string {
    const degrees = this.settings.angles === "degrees" ? degreesOf(angle, this.settings.values) : null;
    if (degrees !== null) {
      const shown = `${this.slot(degrees.text)}\\degree`;
      return `${name} ${angle.length === 1 ? tagged(angle[0]?.id ?? "", shown) : shown}`;
    }
    const letters = angle
      .map(
        (a, i) =>
          (a.sign < 0 ? "-" : i > 0 ? "+" : "") +
          tagged(a.id, letterOf(a.id, this.settings.components, this.settings.letters).tex),
      )
      .join("");
    return angle.length === 1 ? `${name} ${letters}` : `${name}\\left(${letters}\\right)`;
  }

  /** Factors in a row; a dot only where two numbers would run together. */
  product(factors: readonly Factor[], ref: string | null): string {
    let shown = "";
    let before: Factor | null = null;
    for (const f of factors) {
      if (before !== null) shown += between(before, f);
      shown += f.shown;
      before = f;
    }
    if (ref !== null) return tagged(ref, shown);
    return isWeight(factors) ? tagged("weight", shown) : shown;
  }

  /** A fraction. */
  quotient(over: string, under: string): string {
    return `\\frac{${over}}{${under}}`;
  }

  /** Brackets that grow. */
  bracket(inner: string): string {
    return `\\left(${inner}\\right)`;
  }

  /** A square root. */
  root(inner: string): string {
    return `\\sqrt{${inner}}`;
  }

  /** A square. */
  square(inner: string, simple: boolean): string {
    return simple ? `{${inner}}^2` : `\\left(${inner}\\right)^2`;
  }

  /** An expression with its unit. */
  measured(inner: string, unit: string): string {
    return `${inner}\\,${UNITS[unit] ?? ""}`;
  }

  /** Digits in a slot, unit upright. */
  quantity(printed: PrintedQuantity, unit: string): string {
    const digits = this.slot(printed.digits);
    const number = printed.exponent === null ? digits : `${digits}\\cdot 10^{${printed.exponent}}`;
    if (unit === "°") return `${number}\\degree`;
    const name = UNITS[unit];
    return name === undefined ? number : `${number}\\,${name}`;
  }

  private slot(text: string): string {
    this.slots.push(text);
    return `{${FIRST_SLOT + this.slots.length - 1}}`;
  }
}

const tagged = (ref: string, tex: string): string => (REFS.test(ref) ? `\\htmlData{ref=${ref}}{${tex}}` : tex);
const isWeight = (factors: readonly Factor[]): boolean =>
  factors.length === 2 && factors[0]?.shown === "m" && factors[1]?.shown === "g";
const NUMBERS = new Set(["number", "quantity", "fraction"]);

function between(a: Factor, b: Factor): string {
  if (a.kind === "quantity" || b.kind === "quantity") return b.kind === "symbol" ? "\\," : " \\cdot ";
  if (b.kind === "number" || (NUMBERS.has(a.kind) && NUMBERS.has(b.kind))) return " \\cdot ";
  return a.kind === "bracket" || b.kind === "bracket" ? "" : " ";
}

/** The degrees of a signed sum of angles, with its digits; null if one of them has none. */
export function degreesOf(
  angle: AngleSum,
  values: Values,
  mark: "." | "," = ".",
): { readonly text: string; readonly value: number } | null {
  let total: Rational | null = null;
  for (const part of angle) {
    const degrees = values.angles.get(part.id)?.degrees ?? null;
    if (degrees === null) return null;
    const own = part.sign < 0 ? degrees.neg() : degrees;
    total = total === null ? own : total.add(own);
  }
  const printed = total === null || total.compare(0) < 0 ? null : exactDecimal(total, { mark });
  return printed === null ? null : { text: printed.digits, value: printed.value };
}

/** The common denominator of a surd's coefficients. */
export function commonDenominator(x: Surd): bigint {
  let common = 1n;
  for (const t of x.terms) common = (common * t.coefficient.d) / gcd(common, t.coefficient.d);
  return common;
}

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? a : gcd(b, a % b));

/** Terms in the order a person writes them: those with a plus first, the whole number before roots, larger roots first. */
export function surdTerms(x: Surd): { readonly sign: 1 | -1; readonly whole: bigint; readonly radicand: bigint }[] {
  const under = commonDenominator(x);
  const terms = x.terms.map((t) => ({
    sign: t.coefficient.s < 0n ? (-1 as const) : (1 as const),
    whole: (t.coefficient.n * under) / t.coefficient.d,
    radicand: t.radicand,
  }));
  const rank = (t: { sign: 1 | -1; radicand: bigint }): number =>
    (t.sign < 0 ? 1e9 : 0) + (t.radicand === 1n ? -1e6 : -Number(t.radicand));
  return terms.sort((a, b) => rank(a) - rank(b));
}

function surdTex(x: Surd): string {
  const under = commonDenominator(x);
  const terms = surdTerms(x);
  if (terms.length === 0) return "0";
  const one = (t: { whole: bigint; radicand: bigint }): string =>
    t.radicand === 1n ? String(t.whole) : `${t.whole === 1n ? "" : String(t.whole)}\\sqrt{${t.radicand}}`;
  const [first] = terms;
  if (terms.length === 1 && first !== undefined && first.sign < 0 && under !== 1n)
    return `-\\frac{${one(first)}}{${under}}`;
  const over = terms.map((t, i) => (t.sign < 0 ? "-" : i > 0 ? "+" : "") + one(t)).join("");
  return under === 1n ? over : `\\frac{${over}}{${under}}`;
}
