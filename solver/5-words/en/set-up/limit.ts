// How far a push or a load may go before static friction gives way.
import { quotient, symbol } from "../../../algebra/expr.ts";
import type { SetUpBody } from "../../../1-bodies/types.ts";
import { say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { frictionWay, slidingWay } from "./friction.ts";
import { pushWord } from "./pushes.ts";

/** The body whose weight is sought; undefined where it is a push. */
function loadOf(s: SetUpSpeech): SetUpBody | undefined {
  const letter = s.attempt.limit?.letter;
  return s.setUp.pushes.some((p) => p.id === letter)
    ? undefined
    : s.setUp.bodies.find((b) => b.letters.weightId === letter);
}

/** The heading of a limit. */
export function limitHeading(s: SetUpSpeech): string {
  const { limit } = s.attempt;
  const most = limit?.end === "largest";
  const load = loadOf(s);
  if (load !== undefined) return `How ${most ? "heavy" : "light"} may ${s.body(load.id)} be?`;
  const push = s.setUp.pushes.find((p) => p.id === limit?.letter);
  const word = push === undefined ? "push" : pushWord(s, push);
  const which = s.setUp.pushes.length > 1 ? ` ${limit?.letter ?? ""}` : "";
  return `How ${most ? "large" : "small"} may the ${word}${which} be?`;
}

/** What the attempt at a limit is about. */
export function limitSentences(s: SetUpSpeech): Sentence[] {
  const { limit, hypothesis } = s.attempt;
  if (limit === null) return [];
  const contact = s.contactOf(limit.contact);
  const sense = hypothesis.contacts[limit.contact]?.sense ?? 1;
  const load = loadOf(s);
  const what =
    load === undefined
      ? say`${s.letter(limit.letter)}`
      : say`the weight ${s.letter(limit.letter)} of ${s.body(load.id)}`;
  const on = contact.of === null ? "" : ` on ${s.body(contact.of)}`;
  return [
    say`Let ${what} ${limit.end === "largest" ? "grow" : "shrink"}, everything else as given, until ${s.body(contact.on)} is on the point of sliding ${slidingWay(contact, sense)}${on}. Friction then acts on it ${frictionWay(contact, sense)} and is as large as it can be; ${s.letter(limit.letter)} is to be found.`,
  ];
}

/** What a limit of a weight is as a mass, where the problem speaks of masses. */
export function limitMeaning(s: SetUpSpeech): Sentence[] {
  const { limit } = s.attempt;
  const load = loadOf(s);
  if (limit === null || load?.givenBy !== "mass") return [];
  const mass = quotient(symbol(limit.letter), symbol("g"));
  return [say`That is a mass of ${s.number(mass, s.units.mass)}.`];
}
