// The evaluator's dialect: explicit stars, deg after degrees, no units. Also the plain-text dialect, which differs in spelling only.
import type { Surd } from "../../../shared/exact/index.ts";
import type { AngleSum, TrigName } from "../../algebra/expr.ts";
import { letterOf } from "./letters.ts";
import type { PrintedQuantity } from "./number.ts";
import type { Dialect, Factor } from "./render.ts";
import { commonDenominator, degreesOf, surdTerms } from "./tex.ts";
import type { TexSettings } from "./tex.ts";

/** What a general-purpose evaluator reads: T1*sin(65 deg). */
export class PlainDialect implements Dialect {
  readonly minus: string = " - ";
  readonly plus: string = " + ";
  readonly lead: string = "-";
  /** An evaluator gets no units. */
  protected readonly showsUnits: boolean = false;
  protected readonly settings: TexSettings;

  /** `settings` say how angles and letters look. */
  constructor(settings: TexSettings) {
    this.settings = settings;
  }

  /** A whole number. */
  integer(value: number): string {
    return String(value);
  }

  /** An exact value: (sqrt(6) - sqrt(2))/2. */
  surd(value: Surd): string {
    const under = commonDenominator(value);
    const terms = surdTerms(value).map(
      (t, i) => (t.sign < 0 ? this.lead : i > 0 ? "+" : "") + this.rootTerm(t.whole, t.radicand),
    );
    const over = terms.length === 0 ? "0" : terms.join("");
    return under === 1n ? over : `${terms.length > 1 ? this.bracket(over) : over}/${under}`;
  }

  /** Every fraction or sum is bracketed as a factor. */
  surdIsSum(value: Surd): boolean {
    return value.terms.length > 1 || commonDenominator(value) !== 1n;
  }

  /** The symbol's own id. */
  symbol(id: string): string {
    return id;
  }

  /** sin(65 deg), sin(alpha + beta). */
  trig(fn: TrigName, angle: AngleSum): string {
    const degrees = this.settings.angles === "degrees" ? degreesOf(angle, this.settings.values) : null;
    if (degrees !== null) return `${fn}(${degrees.text} deg)`;
    return `${fn}(${angle.map((a, i) => (a.sign < 0 ? " - " : i > 0 ? " + " : "") + a.id).join("")})`;
  }

  /** sin(65 deg)^2. */
  trigPower(fn: TrigName, angle: AngleSum, power: number): string {
    return `${this.trig(fn, angle)}^${power}`;
  }

  /** Factors with stars, fractions bracketed. */
  product(factors: readonly Factor[]): string {
    return factors.map((f) => (f.kind === "fraction" ? this.bracket(f.shown) : f.shown)).join("*");
  }

  /** A fraction, both parts bracketed where they are more than one thing. */
  quotient(over: string, under: string): string {
    return `${this.grouped(over)}/${this.grouped(under)}`;
  }

  /** Brackets. */
  bracket(inner: string): string {
    return `(${inner})`;
  }

  /** A square root. */
  root(inner: string): string {
    return `sqrt(${inner})`;
  }

  /** A square. */
  square(inner: string, simple: boolean): string {
    return simple ? `${inner}^2` : `(${inner})^2`;
  }

  /** The expression, with its unit where a person reads it. */
  measured(inner: string, unit: string): string {
    return this.showsUnits ? `${inner} ${unit}` : inner;
  }

  /** Digits as printed, with a power of ten where trailing zeros are no figures; degrees in radians, as the evaluator's angles are. */
  quantity(printed: PrintedQuantity, unit: string): string {
    const number = significant(printed);
    return unit === "°" ? `(${number}*pi/180)` : number;
  }

  /** Brackets unless it is a single name, number or function call. */
  protected grouped(inner: string): string {
    return /^[\w.]+$|^(?:sin|cos|tan)\([^()]*\)$/.test(inner) ? inner : this.bracket(inner);
  }

  private rootTerm(whole: bigint, radicand: bigint): string {
    if (radicand === 1n) return String(whole);
    return whole === 1n
      ? this.root(String(radicand))
      : this.product([
          { kind: "number", shown: String(whole) },
          { kind: "root", shown: this.root(String(radicand)) },
        ]);
  }
}

/** Digits that show which figure is the last: 42000 to two figures is 4.2e4. */
function significant(printed: PrintedQuantity): string {
  const digits = printed.digits.replace(",", ".");
  if (printed.exponent !== null) return `${digits}e${printed.exponent}`;
  if (printed.isExact) return digits;
  const unit = Math.round(Math.log10(2 * printed.halfUnit));
  if (unit <= 0) return digits;
  const whole = digits.slice(0, digits.length - unit);
  return whole.length > 1
    ? `${whole.slice(0, 1)}.${whole.slice(1)}e${digits.length - 1}`
    : `${whole}e${digits.length - 1}`;
}

/** For reading in a terminal: T1 sin 65° + T2 sin 40° − mg. */
export class TextDialect extends PlainDialect {
  override readonly minus = " − ";
  override readonly plus = " + ";
  override readonly lead = "−";
  protected override readonly showsUnits = true;

  /** The letter as it looks. */
  override symbol(id: string): string {
    return letterOf(id, this.settings.components, this.settings.letters).text;
  }

  /** sin 65°, sin(α + β). */
  override trig(fn: TrigName, angle: AngleSum): string {
    return this.named(fn, angle);
  }

  /** sin² 65°. */
  override trigPower(fn: TrigName, angle: AngleSum, power: number): string {
    return this.named(fn + String(power).replace(/\d/g, (digit) => RAISED[Number(digit)] ?? ""), angle);
  }

  private named(fn: string, angle: AngleSum): string {
    const degrees =
      this.settings.angles === "degrees" ? degreesOf(angle, this.settings.values, this.settings.mark) : null;
    if (degrees !== null) return `${fn} ${degrees.text}°`;
    const letters = angle
      .map(
        (a, i) =>
          (a.sign < 0 ? " − " : i > 0 ? " + " : "") +
          letterOf(a.id, this.settings.components, this.settings.letters).text,
      )
      .join("");
    return angle.length === 1 ? `${fn} ${letters}` : `${fn}(${letters})`;
  }

  /** Factors in a row, dots between numbers. */
  override product(factors: readonly Factor[]): string {
    const shown = (f: Factor): string => (f.kind === "fraction" ? this.bracket(f.shown) : f.shown);
    return factors.reduce((text, f, i) => {
      const before = factors[i - 1];
      return before === undefined ? shown(f) : text + between(before, f) + shown(f);
    }, "");
  }

  /** A fraction; above the bar only a sum, or what has a bar itself, needs brackets. */
  override quotient(over: string, under: string): string {
    return `${isOneTerm(over) ? over : this.bracket(over)}/${this.grouped(under)}`;
  }

  /** (√6 − √2)/2. */
  override surd(value: Surd): string {
    return super.surd(value).replace(/(?<=[^(])([+−])/g, " $1 ");
  }

  /** √ with brackets where needed. */
  override root(inner: string): string {
    return /^\w+$/.test(inner) ? `√${inner}` : `√(${inner})`;
  }

  /** ². */
  override square(inner: string, simple: boolean): string {
    return simple ? `${inner}²` : `(${inner})²`;
  }

  /** Digits with their unit. */
  override quantity(printed: PrintedQuantity, unit: string): string {
    const number = printed.exponent === null ? printed.digits : `${printed.digits}·10^${printed.exponent}`;
    return unit === "°" ? `${number}°` : unit === "" ? number : `${number} ${unit}`;
  }

  protected override grouped(inner: string): string {
    return /^[\p{L}\d_.,]+$|^(?:sin|cos|tan) [^ ]+$/u.test(inner) ? inner : this.bracket(inner);
  }
}

const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** What stands between two factors: a dot before a number, nothing in mg. */
function between(a: Factor, b: Factor): string {
  const isNumeric = (f: Factor): boolean => f.kind === "number" || f.kind === "quantity";
  if (b.kind === "quantity" && a.kind !== "root") return " · ";
  if (b.kind === "number" && (isNumeric(a) || a.kind === "bracket")) return " · ";
  return b.shown === "g" && a.shown === "m" ? "" : " ";
}

/** Whether text is one term without a bar outside brackets, nor a size times a sine, after which a bar could be taken for part of the angle. */
function isOneTerm(text: string): boolean {
  if (/ (?:sin|cos|tan)/.test(text)) return false;
  let depth = 0;
  for (const c of text) {
    if (c === "(") depth++;
    else if (c === ")") depth--;
    else if (depth === 0 && "+−/".includes(c)) return false;
  }
  return true;
}
