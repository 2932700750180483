// Passages from the numbers on: sizes, answers, checks.
import { listed, say } from "../../sentence.ts";
import { Capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { alongWords } from "./directions.ts";
import { limitMeaning } from "./limit.ts";
import type { SetUpSpeaker } from "./passage.ts";

/** Numbers once. */
export const sizes: SetUpSpeaker<"sizes"> = (d, _, s) => ({
  part: s.attempt.holds ? "answer" : "algebra",
  heading: s.attempt.holds ? "Numbers, once" : "What it would come to",
  before: [
    s.attempt.holds
      ? say`Now the numbers go in, once and with their units. Working numbers keep two guard figures or more, and nothing rounded is used again.`
      : say`The numbers show whether that can be.`,
  ],
  after: [],
  refers: d.unknowns,
});

/** The answers. */
export const allAnswers: SetUpSpeaker<"all-answers"> = (d, _, s) => ({
  part: s.attempt.limit === null ? "answer" : "check",
  heading: s.attempt.limit === null ? (d.unknowns.length > 1 ? "The answers" : "The answer") : "The limit",
  before: [],
  after: s.attempt.limit === null ? meaning(s) : limitMeaning(s),
  refers: d.unknowns,
});

/** What the answers say of the motion and of what carries nothing. */
function meaning(s: SetUpSpeech): Sentence[] {
  const { attempt, setUp } = s;
  const value = (id: string): number => s.values.symbols.get(id)?.decimal ?? 0;
  const moving = attempt.equations.motions.flatMap((m) =>
    m.own
      .filter((p) => p.unknown && attempt.solved.some((x) => x.unknown === p.letter))
      .map((p) => ({ body: m.body, size: value(p.letter), letter: p.letter, toward: p.toward })),
  );
  const said = new Set<string>();
  const motion = moving.flatMap(({ body, size, letter, toward }) => {
    if (said.has(`${body}${letter}`)) return [];
    said.add(`${body}${letter}`);
    if (size === 0)
      return [say`${Capital(s.body(body))} has no acceleration along that line: ${s.letter(letter)} = 0.`];
    const way = alongWords(size > 0 ? toward : { ...toward, quarters: ((toward.quarters + 2) % 4) as 0 | 1 | 2 | 3 });
    return [
      say`${Capital(s.body(body))} accelerates ${way}${size < 0 ? `, the other way than counted positive` : ""}.`,
    ];
  });
  const idle = setUp.ropes
    .filter(
      (r) =>
        attempt.hypothesis.ropes[r.id] === "taut" &&
        value(r.id) === 0 &&
        attempt.solved.some((x) => x.unknown === r.id),
    )
    .map((r) => say`${Capital(s.rope(r.id))} is straight but carries nothing: it is on the point of going slack.`);
  const reversed = setUp.pushes
    .filter((p) => p.size === null && value(p.id) < 0)
    .map((p) => say`${s.letter(p.id)} comes out negative: it has to act the other way.`);
  return [...motion, ...idle, ...reversed];
}

/** Put back into the laws. */
export const checkLaws: SetUpSpeaker<"check-laws"> = (_, __, s) => ({
  part: "check",
  heading: "Check: put back",
  before: [say`Put the sizes back into the laws.`],
  after: [say`Each law holds to the last figure shown${s.setUp.bodies.length > 1 ? ", for every body" : ""}.`],
  refers: [],
});

/** The conditions the case rests on. */
export const checkConditions: SetUpSpeaker<"check-conditions"> = (d, _, s) => ({
  part: "check",
  heading: "Check: does it stay at rest?",
  before: [
    say`It was assumed that static friction holds ${listed(d.contacts.map((c) => s.body(s.contactOf(c).on)))}. Compare it with the largest it can be.`,
  ],
  after: [
    ...d.contacts.map((id) => {
      const c = s.contactOf(id);
      const [f, n, mu] = [c.friction, c.id, c.coefficients.static].map(
        (x) => s.values.symbols.get(x)?.decimal ?? 0,
      ) as [number, number, number];
      const most = mu * n;
      if (Math.abs(most - f) <= 1e-9 * Math.abs(most))
        return say`${Capital(s.body(c.on))} is on the very point of sliding.`;
      return f === 0 || most === 0
        ? say`Nothing calls for friction here, so nothing slides.`
        : say`Friction is at ${s.figure((100 * f) / most, "%")} of the largest it can be, so the assumption was right. Static friction is not ${s.letter(c.coefficients.static)} times the normal force: that is only its largest size.`;
    }),
    ...ropeAngle(s),
    ...rivalWords(s),
  ],
  refers: d.contacts.map((id) => s.contactOf(id).friction),
});

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
function ropeAngle(s: SetUpSpeech): Sentence[] {
  const { setUp, attempt } = s;
  const [contact] = setUp.contacts;
  const plain =
    setUp.contacts.length === 1 && setUp.ropes.length === 0 && setUp.pushes.length === 0 && setUp.bodies.length === 1;
  if (!plain || contact?.staticFriction == null || attempt.equations.motions.some((m) => m.carried.length > 0))
    return [];
  const { heading, quarters } = contact.tangent;
  if (heading.side === 0 || heading.rise === 0 || quarters !== 0) return [];
  const steepest = (Math.atan(contact.staticFriction.decimal) * 180) / Math.PI;
  return [
    say`With the weight alone to hold, the mass cancels: friction over normal force is the tangent of the slope's angle. It holds up to the angle whose tangent is ${s.letter(contact.coefficients.static)}, ${s.figure(steepest, "°")}.`,
  ];
}
