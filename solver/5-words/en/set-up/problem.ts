// The problem as it is set: bodies, surfaces, ropes, pushes, motion, and what is asked.
import type { SetUpBody } from "../../../1-bodies/types.ts";
import { symbol } from "../../../algebra/expr.ts";
import { listed, say } from "../../sentence.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import { capital, Capital } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { sideWord } from "../directions.ts";
import { lineWords, signedWay } from "./directions.ts";
import { pushSentence, pushWord } from "./pushes.ts";
import { ropeSentences } from "./ropes.ts";
import { surfaceSentences } from "./surfaces.ts";

/** All sentences of the problem. */
export function problemSentences(s: SetUpSpeech): Sentence[] {
  const { setUp } = s;
  return [
    ...setUp.bodies.map((b) => bodySentence(s, b)),
    ...surfaceSentences(s),
    ...ropeSentences(s),
    ...setUp.pushes.map((p) => pushSentence(s, p)),
    ...motionSentences(s),
    question(s),
  ];
}

function bodySentence(s: SetUpSpeech, b: SetUpBody): Sentence {
  const name = s.newBody(b.id);
  if (b.kind === "knot")
    return say`${Capital(s.body(b.id))}${/knot/i.test(b.name) ? "" : " is a knot and"} has no mass.`;
  const what =
    b.kind === "pulley" ? (/pulley|block|sheave/i.test(b.name) ? " that can move" : ", a pulley that can move,") : "";
  if (b.massless) return say`${name}${what} has no mass to speak of.`;
  const load =
    b.givenBy === "mass"
      ? say`has a mass of ${s.givenOf(b.letters.mass, s.units.mass)}`
      : say`weighs ${s.givenOf(b.letters.weight, s.units.force)}`;
  return say`${name}${what} ${load}.`;
}

function motionSentences(s: SetUpSpeech): Sentence[] {
  const { setUp } = s;
  const parts = vectorWords(s, "Ax", setUp.frame.x.decimal, "Ay", setUp.frame.y.decimal);
  const frame =
    parts.length === 0
      ? []
      : [
          say`The supports accelerate at ${listed(parts)}, seen from the ground, and whatever is at rest on them with them.`,
        ];
  return [...frame, ...setUp.bodies.flatMap((b) => givenMotion(s, b)), ...freeMotions(s)];
}

/** What the problem says of how one body moves, apart from being free to move along a line. */
function givenMotion(s: SetUpSpeech, b: SetUpBody): Sentence[] {
  const { freedom, letters, acceleration } = b;
  const body = s.body(b.id);
  if (freedom.kind === "free") return [say`Nothing is said of how ${body} moves.`];
  if (freedom.kind === "given") {
    const a = letters.acceleration;
    const given = vectorWords(s, `${a}x`, acceleration.x.decimal, `${a}y`, acceleration.y.decimal);
    return given.length === 0
      ? [say`${Capital(body)} has no acceleration.`]
      : [say`${Capital(body)} accelerates at ${listed(given)}, seen from the ground.`];
  }
  if (freedom.kind !== "line" || !freedom.stated) return [];
  const going = freedom.going === 0 ? "" : ` It is already moving ${signedWay(freedom.along, freedom.going)}.`;
  const seen = freedom.seenFrom === null ? "" : `, seen from ${s.body(freedom.seenFrom)}`;
  if (freedom.value === null)
    return going === ""
      ? []
      : [say`${Capital(body)} is already moving ${signedWay(freedom.along, freedom.going)}${seen}.`];
  const size = freedom.value.decimal;
  if (size === 0)
    return [
      say`${Capital(body)} keeps a steady velocity${freedom.going === 0 ? "" : `, ${signedWay(freedom.along, freedom.going)}`}${seen}.`,
    ];
  const figure = s.given(letters.acceleration, s.units.acceleration, size < 0 ? -1 : 1);
  return [say`${Capital(body)} accelerates at ${figure} ${signedWay(freedom.along, size)}${seen}.${going}`];
}

/** Who can move along what line: those along the same line together. */
function freeMotions(s: SetUpSpeech): Sentence[] {
  const free = s.setUp.bodies.flatMap((b) =>
    b.freedom.kind === "line" && b.freedom.stated && b.freedom.value === null
      ? [
          {
            body: b,
            ways: `${lineWords(b.freedom.along)}${b.freedom.seenFrom === null ? "" : `, seen from ${s.body(b.freedom.seenFrom)}`}`,
          },
        ]
      : [],
  );
  return [...new Set(free.map((f) => f.ways))].map((ways) => {
    const who = free.filter((f) => f.ways === ways).map((f) => s.body(f.body.id));
    return capital(
      say`${listed(who)} can move only ${ways}; ${who.length > 1 ? "their accelerations are" : "its acceleration is"} to be found.`,
    );
  });
}

function vectorWords(s: SetUpSpeech, xId: string, x: number, yId: string, y: number): Sentence[] {
  const size = (id: string, value: number) => s.given(id, s.units.acceleration, value < 0 ? -1 : 1);
  return [
    ...(x === 0 ? [] : [say`${size(xId, x)} ${sideWord(x)}`]),
    ...(y === 0 ? [] : [say`${size(yId, y)} ${y > 0 ? "upwards" : "downwards"}`]),
  ];
}

/** What is asked, in the order of the answers. */
function question(s: SetUpSpeech): Sentence {
  const { setUp } = s;
  const { ropes, contacts, pushes, bodies } = setUp;
  const rough = contacts.filter((c) => c.staticFriction !== null).length;
  const one = (count: number, single: string, each: string): string[] =>
    count === 0 ? [] : [count === 1 ? single : each];
  const wanted: Sentence[] = [
    ...one(ropes.length, "the tension", "each tension"),
    ...one(contacts.length, "the normal force", "each normal force"),
    ...one(rough, "the friction", "the friction at each contact"),
  ].map((w) => say`${w}`);
  for (const p of pushes) if (p.size === null) wanted.push(say`the ${pushWord(s, p)} ${s.letter(p.id)}`);
  const moving = bodies.filter(
    (b) =>
      b.freedom.kind === "free" ||
      (b.freedom.kind === "line" &&
        b.freedom.value === null &&
        (b.freedom.stated || contacts.some((c) => c.on === b.id))),
  );
  if (moving.length > 0)
    wanted.push(say`${moving.length > 1 ? "how each body" : `how ${s.body(moving[0]?.id ?? "")}`} moves, if at all`);
  const ask = wanted.length === 0 ? say`How does it move?` : say`Find ${listed(wanted)}.`;
  return say`${ask} Take ${s.math(symbol("g"))} = ${s.givenLetter("g", s.units.acceleration)}.`;
}
