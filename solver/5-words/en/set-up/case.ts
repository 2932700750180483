// The next case: what is assumed otherwise than before.
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { alongWords } from "./directions.ts";
import { slidesWords } from "./friction.ts";
import { newMotionWords } from "./motion.ts";
import { hangingWords } from "./opening.ts";

/** What is assumed otherwise than in the attempt before, a clause each. */
function changes(s: SetUpSpeech, before: SetUpSpeech): string[] {
  const [now, then] = [s.attempt.hypothesis, before.attempt.hypothesis];
  const ropes = s.setUp.ropes.flatMap((r) => {
    const state = now.ropes[r.id];
    if (state === then.ropes[r.id]) return [];
    return [state === "slack" ? `${s.rope(r.id)} hangs slack` : `${s.rope(r.id)} is straight and pulls`];
  });
  const contacts = s.setUp.contacts.flatMap((c) => {
    const [state, old] = [now.contacts[c.id], then.contacts[c.id]];
    if (state === undefined || old === undefined) return [];
    const body = s.body(c.on);
    if (state.touch === "lifted") return old.touch === "lifted" ? [] : [`${body} comes off ${s.surface(c.id)}`];
    const touches = old.touch === "lifted" ? [`${body} touches ${s.surface(c.id)}`] : [];
    if (state.grip === "slides")
      return old.grip === "slides" && old.sense === state.sense && touches.length === 0
        ? []
        : [slidesWords(s, c, state.sense)];
    if (state.grip === old.grip) return touches;
    if (state.grip === "sticks") return [`${body} does not slide on ${s.surface(c.id)}`];
    return state.grip === "smooth" ? [`${body} is free to move ${freeWay(alongWords(c.tangent))}`] : touches;
  });
  return [...ropes, ...contacts];
}

const freeWay = (way: string): string => (way.endsWith("the slope") ? "along the slope" : "along the surface");

/** The heading of a further case. */
export function caseHeading(s: SetUpSpeech, before: SetUpSpeech): string {
  const [only, ...others] = changes(s, before);
  return only === undefined || others.length > 0 ? "Another case" : `Another case: ${only}`;
}

/** Its first sentences. */
export function caseSentences(s: SetUpSpeech, before: SetUpSpeech): Sentence[] {
  const all = changes(s, before);
  const what = all.length === 0 ? say`everything is straight and in touch` : listed(all);
  return [
    say`Now assume that ${what}, and everything else as before.`,
    ...(s.setUp.hanging?.kind === "placed" ? hangingWords(s, s.setUp.hanging.at) : []),
    ...newMotionWords(s, before),
  ];
}

/** What stands as it was written before, lines by their numbers. */
export const standsWords = (lines: Sentence): Sentence => say`What this does not change still stands: ${lines}.`;
