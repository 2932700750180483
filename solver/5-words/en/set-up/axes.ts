// The axes of each body, and why these.
import type { BodyAxes } from "../../../3-equations/types.ts";
import { symbol } from "../../../algebra/expr.ts";
import { listed, say } from "../../sentence.ts";
import { Capital, capital, lieOf } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { alongWords } from "./directions.ts";

/** The sentences of the paragraph on axes. */
export function axesSentences(s: SetUpSpeech): Sentence[] {
  const { axes } = s.attempt.equations;
  const of = (...kinds: readonly BodyAxes["kind"][]): BodyAxes[] => axes.filter((a) => kinds.includes(a.kind));
  const tilted = of("slope", "line");
  const sentences: Sentence[] = tiltedGroups(tilted).map((g) =>
    tiltedWords(s, g, tilted.length < axes.length || tilted.length > g.length),
  );
  const level = of("level");
  if (level.length > 0) sentences.push(levelWords(s, level, axes.length > level.length));
  for (const a of of("counted")) {
    const upright = alongWords(a.y) === "downwards";
    const [turned, other] = upright ? ["y", "x"] : ["x", "y"];
    sentences.push(
      say`For ${s.body(a.body)} take ${s.math(symbol(turned))} ${upright ? "downwards" : "to the left"}, the way in which its motion is counted${other === "x" ? "" : `, and ${other} upwards`}.`,
    );
  }
  return [
    ...sentences,
    say`The letter of a force is its size; its sign is read from the diagram: plus along an axis, minus against it.${tilted.length > 0 && axes.length > 1 ? " Each body may have axes of its own; sizes are the same in all of them." : ""}`,
  ];
}

/** Bodies whose tilted axes are told in the same words together. */
function tiltedGroups(tilted: readonly BodyAxes[]): BodyAxes[][] {
  const key = (a: BodyAxes): string => `${a.kind} ${alongWords(a.x)}`;
  return [...new Set(tilted.map(key))].map((k) => tilted.filter((a) => key(a) === k));
}

function tiltedWords(s: SetUpSpeech, group: readonly BodyAxes[], others: boolean): Sentence {
  const [first] = group;
  if (first === undefined) return [];
  const [x, y] = [s.math(symbol("x")), s.math(symbol("y"))];
  const who = others ? say`for ${listed(group.map((a) => s.body(a.body)))} take` : say`take`;
  const one = group.length === 1;
  const [slope, them] = one ? ["the slope", s.body(first.body)] : ["the slope that each is on", "each"];
  return capital(
    first.kind === "slope"
      ? say`${who} ${x} along ${slope}, ${alongWords(first.x)}, and ${y} at right angles to it, away from the slope. ${Capital(them)} can move on the slope only along ${x}, the normal force lies along ${y}, and only forces that point along neither axis have to be taken apart. Level and upright axes lead to the same answers, with more to write.`
      : say`${who} ${x} along ${one ? "the line" : "each line"} of motion and ${y} across it: all the acceleration then lies along ${x}.`,
  );
}

function levelWords(s: SetUpSpeech, level: readonly BodyAxes[], others: boolean): Sentence {
  const who = others ? say`for ${listed(level.map((a) => s.body(a.body)))} take` : say`take`;
  const isOblique = (lie: string): boolean => lie === "slope" || lie === "overhang";
  const slope = s.setUp.contacts.some(
    (c) =>
      level.some((a) => a.body === c.on || a.body === c.of) &&
      s.attempt.hypothesis.contacts[c.id]?.touch === "touching" &&
      isOblique(lieOf(c)),
  );
  const heavy = level.some((a) => s.bodyOf(a.body).weight.decimal > 0);
  const why = slope
    ? s.settings.axes === "level"
      ? ", as asked for: the weight then lies along an axis, and what acts along the slope or at right angles to it is taken apart"
      : ": what acts along a slope or at right angles to it is taken apart"
    : heavy
      ? `: ${level.length > 1 ? "weights then lie along an axis and need" : "the weight then lies along an axis and need"} not be taken apart`
      : "";
  return capital(say`${who} ${s.math(symbol("x"))} to the right and ${s.math(symbol("y"))} upwards${why}.`);
}
