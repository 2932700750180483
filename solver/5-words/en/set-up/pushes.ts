// Forces from outside: a push where it presses the body on, a pull where it would draw it off what it touches.
import type { SetUpPush } from "../../../1-bodies/types.ts";
import { degreesOfTurned } from "../../../algebra/turned.ts";
import { say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { headingWords } from "./directions.ts";

/** "push" or "pull". */
export function pushWord(s: SetUpSpeech, push: SetUpPush): "push" | "pull" {
  const normals = s.setUp.contacts.filter((c) => c.on === push.on).map((c) => degreesOfTurned(c.normal));
  const away = (normals.length > 0 ? normals : [90]).map((n) =>
    Math.cos(((degreesOfTurned(push.toward) - n) * Math.PI) / 180),
  );
  return away.some((x) => x > 1e-9) && !away.some((x) => x < -1e-9) ? "pull" : "push";
}

/** "A pull P of 70 N acts on the crate, up to the right at 30° from the horizontal." */
export function pushSentence(s: SetUpSpeech, push: SetUpPush): Sentence {
  const size = push.size === null ? say`of a size to be found` : say`of ${s.givenLetter(push.id, s.units.force)}`;
  return say`A ${pushWord(s, push)} ${s.letter(push.id)} ${size} acts on ${s.body(push.on)}, ${headingWords(s, push.toward.heading)}.`;
}
