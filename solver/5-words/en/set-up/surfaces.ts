// Which body is on which surface, and how rough it is: each surface once.
import type { Contact } from "../../../1-bodies/types.ts";
import { degreesOfTurned } from "../../../algebra/turned.ts";
import { listed, say } from "../../sentence.ts";
import { capital, lieOf } from "../../set-up/speech.ts";
import type { SetUpSpeech } from "../../set-up/speech.ts";
import type { Sentence } from "../../types.ts";
import { sideWord } from "../directions.ts";
import { angleWords, wayWords } from "./directions.ts";

/** All sentences about surfaces. */
export function surfaceSentences(s: SetUpSpeech): Sentence[] {
  const { contacts } = s.setUp;
  const groups = contacts.reduce<Contact[][]>((made, c) => {
    const twin = made.find((g) => g[0] !== undefined && isAlike(g[0], c));
    if (twin === undefined) return [...made, [c]];
    twin.push(c);
    return made;
  }, []);
  const isSmooth = (c: Contact | undefined): boolean => c?.staticFriction === null;
  const allSmooth = groups.length > 1 && contacts.every(isSmooth);
  const each = groups.map((g) => {
    const where = whereWords(s, g);
    if (allSmooth) return capital(say`${where}.`);
    return capital(
      isSmooth(g[0])
        ? say`${where}; no coefficient of friction is given there, so it counts as smooth.`
        : say`${where}; ${roughWords(s, g)}.`,
    );
  });
  return allSmooth ? [...each, say`No coefficient of friction is given, so everything counts as smooth.`] : each;
}

/** Whether two contacts are the same kind of place: no need to say it twice. */
function isAlike(a: Contact, b: Contact): boolean {
  const near = Math.abs(degreesOfTurned(a.normal) - degreesOfTurned(b.normal)) < 1e-9;
  const sameNumber = (of: "staticFriction" | "kineticFriction"): boolean => a[of]?.decimal === b[of]?.decimal;
  return a.of === null && b.of === null && near && sameNumber("staticFriction") && sameNumber("kineticFriction");
}

/** "The crate is on a slope that rises to the right at 25°". */
function whereWords(s: SetUpSpeech, group: readonly Contact[]): Sentence {
  const [first] = group;
  if (first === undefined) return [];
  const bodies = listed(group.map((c) => s.body(c.on)));
  const [are, touch] = group.length > 1 ? ["are", "touch"] : ["is", "touches"];
  const { heading } = first.tangent;
  const lie = lieOf(first);
  const other = first.of === null ? null : s.body(first.of);
  const side = sideWord(Math.cos((degreesOfTurned(first.normal) * Math.PI) / 180) > 0 ? -1 : 1).replace(
    "to the",
    "on the",
  );
  switch (lie) {
    case "level":
      return other === null ? say`${bodies} ${are} on a level surface` : say`${bodies} ${are} on ${other}`;
    case "slope": {
      const rises = say`rises ${sideWord(heading.side * heading.rise * (first.tangent.quarters % 2 === 1 ? -1 : 1))} at ${slopeAngle(s, first)}`;
      return other === null
        ? say`${bodies} ${are} on a slope that ${rises}`
        : say`${bodies} ${are} on the slanting face of ${other}, which ${rises}`;
    }
    case "wall":
      return other === null
        ? say`${bodies} ${touch} an upright wall ${side.replace("the", group.length > 1 ? "their" : "its")}`
        : say`${bodies} ${touch} ${other}, which is ${side.replace("the", "its")}`;
    case "ceiling":
      return say`${bodies} ${touch} ${other ?? "a level surface"} above ${group.length > 1 ? "them" : "it"}`;
    case "overhang":
      return say`${bodies} ${touch} ${other ?? "an overhanging surface"}, which can push ${group.length > 1 ? "them" : "it"} ${wayWords(first.normal)}`;
  }
}

/** The angle of a slope with the level line, also of one that was given by its normal. */
function slopeAngle(s: SetUpSpeech, c: Contact): Sentence {
  const { heading, quarters } = c.tangent;
  if (quarters % 2 === 0) return say`${angleWords(s, heading.angle)}`;
  return say`90° − ${angleWords(s, heading.angle)}`;
}

function roughWords(s: SetUpSpeech, group: readonly Contact[]): Sentence {
  const [first] = group;
  if (first?.staticFriction == null || first.kineticFriction === null) return [];
  const each = group.length > 1 ? " each" : "";
  const statics = listed(group.map((c) => s.letter(c.coefficients.static)));
  const kinetics = listed(group.map((c) => s.letter(c.coefficients.kinetic)));
  const [sizeS, sizeK] = [s.givenLetter(first.coefficients.static, ""), s.givenLetter(first.coefficients.kinetic, "")];
  if (first.staticFriction.decimal === first.kineticFriction.decimal)
    return say`the coefficient of friction is ${sizeK}${each}, static (${statics}) and kinetic (${kinetics}) alike`;
  return group.length > 1
    ? say`the coefficients of friction are ${sizeS} for static (${statics}) and ${sizeK} for kinetic friction (${kinetics})`
    : say`the coefficients of friction are ${statics} = ${sizeS} (static) and ${kinetics} = ${sizeK} (kinetic)`;
}
