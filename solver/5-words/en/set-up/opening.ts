// The paragraphs before any law: problem, picture, motion, forces of each body, diagram, axes.
import { symbol } from "../../../algebra/expr.ts";
import type { Place } from "../../../1-bodies/types.ts";
import { listed, say } from "../../sentence.ts";
import { capital } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import type { Opening } from "../opening.ts";
import { axesSentences } from "./axes.ts";
import { headingWords } from "./directions.ts";
import { forcesOfBody } from "./forces.ts";
import { motionWords } from "./motion.ts";
import { problemSentences } from "./problem.ts";

/** An opening paragraph with its id. */
export type NamedOpening = Opening & { readonly id: string };

/** The opening paragraphs of the first attempt. */
export function setUpOpenings(s: SetUpSpeech): NamedOpening[] {
  const letters = s.setUp.ropes.map((r) => r.id);
  return [
    { id: "problem", part: "problem", heading: "The problem", sentences: problemSentences(s), refers: letters },
    { id: "guess", part: "problem", heading: "A guess first", sentences: [guess(s)], refers: [] },
    { id: "situation", part: "picture", heading: "The situation", sentences: situation(s), refers: letters },
    { id: "motion", part: "motion", heading: "How it moves", sentences: motionWords(s), refers: [] },
    ...forcesOfBody(s, "", null),
    {
      id: "diagram",
      part: "diagram",
      heading: s.setUp.bodies.length > 1 ? "A diagram for each body" : "The force diagram",
      sentences: diagram(s),
      refers: [],
    },
    { id: "axes", part: "axes", heading: "Axes and signs", sentences: axesSentences(s), refers: [] },
  ];
}

function guess(s: SetUpSpeech): Sentence {
  const { setUp } = s;
  const rests = setUp.contacts.some((c) => s.attempt.hypothesis.contacts[c.id]?.grip === "sticks");
  const moves = s.attempt.equations.motions.some((m) => m.own.some((p) => p.unknown));
  const g = s.math(symbol("g"));
  const sought = setUp.pushes.find((p) => p.size === null);
  const ask = rests
    ? say`does anything slide, and if so which way?`
    : moves && setUp.gravity.decimal > 0
      ? say`which way will it accelerate, and is that a large or a small part of ${g}?`
      : moves
        ? say`which way will it accelerate?`
        : sought !== undefined
          ? say`how large must ${s.letter(sought.id)} be, beside the weight?`
          : setUp.ropes.length > 1
            ? say`which rope pulls hardest, and does any pull with more than the whole weight?`
            : say`how large will the forces be, beside the weight?`;
  return say`Before any algebra: ${ask} Settle on a guess and keep it for the check.`;
}

function situation(s: SetUpSpeech): Sentence[] {
  const { setUp } = s;
  const [only, ...others] = setUp.bodies;
  const each =
    others.length > 0
      ? say`Each body is followed on its own, with the forces on it and no others.`
      : say`We follow ${s.body(only?.id ?? "")} alone, as a point.`;
  const turns = setUp.ropes.some((r) => r.pulls.length > 1 && r.pulls.some((p) => isTurned(r.pulls, p.on)));
  const rope =
    setUp.ropes.length > 1
      ? "Ropes are light and do not stretch, so each pulls"
      : "The rope is light and does not stretch, so it pulls";
  const ropes =
    setUp.ropes.length === 0
      ? []
      : [
          say`${rope} equally hard all along its length${turns ? "; pulleys turn without friction, so that this holds round them too" : ""}.`,
        ];
  const { hanging } = setUp;
  const place = hanging?.kind === "placed" ? hangingWords(s, hanging.at) : [];
  return [say`Drawn with true angles.`, each, ...ropes, ...place];
}

/** Whether a rope bends somewhere: round a body, or between two that do not lie along one line with it. */
function isTurned(pulls: SetUpSpeech["setUp"]["ropes"][number]["pulls"], body: string): boolean {
  if (pulls.filter((p) => p.on === body).length > 1) return true;
  const [a, b] = pulls;
  if (pulls.length !== 2 || a === undefined || b === undefined) return pulls.length > 2;
  const apart = Math.abs(a.toward.heading.degrees - b.toward.heading.degrees);
  return Math.abs(apart - 180) > 1e-6;
}

/** Where lengths of ropes put the body, and which way the straight ones then run. */
export function hangingWords(s: SetUpSpeech, at: Place): Sentence[] {
  const straight = s.setUp.ropes.filter((r) => s.attempt.hypothesis.ropes[r.id] === "taut");
  const body = s.body(s.setUp.bodies[0]?.id ?? "");
  const unit = s.units.length;
  const offsets = [
    ...(at.x === 0 ? [] : [say`${s.figure(Math.abs(at.x), unit)} to the ${at.x < 0 ? "left" : "right"}`]),
    ...(at.y === 0 ? [] : [say`${s.figure(Math.abs(at.y), unit)} ${at.y < 0 ? "down" : "up"}`]),
  ];
  const origin = `(0${s.settings.mark === "," ? ";" : ","} 0)`;
  const where =
    offsets.length === 0 ? say`just at the place ${origin}` : say`${listed(offsets)} from the place ${origin}`;
  const ways = straight.map((r) => say`${s.rope(r.id)} runs ${headingWords(s, r.pulls[0]?.toward.heading ?? NOWHERE)}`);
  if (straight.length > 1)
    return [
      say`With ${straight.length > 2 ? "all" : "both"} ropes straight, ${body} is as far from each support as that rope is long. Two circles meet in two such points; ${body} hangs at the lower, ${where}.`,
      capital(say`${listed(ways)} there.`),
    ];
  return [say`On one straight rope ${body} hangs ${where}.`];
}

const NOWHERE = { degrees: 90, side: 0, rise: 1, angle: "" } as const;

function diagram(s: SetUpSpeech): Sentence[] {
  const { setUp } = s;
  const several = setUp.bodies.length > 1;
  const shared = setUp.ropes.some((r) => new Set(r.pulls.map((p) => p.on)).size > 1);
  const touching = setUp.contacts.some((c) => c.of !== null);
  return [
    say`Every force is an arrow that starts at the body it acts on and points the way it acts; open ends mark sizes that are not known yet.`,
    ...(several
      ? [
          say`Each body has a diagram of its own${shared ? ", and a rope between two bodies appears in both" : ""}${touching ? `${shared ? "; so do" : ", and"} the forces with which two bodies push each other${shared ? "" : " appear in both"}, equally long and opposite` : ""}.`,
        ]
      : []),
  ];
}
