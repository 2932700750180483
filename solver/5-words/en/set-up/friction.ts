// Why friction acts the way it does.
import type { Contact } from "../../../1-bodies/types.ts";
import type { SetUpForce } from "../../../2-forces/types.ts";
import { say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { alongWords, oppositeWay, signedWay } from "./directions.ts";

/** One friction force on one body; `again` where its partner was told before. */
export function frictionSentence(s: SetUpSpeech, f: SetUpForce, again: boolean): Sentence {
  const contact = s.contactOf(f.from);
  const letter = s.letter(f.ref);
  const role = frictionRole(s, f.ref);
  const kind = role === "kinetic" ? "Kinetic friction" : "Static friction";
  if (again) {
    const way = role === "undecided" || role === "none" ? "" : `, ${alongWords(f.toward)}`;
    return say`${kind} ${letter} again, as its partner by Newton's third law: ${s.body(f.by ?? f.on)} acts on ${s.body(f.on)} just as hard the other way${way}${role === "kinetic" && f.on === contact.on ? ", against the sliding" : ""}.`;
  }
  const body = s.body(contact.on);
  // The reason is told of the body that lies on the other: it slides, or would.
  const own = f.on === contact.on ? f.toward : oppositeWay(f.toward);
  const against = `${alongWords(oppositeWay(own))}${on(s, contact)}`;
  const acts = alongWords(f.toward);
  // Told first of the body below: it is dragged along.
  if (f.on !== contact.on && role !== "none" && role !== "undecided") {
    const below = s.body(f.on);
    const start = say`${kind} ${letter} of ${body} on ${below}, ${acts}${role === "largest" ? ", at its largest" : ""}:`;
    const drags = `it drags ${below} the same way`;
    if (role === "kinetic") return say`${start} ${body} slides ${against}, and ${drags}.`;
    return role === "largest"
      ? say`${start} ${body} is on the point of sliding ${against}, and ${drags}.`
      : say`${start} without it ${body} would start to slide ${against}; ${drags}.`;
  }
  if (role === "largest")
    return say`${kind} ${letter} at its largest, ${acts}: here ${body} is on the point of sliding ${against}.`;
  if (role === "kinetic")
    return say`${kind} ${letter}, ${acts}: ${body} slides ${against}, and kinetic friction acts against the sliding.`;
  if (role === "none")
    return say`${kind} ${letter}: only as large as it has to be to keep ${body} from sliding${on(s, contact)}. Nothing here makes it slide, so it will come out zero.`;
  if (role === "undecided")
    return say`${kind} ${letter}: it keeps ${body} from sliding${on(s, contact)}. How large it is, and even which way it acts, remains to be seen; it is drawn ${alongWords(f.toward)}.`;
  return say`${kind} ${letter}, ${acts}: without it ${body} would start to slide ${against}. It is only as large as it has to be to prevent that.`;
}

/** What a friction force does in an attempt: it acts against sliding, it is at its largest, it has nothing to do, it cannot be told, or it holds. */
type Role = "kinetic" | "largest" | "none" | "undecided" | "holds";

/** The role of a friction force, by its letter. */
export function frictionRole(s: SetUpSpeech, friction: string): Role {
  const contact = s.setUp.contacts.find((c) => c.friction === friction);
  if (contact !== undefined && s.attempt.limit?.contact === contact.id) return "largest";
  if (s.attempt.hypothesis.contacts[contact?.id ?? ""]?.grip === "slides") return "kinetic";
  if (isUndecided(s, friction)) return "undecided";
  return sizeOf(s, friction) === 0 ? "none" : "holds";
}

const sizeOf = (s: SetUpSpeech, friction: string): number => s.values.symbols.get(friction)?.decimal ?? 0;

/** Whether nothing settles the friction, so that its direction cannot be told. */
const isUndecided = (s: SetUpSpeech, friction: string): boolean =>
  !s.attempt.settled.has(friction) && !s.attempt.solved.some((x) => x.unknown === friction);

const on = (s: SetUpSpeech, contact: Contact): string => (contact.of === null ? "" : ` on ${s.body(contact.of)}`);

/** The way in which the body of a contact slides, or would slide, while friction acts with `sense` along its tangent. */
export const slidingWay = (contact: Contact, sense: 1 | -1): string => signedWay(contact.tangent, -sense);

/** The way in which the friction of a contact acts on its body. */
export const frictionWay = (contact: Contact, sense: 1 | -1): string => signedWay(contact.tangent, sense);

/** "the crate slides down the slope", with what it slides on where that is a body. */
export function slidesWords(s: SetUpSpeech, contact: Contact, sense: 1 | -1): string {
  return `${s.body(contact.on)} slides ${slidingWay(contact, sense)}${on(s, contact)}`;
}
