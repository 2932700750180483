// Whether what was assumed of sliding, parting and slack ropes fits what came out.
import type { MotionPart } from "../../../3-equations/types.ts";
import { degreesOfTurned } from "../../../algebra/turned.ts";
import type { Turned } from "../../../algebra/turned.ts";
import { listed, say } from "../../sentence.ts";
import { Capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";

const valueOf = (s: SetUpSpeech, id: string): number => s.values.symbols.get(id)?.decimal ?? 0;

/** What is to be said of all that. */
export const fitWords = (s: SetUpSpeech): Sentence[] => [...slidingFits(s), ...liftedFits(s), ...slackFits(s)];

const cosine = (a: Turned, b: Turned): number => Math.cos(((degreesOfTurned(a) - degreesOfTurned(b)) * Math.PI) / 180);

/** Where a body that rests on nothing any more was assumed to come off: whether it does speed up away from the surface. */
function liftedFits(s: SetUpSpeech): Sentence[] {
  const { frame, contacts } = s.setUp;
  const along = (parts: readonly MotionPart[], normal: Turned): number =>
    parts.reduce((total, p) => total + valueOf(s, p.letter) * cosine(p.toward, normal), 0);
  const supports = (normal: Turned): number => {
    const radians = (degreesOfTurned(normal) * Math.PI) / 180;
    return frame.x.decimal * Math.cos(radians) + frame.y.decimal * Math.sin(radians);
  };
  const parting = contacts.filter((c) => {
    const motion = s.attempt.equations.motions.find((m) => m.body === c.on);
    if (c.of !== null || motion === undefined || s.attempt.hypothesis.contacts[c.id]?.touch !== "lifted") return false;
    const away = along([...motion.own, ...motion.carried], c.normal) - supports(c.normal);
    return away > 1e-9 * Math.max(s.setUp.gravity.decimal, Math.abs(away));
  });
  return parting.map(
    (c) =>
      say`Seen from ${s.surface(c.id)}, ${s.body(c.on)} speeds up away from it, so it does come off, as was assumed.`,
  );
}

/** Where a body was assumed to start sliding one way: whether it does accelerate that way. */
function slidingFits(s: SetUpSpeech): Sentence[] {
  const fitting = s.setUp.contacts.filter((c) => {
    const state = s.attempt.hypothesis.contacts[c.id];
    const { freedom } = s.bodyOf(c.on);
    if (state?.touch !== "touching" || state.grip !== "slides") return false;
    if (freedom.kind !== "line" || freedom.going !== 0 || freedom.value !== null || freedom.seenFrom !== c.of)
      return false;
    return cosine(freedom.along, c.tangent) * valueOf(s, s.bodyOf(c.on).letters.acceleration) * state.sense < 0;
  });
  if (fitting.length === 0) return [];
  const who = listed(fitting.map((c) => s.body(c.on)));
  return [
    say`That is the way in which ${who} ${fitting.length > 1 ? "were" : "was"} assumed to slide, so the assumption holds.`,
  ];
}

/** Where a rope of given length hangs slack: whether it is longer than what it has to bridge. */
function slackFits(s: SetUpSpeech): Sentence[] {
  const { hanging, ropes } = s.setUp;
  const bridges = hanging?.kind === "placed" ? hanging.bridges : [];
  return bridges.flatMap(({ rope, distance, length }) => {
    const given = ropes.find((r) => r.id === rope);
    if (given === undefined || s.attempt.hypothesis.ropes[rope] !== "slack") return [];
    const [apart, long] = [distance, length].map((x) => s.figure(x, s.units.length));
    const how = distance < length * (1 - 1e-9) ? "less than its length" : "just its length";
    return [
      say`${Capital(s.rope(rope))} has ${apart ?? ""} to bridge, ${how} of ${long ?? ""}: so it hangs slack, as assumed.`,
    ];
  });
}
