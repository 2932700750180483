// Passages of the elimination, move by move, and of the load on one rope.
import { decimal } from "../../algebra/evaluate.ts";
import { symbol } from "../../algebra/expr.ts";
import type { Speech } from "../speech.ts";
import { listed, say } from "../sentence.ts";
import type { Sentence } from "../types.ts";
import { axisName } from "./passage.ts";
import type { PassageSpeaker } from "./passage.ts";

/** Solving an equation with one unknown. */
export const settle: PassageSpeaker<"settle"> = (d, p, s) => {
  const collected = p.steps.some((l) => l.reason.kind === "collect");
  const unknown = s.letter(d.unknown);
  const isRope = s.world.ropes.some((r) => r.id === d.unknown);
  const before = collected
    ? [say`Only ${unknown} is left. Bring its terms to one side, collect them, and divide.`]
    : [say`Solve for ${unknown}.`];
  const after: Sentence[] = [];
  if (d.zero && isRope)
    after.push(
      say`${s.Rope(d.unknown)} is straight but carries nothing: any pull of it would have ${d.axis === 0 ? "a sideways" : "an upright"} part with nothing to balance it.`,
    );
  return {
    part: "algebra",
    heading: d.zero ? "A pull that must be zero" : collected ? "Collect and divide" : "Solve",
    before,
    after,
    refers: [d.unknown],
  };
};

/** Equal pulls. */
export const equal: PassageSpeaker<"equal"> = (d) => ({
  part: "algebra",
  heading: "Equal pulls",
  before: [say`Begin with the equation that holds no known force: it ties the two pulls together.`],
  after: [
    say`Both ropes pull equally hard, so one letter serves for both.${d.mirror ? say` No wonder: seen in a mirror the picture is the same, left for right, so neither rope can pull harder.` : say``}`,
  ],
  refers: d.unknowns,
});

/** Isolating an unknown. */
export const isolate: PassageSpeaker<"isolate"> = (d, _, s) => {
  const before = [
    say`Isolate ${s.letter(d.unknown)} in the ${axisName(d.axis)} equation${d.withKnown ? say`, which holds no weight` : say`, which holds no known force: it gives one pull as a multiple of the other`}.`,
  ];
  const after: Sentence[] = [];
  if (d.other !== null && !d.withKnown) {
    const ratio = decimal(symbol(d.unknown), s.values) / decimal(symbol(d.other), s.values);
    if (Number.isFinite(ratio) && ratio > 0)
      after.push(
        say`Read it: ${s.rope(d.unknown)} ${s.attempt.holds ? "pulls" : "would pull"} ${s.figure(ratio, "")} times as hard as ${s.rope(d.other)}, whatever the weight.`,
      );
  }
  return {
    part: "algebra",
    heading: "Isolate",
    before,
    after,
    refers: [d.unknown, ...(d.other === null ? [] : [d.other])],
  };
};

/** Substituting, so that one unknown goes. */
export const eliminate: PassageSpeaker<"eliminate"> = (d, _, s) => ({
  part: "algebra",
  heading: "Eliminate",
  before: [
    say`Put that into the other equation, and ${s.letter(d.replaced)} is gone from it: what remains holds ${s.letter(d.unknown)} alone.`,
  ],
  after: [],
  refers: [d.unknown, d.replaced],
});

/** More unknowns than equations, and no way on. */
export const stuckForGood: PassageSpeaker<"stuck-for-good"> = (d, _, s) => ({
  part: "algebra",
  heading: "Stuck for good",
  before: [
    say`No equation is left, and ${listed(d.unknowns.map((u) => s.letter(u)))} are still open: forces alone do not decide.`,
  ],
  after: [],
  refers: d.unknowns,
});

/** The load on one rope of unknown direction. */
export const freeRope: PassageSpeaker<"free-rope"> = (d, p, s) => {
  const pythagoras = p.steps.some((l) => l.reason.kind === "pythagoras");
  const [x, y] = [s.letter(`${d.unknown}x`), s.letter(`${d.unknown}y`)];
  const hangs =
    s.world.body.push === 0
      ? say`There is no sideways part, so the rope hangs straight ${s.world.body.lift > 0 ? "down from its support" : "up from its post"}.`
      : s.world.body.lift === 0
        ? say`There is no upward part, so the rope trails level.`
        : say``;
  const before = pythagoras
    ? [
        say`${x} and ${y} are the sides of a right triangle with the pull as hypotenuse: Pythagoras gives its size, the tangent its direction. This is no elimination, since a direction is unknown.`,
      ]
    : [hangs];
  const theta = s.attempt.values.symbols.get("theta");
  const after =
    pythagoras && theta !== undefined
      ? [
          say`So ${s.rope(d.unknown)} settles at ${s.figure((theta.decimal * 180) / Math.PI, "°", "theta")} from the horizontal, not at the ${s.angle(s.ropeOf(d.unknown))} assumed at first.`,
        ]
      : [];
  return {
    part: "case",
    heading: "Size and direction",
    before,
    after: after.filter(() => differs(s, d.unknown)),
    refers: [d.unknown],
  };
};

/** Whether the settled angle prints differently from the assumed one. */
function differs(s: Speech, rope: string): boolean {
  const theta = s.attempt.values.symbols.get("theta")?.decimal ?? 0;
  const r = s.ropeOf(rope);
  return Math.abs(theta - r.acute.radians) > 0.002 || r.rise !== s.world.body.lift || r.side !== s.world.body.push;
}
