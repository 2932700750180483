// What sentences about a set-up are made with: names of bodies, ropes and surfaces, directions in words.
import type { Contact, SetUp, SetUpBody, SetUpRope } from "../../1-bodies/types.ts";
import type { SetUpResult } from "../../cases/types.ts";
import type { SetUpAttempt } from "../../4-steps/types.ts";
import { quantity, symbol } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { decimal } from "../../algebra/evaluate.ts";
import { degreesOfTurned } from "../../algebra/turned.ts";
import { toFigures } from "../../../shared/format/index.ts";
import { say } from "../sentence.ts";
import type { Run, Sentence } from "../types.ts";
import { Wording } from "../wording.ts";
import type { WordSettings } from "../wording.ts";
import { setUpLetters } from "./letters.ts";
import { firstName, spokenName } from "./names.ts";

/** The units of a set-up, as words have them. */
export interface SpokenUnits {
  readonly force: string;
  readonly mass: string;
  readonly acceleration: string;
  readonly length: string;
}

const SI: SpokenUnits = { force: "N", mass: "kg", acceleration: "m/s²", length: "m" };
const POUND_FOOT: SpokenUnits = { force: "lbf", mass: "slug", acceleration: "ft/s²", length: "ft" };

/** Names and numbers for the sentences of one attempt at a set-up. */
export class SetUpSpeech extends Wording {
  readonly result: SetUpResult;
  readonly attempt: SetUpAttempt;

  /** Speaks of one attempt of a result. */
  constructor(result: SetUpResult, attempt: SetUpAttempt, settings: WordSettings) {
    super(settings, {
      values: attempt.values,
      components: new Set(),
      letters: setUpLetters(attempt.setUp, attempt),
      figures: settings.figures,
      mark: settings.mark,
    });
    this.result = result;
    this.attempt = attempt;
  }

  /** The set-up of this attempt. */
  get setUp(): SetUp {
    return this.attempt.setUp;
  }

  /** The units that the problem is set in. */
  get units(): SpokenUnits {
    return this.setUp.units === "SI" ? SI : POUND_FOOT;
  }

  /** A body by id. */
  bodyOf(id: string): SetUpBody {
    return found(this.setUp.bodies, id);
  }

  /** A rope by id. */
  ropeOf(id: string): SetUpRope {
    return found(this.setUp.ropes, id);
  }

  /** A contact by id. */
  contactOf(id: string): Contact {
    return found(this.setUp.contacts, id);
  }

  /** "the crate", or "the tea crate" where another body's name ends the same way. */
  body(id: string): string {
    return spokenName(this.names, this.setUp.bodies.indexOf(this.bodyOf(id)));
  }

  /** A body as it is first spoken of: "A tea crate". */
  newBody(id: string): string {
    return firstName(this.names, this.setUp.bodies.indexOf(this.bodyOf(id)));
  }

  private get names(): readonly string[] {
    return this.setUp.bodies.map((b) => b.name);
  }

  /** "the rope"; "rope 1" by its place in the problem; by its own letter where that would read like another number. */
  rope(id: string): string {
    const { ropes } = this.setUp;
    if (ropes.length === 1) return "the rope";
    const isMisleading = ropes.some((r) => /\d$/.test(r.id) && r.id.startsWith("T") && r.id !== `T${r.number}`);
    return isMisleading ? `rope ${id}` : `rope ${this.ropeOf(id).number}`;
  }

  /** "the slope", "the level surface", "the wall", or the body whose surface it is. Where there are several slopes, the sentence names the body on it. */
  surface(id: string): string {
    const contact = this.contactOf(id);
    if (contact.of !== null) return this.body(contact.of);
    return `the ${SURFACES[lieOf(contact)]}`;
  }

  /** A number with its unit, zero without one. */
  size(x: number, unit: string, ref: string | null = null): Run {
    return x === 0 ? { kind: "value", text: "0", ref } : this.figure(x, unit, ref);
  }

  /** The value of an expression with its unit, zero without one. */
  amount(e: Expr, unit: string, ref: string | null = null): Run {
    return this.size(decimal(e, this.values), unit, ref);
  }

  /** A known size in words: "= 147 N", or "≈ 118 N" where figures are lost. */
  sizeOf(e: Expr, unit: string, ref: string | null = null): Sentence {
    const size = decimal(e, this.values);
    const printed = toFigures(size, this.settings.figures);
    const isSame = Math.abs(printed.value - size) <= 1e-12 * Math.abs(size);
    return say`${isSame ? "=" : "≈"} ${this.number(e, unit, ref)}`;
  }

  /** A given quantity in its digits, with its unit. */
  givenOf(e: Expr, unit: string): Run {
    const q = quantity(e, unit, "given");
    const shown = this.math(q);
    return { kind: "value", text: shown.kind === "math" ? shown.text.replace(/ /g, "\u00a0") : "", ref: null };
  }

  /** A given letter in its digits, with its unit. */
  givenLetter(id: string, unit: string): Run {
    return this.givenOf(symbol(id), unit);
  }
}

/** How a surface lies: what a body on it is pushed by, and which way. */
export type Lie = "level" | "slope" | "wall" | "overhang" | "ceiling";

const SURFACES: Readonly<Record<Lie, string>> = {
  level: "level surface",
  slope: "slope",
  wall: "wall",
  overhang: "overhang",
  ceiling: "ceiling",
};

/** How the surface of a contact lies, by the way its normal force points. */
export function lieOf(contact: Contact): Lie {
  const degrees = degreesOfTurned(contact.normal);
  const isNear = (d: number): boolean => Math.abs(degrees - d) < 1e-9;
  if (isNear(90)) return "level";
  if (isNear(-90)) return "ceiling";
  if (isNear(0) || isNear(180)) return "wall";
  return degrees > 0 ? "slope" : "overhang";
}

function found<T extends { readonly id: string }>(list: readonly T[], id: string): T {
  const one = list.find((x) => x.id === id);
  if (one === undefined) throw new Error(`nothing is called ${id}`);
  return one;
}

/** A sentence with its first letter large. */
export function capital(sentence: Sentence): Sentence {
  const [first, ...rest] = sentence;
  return first?.kind === "text"
    ? [{ kind: "text", text: first.text.charAt(0).toUpperCase() + first.text.slice(1) }, ...rest]
    : sentence;
}

/** Words with a first letter large. */
export const Capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** Nothing said. */
export const silence = say``;
