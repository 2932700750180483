// How the letters of a set-up look: T1, N, f, P with what stands below them; parts carry the axis below too.
import type { SetUp } from "../../1-bodies/types.ts";
import type { SetUpAttempt } from "../../4-steps/types.ts";
import { letterOf } from "../print/letters.ts";
import type { Letter } from "../print/letters.ts";

/** The letters of an attempt, by id. */
export function setUpLetters(setUp: SetUp, attempt: SetUpAttempt): ReadonlyMap<string, Letter> {
  const letters = new Map<string, Letter>();
  const put = (id: string, stem: string): void => {
    letters.set(id, spelled(id, stem));
  };
  for (const rope of setUp.ropes) put(rope.id, "T");
  for (const push of setUp.pushes) put(push.id, "P");
  for (const c of setUp.contacts) {
    put(c.id, "N");
    letters.set(c.friction, c.friction.startsWith("f") ? spelled(c.friction, "f") : below("f", c.id));
    letters.set(c.coefficients.static, coefficient(c.coefficients.static, "s"));
    letters.set(c.coefficients.kinetic, coefficient(c.coefficients.kinetic, "k"));
  }
  for (const axis of ["x", "y"]) letters.set(`A${axis}`, { tex: `A_{${axis}}`, text: `A${axis}` });
  for (const [id] of setUp.angles) {
    const match = /^theta(\d+)$/.exec(id);
    if (match !== null) letters.set(id, { tex: `\\theta_{${match[1] ?? ""}}`, text: `θ${match[1] ?? ""}` });
  }
  for (const body of setUp.bodies) {
    const { acceleration, weightId } = body.letters;
    for (const axis of ["x", "y"]) letters.set(`${acceleration}${axis}`, part(spelled(acceleration, "a"), axis));
    letters.set(weightId, spelled(weightId, "W"));
    letters.set(acceleration, spelled(acceleration, "a"));
  }
  for (const law of attempt.equations.equations) {
    if (law.kind !== "law") continue;
    const weight = setUp.bodies.find((b) => b.id === law.body)?.letters.weightId ?? "W";
    for (const { id, force } of law.parts) {
      if (id === force.ref) continue;
      const whole = force.kind === "weight" ? weight : force.ref;
      letters.set(id, part(letters.get(whole) ?? spelled(whole, "F"), id.slice(whole.length)));
    }
  }
  return letters;
}

/** A letter with digits below, or a word below the usual letter of its kind. */
function spelled(id: string, stem: string): Letter {
  const match = /^([A-Za-z])(\d*)$/.exec(id);
  if (match === null) return below(stem, id);
  const digits = match[2] ?? "";
  return { tex: digits === "" ? id : `${match[1] ?? ""}_{${digits}}`, text: id };
}

const below = (stem: string, word: string): Letter => ({ tex: `${stem}_{\\mathrm{${word}}}`, text: `${stem}_${word}` });

function coefficient(id: string, of: "s" | "k"): Letter {
  const number = id.replace(/^mu[sk]/, "");
  return { tex: `\\mu_{\\mathrm{${of}}${number}}`, text: `μ${of}${number}` };
}

/** The letter with more below it. */
function part(whole: Letter, more: string): Letter {
  const tex =
    whole.tex.endsWith("}") && whole.tex.includes("_{")
      ? `${whole.tex.slice(0, -1)}${more}}`
      : `${whole.tex}_{${more}}`;
  return { tex, text: `${whole.text}${more}` };
}

/** The TeX of a letter of a set-up. */
export const wholeLetter = (id: string, letters: ReadonlyMap<string, Letter>): string =>
  letterOf(id, new Set(), letters).tex;
