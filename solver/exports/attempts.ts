// The attempts of any derivation, as exports need them.
import { letterTex, setUpLetters, wholeLetter } from "../5-words/index.ts";
import type { Values } from "../algebra/evaluate.ts";
import { unitOfLetter } from "../results/index.ts";
import type { Derivation, HangingDerivation } from "../index.ts";

/** One attempt: what it assumes, whether it holds, and how its letters look and are measured. */
export interface ExportedAttempt {
  readonly id: string;
  readonly assumes: readonly Record<string, string>[];
  readonly holds: boolean;
  readonly values: Values;
  readonly tex: (id: string) => string;
  readonly unit: (id: string) => string;
}

/** All attempts in order; of a set-up also those at a limit. */
export function attemptsOf(d: Derivation): readonly ExportedAttempt[] {
  if (d.model === "hanging")
    return d.result.attempts.map((a) => ({
      id: a.hypothesis.id,
      assumes: Object.entries(a.hypothesis.ropes).map(([rope, state]) => ({ rope, state })),
      holds: a.holds,
      values: a.values,
      tex: (id) => letterTex(id, d.result),
      unit: (id) => hangingUnit(id, d),
    }));
  return [...d.system.attempts, ...d.system.limits].map((a) => {
    const letters = setUpLetters(a.setUp, a);
    return {
      id: a.id,
      assumes: [
        ...Object.entries(a.hypothesis.ropes).map(([rope, state]) => ({ rope, state })),
        ...Object.entries(a.hypothesis.contacts).map(([surface, { touch, grip }]) => ({
          surface,
          state: touch === "lifted" ? touch : grip,
        })),
        ...(a.limit === null ? [] : [{ size: a.limit.letter, surface: a.limit.contact, state: a.limit.end }]),
      ],
      holds: a.holds,
      values: a.values,
      tex: (id) => wholeLetter(id, letters),
      unit: (id) => unitOfLetter(a.setUp, id),
    };
  });
}

const UNITS: Readonly<Record<string, string>> = { m: "kg", g: "m/s^2", ax: "m/s^2", ay: "m/s^2", theta: "rad" };
const isLength = (id: string, d: HangingDerivation): boolean =>
  !d.world.ropes.some((r) => r.id === id) && (id === "h" || id === "d" || /^L\d+$/.test(id));
const hangingUnit = (id: string, d: HangingDerivation): string => UNITS[id] ?? (isLength(id, d) ? "h" : "N");
