// Random set-ups with their derivations, and what their sentences say, for tests of what is claimed.
import fc from "fast-check";
import type { ProblemDocument } from "../../shared/problem/index.ts";
import { statesOf } from "../../solver/exports/index.ts";
import { defaultSettings, deriveSystem, plainSentence } from "../../solver/index.ts";
import type { Paragraph, Settings, SystemDerivation } from "../../solver/index.ts";
import { crateKinds, frameKinds, ropeKinds } from "../arbitraries/set-up-problems.ts";
import { problemFrom } from "./set-ups.ts";

const SEED = 20261125;

/** A document with what is derived from it. */
export interface SetUpCase {
  readonly kind: string;
  readonly document: ProblemDocument;
  readonly derivation: SystemDerivation;
}

/** Derives a document as a set-up, whatever it is. */
export const derived = (document: ProblemDocument, settings: Partial<Settings> = {}): SystemDerivation =>
  deriveSystem(problemFrom(document), { ...defaultSettings, ...settings });

/** So many random documents of each kind. */
export function documentsOf(aKind: number): readonly { readonly kind: string; readonly document: ProblemDocument }[] {
  return [...ropeKinds, ...crateKinds, ...frameKinds].flatMap(([kind, documents]) =>
    fc.sample(documents, { numRuns: aKind, seed: SEED }).map((document) => ({ kind, document })),
  );
}

/** So many random documents of each kind, derived. */
export const casesOf = (aKind: number, settings: Partial<Settings> = {}): readonly SetUpCase[] =>
  documentsOf(aKind).map((one) => ({ ...one, derivation: derived(one.document, settings) }));

/** The sentences of paragraphs as plain text. */
export const sentencesOf = (paragraphs: readonly Paragraph[]): string[] =>
  paragraphs.flatMap((p) => [...p.before, ...p.after].map((sentence) => plainSentence(sentence, () => 0)));

/** What every rope and surface does, as one text. */
export const statesText = (d: SystemDerivation): string =>
  statesOf(d)
    .map(({ id, state }) => `${id} ${state}`)
    .join(", ");

/** An answer's number; NaN where it has none. */
export const answerOf = (d: SystemDerivation, id: string): number =>
  d.answers.find((a) => a.id === id)?.decimal ?? Number.NaN;

/** Everything that was found wrong with any of the cases, the first few. */
export const faults = (cases: readonly SetUpCase[], check: (one: SetUpCase) => readonly string[]): string[] =>
  cases.flatMap((one) => check(one).map((f) => `${one.kind}: ${f} in ${JSON.stringify(one.document)}`)).slice(0, 6);

/** The sentences that match, with what they matched. */
export const claims = (d: SystemDerivation, pattern: RegExp): RegExpExecArray[] =>
  sentencesOf(d.paragraphs).flatMap((s) => {
    const match = pattern.exec(s);
    return match === null ? [] : [match];
  });

/** A number as a document takes it. */
export const short = (x: number): number => Number(x.toPrecision(13));

const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** A printed number: 12.5, 1.2×10⁻⁵. */
export function numberOf(text: string): number {
  const [digits = "", power = ""] = text.split("×10");
  const exponent = power.replaceAll(/./gu, (c) => (c === "⁻" ? "-" : String(RAISED.indexOf(c))));
  return Number(`${digits}e${exponent === "" ? "0" : exponent}`);
}
