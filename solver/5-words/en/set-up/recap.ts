// The recap of a set-up: the moves actually made, in order, each with its line.
import type { SetUpPassageData } from "../../../4-steps/types.ts";
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { plural } from "../passage.ts";

type Kind = SetUpPassageData["kind"];
type Of<K extends Kind> = Extract<SetUpPassageData, { kind: K }>;

const MOVES: { readonly [K in Kind]: (d: Of<K>, s: SetUpSpeech, line: Sentence) => Sentence | null } = {
  "body-law": (d, s, line) => say`Wrote Newton's second law for ${s.body(d.body)}${line}.`,
  ties: (_, __, line) => say`Wrote down what ties the motions together${line}.`,
  "friction-laws": (_, __, line) => say`Wrote friction as coefficient times normal force${line}.`,
  "count-all": (d) =>
    say`Counted: ${plural(d.unknowns.length, "unknown", "unknowns")}, ${plural(d.equationCount, "equation", "equations")}.`,
  "given-angles": () => say`Converted the angles.`,
  parts: (_, __, line) => say`Wrote each component by sine or cosine${line}.`,
  "parts-in-laws": (_, __, line) => say`Put the components into the laws${line}.`,
  "settle-size": (d, s, line) => say`Solved for ${s.letter(d.unknown)}${d.zero ? ", which is zero" : ""}${line}.`,
  "isolate-size": (d, s, line) => say`Isolated ${s.letter(d.unknown)}${line}.`,
  "zero-size": () => null,
  vanishing: (d, s, line) => say`Saw ${s.letter(d.unknown)} drop out${line}.`,
  "eliminate-size": (d, s, line) => say`Put ${s.letter(d.unknown)} into the other equations${line}.`,
  spare: (d) => say`Had ${plural(d.equations.length, "equation", "equations")} to spare.`,
  "open-sizes": (d, s) => say`Ran out of equations: ${listed(d.unknowns.map((u) => s.letter(u)))} stayed open.`,
  unmentioned: (d, s) => say`Saw that nothing decides ${listed(d.unknowns.map((u) => s.letter(u)))}.`,
  clash: (_, __, line) => say`Met an equation that cannot be${line}.`,
  breach: (_, __, line) => say`Saw that the assumption fails${line}, and took another case.`,
  sizes: (_, s, line) => (s.attempt.holds ? say`Put the numbers in${line}.` : null),
  "all-answers": (_, s, line) => (s.attempt.limit === null ? say`Rounded once, at the end${line}.` : null),
  "check-laws": (_, __, line) => say`Put the answers back into the laws${line}.`,
  "check-conditions": (_, __, line) => say`Checked that static friction suffices${line}.`,
};

/** The recap's sentences; `shown` are the ids of the lines that were not left out. */
export function setUpRecap(speeches: readonly SetUpSpeech[], shown: ReadonlySet<string>): Sentence[] {
  return speeches.flatMap((s) =>
    s.attempt.passages.flatMap((p) => {
      const last = p.steps.findLast((step) => shown.has(step.id));
      const line: Sentence = last === undefined ? [] : say` ${s.line(last.id)}`;
      const speak = MOVES[p.data.kind as Kind] as (d: unknown, s: SetUpSpeech, line: Sentence) => Sentence | null;
      const sentence = speak(p.data, s, line);
      if (sentence === null) return [];
      return [
        p.data.kind === "breach" && !isFollowed(speeches, s) ? say`Saw that the assumption fails${line}.` : sentence,
      ];
    }),
  );
}

const isFollowed = (speeches: readonly SetUpSpeech[], s: SetUpSpeech): boolean => speeches[speeches.length - 1] !== s;
