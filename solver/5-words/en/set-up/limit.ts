// How far a push may go before static friction gives way.
import { say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { frictionWay } from "./problem.ts";

/** What the attempt at a limit is about. */
export function limitSentences(s: SetUpSpeech): Sentence[] {
  const { limit, hypothesis } = s.attempt;
  if (limit === null) return [];
  const contact = s.contactOf(limit.contact);
  const sense = hypothesis.contacts[limit.contact]?.sense ?? 1;
  const against = frictionWay(contact, sense > 0 ? -1 : 1);
  return [
    say`So far nothing slides. Let ${s.letter(limit.push)} ${limit.end === "largest" ? "grow" : "shrink"}, everything else as given, until ${s.body(contact.on)} is on the point of sliding ${against}: friction then acts ${frictionWay(contact, sense)} and is as large as it can be, and ${s.letter(limit.push)} is what is to be found.`,
  ];
}
