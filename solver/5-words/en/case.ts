// Contradictions and other cases: which rope has to be let go, what is impossible, what stays open.
import type { Speech } from "../speech.ts";
import { listed, say } from "../sentence.ts";
import type { Sentence } from "../types.ts";
import type { PassageSpeaker } from "./passage.ts";
import { sideWord } from "./directions.ts";
import { symbol } from "../../algebra/expr.ts";

/** A law whose components all pull one way. */
export const oneSided: PassageSpeaker<"one-sided"> = (d, _, s) => {
  const heading = d.verdict === "all-zero" ? "Each is zero" : "Something cannot be";
  const line = s.line(d.line);
  const way = d.axis === 0 ? "sideways" : "up or down";
  const texts: Readonly<Record<typeof d.verdict, Sentence>> = {
    "all-zero": say`In ${line} all pulls carry the same sign and add up to zero. Sizes are never negative, so each of them is zero. No contradiction: nothing calls for a pull.`,
    contradiction: say`${line} cannot hold.`,
    "zero-then-contradiction": say`Look at ${line}: all pulls in it carry the same sign, with nothing to balance them. Sizes are never negative, so they could only all be zero; but then the other law would read:`,
    "cannot-be-negative": say`Look at ${line}: all pulls in it act the same way, ${way}, and what they have to make points the other way. Ropes pull and never push, so they cannot.`,
  };
  return {
    part: d.verdict === "all-zero" ? "algebra" : "law",
    heading,
    before: [texts[d.verdict]],
    after:
      d.verdict === "zero-then-contradiction"
        ? [
            say`So ${s.world.ropes.length === 2 ? "not both ropes can be straight and pulling" : "not all ropes can pull"}.`,
          ]
        : [],
    refers: s.world.ropes.map((r) => r.id),
  };
};

/** Ropes along one line. */
export const oneLine: PassageSpeaker<"one-line"> = (d, _, s) => {
  const ropes = s.world.ropes.map((r) => s.letter(r.id));
  const single = s.world.ropes.length === 1;
  const subject = single ? "The rope pulls along one line only" : "Both ropes lie along one line";
  const texts: Readonly<Record<typeof d.verdict, Sentence>> = {
    impossible: say`${subject}, and what is needed does not point along it: across that line nothing pulls at all. However hard ${single ? "it pulls" : "they pull"}, the ${s.body} cannot be held like this; it has to move to another place first.`,
    push: say`${subject}, and ${single ? "it" : "they"} would have to push. A rope cannot.`,
    sum: say`${subject} and they pull the same way, so both laws hold only the sum of ${listed(ropes)}: that is all that can be found. How the ropes share it depends on how tight each was tied, which forces alone do not tell.`,
    difference: say`${subject} and they pull opposite ways, so both laws hold only the difference of ${listed(ropes)}: that is all that can be found. Tightening both by the same amount would change nothing.`,
    zero: say`Nothing calls for a pull.`,
    settled: say`The rope points just the way the pull is needed.`,
  };
  return {
    part: "algebra",
    heading: single ? "One line" : "Two ropes along one line",
    before: [texts[d.verdict]],
    after: [],
    refers: s.world.ropes.map((r) => r.id),
  };
};

/** What a failed attempt shows. */
export const evidence: PassageSpeaker<"evidence"> = (d, p, s) => {
  const named = p.steps.some((l) => l.status === "contradiction");
  const size = s.number(symbol(d.unknown), "N", d.unknown);
  const after = [
    say`${s.letter(d.unknown)} comes out as ${size}. A negative size would mean that ${s.rope(d.unknown)} pushes, and a rope cannot push: it goes slack.`,
  ];
  return {
    part: "algebra",
    heading: "Which rope cannot pull",
    before: [
      named ? say`Put the numbers in.` : say`Which of them has to give? Solve as if a pull could be negative, to see.`,
    ],
    after,
    refers: [d.unknown],
  };
};

/** The words that lead from a failed attempt to the next, or to the end. */
export function turning(s: Speech): Sentence[] {
  const { result, world } = s;
  const { lift, push } = world.body;
  if (result.kind === "slack" && result.attempts.length > 1) {
    const [loose] = result.slack;
    const kept = world.ropes.find((r) => r.id !== loose);
    if (loose === undefined || kept === undefined) return [];
    const settle =
      push === 0
        ? say`swings until it hangs straight ${lift > 0 ? "down" : "up"}`
        : lift === 0
          ? say`trails level behind the support`
          : say`swings out and settles at an angle of its own`;
    return [
      say`So the first assumption, both ropes straight, is given up. Let ${s.rope(loose)} go: the ${s.body} hangs from ${s.rope(kept.id)} alone and ${settle}. Take it once it has stopped swinging relative to the support. The direction of ${s.rope(kept.id)} is now unknown, so the unknowns are its two components${push === 0 ? "" : say`; the rope leans ${sideWord(push)}, since it alone can give the sideways acceleration`}.`,
    ];
  }
  if (result.kind === "slack")
    return [
      say`Neither rope pulls, so both are slack in effect: they carry nothing, and the ${s.body} keeps whatever place it has relative to the support. ${world.body.weight.decimal === 0 ? "No force acts on it at all." : "The weight is the only force on it, and it falls with its support."}`,
    ];
  if (result.kind === "impossible") return [impossible(s)];
  if (result.kind === "under-determined")
    return [say`So the pulls are not determined one by one: many pairs satisfy the laws.`];
  return [];
}

function impossible(s: Speech): Sentence {
  if (s.result.impossible === "outrun")
    return say`So this motion is impossible for the ${s.body}: ropes that do not lead downwards cannot pull it down. It falls with ${s.math(symbol("g"))} at most, and the support outruns it.`;
  if (s.result.impossible === "off-line") return say`So the ${s.body} cannot be in this position with this motion.`;
  return say`So this is impossible: ${s.world.ropes.length === 1 ? "the rope" : "ropes"} would have to push.`;
}
