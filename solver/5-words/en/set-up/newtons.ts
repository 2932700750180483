// Forces of a problem in pound-force, in newtons as well.
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";

const valueOf = (s: SetUpSpeech, id: string): number => s.values.symbols.get(id)?.decimal ?? 0;

/** Newtons in a pound-force: the weight of 0.453 592 37 kg under 9.806 65 m/s², exactly (NIST Special Publication 811, Appendix B). */
const NEWTONS_IN_POUND_FORCE = 4.4482216152605;

/** The forces of a problem in pound-force as newtons. */
export function inNewtons(s: SetUpSpeech): Sentence[] {
  const { setUp, attempt } = s;
  if (setUp.units === "SI") return [];
  const asked = [
    ...setUp.ropes.map((r) => r.id),
    ...setUp.contacts.flatMap((c) => [c.id, c.friction]),
    ...setUp.pushes.filter((p) => p.size === null).map((p) => p.id),
  ].filter((id) => attempt.solved.some((x) => x.unknown === id) && valueOf(s, id) !== 0);
  if (asked.length === 0) return [];
  const each = asked.map((id) => say`${s.letter(id)} is ${s.figure(valueOf(s, id) * NEWTONS_IN_POUND_FORCE, "N")}`);
  return [say`In newtons, 1 lbf being ${s.figure(NEWTONS_IN_POUND_FORCE, "N")}: ${listed(each)}.`];
}
