// The forces on each body with the reason for each, and those that are absent with the reason for that.
import type { Contact } from "../../../1-bodies/types.ts";
import type { SetUpForce } from "../../../2-forces/types.ts";
import { quarterTurn } from "../../../algebra/turned.ts";
import { say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import { Capital } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { alongWords, wayWords } from "./directions.ts";
import type { NamedOpening } from "./opening.ts";

/** A paragraph of forces for each body of the attempt; `prefix` keeps ids of further attempts apart. */
export function forcesOfBody(s: SetUpSpeech, prefix: string): NamedOpening[] {
  return s.setUp.bodies.map((body) => {
    const acting = s.attempt.forces.filter((f) => f.on === body.id);
    const said = new Set<string>();
    const sentences = acting.flatMap((f) => {
      const key = `${f.kind}${f.ref}`;
      const again = said.has(key);
      said.add(key);
      return again ? [] : [forceSentence(s, f, acting.filter((o) => o.ref === f.ref && o.kind === f.kind).length)];
    });
    return {
      id: `${prefix}forces.${body.id}`,
      part: "forces",
      heading: `The forces on ${s.body(body.id)}`,
      sentences: [...(acting.length === 0 ? [say`Nothing acts on it.`] : sentences), ...absent(s, body.id)],
      refers: [...new Set(acting.map((f) => f.ref))],
    };
  });
}

function forceSentence(s: SetUpSpeech, f: SetUpForce, strands: number): Sentence {
  const body = s.body(f.on);
  switch (f.kind) {
    case "weight":
      return say`Weight: gravity pulls ${body} straight down with ${s.math(f.size)} = ${s.number(f.size, s.units.force, f.ref)}. It acts from afar; every other force comes from something that touches ${body}.`;
    case "tension":
      return strands > 1
        ? say`Tension ${s.letter(f.ref)}, twice: ${s.rope(f.from)} runs round ${body}, and each of its two strands pulls, ${wayWords(f.toward)}.`
        : say`Tension ${s.letter(f.ref)}: ${s.rope(f.from)} pulls ${body} along itself, ${wayWords(f.toward)}.`;
    case "push":
      return f.unknown === null
        ? say`Push ${s.letter(f.ref)}, ${wayWords(f.toward)}, of the given size ${s.givenLetter(f.ref, s.units.force)}.`
        : say`Push ${s.letter(f.ref)}, ${wayWords(f.toward)}, of a size to be found.`;
    case "normal":
      return say`Normal force ${s.letter(f.ref)}: ${otherSide(s, f)} pushes ${body} at right angles to where they touch, ${wayWords(f.toward)}. It is as large as it has to be${partner(s, f)}.`;
    case "friction":
      return frictionSentence(s, f);
  }
}

/** What touches the body: a surface, or another body. */
const otherSide = (s: SetUpSpeech, f: SetUpForce): string => (f.by === null ? s.surface(f.from) : s.body(f.by));

/** A force between two bodies has a partner on the other. */
const partner = (s: SetUpSpeech, f: SetUpForce): string =>
  f.by === null ? "" : `, and ${s.body(f.on)} pushes back on ${s.body(f.by)} just as hard`;

function frictionSentence(s: SetUpSpeech, f: SetUpForce): Sentence {
  const contact = s.contactOf(f.from);
  const state = s.attempt.hypothesis.contacts[f.from];
  const way = alongWords(f.toward);
  const against = alongWords(quarterTurn(f.toward, 2));
  if (f.by !== null && contact.of === f.on)
    return say`Friction ${s.letter(f.ref)} of ${s.body(f.by)}, ${way}: the partner of the friction on ${s.body(f.by)}, equal and opposite.`;
  if (s.attempt.limit !== null && s.attempt.limit.contact === contact.id)
    return say`Static friction ${s.letter(f.ref)} at its largest, ${way}: at this limit ${s.body(f.on)} is on the point of sliding ${against}.`;
  if (state?.grip === "slides")
    return say`Kinetic friction ${s.letter(f.ref)}, ${way}: ${s.body(f.on)} slides ${against}${seenFrom(s, contact)}, and kinetic friction acts against the sliding.`;
  const pull = s.values.symbols.get(f.ref)?.decimal ?? 0;
  return pull === 0
    ? say`Static friction ${s.letter(f.ref)}: only as large as it has to be to keep ${s.body(f.on)} from sliding; here, as it turns out, nothing calls for it.`
    : say`Static friction ${s.letter(f.ref)}, ${way}: without it ${s.body(f.on)} would start to slide ${against}${seenFrom(s, contact)}. It is only as large as it has to be to prevent that.`;
}

const seenFrom = (s: SetUpSpeech, contact: Contact): string => (contact.of === null ? "" : ` on ${s.body(contact.of)}`);

function absent(s: SetUpSpeech, body: string): Sentence[] {
  const { setUp, attempt } = s;
  const own = setUp.contacts.filter((c) => c.on === body || c.of === body);
  const sentences: Sentence[] = [];
  const kind = s.bodyOf(body);
  if (kind.weight.decimal === 0 && !kind.massless) sentences.push(say`No weight: g is zero here.`);
  else if (kind.massless) sentences.push(say`No weight, since it has no mass.`);
  for (const c of own) {
    const state = attempt.hypothesis.contacts[c.id];
    const other = c.on === body ? s.surface(c.id) : s.body(c.on);
    if (state?.touch === "lifted") sentences.push(say`No normal force from ${other}: they do not touch any more.`);
    else if (c.staticFriction === null) sentences.push(say`No friction at ${other}: it is smooth.`);
  }
  if (own.length === 0 && !kind.massless)
    sentences.push(say`No normal force and no friction: ${s.body(body)} touches no surface.`);
  for (const rope of setUp.ropes)
    if (attempt.hypothesis.ropes[rope.id] === "slack" && rope.pulls.some((p) => p.on === body))
      sentences.push(say`${Capital(s.rope(rope.id))} hangs loose, and a loose rope pulls on nothing.`);
  return sentences;
}
