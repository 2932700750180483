// The accelerations that were found, body by body, as sentences tell them.
import type { MotionPart } from "../../../3-equations/types.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import { signedWay } from "./directions.ts";

/** A found part of a body's acceleration. */
export interface Moved extends MotionPart {
  readonly body: string;
  readonly size: number;
  /** The way it points, whatever was counted positive, and from where it is seen if not from the ground. */
  readonly way: string;
}

/** The parts of a motion that are a body's own, not those of what carries it. */
export function ownParts(s: SetUpSpeech, body: string): readonly MotionPart[] {
  const { acceleration } = s.bodyOf(body).letters;
  const parts = s.attempt.equations.motions.find((m) => m.body === body)?.own ?? [];
  return parts.filter((p) => p.letter.startsWith(acceleration) && /^[xy]?$/.test(p.letter.slice(acceleration.length)));
}

/** Every acceleration that was found. What rides on another body has that one's. */
export function movedParts(s: SetUpSpeech): readonly Moved[] {
  return s.attempt.equations.motions.flatMap((m) => {
    const own = ownParts(s, m.body);
    const told = own.length > 0 || m.own.length !== 1 ? own : m.own;
    const { freedom } = s.bodyOf(m.body);
    const base = freedom.kind === "line" ? freedom.seenFrom : null;
    const isFound = (letter: string): boolean => s.attempt.solved.some((x) => x.unknown === letter);
    const from = own.length > 0 && base !== null ? s.body(base) : m.carried.length > 0 ? "the supports" : null;
    return told
      .filter((p) => p.unknown && isFound(p.letter))
      .map((p) => {
        const size = s.values.symbols.get(p.letter)?.decimal ?? 0;
        return {
          ...p,
          body: m.body,
          size,
          way: `${signedWay(p.toward, size)}${from === null ? "" : `, seen from ${from}`}`,
        };
      });
  });
}
