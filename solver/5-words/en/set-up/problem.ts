// The problem as it is set: bodies, surfaces, ropes, pushes, motion, and what is asked.
import type { Contact, SetUpBody, SetUpPull, SetUpRope } from "../../../1-bodies/types.ts";
import { symbol } from "../../../algebra/expr.ts";
import { MINUS } from "../../../../shared/format/index.ts";
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import { capital, Capital } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { sideWord } from "../directions.ts";
import { alongWords, angleWords, headingWords, wayWords } from "./directions.ts";

/** All sentences of the problem. */
export function problemSentences(s: SetUpSpeech): Sentence[] {
  const { setUp } = s;
  return [
    ...setUp.bodies.map((b) => bodySentence(s, b)),
    ...setUp.contacts.map((c) => contactSentence(s, c)),
    ...setUp.ropes.map((r) => capital(ropeSentence(s, r))),
    ...setUp.pushes.map((p) => {
      const size = p.size === null ? say`of a size to be found` : say`of ${s.givenLetter(p.id, s.units.force)}`;
      return say`A push ${s.letter(p.id)} ${size} acts on ${s.body(p.on)}, ${headingWords(s, p.toward.heading)}.`;
    }),
    ...motionSentences(s),
    question(s),
  ];
}

function bodySentence(s: SetUpSpeech, b: SetUpBody): Sentence {
  const article = /^[aeiou]/i.test(b.name) ? "An" : "A";
  if (b.kind === "knot") return say`The ${b.name}${/knot/i.test(b.name) ? "" : ", a knot,"} has no mass.`;
  const what = b.kind === "pulley" ? `, a movable pulley,` : "";
  if (b.massless) return say`${article} ${b.name}${what} has no mass to speak of.`;
  const load =
    b.givenBy === "mass"
      ? say`has a mass of ${s.givenOf(b.letters.mass, s.units.mass)}`
      : say`weighs ${s.givenOf(b.letters.weight, s.units.force)}`;
  return say`${article} ${b.name}${what} ${load}.`;
}

function contactSentence(s: SetUpSpeech, c: Contact): Sentence {
  const where = capital(say`${s.body(c.on)} touches ${surfaceWords(s, c)}`);
  if (c.staticFriction === null || c.kineticFriction === null)
    return say`${where}, which is smooth: no coefficient of friction is given, so there is no friction.`;
  const [mus, muk] = [s.letter(c.coefficients.static), s.letter(c.coefficients.kinetic)];
  const same = c.staticFriction.decimal === c.kineticFriction.decimal;
  return same
    ? say`${where}; the coefficient of friction is ${s.givenLetter(c.coefficients.kinetic, "")}, static (${mus}) and kinetic (${muk}) alike.`
    : say`${where}; the coefficients of friction are ${mus} = ${s.givenLetter(c.coefficients.static, "")} (static) and ${muk} = ${s.givenLetter(c.coefficients.kinetic, "")} (kinetic).`;
}

/** "a slope that rises to the right at 25°", "the level ground", "a wall on its left". */
function surfaceWords(s: SetUpSpeech, c: Contact): Sentence {
  const { heading, quarters } = c.tangent;
  if (c.of !== null) return say`${s.body(c.of)}, which pushes it ${wayWords(c.normal)} if at all`;
  if (heading.side !== 0 && heading.rise !== 0) {
    if (quarters % 2 === 1) return say`a surface that pushes it ${wayWords(c.normal)}`;
    return say`a slope that rises ${sideWord(heading.side * heading.rise)} at ${angleWords(s, heading.angle)}`;
  }
  const upright = (heading.side === 0) !== (quarters % 2 === 1);
  if (!upright) return say`a level surface`;
  return say`an upright wall that pushes it ${wayWords(c.normal)} if at all`;
}

/** What a rope joins, place by place along it. */
export function ropeSentence(s: SetUpSpeech, rope: SetUpRope): Sentence {
  const { pulls } = rope;
  const [first] = pulls;
  if (first === undefined) return [];
  const name = s.rope(rope.id);
  const called = say`${name} (tension ${s.letter(rope.id)})`;
  if (pulls.length === 1 && rope.anchor !== null) return tiedWords(s, rope, called);
  if (pulls.length === 1)
    return say`${called} runs from ${s.body(first.on)} ${headingWords(s, first.toward.heading)} to a support.`;
  const [second] = pulls;
  const next = pulls[1];
  if (pulls.length === 2 && second !== undefined && next !== undefined && isStraight(second, next))
    return say`${called} joins ${s.body(first.on)} to ${s.body(next.on)}: from ${s.body(first.on)} it runs ${headingWords(s, first.toward.heading)}.`;
  return say`${called} runs ${joinPlaces(places(s, pulls))}.`;
}

/** A rope given by where it is tied, and perhaps by its length. */
function tiedWords(s: SetUpSpeech, rope: SetUpRope, called: Sentence): Sentence {
  const at = rope.anchor ?? { x: 0, y: 0 };
  const body = s.body(rope.pulls[0]?.on ?? "");
  const place = say`(${written(s, at.x)}, ${written(s, at.y)})`;
  if (rope.length !== null)
    return say`${called} is ${written(s, rope.length.decimal)} ${s.units.length} long and tied to a support at ${place}, so far to the right and so far up in ${s.units.length === "m" ? "metres" : "feet"}; ${body} hangs from its other end.`;
  const own = s.bodyOf(rope.pulls[0]?.on ?? "").at ?? { x: 0, y: 0 };
  return say`${called} runs from ${body} at (${written(s, own.x)}, ${written(s, own.y)}) to a support at ${place}, coordinates in ${s.units.length === "m" ? "metres" : "feet"}: ${headingWords(s, rope.pulls[0]?.toward.heading ?? { degrees: 0, side: 1, rise: 0, angle: "" })}.`;
}

/** A given number as it was written, near enough for a place or a length. */
const written = (s: SetUpSpeech, x: number): string =>
  String(Number(x.toPrecision(12)))
    .replace("-", MINUS)
    .replace(".", s.settings.mark);

const joinPlaces = (parts: readonly Sentence[]): Sentence => parts.flatMap((p, i) => (i === 0 ? p : say`, ${p}`));

/** Whether two pulls face each other along one straight piece of rope. */
export function isStraight(a: SetUpPull, b: SetUpPull): boolean {
  const apart = Math.abs(degrees(a) - degrees(b)) % 360;
  return a.on !== b.on && Math.abs(apart - 180) < 1e-6;
}

const degrees = ({ toward }: SetUpPull): number => toward.heading.degrees + 90 * toward.quarters;

function places(s: SetUpSpeech, pulls: readonly SetUpPull[]): Sentence[] {
  const parts: Sentence[] = [];
  const round = (i: number): boolean => i < pulls.length && pulls[i]?.on === pulls[i + 1]?.on;
  parts.push(round(0) ? say`from a support` : say`from ${s.body(pulls[0]?.on ?? "")}`);
  for (let i = 0; i < pulls.length;) {
    const here = pulls[i];
    const width = round(i) ? 2 : 1;
    if (here === undefined) break;
    if (width === 2) parts.push(say`round ${s.body(here.on)}`);
    else if (i > 0) parts.push(say`to ${s.body(here.on)}`);
    const last = pulls[i + width - 1];
    const next = pulls[i + width];
    if (next === undefined) {
      if (width === 2) parts.push(say`to a support`);
    } else if (last !== undefined && !isStraight(last, next)) parts.push(say`over a fixed pulley`);
    i += width;
  }
  return parts;
}

function motionSentences(s: SetUpSpeech): Sentence[] {
  const { setUp, units } = s;
  const parts = vectorWords(s, "Ax", setUp.frame.x.decimal, "Ay", setUp.frame.y.decimal);
  const frame =
    parts.length === 0
      ? []
      : [say`The supports speed up at ${listed(parts)}, seen from the ground, and everything tied to them with them.`];
  const bodies = setUp.bodies.flatMap((b): Sentence[] => {
    const { freedom, letters } = b;
    if (freedom.kind === "free") return [say`Nothing is known beforehand of how ${s.body(b.id)} moves.`];
    if (freedom.kind === "given") {
      const a = letters.acceleration;
      const given = vectorWords(s, `${a}x`, b.acceleration.x.decimal, `${a}y`, b.acceleration.y.decimal);
      if (given.length > 0)
        return [capital(say`${s.body(b.id)} accelerates at ${listed(given)}, seen from the ground.`)];
      return [capital(say`${s.body(b.id)} has no acceleration.`)];
    }
    if (freedom.kind !== "line" || !freedom.stated) return [];
    const along = lineWords(s, freedom.along.heading);
    const going =
      freedom.going === 0 ? say`` : say` It is already moving ${freedom.going > 0 ? "that way" : "the other way"}.`;
    const seen = freedom.seenFrom === null ? say`` : say`, seen from ${s.body(freedom.seenFrom)}`;
    if (freedom.value === null)
      return [
        say`${Capital(s.body(b.id))} can move only along a line, ${along}${seen}; how fast it speeds up is to be found.${going}`,
      ];
    if (freedom.value.decimal === 0)
      return [say`${Capital(s.body(b.id))} moves at a steady velocity along a line, ${along}${seen}.${going}`];
    return [
      say`${Capital(s.body(b.id))} accelerates at ${s.givenLetter(letters.acceleration, units.acceleration)} along a line, ${along}${seen}.${going}`,
    ];
  });
  return [...frame, ...bodies];
}

const lineWords = headingWords;

function vectorWords(s: SetUpSpeech, xId: string, x: number, yId: string, y: number): Sentence[] {
  const size = (id: string, value: number) => s.given(id, s.units.acceleration, value < 0 ? -1 : 1);
  return [
    ...(x === 0 ? [] : [say`${size(xId, x)} ${sideWord(x)}`]),
    ...(y === 0 ? [] : [say`${size(yId, y)} ${y > 0 ? "upwards" : "downwards"}`]),
  ];
}

function question(s: SetUpSpeech): Sentence {
  const { setUp } = s;
  const wanted = [
    ...(setUp.ropes.length > 0 ? [setUp.ropes.length > 1 ? "every tension" : "the tension"] : []),
    ...(setUp.contacts.length > 0 ? ["what the surfaces do"] : []),
    ...(setUp.pushes.some((p) => p.size === null) ? ["the push"] : []),
    ...(setUp.bodies.some((b) => b.freedom.kind === "line" && b.freedom.value === null) ? ["how things move"] : []),
  ];
  const ask = wanted.length === 0 ? say`How does it move?` : say`Find ${listed(wanted)}.`;
  return say`${ask} Take ${s.math(symbol("g"))} = ${s.givenLetter("g", s.units.acceleration)}.`;
}

/** The way a contact's friction acts on its body, in words. */
export const frictionWay = (c: Contact, sense: 1 | -1): string =>
  alongWords(sense > 0 ? c.tangent : { ...c.tangent, quarters: ((c.tangent.quarters + 2) % 4) as 0 | 1 | 2 | 3 });
