// Passages from the answer on: exact faces, numbers, answers, checks, letters.
import { symbol, product, sum, integer } from "../../algebra/expr.ts";
import { spoken } from "../claim.ts";
import type { Speech } from "../speech.ts";
import { listed, say } from "../sentence.ts";
import type { Sentence } from "../types.ts";
import type { PassageSpeaker } from "./passage.ts";
import { claimsFor, weightExpr } from "./claims.ts";

const ropesOf = (s: Speech, unknowns: readonly string[]): string[] =>
  unknowns.filter((u) => s.world.ropes.some((r) => r.id === u));

/** Square roots, where the angles allow them. */
export const exact: PassageSpeaker<"exact"> = (d) => {
  const before =
    d.state === "special"
      ? [say`These angles have exact sines and cosines, so the answer has an exact face too.`]
      : d.state === "none-needed"
        ? [say`The answer is exact as it stands: no sine or cosine is left in it.`]
        : d.state === "sideways"
          ? [
              say`With a sideways acceleration the answer does not come from the weight alone, so it is left as a decimal.`,
            ]
          : [
              say`Of angles in degrees, only multiples of 15° have a sine and a cosine that square roots can write without a root inside a root. Not all angles here are of that kind, so the sines stay as they are until the numbers go in.`,
            ];
  return { part: "answer", heading: "Exactly, where the angles allow", before, after: [], refers: d.unknowns };
};

/** Numbers once. */
export const numbers: PassageSpeaker<"numbers"> = (d, p, s) => ({
  part: "answer",
  heading: "Numbers, once",
  before: [
    say`Now the numbers go in, once and with their units. Working numbers keep two guard figures or more, and nothing rounded is used again: a printed number is only what shows of the full one.`,
  ],
  after:
    p.steps.length > 0
      ? [
          say`Units: a kilogram times a metre per second squared is a newton, and sines are pure numbers, so ${listed(d.unknowns.map((u) => s.letter(u)))} comes out in newtons as it should.`,
        ]
      : [],
  refers: d.unknowns,
});

/** The other pull, by putting back. */
export const putBack: PassageSpeaker<"put-back"> = (d, _, s) => ({
  part: "answer",
  heading: "Put back",
  before: [say`Put that back into the line that gave ${s.letter(d.unknown)}.`],
  after: [],
  refers: [d.unknown],
});

/** The answer. */
export const answer: PassageSpeaker<"answer"> = (d, _, s) => ({
  part: "answer",
  heading: d.unknowns.length > 1 ? "Both pulls" : "The pull",
  before: [say`To ${figureWord(s.settings.figures)} figures:`],
  after:
    s.result.kind === "taut"
      ? d.unknowns
          .filter((u) => s.values.symbols.get(u)?.decimal === 0)
          .map((u) => say`${s.Rope(u)} is straight but carries nothing: it is on the point of going slack.`)
      : [],
  refers: d.unknowns,
});

const figureWord = (n: number): string => ["", "one", "two", "three", "four", "five", "six"][n] ?? String(n);

/** Put back into each axis. */
export const checkBalance: PassageSpeaker<"check-balance"> = (_, p, s) => {
  const moving = s.world.body.push !== 0 || s.world.body.acceleration.y.decimal !== 0;
  const y = p.steps.find((l) => l.id.endsWith("check.vertical"));
  const total =
    y === undefined
      ? []
      : [
          say`The upward parts must make ${s.math(moving ? upwardNeed(s) : weightExpr(s))}${s.world.body.push === 0 ? " and the sideways parts cancel" : ` and the sideways parts make the mass times the sideways acceleration`}. They do, to the last figure shown.`,
        ];
  return {
    part: "check",
    heading: "Check: put back",
    before: [say`Put the pulls back into each axis.`],
    after: total,
    refers: [],
  };
};

const upwardNeed = (s: Speech) =>
  s.world.body.acceleration.y.decimal === 0
    ? weightExpr(s)
    : s.world.body.givenBy === "mass"
      ? product([symbol("m"), sum([symbol("g"), symbol("ay")])])
      : product([symbol("W"), sum([integer(1), { kind: "quotient", over: symbol("ay"), under: symbol("g") }])]);

/** The polygon, the size and the limits. */
export const checkPolygon: PassageSpeaker<"check-polygon"> = (_, p, s) => {
  const moving = s.world.body.push !== 0 || s.world.body.acceleration.y.decimal !== 0;
  const still = !moving
    ? say`Drawn head to tail, the forces come back to where they began: they close, so nothing is left over.`
    : say`Drawn head to tail, the forces do not close: from start to end they leave exactly the mass times the acceleration, and nothing else.`;
  const another =
    p.steps.length > 0
      ? [
          say`The triangle of forces is a check of its own, since it needs none of the algebra above. And so is one axis across ${s.rope(s.world.ropes[0]?.id ?? "")}: it gives ${s.letter(s.world.ropes[1]?.id ?? "")} in a single line.`,
        ]
      : [];
  return {
    part: "check",
    heading: "Check: the forces head to tail",
    before: [still, ...another],
    after: [],
    refers: s.world.ropes.map((r) => r.id),
  };
};

/** Size, share and limits: all sentences that are true at these values. */
export const sizeAndLimits = (s: Speech): Sentence[] => spoken(claimsFor(s), s.values);

/** The slack rope's length. */
export const checkLength: PassageSpeaker<"check-length"> = (d, _, s) => ({
  part: "check",
  heading: "Check: is the slack rope long enough?",
  before: [
    say`${s.Rope(d.rope)} must not be pulled straight where the ${s.body} hangs now. Lengths are in multiples of ${s.math(symbol("h"))}, the height of the beam above the assumed place.`,
  ],
  after: [
    d.fit === "longer"
      ? say`The rope is longer than the distance it has to bridge, so it hangs loose, as assumed.`
      : d.fit === "just"
        ? say`The rope is just as long as the distance it has to bridge: it is straight again, but carries nothing.`
        : say`The rope is shorter than the distance it would have to bridge, so the ${s.body} cannot quite get there: on the way the rope is pulled straight again, in another position than the one assumed.`,
  ],
  refers: [d.rope],
});

/** The result in letters. */
export const letters: PassageSpeaker<"letters"> = (d, _, s) => {
  const ropes = ropesOf(s, d.unknowns);
  const read =
    s.world.body.push === 0
      ? say`Read it: the mass is a plain factor, so it sets the size of both pulls and not their ratio; the angles alone set the ratio.`
      : say`Read it: the mass is a plain factor; angles and accelerations set the ratio of the pulls.`;
  return {
    part: "letters",
    heading: "In letters",
    before: [say`The same result with letters for all that is given.`],
    after:
      ropes.length > 1
        ? [
            d.equalAngles
              ? say`The short form holds for equal angles only; the general form is the one to remember.`
              : read,
          ]
        : [],
    refers: ropes,
  };
};
