// Passages from the numbers on: sizes, answers, checks.
import { listed, say } from "../../sentence.ts";
import { Capital, capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { alongWords, oppositeWay, wayWords } from "./directions.ts";
import { fitWords } from "./fits.ts";
import { limitMeaning } from "./limit.ts";
import { movedParts } from "./moved.ts";
import { inNewtons } from "./newtons.ts";
import type { SetUpSpeaker } from "./passage.ts";

/** Numbers once. */
export const sizes: SetUpSpeaker<"sizes"> = (d, _, s) => {
  const { holds, limit } = s.attempt;
  return {
    part: holds ? "answer" : "algebra",
    heading: holds ? (limit === null ? "Numbers, once" : "Numbers") : "What it would come to",
    before: !holds
      ? [say`The numbers show whether that can be.`]
      : limit === null
        ? [
            say`Now the numbers go in, once and with their units. Working numbers keep two guard figures or more, and nothing rounded is used again.`,
          ]
        : [],
    after: [],
    refers: d.unknowns,
  };
};

/** The answers. */
export const allAnswers: SetUpSpeaker<"all-answers"> = (d, _, s) => ({
  part: s.attempt.limit === null ? "answer" : "check",
  heading: s.attempt.limit === null ? (d.unknowns.length > 1 ? "The answers" : "The answer") : "The limit",
  before: [],
  after: s.attempt.limit === null ? meaning(s) : limitMeaning(s),
  refers: d.unknowns,
});

const valueOf = (s: SetUpSpeech, id: string): number => s.values.symbols.get(id)?.decimal ?? 0;

/** What the answers say of the motion, of what carries nothing, and in newtons. */
function meaning(s: SetUpSpeech): Sentence[] {
  const { attempt, setUp } = s;
  const idle = setUp.ropes
    .filter((r) => attempt.hypothesis.ropes[r.id] === "taut" && isFound(s, r.id) && valueOf(s, r.id) === 0)
    .map((r) => say`${Capital(s.rope(r.id))} is straight but carries nothing: it is on the point of going slack.`);
  const leaving = setUp.contacts
    .filter(
      (c) => attempt.hypothesis.contacts[c.id]?.touch === "touching" && isFound(s, c.id) && valueOf(s, c.id) === 0,
    )
    .map(
      (c) =>
        say`${Capital(s.body(c.on))} still touches ${s.surface(c.id)}, but only just: nothing presses them together.`,
    );
  const reversed = setUp.pushes
    .filter((p) => p.size === null && valueOf(s, p.id) < 0)
    .map(
      (p) =>
        say`${s.letter(p.id)} came out negative: to keep the motion as given, it has to act the other way, ${wayWords(oppositeWay(p.toward))}.`,
    );
  return [...motionMeaning(s), ...fitWords(s), ...idle, ...leaving, ...reversed, ...inNewtons(s)];
}

const isFound = (s: SetUpSpeech, id: string): boolean => s.attempt.solved.some((x) => x.unknown === id);

/** Which way each body accelerates; bodies that do alike in one sentence. */
function motionMeaning(s: SetUpSpeech): Sentence[] {
  const parts = movedParts(s);
  const moving = parts.filter((p) => p.size !== 0);
  const sentences = [...new Set(moving.map((p) => p.way))].map((way) => {
    const who = moving.filter((p) => p.way === way);
    const negative = [...new Set(who.filter((p) => p.size < 0).map((p) => p.letter))];
    const counted = who.find((p) => p.size < 0)?.toward;
    const why =
      counted === undefined
        ? say``
        : say`: ${listed(negative.map((l) => s.letter(l)))}, counted positive ${alongWords(counted)}, came out negative`;
    return capital(
      say`${listed(who.map((p) => s.body(p.body)))} ${who.length > 1 ? "accelerate" : "accelerates"} ${way}${why}.`,
    );
  });
  const still = parts.filter((p) => p.size === 0 && !moving.some((o) => o.body === p.body));
  const who = [...new Set(still.map((p) => p.body))].map((b) => s.body(b));
  return who.length === 0
    ? sentences
    : [...sentences, capital(say`${listed(who)} ${who.length > 1 ? "do" : "does"} not accelerate.`)];
}

/** Put back into the laws. */
export const checkLaws: SetUpSpeaker<"check-laws"> = (_, p) => ({
  part: "check",
  heading: "Check: put back",
  before: [say`Put the sizes back into the laws.`],
  after: [
    p.steps.length > 1 ? say`Each of these holds to the last figure shown.` : say`It holds to the last figure shown.`,
  ],
  refers: [],
});

/** The conditions the case rests on. */
export const checkConditions: SetUpSpeaker<"check-conditions"> = (d, _, s) => ({
  part: "check",
  heading: "Check: does static friction suffice?",
  before: [
    say`It was assumed that static friction keeps ${listed(d.contacts.map((c) => stickWords(s, c)))} from sliding. Compare it with the largest it can be.`,
  ],
  after: [...d.contacts.flatMap((id, i) => contactVerdict(s, id, i === 0)), ...steepest(s), ...rivalWords(s)],
  refers: d.contacts.map((id) => s.contactOf(id).friction),
});

function stickWords(s: SetUpSpeech, id: string): string {
  const c = s.contactOf(id);
  return c.of === null ? s.body(c.on) : `${s.body(c.on)} on ${s.body(c.of)}`;
}

function contactVerdict(s: SetUpSpeech, id: string, first: boolean): Sentence[] {
  const c = s.contactOf(id);
  const most = valueOf(s, c.coefficients.static) * valueOf(s, c.id);
  const friction = valueOf(s, c.friction);
  const on = c.of === null ? "" : ` on ${s.body(c.of)}`;
  // What is not settled is not judged.
  if (s.attempt.open.some((u) => (u === c.friction || u === c.id) && !s.attempt.settled.has(u))) return [];
  if (friction === 0) return [say`Nothing makes ${s.body(c.on)} slide${on}, so no friction is called for.`];
  if (Math.abs(most - friction) <= 1e-9 * Math.abs(most))
    return [
      say`${Capital(s.body(c.on))} is on the very point of sliding${on}: static friction is as large as it can be, and any more to hold would be too much.`,
    ];
  const reminder = first
    ? say` Static friction is not ${s.letter(c.coefficients.static)} times the normal force: that is only its largest size.`
    : say``;
  return [
    say`${Capital(s.body(c.on))} needs ${s.figure((100 * friction) / most, "%")} of the largest static friction there can be${on}, so it does not slide.${reminder}`,
  ];
}

/** Where another case holds as well, it is said. */
function rivalWords(s: SetUpSpeech): Sentence[] {
  const { rival } = s.result;
  if (rival === null) return [];
  const states = s.setUp.contacts.flatMap((c) => {
    const grip = rival.contacts[c.id]?.grip;
    if (grip === "sticks") return [say`${s.body(c.on)} stays at rest on ${s.surface(c.id)}`];
    return grip === "slides" ? [say`${s.body(c.on)} slides on ${s.surface(c.id)}`] : [];
  });
  return [
    say`One more case fulfils every law: ${listed(states)}. Which of the two happens depends on how it is started; that static friction is larger than kinetic leaves room for both.`,
  ];
}

/** With nothing but weight on a slope, the angle alone decides. */
function steepest(s: SetUpSpeech): Sentence[] {
  const { setUp, attempt } = s;
  const [contact] = setUp.contacts;
  const plain =
    setUp.contacts.length === 1 && setUp.ropes.length === 0 && setUp.pushes.length === 0 && setUp.bodies.length === 1;
  if (!plain || contact?.staticFriction == null || attempt.equations.motions.some((m) => m.carried.length > 0))
    return [];
  const { heading, quarters } = contact.tangent;
  if (heading.side === 0 || heading.rise === 0 || quarters !== 0 || valueOf(s, contact.id) === 0) return [];
  const degrees = (Math.atan(contact.staticFriction.decimal) * 180) / Math.PI;
  return [
    say`With the weight alone to hold, the mass cancels: friction over normal force is the tangent of the slope's angle. So ${s.body(contact.on)} stays at rest up to the angle whose tangent is ${s.letter(contact.coefficients.static)}, ${s.figure(degrees, "°")}, whatever its mass.`,
  ];
}
