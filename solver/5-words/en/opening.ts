// The paragraphs before any law: the problem, the motion, the forces, the diagram, the axes.
import { symbol } from "../../algebra/expr.ts";
import type { Speech } from "../speech.ts";
import { listed, say } from "../sentence.ts";
import type { Part, Sentence } from "../types.ts";
import { accelerationWords, pullDirection, ropeDirection } from "./directions.ts";

/** A paragraph without lines. */
export interface Opening {
  readonly part: Part;
  readonly heading: string;
  readonly sentences: readonly Sentence[];
  readonly refers: readonly string[];
}

const weightOf = (s: Speech) =>
  s.number(
    s.world.body.givenBy === "mass" ? { kind: "product", factors: [symbol("m"), symbol("g")] } : symbol("W"),
    "N",
    "weight",
  );

/** The problem as it is set. */
function problem(s: Speech): Opening {
  const { body, ropes } = s.world;
  const load = body.givenBy === "mass" ? say`of mass ${s.given("m", "kg")}` : say`weighing ${s.given("W", "N")}`;
  const moving = accelerationWords(s);
  const hangs = say`${article(body.name)} ${body.name} ${load} hangs ${moving === null ? "at rest " : ""}from ${ropes.length === 1 ? "one rope" : "two ropes"}.`;
  const directions = ropes.map(
    (r) =>
      say`${s.Rope(r.id)} runs ${ropeDirection(s, r)}${r.side !== 0 && r.rise !== 0 ? " from the horizontal" : ""}.`,
  );
  const motion = moving === null ? [] : [say`Support and ${s.body} accelerate at ${moving}, seen from the ground.`];
  const ask = say`How hard does ${ropes.length === 1 ? "the rope" : "each rope"} pull? Take ${s.math(symbol("g"))} = ${s.given("g", "m/s²")}.`;
  return {
    part: "problem",
    heading: "The problem",
    sentences: [hangs, ...directions, ...motion, ask],
    refers: ropes.map((r) => r.id),
  };
}

const article = (name: string): string => (/^[aeiou]/i.test(name) ? "An" : "A");

/** One guess to make before any algebra. */
function guess(s: Speech): Opening {
  const { ropes, body } = s.world;
  const [a, b] = ropes;
  const weight = body.weight.decimal === 0 ? say`zero` : say`the weight, ${weightOf(s)}`;
  const sentence =
    a !== undefined && b !== undefined
      ? say`Before any algebra: which pulls harder, ${s.rope(a.id)} or ${s.rope(b.id)}? And do the two pulls together come to more than ${weight}, to less, or to just that? Settle on a guess and keep it for the check.`
      : say`Before any algebra: is the pull more than ${weight}, less, or just that? Settle on a guess and keep it for the check.`;
  return { part: "problem", heading: "A guess first", sentences: [sentence], refers: ropes.map((r) => r.id) };
}

/** The situation drawn to scale. */
function situation(s: Speech): Opening {
  const knots = s.world.ropes.length === 1 ? "rope" : "ropes";
  const [rope] = s.world.ropes;
  const posts = s.world.ropes.filter((r) => r.anchor.kind === "post");
  const beam =
    posts.length === s.world.ropes.length
      ? say``
      : say`The ${knots === "rope" ? "rope hangs" : posts.length > 0 ? "rising rope hangs" : "ropes hang"} from a level beam; each angle is marked where rope and beam meet.`;
  const post =
    posts.length === 0 || rope === undefined
      ? say``
      : say`${listed(posts.map((r, i) => (i === 0 ? s.Rope(r.id) : s.rope(r.id))))} ${posts.length === 1 ? "is tied to a post" : "are each tied to a post"}.`;
  return {
    part: "picture",
    heading: "The situation",
    sentences: [
      say`Drawn to scale.${[beam, post].filter((part) => part.length > 0).flatMap((part) => say` ${part}`)}`,
      say`We follow the ${s.body} alone: it is the one body on which every ${s.world.ropes.length === 1 ? "force in question" : "rope"} pulls. The ${knots} ${knots === "rope" ? "is" : "are"} light and ${knots === "rope" ? "does" : "do"} not stretch, so a rope pulls equally hard all along its length; the ${s.body} counts as a point.`,
    ],
    refers: s.world.ropes.map((r) => r.id),
  };
}

/** How the body moves, and which law that calls for. */
function motion(s: Speech): Opening {
  const { push, acceleration } = s.world.body;
  const moving = accelerationWords(s);
  const [ax, ay] = [s.math(symbol("ax")), s.math(symbol("ay"))];
  const sentences: Sentence[] = [];
  if (moving === null)
    sentences.push(
      say`The ${s.body} is at rest and stays at rest, so its acceleration is zero: ${ax} = 0 and ${ay} = 0. By Newton's second law the forces along each axis then add up to zero.`,
    );
  else {
    sentences.push(
      say`The ${s.body} moves with its support and accelerates at ${moving}: ${ax} = ${push === 0 ? "0" : s.given("axGiven", "m/s²")} and ${ay} = ${acceleration.y.decimal === 0 ? "0" : s.given("ayGiven", "m/s²")}.`,
    );
    sentences.push(
      say`By Newton's second law the forces along each axis add up to the mass times the acceleration along it. The acceleration is not a force and gets no arrow among the forces.`,
    );
  }
  return { part: "motion", heading: "How it moves", sentences, refers: ["ax", "ay"] };
}

/** Only about 9.8 m/s² is the Earth's own pull; elsewhere nothing is said of whose it is. */
const EARTHLY = { least: 9.7, most: 10 } as const;

/** Whose pull the weight is. */
function puller(s: Speech): string {
  const g = s.world.gravity.decimal;
  return g >= EARTHLY.least && g <= EARTHLY.most ? "the Earth" : "gravity";
}

/** The forces that act, found by rule: first what acts from afar, then whatever touches the body. */
function forces(s: Speech): Opening {
  const { acting } = s.attempt.forces;
  const sentences: Sentence[] = [];
  for (const f of acting) {
    if (f.kind === "weight")
      sentences.push(
        say`Weight, the pull of ${puller(s)} on the ${s.body}: straight down, ${s.math(f.size)} = ${weightOf(s)}. It acts from afar; every other force comes from something that touches the ${s.body}.`,
      );
    else if (f.kind === "tension")
      sentences.push(
        say`Tension ${s.letter(f.id)}, the pull of ${s.rope(f.rope)} on the ${s.body}: along the rope, ${pullDirection(s.ropeOf(f.rope))}. Its size is not known yet.`,
      );
    else
      sentences.push(
        say`Tension ${s.letter(f.id)}, the pull of ${s.rope(f.rope)} on the ${s.body}: along the rope, whose direction is not known yet.`,
      );
  }
  const without = s.attempt.forces.absent.some((f) => f.kind === "weight");
  if (without) sentences.unshift(say`No weight: ${s.math(symbol("g"))} is zero here.`);
  return { part: "forces", heading: "The forces that act", sentences, refers: acting.map((f) => f.id) };
}

/** The forces one might expect and that are absent, with the reason. */
function absent(s: Speech): Opening {
  const loose = s.attempt.forces.absent.flatMap((f) =>
    f.kind === "slack-tension" ? [say`${s.Rope(f.rope)} hangs loose, and a loose rope pulls on nothing.`] : [],
  );
  return {
    part: "forces",
    heading: "The forces that do not",
    sentences: [
      ...loose,
      say`No normal force: the ${s.body} touches no surface. No friction, for the same reason. No push: nobody holds it.`,
      say`And no "net force" or "force of motion": what is left over when all forces are added is ${s.math({ kind: "product", factors: [s.world.body.givenBy === "mass" ? symbol("m") : { kind: "quotient", over: symbol("W"), under: symbol("g") }, symbol("a")] })}, a result, not one more force.`,
    ],
    refers: [],
  };
}

/** The force diagram with sizes unknown. */
function diagram(s: Speech): Opening {
  const known = s.world.body.weight.decimal !== 0;
  const tensions = s.attempt.forces.acting.flatMap((f) => (f.kind === "tension" ? [s.letter(f.id)] : []));
  return {
    part: "diagram",
    heading: "The force diagram",
    sentences: [
      say`Every force is an arrow that starts at the ${s.body} and points the way it acts. ${known ? "The weight is known in size and direction; of " : "Of "}${listed(tensions)} only the direction is known, since a rope pulls along itself. The open ends say so: how long ${tensions.length === 1 ? "that arrow is" : "those arrows are"} is what we are after.`,
    ],
    refers: s.attempt.forces.acting.map((f) => f.id),
  };
}

/** Whether the check gives one pull by an axis across the other rope. */
const isCheckedAcross = (s: Speech): boolean =>
  s.attempt.passages.some((p) => p.steps.some((step) => step.reason.kind === "perpendicular"));

/** The axes, why these, and the convention of signs. */
function axes(s: Speech): Opening {
  const oblique = s.world.ropes.filter((r) => r.side !== 0 && r.rise !== 0);
  const [first] = oblique;
  const why =
    s.world.body.weight.decimal === 0
      ? say`the angles are measured from the level line, so each pull's parts along these axes follow from its angle`
      : s.world.body.push !== 0
        ? say`the weight lies along ${s.math(symbol("y"))} and the sideways acceleration along ${s.math(symbol("x"))}, so neither need be taken apart`
        : say`the weight, the one force we know, then lies along ${s.math(symbol("y"))} and need not be taken apart`;
  const sentences = [
    say`Take ${s.math(symbol("x"))} to the right and ${s.math(symbol("y"))} upwards: ${why}.`,
    say`Every letter is a size and never negative; the signs are read from the diagram. What points right or up gets a plus, what points left or down a minus.${s.world.body.push !== 0 || s.world.body.acceleration.y.decimal !== 0 ? " Only an acceleration is given with its sign: plus to the right and upwards." : ""}`,
  ];
  if (oblique.length > 1 && first !== undefined)
    sentences.push(
      say`Another choice would do as well: an axis across ${s.rope(first.id)} holds no part of ${s.letter(first.id)} at all.${isCheckedAcross(s) ? " The check comes back to that." : ""}`,
    );
  return { part: "axes", heading: "Axes and signs", sentences, refers: [] };
}

/** All opening paragraphs in order, with their ids. */
export function openings(s: Speech): readonly (Opening & { readonly id: string })[] {
  return [
    { id: "problem", ...problem(s) },
    { id: "guess", ...guess(s) },
    { id: "situation", ...situation(s) },
    { id: "motion", ...motion(s) },
    { id: "forces", ...forces(s) },
    { id: "absent", ...absent(s) },
    { id: "diagram", ...diagram(s) },
    { id: "axes", ...axes(s) },
  ];
}
