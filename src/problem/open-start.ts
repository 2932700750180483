// What the page is built with: its own example, read, derived and ready to be written out.
import { readProblem } from "../../shared/problem/schema.ts";
import type { Derivation } from "../../solver/index.ts";
import { derivationWith, startSettings } from "./derivation-with.ts";
import { readObject, writeDocument } from "./document-text.ts";
import { pictureOf } from "./picture-of.ts";
import type { ProblemPicture } from "./picture-of.ts";
import type { Step } from "./problem-page.svelte.ts";

/** The page's own example. */
export interface StartOfPage {
  readonly start: Step;
  readonly derivation: Derivation;
  readonly picture: ProblemPicture;
}

/** Raised where the page's own example has faults: the build stops and names them. */
export class StartProblemError extends Error {}

/** Reads and derives the example. Throws StartProblemError with every fault. */
export function openStart(text: string): StartOfPage {
  const reading = readProblem(text);
  const document = readObject(text);
  if (!reading.ok || document === null) {
    const faults = reading.ok ? [] : reading.faults.map((f) => `${f.path}: found ${f.found}, accepted: ${f.accepted}`);
    throw new StartProblemError(`the page's own example: ${faults.join("; ")}`);
  }
  const derivation = derivationWith(reading.problem, startSettings);
  return {
    start: { text: writeDocument(document), settings: startSettings },
    derivation,
    picture: pictureOf(derivation),
  };
}
