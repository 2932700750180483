// What sentences are made with: names of things, numbers in words, maths in a sentence. One for each attempt.
import { toFigures, withUnit } from "../../shared/format/index.ts";
import { decimal } from "../algebra/evaluate.ts";
import type { Values } from "../algebra/evaluate.ts";
import { negative, symbol } from "../algebra/expr.ts";
import type { Expr } from "../algebra/expr.ts";
import type { World, WorldRope } from "../1-bodies/types.ts";
import type { CaseResult } from "../cases/types.ts";
import type { Attempt } from "../4-steps/types.ts";
import { lineTex, lineText } from "./print/line.ts";
import type { LinePrinter } from "./print/types.ts";
import { evenly, withGuard } from "./print/rounding.ts";
import { degreesOf } from "./print/tex.ts";
import type { Run } from "./types.ts";

/** Settings that sentences depend on. */
export interface WordSettings {
  readonly figures: number;
  readonly mark: "." | ",";
  readonly firstAxis: "vertical" | "horizontal";
}

/** Names and numbers for the sentences of one attempt. */
export class Speech {
  readonly result: CaseResult;
  readonly attempt: Attempt;
  readonly settings: WordSettings;
  readonly printer: LinePrinter;
  private readonly mathCache = new Map<string, Run>();

  /** Speaks of one attempt of a result. */
  constructor(result: CaseResult, attempt: Attempt, settings: WordSettings) {
    this.result = result;
    this.attempt = attempt;
    this.settings = settings;
    const components = new Set(attempt.laws.flatMap((l) => l.components.map((c) => c.id)));
    for (const rope of result.world.ropes) components.add(`${rope.id}x`).add(`${rope.id}y`);
    this.printer = { values: attempt.values, components, figures: settings.figures, mark: settings.mark };
  }

  /** The set-up. */
  get world(): World {
    return this.result.world;
  }

  /** The values of this attempt. */
  get values(): Values {
    return this.attempt.values;
  }

  /** The body's name in short: the lantern. */
  get body(): string {
    const words = this.world.body.name.split(/\s+/);
    return words[words.length - 1] ?? this.world.body.name;
  }

  /** A rope by id. */
  ropeOf(id: string): WorldRope {
    const found = this.world.ropes.find((r) => r.id === id);
    if (found === undefined) throw new Error(`no rope ${id}`);
    return found;
  }

  /** "rope 1", or "the rope" where there is only one. */
  rope(id: string): string {
    return this.world.ropes.length === 1 ? "the rope" : `rope ${this.ropeOf(id).number}`;
  }

  /** The same at the start of a sentence. */
  Rope(id: string): string {
    const name = this.rope(id);
    return name.charAt(0).toUpperCase() + name.slice(1);
  }

  /** A size or component as maths in a sentence. */
  letter(id: string): Run {
    return this.math(symbol(id));
  }

  /** An expression as maths in a sentence, angles as letters unless asked otherwise. */
  math(e: Expr, angles: "degrees" | "letters" = "letters"): Run {
    return this.relation("=", [e], angles);
  }

  /** A short equation in a sentence. */
  relation(relation: "=" | ">" | "<", sides: readonly Expr[], angles: "degrees" | "letters" = "letters"): Run {
    const only = sides.length === 1 ? sides[0] : undefined;
    const key = only?.kind === "symbol" ? only.id : null;
    const cached = key === null ? undefined : this.mathCache.get(key);
    if (cached !== undefined) return cached;
    const ready = { relation, sides, angles, rounding: evenly(withGuard(this.settings, 2)) } as const;
    const run: Run = { kind: "math", tex: lineTex(ready, this.printer), text: lineText(ready, this.printer) };
    if (key !== null) this.mathCache.set(key, run);
    return run;
  }

  /** A number of the answer's figures with its unit, as words: 41.2 N. */
  number(e: Expr, unit: string, ref: string | null = null): Run {
    return this.figure(decimal(e, this.values), unit, ref);
  }

  /** A double with its unit, to the answer's figures. */
  figure(x: number, unit: string, ref: string | null = null): Run {
    return {
      kind: "value",
      text: withUnit(toFigures(x, this.settings.figures, { mark: this.settings.mark }), unit),
      ref,
    };
  }

  /** The digits of a given number as written: 4.2 kg; with a sign of −1 those of its opposite. */
  given(id: string, unit: string, sign: 1 | -1 = 1): Run {
    const ready = {
      relation: "=",
      sides: [{ kind: "quantity", of: sign < 0 ? negative(symbol(id)) : symbol(id), unit, role: "given" }],
      angles: "letters",
      rounding: evenly(withGuard(this.settings, 2)),
    } as const;
    return { kind: "value", text: lineText(ready, this.printer).replace(/ /g, "\u00a0"), ref: null };
  }

  /** An acute angle in words: 65°, or about 53.1° for a slope. */
  angle(rope: WorldRope): Run {
    const degrees = degreesOf([{ sign: 1, id: rope.angle }], this.values, this.settings.mark);
    return {
      kind: "value",
      text:
        degrees === null
          ? `about ${withUnit(toFigures((rope.acute.radians * 180) / Math.PI, this.settings.figures, { mark: this.settings.mark }), "°")}`
          : `${degrees.text}°`,
      ref: rope.ownAngle,
    };
  }

  /** A reference to a line. */
  line(id: string): Run {
    return { kind: "line", id };
  }
}
