// The recap: the moves actually made, in order, each with its line.
import type { HangingPassageData } from "../../4-steps/types.ts";
import type { Speech } from "../speech.ts";
import { listed, say } from "../sentence.ts";
import type { Sentence } from "../types.ts";
import { axisName, plural } from "./passage.ts";

type Kind = HangingPassageData["kind"];
type Of<K extends Kind> = Extract<HangingPassageData, { kind: K }>;

/** What the recap says of a passage; null for passages that are no move. */
const MOVES: { readonly [K in Kind]: (d: Of<K>, s: Speech, line: Sentence) => Sentence | null } = {
  law: (d, _, line) =>
    say`Wrote Newton's second law along the ${axisName(d.axis)} axis${line}${d.standing === "stuck" ? ": stuck, more than one unknown" : d.standing === "cannot" ? ": its signs cannot be" : d.standing === "one-sided" ? ": all of one sign, so each zero" : d.standing === "nothing" ? ": nothing there to find" : ": one unknown, settled there"}.`,
  count: (d) =>
    d.componentCount === d.sizeCount
      ? say`Counted: ${plural(d.sizeCount, "pull", "pulls")} of known direction, ${plural(d.equationCount, "equation", "equations")}.`
      : say`Counted: ${plural(d.componentCount, "component size", "component sizes")}, but ${plural(d.sizeCount, "pull", "pulls")} of known direction.`,
  "one-sided": (d, _, line) =>
    d.verdict === "all-zero"
      ? say`Saw that pulls of one sign add up to zero, so each is zero${line}.`
      : say`Saw on one line that the pulls cannot do it${line}.`,
  angles: () => say`Carried the angles from the beam to the diagram.`,
  components: (_, __, line) => say`Wrote each component by sine or cosine${line}.`,
  substitution: (_, __, line) => say`Put the components into the laws${line}.`,
  settle: (d, s, line) => say`Solved for ${s.letter(d.unknown)}${d.zero ? ", which is zero" : ""}${line}.`,
  equal: (d, s, line) => say`Saw that ${listed(d.unknowns.map((u) => s.letter(u)))} are equal${line}.`,
  isolate: (d, s, line) => say`Isolated ${s.letter(d.unknown)}${line}.`,
  eliminate: (d, s, line) => say`Put it into the other equation, so that only ${s.letter(d.unknown)} was left${line}.`,
  "put-back": (d, s, line) => say`Put the number back to get ${s.letter(d.unknown)}${line}.`,
  "stuck-for-good": () => say`Ran out of equations.`,
  "one-line": (d) =>
    say`Saw that the pulls act along one line${d.verdict === "sum" ? ": only their sum is fixed" : d.verdict === "difference" ? ": only their difference is fixed" : ""}.`,
  evidence: (d, s, line) => say`Found that ${s.rope(d.unknown)} would have to push, and let it go${line}.`,
  "free-rope": (d, s, line) => say`Found size and direction of ${s.letter(d.unknown)} from its two components${line}.`,
  exact: (d) => (d.unknowns.length > 0 ? say`Wrote the answer with exact roots.` : null),
  numbers: (_, __, line) => say`Put the numbers in${line}.`,
  answer: (_, __, line) => say`Rounded once, at the end${line}.`,
  "check-balance": (_, __, line) => say`Put the answer back into the laws${line}.`,
  "check-polygon": () => say`Drew the forces head to tail.`,
  "check-length": (d, s, line) =>
    say`${d.fit === "longer" ? "Checked that" : "Compared:"} ${s.rope(d.rope)} is ${d.fit === "just" ? "just as long as" : `${d.fit} than`} the distance it has to bridge${line}.`,
  letters: () => say`Read the result in letters.`,
};

/** The recap's sentences; `shown` are the ids of the lines that were not left out. */
export function recapOf(speeches: readonly Speech[], shown: ReadonlySet<string>): Sentence[] {
  return speeches.flatMap((s) =>
    s.attempt.passages.flatMap((p) => {
      const last = p.steps.findLast((step) => shown.has(step.id));
      const line: Sentence = last === undefined ? [] : say` ${s.line(last.id)}`;
      const speak = MOVES[p.data.kind as Kind] as (d: unknown, s: Speech, line: Sentence) => Sentence | null;
      const sentence = speak(p.data, s, line);
      return sentence === null ? [] : [sentence];
    }),
  );
}
