// The recap of a set-up: the moves actually made, in order, like moves together, each with its lines.
import type { SetUpPassageData } from "../../../4-steps/types.ts";
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { plural } from "../passage.ts";

type Kind = SetUpPassageData["kind"];
type Of<K extends Kind> = Extract<SetUpPassageData, { kind: K }>;

/** A move: what was done, and to what; moves that say the same of different things stand in one sentence. */
interface Move {
  readonly verb: string;
  readonly what: Sentence;
  readonly line: Sentence;
  /** What follows after the things. */
  readonly tail?: string;
}

type Told = Omit<Move, "line"> | null;
const simply = (verb: string): Told => ({ verb, what: [] });

const MOVES: { readonly [K in Kind]: (d: Of<K>, s: SetUpSpeech) => Told } = {
  "body-law": (d, s) => ({ verb: "Wrote Newton's second law for", what: say`${s.body(d.body)}` }),
  ties: () => simply("Wrote down what ties the motions together"),
  "friction-laws": () => simply("Wrote friction as coefficient times normal force"),
  "count-all": (d, s) =>
    s.result.attempts[0] === s.attempt
      ? simply(
          `Counted: ${plural(d.unknowns.length, "unknown", "unknowns")}, ${plural(d.equationCount, "equation", "equations")}`,
        )
      : null,
  "given-angles": () => simply("Converted the angles"),
  parts: () => simply("Wrote each component by sine or cosine"),
  "parts-in-laws": () => simply("Put the components into the laws"),
  "turned-laws": (d, s) => ({
    verb: "Combined both laws into those along and across the slope for",
    what: say`${s.body(d.body)}`,
  }),
  "settle-size": (d, s) => ({ verb: "Solved for", what: say`${s.letter(d.unknown)}` }),
  "isolate-size": (d, s) => ({ verb: "Isolated", what: say`${s.letter(d.unknown)}` }),
  "zero-size": () => null,
  vanishing: (d, s) => ({ verb: "Saw that an equation does not hold", what: say`${s.letter(d.unknown)}` }),
  "eliminate-size": (d, s) => ({ verb: "Put", what: say`${s.letter(d.unknown)}`, tail: " into the other equations" }),
  spare: (d) => simply(`Had ${plural(d.equations.length, "equation", "equations")} to spare`),
  "open-sizes": (d, s) => ({
    verb: "Ran out of equations with these open:",
    what: listed(d.unknowns.map((u) => s.letter(u))),
  }),
  unmentioned: (d, s) => ({ verb: "Saw that nothing decides", what: listed(d.unknowns.map((u) => s.letter(u))) }),
  clash: () => simply("Met an equation that cannot be"),
  breach: () => simply("Saw that the assumption fails"),
  sizes: (_, s) => (s.attempt.holds ? simply("Put the numbers in") : null),
  "all-answers": () => simply("Rounded once, at the end"),
  "check-laws": () => simply("Put the answers back into the laws"),
  "check-conditions": () => simply("Compared static friction with the largest it can be"),
};

/** The recap's sentences; `shown` are the ids of the lines that were not left out. */
export function setUpRecap(
  speeches: readonly SetUpSpeech[],
  limits: readonly SetUpSpeech[],
  shown: ReadonlySet<string>,
): Sentence[] {
  return [
    ...speeches.flatMap((s, i) => [
      ...(i > 0 ? [say`Took another case.`] : []),
      ...sentences(s.attempt.passages.flatMap((p) => move(p, s, shown))),
    ]),
    ...limits.map((s) => {
      const line = s.attempt.passages.flatMap((p) => p.steps).findLast((step) => shown.has(step.id));
      const { letter = "", end = "largest" } = s.attempt.limit ?? {};
      return say`Found the ${end} ${s.letter(letter)} at which static friction still holds${line === undefined ? "" : say` ${s.line(line.id)}`}.`;
    }),
  ];
}

function move(p: SetUpSpeech["attempt"]["passages"][number], s: SetUpSpeech, shown: ReadonlySet<string>): Move[] {
  const last = p.steps.findLast((step) => shown.has(step.id));
  if (last === undefined && p.steps.length > 0) return [];
  const tell = MOVES[p.data.kind as Kind] as (d: unknown, s: SetUpSpeech) => Told;
  const told = tell(p.data, s);
  return told === null ? [] : [{ ...told, line: last === undefined ? [] : [s.line(last.id)] }];
}

/** Moves one after another that say the same, in one sentence. */
function sentences(moves: readonly Move[]): Sentence[] {
  const groups: Move[][] = [];
  for (const m of moves) {
    const last = groups[groups.length - 1];
    if (last?.[0]?.verb === m.verb) last.push(m);
    else groups.push([m]);
  }
  return groups.map((group) => {
    const things = group.map(({ what, line }) =>
      what.length > 0 && line.length > 0 ? say`${what} ${line}` : say`${what}${line}`,
    );
    const space = things.some((t) => t.length > 0) ? " " : "";
    return say`${group[0]?.verb ?? ""}${space}${listed(things)}${group[0]?.tail ?? ""}.`;
  });
}
