// What sentences about a set-up are made with: names of bodies, ropes and surfaces, directions in words.
import type { Contact, SetUp, SetUpBody, SetUpRope } from "../../1-bodies/types.ts";
import type { SetUpResult } from "../../cases/types.ts";
import type { SetUpAttempt } from "../../4-steps/types.ts";
import { quantity, symbol } from "../../algebra/expr.ts";
import type { Expr } from "../../algebra/expr.ts";
import { say } from "../sentence.ts";
import type { Run, Sentence } from "../types.ts";
import { Wording } from "../wording.ts";
import type { WordSettings } from "../wording.ts";
import { setUpLetters } from "./letters.ts";

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
    const { name } = this.bodyOf(id);
    const short = lastWord(name);
    const shared = this.setUp.bodies.filter((b) => lastWord(b.name) === short).length > 1;
    return `the ${shared ? name : short}`;
  }

  /** "the rope", "rope 1", "rope S". */
  rope(id: string): string {
    if (this.setUp.ropes.length === 1) return "the rope";
    const { number } = this.ropeOf(id);
    return id === `T${number}` ? `rope ${number}` : `rope ${id}`;
  }

  /** "the slope", "the level surface", "the wall", or the body whose surface it is. */
  surface(id: string): string {
    const contact = this.contactOf(id);
    if (contact.of !== null) return this.body(contact.of);
    const { side, rise } = contact.tangent.heading;
    const turned = contact.tangent.quarters % 2 === 1;
    if (side !== 0 && rise !== 0) return "the slope";
    return (side === 0) !== turned ? "the wall" : "the level surface";
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

const lastWord = (name: string): string => {
  const words = name.trim().split(/\s+/);
  return words[words.length - 1] ?? name;
};

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
