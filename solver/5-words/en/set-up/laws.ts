// Passages from the laws to the equations in whole forces.
import type { BodyLaw } from "../../../3-equations/types.ts";
import { listed, say } from "../../sentence.ts";
import { Capital, lieOf } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { plural } from "../passage.ts";
import type { SetUpSpeaker } from "./passage.ts";

/** Whether this is not the first attempt, so that what was explained need not be explained again. */
export const isAgain = (s: SetUpSpeech): boolean => s.result.attempts[0] !== s.attempt;

/** The laws of one body. */
export const bodyLaw: SetUpSpeaker<"body-law"> = (d, _, s) => {
  const isLaw = (e: { readonly kind: string }): e is BodyLaw => e.kind === "law";
  const all = s.attempt.equations.equations.filter(isLaw);
  const laws = all.filter((e) => e.body === d.body);
  const body = s.bodyOf(d.body);
  const firstHeavy = all.find((e) => !s.bodyOf(e.body).massless)?.body;
  const before: Sentence[] = body.massless
    ? [say`${Capital(s.body(d.body))} has no mass, so the forces on it add up to zero, however it moves.`]
    : isAgain(s) || d.body !== firstHeavy
      ? []
      : [
          say`Add up the forces on ${s.body(d.body)} along each axis, those along it with a plus and those against it with a minus: together they make its mass times its acceleration along that axis.`,
        ];
  return {
    part: "law",
    heading: `Newton's second law for ${s.body(d.body)}`,
    before,
    after: isAgain(s) ? [] : withoutParts(s, laws),
    refers: [...new Set(laws.flatMap((l) => l.parts.map((p) => p.id)))],
  };
};

/** Ropes and pushes that have no part along an axis: one might look for them there. */
function withoutParts(s: SetUpSpeech, laws: readonly BodyLaw[]): Sentence[] {
  const isPull = (ref: string): boolean =>
    s.setUp.ropes.some((r) => r.id === ref) || s.setUp.pushes.some((p) => p.id === ref);
  const missing = laws.flatMap((law) => {
    const refs = law.parts.length === 0 ? [] : law.without.filter(isPull);
    return refs.length === 0
      ? []
      : [{ letters: listed(refs.map((r) => s.letter(r))), many: refs.length > 1, axis: law.axis }];
  });
  if (missing.length === 0) return [];
  const each = missing.map(
    ({ letters, many, axis }, i) =>
      say`${letters} ${i > 0 ? "none" : `${many ? "have" : "has"} no part`} along ${axis === 0 ? "x" : "y"}`,
  );
  return [say`${listed(each)}.`];
}

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
  return [
    ...atLimit.map(
      (id) =>
        say`On the point of sliding, static friction is as large as it can be: ${s.letter(s.contactOf(id).coefficients.static)} times the normal force.`,
    ),
    ...(sliding.length === 0 || s.attempt.limit !== null
      ? []
      : [
          say`Where something slides, friction is the coefficient of kinetic friction times the normal force, whatever the speed.`,
        ]),
  ];
}

/** Unknowns against equations. */
export const countAll: SetUpSpeaker<"count-all"> = (d, _, s) => {
  const n = d.unknowns.length;
  const names = n === 0 ? say`` : say`, ${listed(d.unknowns.map((u) => s.letter(u)))},`;
  const extra = d.equationCount - n;
  const verdict =
    n === 0
      ? "nothing is left to be found"
      : extra === 0
        ? n === 1
          ? "enough"
          : "enough, unless one of them follows from the others"
        : extra > 0
          ? `${plural(extra, "equation", "equations")} more than needed, which ${extra === 1 ? "has" : "have"} to agree with the others`
          : `${plural(-extra, "equation", "equations")} too few`;
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
export const parts: SetUpSpeaker<"parts"> = (d, _, s) => ({
  part: "components",
  heading: "Components",
  before: isAgain(s)
    ? []
    : [
        say`A force and its two parts make a right triangle with the force as hypotenuse. The part next to the angle takes the cosine, the part opposite it the sine.`,
        ...onSlope(s, d.refs),
      ],
  after: isAgain(s)
    ? []
    : [say`From here on the parts stand for the forces: a force that was taken apart is struck out in the diagram.`],
  refers: d.refs,
});

/** Where the angle of a slope turns up between force and axis, and a check by the limit of level ground. */
function onSlope(s: SetUpSpeech, refs: readonly string[]): Sentence[] {
  const isOf = (kind: "weight" | "normal"): boolean =>
    s.attempt.equations.equations.some(
      (e) =>
        e.kind === "law" && e.parts.some((p) => p.force.kind === kind && p.id !== p.force.ref && refs.includes(p.id)),
    );
  const slanting = s.setUp.contacts.some((c) => lieOf(c) === "slope");
  if (!slanting) return [];
  if (isOf("weight"))
    return [
      say`The weight makes with the line across the slope the same angle as the slope with the level line: each is what the other becomes after a quarter turn. So its part across the slope takes the cosine and its part along the slope the sine. A check: on level ground nothing may be left along the slope, and the sine of 0° is 0.`,
    ];
  return isOf("normal")
    ? [
        say`The normal force leans from the upright line by as much as the slope from the level line. So its upright part takes the cosine and its level part the sine; for friction, along the slope, it is the other way round. A check: on level ground the normal force is upright, and the sine of 0° is 0.`,
      ]
    : [];
}

/** Whole forces in the laws. */
export const partsIn: SetUpSpeaker<"parts-in-laws"> = (_, __, s) => ({
  part: "components",
  heading: "Back into the laws",
  before: isAgain(s) ? [] : [say`Put the components into the laws, so that each unknown stands there by one letter.`],
  after: [],
  refers: [],
});

/** Both laws of a body on a slope, combined. */
export const turnedLaws: SetUpSpeaker<"turned-laws"> = (d, _, s) => ({
  part: "algebra",
  heading: "Along the slope, and at right angles to it",
  before: isAgain(s)
    ? []
    : [
        say`With level axes neither law for ${s.body(d.body)} can be solved alone. But multiplied by sine and cosine of the slope's angle and added, they give what happens along the slope, where the normal force drops out, and at right angles to it, where all that lies along the slope drops out. Axes along the slope give these at once.`,
      ],
  after: [],
  refers: [],
});
