// What sentences are made with: names of things, numbers in words, maths in a sentence. One for each attempt.
import { toFigures, withUnit } from "../../shared/format/index.ts";
import type { World, WorldRope } from "../1-bodies/types.ts";
import type { CaseResult } from "../cases/types.ts";
import type { Attempt } from "../4-steps/types.ts";
import { degreesOf } from "./print/tex.ts";
import type { Run } from "./types.ts";
import { Wording } from "./wording.ts";
import type { WordSettings } from "./wording.ts";

export type { WordSettings } from "./wording.ts";

/** Names and numbers for the sentences of one attempt. */
export class Speech extends Wording {
  readonly result: CaseResult;
  readonly attempt: Attempt;

  /** Speaks of one attempt of a result. */
  constructor(result: CaseResult, attempt: Attempt, settings: WordSettings) {
    const components = new Set(attempt.laws.flatMap((l) => l.components.map((c) => c.id)));
    for (const rope of result.world.ropes) components.add(`${rope.id}x`).add(`${rope.id}y`);
    super(settings, { values: attempt.values, components, figures: settings.figures, mark: settings.mark });
    this.result = result;
    this.attempt = attempt;
  }

  /** The set-up. */
  get world(): World {
    return this.result.world;
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
}
