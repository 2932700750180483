// What is said of a passage, and small words that several passages need.
import type { Passage, PassageData } from "../../4-steps/types.ts";
import type { Speech } from "../speech.ts";
import type { Part, Sentence } from "../types.ts";

/** What is said of a passage. */
export interface SpokenPassage {
  readonly part: Part;
  readonly heading: string;
  readonly before: readonly Sentence[];
  readonly after: readonly Sentence[];
  readonly refers: readonly string[];
}

type Of<K extends PassageData["kind"]> = Extract<PassageData, { kind: K }>;
/** Speaks of one kind of passage. */
export type PassageSpeaker<K extends PassageData["kind"]> = (data: Of<K>, passage: Passage, s: Speech) => SpokenPassage;

const NUMBER_WORDS = "no one two three four five six seven eight nine ten eleven twelve".split(" ");
/** A small count in words. */
export const countWord = (n: number): string => NUMBER_WORDS[n] ?? String(n);
/** A count with its noun: one unknown, two unknowns. */
export const plural = (n: number, one: string, more: string): string => `${countWord(n)} ${n === 1 ? one : more}`;
/** An axis by name. */
export const axisName = (axis: 0 | 1): string => (axis === 0 ? "horizontal" : "vertical");
/** The id of the last line of a passage. */
export const lastLine = (p: Passage): string => p.steps[p.steps.length - 1]?.id ?? "";
