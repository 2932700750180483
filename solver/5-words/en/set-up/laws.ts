// Passages from the laws to the equations in whole forces.
import type { BodyLaw } from "../../../3-equations/types.ts";
import type { SetUpPassageData } from "../../../4-steps/types.ts";
import { listed, say } from "../../sentence.ts";
import { Capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { plural } from "../passage.ts";
import { alongWords } from "./directions.ts";
import type { SetUpSpeaker } from "./passage.ts";

/** Whether this is not the first attempt, so that what was explained need not be explained again. */
export const isAgain = (s: SetUpSpeech): boolean => s.result.attempts[0] !== s.attempt;

/** The laws of one body. */
export const bodyLaw: SetUpSpeaker<"body-law"> = (d, _, s) => {
  const laws = s.attempt.equations.equations.filter((e): e is BodyLaw => e.kind === "law" && e.body === d.body);
  const body = s.bodyOf(d.body);
  const before: Sentence[] = [
    isAgain(s)
      ? say`As before, with the forces of this case.`
      : body.massless
        ? say`${Capital(s.body(d.body))} has no mass, so the forces on it add up to zero however it moves.`
        : say`All forces on ${s.body(d.body)} along each of its axes, plus along the axis and minus against it, make its mass times its acceleration along that axis.`,
  ];
  return {
    part: "law",
    heading: `Newton's second law for ${s.body(d.body)}`,
    before,
    after: withoutParts(s, laws),
    refers: [...new Set(laws.flatMap((l) => l.parts.map((p) => p.id)))],
  };
};

function withoutParts(s: SetUpSpeech, laws: readonly BodyLaw[]): Sentence[] {
  return laws.flatMap((law) => {
    const ropes = law.without.filter((ref) => s.setUp.ropes.some((r) => r.id === ref));
    if (ropes.length === 0 || law.parts.length === 0) return [];
    return [
      say`${listed(ropes.map((r) => s.letter(r)))} ${ropes.length > 1 ? "have" : "has"} no part along ${law.axis === 0 ? "x" : "y"}.`,
    ];
  });
}

/** What ropes and surfaces ask of the motion. */
export const ties: SetUpSpeaker<"ties"> = (d, _, s) => {
  const before: Sentence[] = d.ties.map((tie) => {
    if (tie.kind === "rope") {
      const rope = s.ropeOf(tie.of);
      const bodies = [...new Set(rope.pulls.map((p) => p.on))];
      const round = rope.pulls.some((p, i) => rope.pulls[i + 1]?.on === p.on);
      return say`${Capital(s.rope(tie.of))} does not stretch: ${
        round
          ? `where it runs round a pulley two strands grow or shrink at once, so the pulley's acceleration counts twice, and what one side takes in the other must give out`
          : bodies.length > 1
            ? `what one end takes in the other must give out, so ${listedPlain(bodies.map((b) => s.body(b)))} have accelerations of one size along it`
            : `it keeps ${s.body(bodies[0] ?? "")} from moving along it`
      }.`;
    }
    const c = s.contactOf(tie.of);
    return tie.kind === "touch"
      ? say`${Capital(s.body(c.on))} stays on ${s.surface(c.id)}: neither leaves the other, so they have the same acceleration at right angles to where they touch.`
      : say`${Capital(s.body(c.on))} does not slide on ${s.surface(c.id)}: they have the same acceleration along it.`;
  });
  return { part: "law", heading: "What ties the motions together", before, after: [], refers: d.ties.map((t) => t.of) };
};

const listedPlain = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1] ?? ""}`;

/** The law of friction. */
export const frictionLaws: SetUpSpeaker<"friction-laws"> = (d, _, s) => ({
  part: "law",
  heading: d.limit ? "Friction at its largest" : "Kinetic friction",
  before: frictionSentences(s, d.contacts),
  after: [],
  refers: d.contacts.map((id) => s.contactOf(id).friction),
});

function frictionSentences(s: SetUpSpeech, contacts: readonly string[]): Sentence[] {
  const atLimit = contacts.filter((id) => s.attempt.limit?.contact === id);
  const sliding = contacts.filter((id) => !atLimit.includes(id));
  const letters = sliding.map((id) => s.letter(s.contactOf(id).coefficients.kinetic));
  return [
    ...atLimit.map(
      (id) =>
        say`On the point of sliding, static friction is as large as it can be: the coefficient ${s.letter(s.contactOf(id).coefficients.static)} times the normal force.`,
    ),
    ...(sliding.length === 0
      ? []
      : [
          say`Where things slide, friction is the coefficient ${listed(letters)} times the normal force${letters.length > 1 ? " there" : ""}, whatever the speed.`,
        ]),
  ];
}

/** Unknowns against equations. */
export const countAll: SetUpSpeaker<"count-all"> = (d, _, s) => {
  const n = d.unknowns.length;
  const names = n === 0 ? say`` : say`, ${listed(d.unknowns.map((u) => s.letter(u)))},`;
  const verdict =
    n === 0
      ? "nothing is left to be found"
      : n <= d.equationCount
        ? "enough, if none of them says the same as the others"
        : `${n - d.equationCount === 1 ? "one" : "some"} too few`;
  return {
    part: "count",
    heading: "Counting",
    before: [
      say`${Capital(plural(n, "size is", "sizes are"))} unknown${names} and there ${d.equationCount === 1 ? "is" : "are"} ${plural(d.equationCount, "equation", "equations")}: ${verdict}.`,
    ],
    after: [],
    refers: d.unknowns,
  };
};

/** Angles that were given another way than they are used. */
export const givenAngles: SetUpSpeaker<"given-angles"> = (_, __, s) => ({
  part: "angles",
  heading: "The angles",
  before: [
    say`Directions are used by their acute angle with the level line; where they were given another way, convert them first.`,
  ],
  after: [],
  refers: [...s.setUp.angles.keys()].filter((a) => a !== "straight"),
});

/** Parts of forces along the axes. */
export const parts: SetUpSpeaker<"parts"> = (d, _, s) => {
  if (isAgain(s))
    return {
      part: "components",
      heading: "Components",
      before: [say`The components as before.`],
      after: [],
      refers: d.refs,
    };
  const tilted = s.attempt.equations.axes.some((a) => a.kind !== "level");
  return {
    part: "components",
    heading: "Components",
    before: [
      tilted
        ? say`A force and its two parts make a right triangle with the force as hypotenuse. The part next to the angle takes the cosine, the part opposite it the sine. The weight makes with the line across the slope the same angle as the slope with the level: so its part across takes the cosine, its part along the slope the sine. A check: on level ground the part along must vanish.`
        : say`A force and its two parts make a right triangle with the force as hypotenuse. The part next to the angle takes the cosine, the part opposite it the sine.`,
    ],
    after: [
      say`From here on the parts stand for the forces: a force that was taken apart is struck out in the diagram.`,
    ],
    refers: d.refs,
  };
};

/** Whole forces in the laws. */
export const partsIn: SetUpSpeaker<"parts-in-laws"> = () => ({
  part: "components",
  heading: "Back into the laws",
  before: [say`Put the components into the laws, so that each unknown stands there by one letter.`],
  after: [],
  refers: [],
});

/** The way a positive acceleration points. */
export const positiveWay = (s: SetUpSpeech, letter: string): string => {
  const parts = s.attempt.equations.motions.flatMap((m) => m.own);
  const found = parts.find((p) => p.letter === letter);
  return found === undefined ? "" : alongWords(found.toward);
};

/** Any passage of a set-up. */
export type AnySetUpData = SetUpPassageData;
