// The outcome of a set-up in one sentence, and what an impossible one comes to.
import { symbol } from "../../../algebra/expr.ts";
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import { capital } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { signedWay } from "./directions.ts";

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
  const motions = attempt.equations.motions.flatMap((m) =>
    m.own
      .filter((p) => p.unknown && solved.has(p.letter))
      .map((p) => {
        const size = s.values.symbols.get(p.letter)?.decimal ?? 0;
        return size === 0
          ? say`${s.body(m.body)} does not accelerate`
          : say`${s.body(m.body)} accelerates at ${s.figure(Math.abs(size), s.units.acceleration, p.letter)} ${signedWay(p.toward, size)}`;
      }),
  );
  const left = attempt.open.filter((u) => !attempt.settled.has(u));
  const open =
    left.length === 0
      ? []
      : [say`${listed(left.map((u) => s.letter(u)))} ${left.length > 1 ? "are" : "is"} not determined`];
  const parts = [...motions, ...states, ...sizes, ...open];
  return parts.length === 0 ? say`Nothing is left to be found.` : capital(say`${listed(parts)}.`);
}

function whyNot(s: SetUpSpeech): Sentence {
  const { setUp, attempt } = s;
  const { hanging } = setUp;
  if (hanging?.kind === "too-short")
    return say`the ropes are too short to meet: together ${s.figure(hanging.reach, s.units.length)}, with ${s.figure(hanging.distance, s.units.length)} between their anchors`;
  if (hanging?.kind === "nowhere") return say`no rope can hold ${s.body(setUp.bodies[0]?.id ?? "")}`;
  const [first] = attempt.breaches;
  if (first?.kind === "pushing-rope") return say`${s.rope(first.id)} would have to push, and nothing else can give way`;
  if (first?.kind === "pulling-surface") return say`${s.surface(first.id)} would have to pull`;
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
