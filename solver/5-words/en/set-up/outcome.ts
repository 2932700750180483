// The outcome of a set-up in a sentence or two, and what an impossible one comes to.
import { symbol } from "../../../algebra/expr.ts";
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import { capital } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { movedParts } from "./moved.ts";
import type { Moved } from "./moved.ts";

/** What the problem comes to at its present values. */
export function setUpOutcome(s: SetUpSpeech): Sentence {
  const { result, setUp, attempt } = s;
  if (result.kind === "impossible") return say`Not possible: ${whyNot(s)}.`;
  const solved = new Set(attempt.solved.map((x) => x.unknown));
  const forces = [
    ...setUp.ropes.map((r) => r.id).filter((id) => attempt.hypothesis.ropes[id] === "taut"),
    ...setUp.contacts
      .filter((c) => attempt.hypothesis.contacts[c.id]?.touch === "touching")
      .flatMap((c) => [c.id, c.friction]),
    ...setUp.pushes.filter((p) => p.size === null).map((p) => p.id),
  ].filter((id) => solved.has(id) || attempt.settled.has(id));
  const sizes = forces.map((id) => say`${s.letter(id)} is ${s.amount(symbol(id), s.units.force, id)}`);
  const states = [
    ...setUp.ropes.filter((r) => attempt.hypothesis.ropes[r.id] === "slack").map((r) => say`${s.rope(r.id)} is slack`),
    ...setUp.contacts
      .filter((c) => attempt.hypothesis.contacts[c.id]?.touch === "lifted")
      .map((c) => say`${s.body(c.on)} does not touch ${s.surface(c.id)}`),
  ];
  const motions = [...motionWords(s), ...restWords(s)];
  const left = attempt.open.filter((u) => !attempt.settled.has(u));
  const open =
    left.length === 0
      ? []
      : [say`${listed(left.map((u) => s.letter(u)))} ${left.length > 1 ? "are" : "is"} not determined`];
  const happens = [...motions, ...states].flatMap((c, i) => say`${i === 0 ? "" : "; "}${c}`);
  const comesTo = listed([...sizes, ...open]);
  const sentences = [happens, comesTo].filter((c) => c.length > 0);
  if (sentences.length === 0) return say`Nothing is left to be found.`;
  return sentences.flatMap((c, i) => say`${i === 0 ? "" : " "}${capital(say`${c}.`)}`);
}

/** How fast everything speeds up, and which way: what does alike together. */
function motionWords(s: SetUpSpeech): Sentence[] {
  const parts = movedParts(s);
  const moving = parts.filter((p) => p.size !== 0);
  const tell = (p: Moved): Sentence => say`at ${s.figure(Math.abs(p.size), s.units.acceleration, p.letter)} ${p.way}`;
  const key = (p: Moved): string => JSON.stringify(tell(p).map((r) => ("text" in r ? r.text : "")));
  const each = [...new Set(moving.map(key))].map((k) => {
    const who = moving.filter((p) => key(p) === k);
    const [first] = who;
    const names = listed(who.map((p) => s.body(p.body)));
    return first === undefined ? [] : say`${names} ${who.length > 1 ? "accelerate" : "accelerates"} ${tell(first)}`;
  });
  const still = [...new Set(parts.map((p) => p.body))].filter((b) => !moving.some((p) => p.body === b));
  if (still.length === 0) return each;
  return [...each, say`${listed(still.map((b) => s.body(b)))} ${still.length > 1 ? "do" : "does"} not accelerate`];
}

/** What static friction, or nothing to move it, keeps at rest where it need not have stayed. */
function restWords(s: SetUpSpeech): Sentence[] {
  const resting = s.setUp.bodies.filter((b) => {
    const motion = s.attempt.equations.motions.find((m) => m.body === b.id);
    const isHeld = s.setUp.contacts.some(
      (c) => c.on === b.id && s.attempt.hypothesis.contacts[c.id]?.grip === "sticks",
    );
    return isHeld && b.freedom.kind === "line" && b.freedom.value === null && motion?.own.length === 0;
  });
  const still =
    s.setUp.frame.x.decimal === 0 && s.setUp.frame.y.decimal === 0 ? "at rest" : "where it is on its support";
  return resting.length === 0
    ? []
    : [say`${listed(resting.map((b) => s.body(b.id)))} ${resting.length > 1 ? "stay" : "stays"} ${still}`];
}

function whyNot(s: SetUpSpeech): Sentence {
  const { setUp, attempt } = s;
  const { hanging } = setUp;
  if (hanging?.kind === "too-short")
    return say`the ropes are too short to meet: together ${s.figure(hanging.reach, s.units.length)}, with ${s.figure(hanging.distance, s.units.length)} between their anchors`;
  if (hanging?.kind === "nowhere") return say`no rope can hold ${s.body(setUp.bodies[0]?.id ?? "")}`;
  const [first] = attempt.breaches;
  if (first?.kind === "pushing-rope") return say`${s.rope(first.id)} would have to push, and nothing else can give way`;
  if (first?.kind === "pulling-surface")
    return say`${s.surface(first.id)} would have to pull ${s.body(s.contactOf(first.id).on)}`;
  const allAtRest = setUp.bodies.every(
    (b) => b.freedom.kind === "rest" || (b.freedom.kind === "line" && !b.freedom.stated),
  );
  return say`no forces of ropes and surfaces can keep everything ${allAtRest ? "at rest" : "moving as it was said to"}`;
}

/** The paragraph of an impossible problem. */
export function impossibleSentences(s: SetUpSpeech): Sentence[] {
  const resting = s.setUp.bodies.filter((b) => b.freedom.kind === "rest" && b.kind !== "knot");
  const names = listed(resting.map((b) => s.body(b.id)));
  const [was, it] = resting.length > 1 ? ["were", "one of them"] : ["was", "it"];
  const advice =
    resting.length > 0 && s.setUp.hanging === null
      ? [
          say`The problem does not say that ${names} can move, so ${resting.length > 1 ? "they" : "it"} ${was} taken to stay at rest. If ${it} can move, say along which line, with an acceleration to be found.`,
        ]
      : [];
  return [say`This cannot be: ${whyNot(s)}.`, ...advice];
}
